package org.trammel.shop.backtraces;

import java.math.BigDecimal;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.thermal.HardnessMethod;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.ovens.AtTheOven;
import org.trammel.shop.ovens.Hardness;
import org.trammel.shop.ovens.HardnessOfRuns;
import org.trammel.shop.ovens.NewTest;
import org.trammel.shop.ovens.Run;

/** A thermocouple is found wrong after runs that it was in. */
abstract class AfterADrift extends AtTheOven {

    @Autowired
    OvenTraces traces;

    @Autowired
    TraceResults results;

    @Autowired
    TraceClosing closing;

    @Autowired
    HardnessOfRuns hardness;

    boolean settle(long by, OvenTrace trace, long frame, @Nullable TraceResult result, String words) {
        return results.settle(crew.act(by), trace.id(), frame, TraceSettling.of(result, words));
    }

    OvenTrace.TracedFrame frameOf(OvenTrace trace, Floor.Frame frame) {
        return traces.frames(trace.id()).stream()
                .filter(listed -> listed.serial().equals(frame.serial()))
                .findFirst()
                .orElseThrow();
    }

    Run released(Floor.Frame... frames) {
        Run run = finished(0, frames);
        release.decide(crew.act(qa), run.code(), qa, Set.of(), null);
        return run;
    }

    /** The test fails now. */
    OvenTrace found(String thermocouple, String error) {
        register.tested(
                crew.act(qa),
                oven.oven(),
                NewTest.accuracy(
                        thermocouple,
                        clock.instant(),
                        null,
                        new BigDecimal(error),
                        new BigDecimal("2"),
                        new BigDecimal("177"),
                        "R-3"));
        return traces.page(Long.MAX_VALUE, 200).stream()
                .filter(trace -> trace.thermocouple().equals(thermocouple))
                .findFirst()
                .orElseThrow();
    }

    void hard(String run, HardnessMethod method, String figure, String least) {
        hardness.enter(
                crew.act(heat),
                run,
                new Hardness.Entry(
                        null,
                        method,
                        new BigDecimal(figure),
                        "HB",
                        new BigDecimal(least),
                        null,
                        "end face",
                        floor.gauge("HARDNESS", "HB", "1"),
                        null));
    }
}
