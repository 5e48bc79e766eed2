package org.trammel.shop.people;

import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** What is sent to sign on: person and PIN at a tablet, initials and password at a desk. */
record SignOnForm(
        @Nullable UUID actId,
        @Nullable Long person,
        @Nullable String pin,
        @Nullable String newPin,
        @Nullable String newPinAgain,
        @Nullable String initials,
        @Nullable String password,
        @Nullable String newPassword,
        @Nullable String newPasswordAgain,
        @Nullable Place place,
        @Nullable String next) {

    UUID id() {
        return actId == null ? UUID.randomUUID() : actId;
    }

    long personOrRefused() {
        if (person == null) {
            throw Refusal.input("person", "Not signed on.", "No name was chosen.", "Tap your name or scan your badge.");
        }
        return person;
    }

    Place placed() {
        return place == null ? Place.DOER : place;
    }

    String said(@Nullable String value) {
        return value == null ? "" : value;
    }

    @Nullable
    String ownPin() {
        return same("newPin", newPin, newPinAgain);
    }

    @Nullable
    String ownPassword() {
        return same("newPassword", newPassword, newPasswordAgain);
    }

    /** A page asks for it twice, a program sends it once. */
    private static @Nullable String same(String field, @Nullable String own, @Nullable String again) {
        if (again != null && !Objects.equals(own, again)) {
            throw Refusal.input(field, "Not signed on.", "The two new ones differ.", "Type the same one twice.");
        }
        return own;
    }
}
