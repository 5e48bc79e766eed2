package org.trammel.shop.people;

import java.util.UUID;
import org.trammel.shop.Fixture;
import org.trammel.shop.TestClock;
import org.trammel.shop.records.Act;

/** Gives people of other tests a PIN of their own, through the facade. */
@Fixture
public class Pins {

    /** The PIN of all tests. */
    public static final String PIN = People.PIN;

    private final Credentials credentials;
    private final TestClock clock;

    Pins(Credentials credentials, TestClock clock) {
        this.credentials = credentials;
        this.clock = clock;
    }

    /**
     * Gives the PIN of all tests to somebody.
     *
     * @param owner who may give a PIN
     */
    public void give(long personId, long owner) {
        String given = credentials.resetPin(act(owner), personId);
        credentials.keepPin(act(personId), given, PIN);
    }

    private Act act(long by) {
        return new Act(UUID.randomUUID(), by, null, clock.instant(), null);
    }
}
