package org.trammel.shop;

import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;

/** People with roles, made straight in the tables: what a test needs when signing on is not its subject. */
public final class TestCrew {

    private static final AtomicInteger NEXT = new AtomicInteger(1);

    private final JdbcClient jdbc;
    private final TestClock clock;

    TestCrew(JdbcClient jdbc, TestClock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A new person of these roles; returns the id. */
    public long hire(Role... roles) {
        String mark = "9" + Integer.toString(NEXT.getAndIncrement(), 36).toUpperCase(Locale.ROOT);
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("insert into person (initials, name, badge, joined_on, pin_one_time, version)"
                        + " values (?, ?, ?, date '2020-01-01', false, 0)")
                .params(mark, "Person " + mark, "B-" + mark)
                .update(key, "id");
        long id = key.getKeyAs(Long.class);
        for (Role role : roles) {
            jdbc.sql("insert into person_role (person_id, role) values (?, ?)")
                    .params(id, role.name())
                    .update();
        }
        return id;
    }

    /** A new act of this person at the time of the tests' clock. */
    public Act act(long by) {
        return new Act(UUID.randomUUID(), by, null, clock.instant(), null);
    }
}
