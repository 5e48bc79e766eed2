package org.trammel.shop.backtraces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.thermal.Judged;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.ovens.HeatLedgers;
import org.trammel.shop.ovens.OvenFloor;
import org.trammel.shop.ovens.Purpose;
import org.trammel.shop.ovens.Run;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;

/** A frame that a trace holds may be aged further, and that fills what is missing in the worst case first. */
class ToppedUpInDoubtTest extends AfterADrift {

    @Autowired
    private HeatLedgers ledgers;

    @Test
    void aFrameHeldByATraceIsToppedUpAndTheTopUpFillsWhatIsMissingBeforeItCounts() {
        Floor.Frame frame = frame();
        Run run = finished(0, frame);
        release.decide(crew.act(qa), run.code(), qa, Set.of(), null);
        OvenTrace trace = found(oven.load(), "7");
        assertThat(floor.sheet(frame).holds()).hasSize(1);
        oven = new OvenFloor(register, crew).ready();
        approve("P-U" + NUMBER.get(), Purpose.TOP_UP, "177", "3", List.of());
        approve("P-B" + NUMBER.get(), Purpose.CURE, "190", "0.33", List.of(operation));
        programme = "P-B" + NUMBER.get();
        refused(() -> loaded(frame), "It is on hold, oven trace");
        programme = "P-U" + NUMBER.get();
        Run more = stopped(frame);
        Run judged = record(more.code(), clock.instant().minus(Duration.ofMinutes(600)), 0);
        release.decide(crew.act(qa), more.code(), qa, Set.of(), null);
        assertThat(judged.judged()).isEqualTo(Judged.CONFORMING);
        // 8.73 h again, of which 8.73 - 5.37 were missing: ovens.py.
        assertThat(ledgers.of(frame.serial(), "", "AL6061", null, null)
                        .orElseThrow()
                        .sums()
                        .used()
                        .usual_h())
                .isCloseTo(8.731 - (8.731 - 5.372), within(0.02));
        long listed = traces.frames(trace.id()).get(0).id();
        settle(qa, trace, listed, TraceResult.AGED_FURTHER, "topped up on its record");
        // The log of a whole age is more than what was missing: 5.37 h above it, 67 % of 8 h, where 25 % are allowed.
        assertThat(floor.sheet(frame).holds()).singleElement().satisfies(hold -> {
            assertThat(hold.reason()).isEqualTo(HoldReason.NONCONFORMANCE);
            assertThat(hold.scope()).isEqualTo(HoldScope.OPERATION);
        });
    }
}
