package org.trammel.shop.designs;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** What a family covered from some moment on. Only added. */
@Entity
@Immutable
@Table(name = "test_family")
class TestFamilyRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private String code;
    private String covers;

    @Column(name = "longest_fork_mm")
    private @Nullable BigDecimal longestFork;

    @Column(name = "heaviest_rider_kg")
    private @Nullable BigDecimal heaviestRider;

    @Column(name = "least_stack_mm")
    private @Nullable BigDecimal leastStack;

    @Column(name = "most_stack_mm")
    private @Nullable BigDecimal mostStack;

    private String source;

    @Column(name = "by_person")
    private long by;

    private Instant since;

    protected TestFamilyRow() {}

    TestFamilyRow(TestFamilies.Covered says, Act act) {
        this.code = says.code();
        this.covers = says.covers();
        this.longestFork = says.longestFork_mm();
        this.heaviestRider = says.heaviestRider_kg();
        this.leastStack = says.leastStack_mm();
        this.mostStack = says.mostStack_mm();
        this.source = says.source();
        this.by = act.by();
        this.since = act.at();
    }

    long id() {
        return id;
    }

    TestFamily family() {
        return new TestFamily(
                id,
                code,
                covers,
                plain(longestFork),
                plain(heaviestRider),
                plain(leastStack),
                plain(mostStack),
                source,
                since,
                by);
    }

    private static @Nullable BigDecimal plain(@Nullable BigDecimal number) {
        return number == null ? null : Nominal.plain(number);
    }
}
