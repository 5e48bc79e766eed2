package org.trammel.shop.people;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.atomic.AtomicInteger;
import org.trammel.shop.Fixture;
import org.trammel.shop.TestClock;
import org.trammel.shop.records.Act;
import org.trammel.shop.stations.Devices;
import org.trammel.shop.stations.Devices.Enrolled;

/** People and tablets made through the facades, under names no other test uses. */
@Fixture
class People {

    static final String PIN = "402817";
    static final String PASSWORD = "quiet lathe under rain";

    private static final AtomicInteger NEXT = new AtomicInteger(1);

    private final Roster roster;
    private final Credentials credentials;
    private final FirstStart firstStart;
    private final Devices devices;
    private final Crew crew;
    private final PersonRepository rows;
    private final TestClock clock;
    private Long owner;

    People(
            Roster roster,
            Credentials credentials,
            FirstStart firstStart,
            Devices devices,
            Crew crew,
            PersonRepository rows,
            TestClock clock) {
        this.roster = roster;
        this.credentials = credentials;
        this.firstStart = firstStart;
        this.devices = devices;
        this.crew = crew;
        this.rows = rows;
        this.clock = clock;
    }

    Act act(long by) {
        return new Act(UUID.randomUUID(), by, null, clock.instant(), null);
    }

    /** An owner who is there for the whole run. */
    long owner() {
        if (owner == null) {
            owner = crew.all().stream()
                    .filter(person -> person.active() && person.is(Role.OWNER))
                    .map(Person::id)
                    .findFirst()
                    .orElseGet(() -> firstStart
                            .make(
                                    UUID.randomUUID(),
                                    firstStart.newCode(),
                                    address(),
                                    new FirstStart.Entry(initials(), "Odd Owner", PASSWORD, PIN))
                            .id());
        }
        return owner;
    }

    /** Somebody of these roles who chose the PIN of all tests. */
    Person somebody(Role... roles) {
        Person person = newcomer(roles);
        String given = credentials.resetPin(act(owner()), person.id());
        credentials.keepPin(act(person.id()), given, PIN);
        return person;
    }

    /** The same, with the password of all tests too. */
    Person atDesk(Role... roles) {
        Person person = somebody(roles);
        String given = credentials.resetPassword(act(owner()), person.id());
        credentials.keepPassword(act(person.id()), given, PASSWORD);
        return person;
    }

    /** Somebody without a PIN. */
    Person newcomer(Role... roles) {
        Set<Role> held = EnumSet.noneOf(Role.class);
        held.addAll(List.of(roles));
        String initials = initials();
        return roster.takeOn(act(owner()), initials, "Person of tests " + initials, held);
    }

    Enrolled tablet(String... stations) {
        String name = "T" + number();
        String code = devices.admit(act(owner()), name, List.of(stations)).code();
        return devices.enrol(act(Act.SERVICE), code).orElseThrow();
    }

    void withdraw(Enrolled tablet) {
        devices.withdraw(act(owner()), tablet.device().id());
    }

    String badge(Person person) {
        return rows.findById(person.id()).orElseThrow().badge();
    }

    /** A number nothing was called by before: drawn by chance, some would come twice among as many as the tests make. */
    static int number() {
        return 100_000 + NEXT.getAndIncrement();
    }

    /** Initials nobody was given before. */
    static String initials() {
        String counted = Integer.toString(NEXT.getAndIncrement(), 36).toUpperCase(Locale.ROOT);
        return "Z" + "0".repeat(3 - counted.length()) + counted;
    }

    /** An address no other test guesses from. */
    static String address() {
        ThreadLocalRandom random = ThreadLocalRandom.current();
        return "10." + random.nextInt(256) + "." + random.nextInt(256) + "." + random.nextInt(1, 255);
    }
}
