package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.alignment.RawFigures;
import org.trammel.shop.alignment.Reductions;
import org.trammel.shop.alignment.Spot;
import org.trammel.shop.alignment.TableSetUp;
import org.trammel.shop.alignment.TableSetUp.Base;

/**
 * Reads frames of the story on the alignment table by their raw heights. Those on the head tube itself were lowered by
 * 0,40 together, so that its middle lies where the mandrel finds it; the lean stays as it was told.
 */
@Component
@Profile("demo")
class DemoTable {

    /**
     * Heights of a frame, drive side up, in mm.
     *
     * @param seatLow at 100 of the seat tube
     * @param seatHigh at 400
     * @param low on the head tube or mandrel
     * @param high likewise
     */
    record Heights(Base base, String seatLow, String seatHigh, String low, String high, String gauge) {}

    private static final Map<String, Heights> TOLD = Map.of(
            "O-101 080", new Heights(Base.TUBE, "150.10", "150.34", "149.82", "149.50", "HG-1"),
            "O-104-FT 120a", new Heights(Base.MANDREL, "150.05", "150.11", "150.02", "149.80", "HG-1"),
            "O-110 135", new Heights(Base.MANDREL, "150.00", "150.09", "150.30", "149.10", "HG-2"),
            "O-116-FT 120a", new Heights(Base.MANDREL, "149.98", "150.01", "150.10", "149.96", "HG-1"));

    /** The short base leaves the twist of O-101 undecided. */
    static final Heights SHORT = new Heights(Base.TUBE, "150.12", "150.42", "149.91", "149.48", "HG-1");

    /** The mandrel decides it; the seat tube is not read again. */
    static final Heights LONG = new Heights(Base.MANDREL, "150.12", "150.42", "150.45", "148.95", "HG-1");

    private final DemoActs acts;
    private final DemoClock clock;
    private final RawFigures figures;
    private final Reductions reductions;

    DemoTable(DemoActs acts, DemoClock clock, RawFigures figures, Reductions reductions) {
        this.acts = acts;
        this.clock = clock;
        this.figures = figures;
        this.reductions = reductions;
    }

    static @Nullable Heights told(String order, String part, String operation) {
        return TOLD.get(order + (part.isEmpty() ? " " : "-" + part + " ") + operation);
    }

    /** Keys all heights and reduces them. */
    void read(long operationId, Heights heights) {
        setUp(operationId, heights.base());
        Map<Spot, String> all = new LinkedHashMap<>();
        all.put(Spot.SEAT_LOW, heights.seatLow());
        all.put(Spot.SEAT_HIGH, heights.seatHigh());
        all.putAll(onHeadTube(heights));
        all.forEach((spot, mm) -> read(operationId, spot, mm, heights.gauge()));
        reductions.reduce(acts.by("SB"), operationId);
    }

    /** Keys the heights of the head tube on another base, and reduces them with the seat tube as it was read. */
    void again(long operationId, Heights heights) {
        setUp(operationId, heights.base());
        onHeadTube(heights).forEach((spot, mm) -> read(operationId, spot, mm, heights.gauge()));
        reductions.reduce(acts.by("SB"), operationId);
    }

    private static Map<Spot, String> onHeadTube(Heights heights) {
        boolean tube = heights.base() == Base.TUBE;
        Map<Spot, String> two = new LinkedHashMap<>();
        two.put(tube ? Spot.HEAD_LOW : Spot.MANDREL_LOW, heights.low());
        two.put(tube ? Spot.HEAD_HIGH : Spot.MANDREL_HIGH, heights.high());
        return two;
    }

    private void setUp(long operationId, Base base) {
        figures.setUp(
                acts.by("SB"),
                operationId,
                new TableSetUp(
                        TableSetUp.Datum.POST,
                        base,
                        true,
                        new BigDecimal("100"),
                        new BigDecimal("400"),
                        new BigDecimal("90"),
                        new BigDecimal("300"),
                        null,
                        null,
                        null));
    }

    private void read(long operationId, Spot spot, String mm, String gauge) {
        clock.pass(Duration.ofSeconds(40));
        figures.read(
                acts.by("SB"), operationId, new RawFigures.Typed(spot, new BigDecimal(mm), gauge, null, null, false));
    }
}
