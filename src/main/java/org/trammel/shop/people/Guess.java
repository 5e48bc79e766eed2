package org.trammel.shop.people;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.people.SignOnFailure.Secret;
import org.trammel.shop.stations.Devices;

/**
 * One attempt to give a secret, and everything it is counted against.
 *
 * @param subject what locks after ten: a person's PIN, or a name typed at a desk whether anybody has it or not
 * @param deed what was not done if it is wrong
 */
record Guess(
        Secret secret,
        @Nullable String subject,
        @Nullable Long personId,
        @Nullable Long deviceId,
        @Nullable String address,
        String deed) {

    static Guess pin(long personId, @Nullable Long deviceId, String deed) {
        return new Guess(Secret.PIN, pinOf(personId), personId, deviceId, null, deed);
    }

    /** At a desk: a name that nobody has is counted just as one that somebody has. */
    static Guess password(
            String initials, @Nullable Long personId, @Nullable Long deviceId, @Nullable String address, String deed) {
        String subject = personId == null ? "unknown:" + Devices.hash(initials) : passwordOf(initials);
        return new Guess(Secret.PASSWORD, subject, personId, deviceId, address, deed);
    }

    /** A code typed by a device that is not known yet. */
    static Guess code(Secret secret, String address, String deed) {
        return new Guess(secret, null, null, null, address, deed);
    }

    static String pinOf(long personId) {
        return "pin:" + personId;
    }

    static String passwordOf(String initials) {
        return "password:" + initials.toUpperCase(Locale.ROOT);
    }

    /** Subjects that slow down and never lock. */
    List<String> places() {
        List<String> places = new ArrayList<>();
        if (deviceId != null) {
            places.add("device:" + deviceId);
        }
        if (address != null) {
            places.add("address:" + address);
        }
        return places;
    }

    /** The secret as a sentence names it. */
    String named() {
        return switch (secret) {
            case PIN -> "PIN";
            case PASSWORD -> "password";
            case ENROLMENT, FIRST_OWNER -> "code";
        };
    }
}
