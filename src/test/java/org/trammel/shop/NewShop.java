package org.trammel.shop;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.UUID;
import org.trammel.shop.people.Credentials;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** A shop on its first day, as browser tests find it: an owner at a desk, a QA lead with a PIN, nine stations. */
@Fixture
public class NewShop {

    public static final String OWNER = "OB";
    public static final String PASSWORD = "quiet lathe under rain";
    public static final String PIN = "402817";

    private static final int STATIONS = 9;

    private final FirstStart firstStart;
    private final Roster roster;
    private final Credentials credentials;
    private final Stations stations;
    private final TestCrew crew;

    NewShop(FirstStart firstStart, Roster roster, Credentials credentials, Stations stations, TestCrew crew) {
        this.firstStart = firstStart;
        this.roster = roster;
        this.credentials = credentials;
        this.stations = stations;
        this.crew = crew;
    }

    /** Who signs a gate. */
    public record Signers(long owner, long qa) {}

    /** Opens it; once in a database. */
    public Signers open() {
        long owner = firstStart
                .make(
                        UUID.randomUUID(),
                        firstStart.newCode(),
                        "127.0.0.9",
                        new FirstStart.Entry(OWNER, "Odd Builder", PASSWORD, PIN))
                .id();
        long qa = roster.takeOn(crew.act(owner), "QL", "Quinn Lead", EnumSet.of(Role.QA_LEAD))
                .id();
        credentials.keepPin(crew.act(qa), "000000", PIN);
        for (int i = 1; i <= STATIONS; i++) {
            stations.add(crew.act(owner), new Station("" + i, "Station " + i, 3, new BigDecimal("30"), false));
        }
        return new Signers(owner, qa);
    }
}
