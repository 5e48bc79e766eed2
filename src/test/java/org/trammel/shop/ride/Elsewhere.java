package org.trammel.shop.ride;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.TestClock;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.Bench;

/**
 * The second and later of several steps or readings of an operation, done by the same people without a browser, which
 * takes a second for each: whatever a gate refuses there, it refuses here.
 */
record Elsewhere(Bench bench, Readings readings, TestClock clock) {

    void tick(Hand who, long step, @Nullable String lot) {
        bench.tick(act(who), List.of(step), lot, null);
    }

    void read(Hand who, long characteristic, List<BigDecimal> raw, String gauge) {
        readings.read(act(who), characteristic, new Readings.Input(raw, gauge, null, true));
    }

    private Act act(Hand who) {
        return new Act(UUID.randomUUID(), who.id(), null, clock.instant(), null);
    }
}
