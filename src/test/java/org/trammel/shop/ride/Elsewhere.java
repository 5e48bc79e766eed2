package org.trammel.shop.ride;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.TestClock;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.drift.JigUses;
import org.trammel.shop.handwork.Handwork;
import org.trammel.shop.handwork.SerialReads;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.TubeIssues;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;

/**
 * The second and later of several steps or readings of an operation, done by the same people without a browser, which
 * takes a second for each: whatever a gate refuses there, it refuses here.
 */
record Elsewhere(
        Bench bench,
        Readings readings,
        Handwork handwork,
        SerialReads serials,
        JigUses jigs,
        TubeIssues tubes,
        TestClock clock) {

    /** In which jig the frame or the part is set up. */
    void note(Hand who, FrameSheet.Head head, String jig) {
        jigs.setUp(act(who), head.serial(), head.part(), jig, null);
    }

    void tick(Hand who, long step, @Nullable String lot) {
        bench.tick(act(who), List.of(step), lot, null);
    }

    void read(Hand who, long characteristic, List<BigDecimal> raw, String gauge) {
        readings.read(act(who), characteristic, new Readings.Input(raw, gauge, null, true));
    }

    /** Whether that is recorded here, and not tried at its gate in the browser. */
    static boolean proves(Proof proof) {
        return proof.sheet() == Proof.Sheet.HANDWORK || proof.sheet() == Proof.Sheet.TUBES;
    }

    /** What the tick of a step rests on, before it; by a second person where the first may not. */
    void prove(Hand who, Hand second, FrameSheet sheet, long operation, Proof proof) {
        if (proof == Proof.WARM_DRY) {
            handwork.measured(
                    act(who),
                    operation,
                    new MetalAir(new BigDecimal("21"), new BigDecimal("50"), new BigDecimal("20"), "TH-1", "IR-1"));
        } else if (proof == Proof.WATER_BREAK) {
            handwork.water(act(who), operation, new Handwork.WaterSeen(true, List.of("every part")));
        } else if (proof == Proof.SERIAL_READ) {
            serials.readBack(
                    act(second), operation, sheet.head().serial() + sheet.head().part());
        } else if (proof == Proof.TUBES) {
            tubes.open(operation)
                    .forEach(place -> tubes.issue(
                            act(who), operation, new TubeIssues.Scan(place, Workshop.TUBES, null, null, null)));
        }
    }

    private Act act(Hand who) {
        return new Act(UUID.randomUUID(), who.id(), null, clock.instant(), null);
    }
}
