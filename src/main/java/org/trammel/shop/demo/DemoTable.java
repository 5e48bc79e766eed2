package org.trammel.shop.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.alignment.PushNoted;
import org.trammel.shop.alignment.PushesNoted;
import org.trammel.shop.alignment.RawFigures;
import org.trammel.shop.alignment.Reductions;
import org.trammel.shop.alignment.Spot;
import org.trammel.shop.alignment.TableSetUp;
import org.trammel.shop.alignment.TableSetUp.Base;

/** Reads frames of the story on the alignment table by their raw heights, which stand in a file of their own. */
@Component
@Profile("demo")
class DemoTable {

    private static final String FILE = "demo/heights.csv";
    private static final String CALLIPER = "CA-5";

    /** Spots of the rear end, as the file has them after the head tube. */
    private static final List<Spot> REAR_END =
            List.of(Spot.AXLE_DRIVE, Spot.AXLE_OTHER, Spot.AXLE_WIDTH_1, Spot.AXLE_WIDTH_2, Spot.AXLE_WIDTH_3);

    /**
     * Heights of a frame, drive side up, in mm.
     *
     * @param seatLow at 100 of the seat tube
     * @param seatHigh at 400
     * @param low on the head tube or mandrel
     * @param high likewise
     * @param rearEnd what was read there, if anything
     */
    record Heights(
            Base base,
            String seatLow,
            String seatHigh,
            String low,
            String high,
            Map<Spot, String> rearEnd,
            String gauge) {}

    /** The short base leaves the twist of O-101 undecided. */
    static final Heights SHORT = new Heights(Base.TUBE, "150.12", "150.42", "149.91", "149.48", Map.of(), "HG-1");

    /** The mandrel decides it; the seat tube is not read again. */
    static final Heights LONG = new Heights(Base.MANDREL, "150.12", "150.42", "150.45", "148.95", Map.of(), "HG-1");

    private final DemoActs acts;
    private final DemoClock clock;
    private final RawFigures figures;
    private final Reductions reductions;
    private final PushesNoted pushes;
    private final Map<String, Heights> told = told();

    DemoTable(DemoActs acts, DemoClock clock, RawFigures figures, Reductions reductions, PushesNoted pushes) {
        this.acts = acts;
        this.clock = clock;
        this.figures = figures;
        this.reductions = reductions;
        this.pushes = pushes;
    }

    /** What the shop wrote down of pushes on one chainstay, freshly quenched, before it had this program. */
    void book() {
        for (String told : List.of("0.5 5.4", "0.8 5.9", "1.0 6.1", "1.4 6.6", "1.9 7.2", "2.3 7.5")) {
            String[] setAndPush = told.split(" ");
            pushes.note(
                    acts.by("TR"),
                    new PushNoted(
                            Deviation.REAR_AXLE_OFFSET,
                            "AL6061",
                            new BigDecimal("22"),
                            new BigDecimal("1.6"),
                            new BigDecimal(setAndPush[1]),
                            new BigDecimal(setAndPush[0]),
                            "bench book of the workshop, invented"));
        }
    }

    private static Map<String, Heights> told() {
        try (InputStream in = new ClassPathResource(FILE).getInputStream()) {
            Map<String, Heights> all = new HashMap<>();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith("O-"))
                    .map(line -> line.split(";", -1))
                    .forEach(row -> all.put(key(row[0], row[1], row[2]), heights(row)));
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Heights heights(String[] row) {
        Map<Spot, String> rearEnd = new LinkedHashMap<>();
        for (int i = 0; i < REAR_END.size(); i++) {
            if (!row[9 + i].isEmpty()) {
                rearEnd.put(REAR_END.get(i), row[9 + i]);
            }
        }
        return new Heights(Base.valueOf(row[4]), row[5], row[6], row[7], row[8], rearEnd, row[3]);
    }

    private static String key(String order, String part, String operation) {
        return order + (part.isEmpty() ? " " : "-" + part + " ") + operation;
    }

    @Nullable
    Heights told(String order, String part, String operation) {
        return told.get(key(order, part, operation));
    }

    /** Keys all heights and reduces them. */
    void read(long operationId, Heights heights) {
        setUp(operationId, heights.base());
        Map<Spot, String> all = new LinkedHashMap<>();
        all.put(Spot.SEAT_LOW, heights.seatLow());
        all.put(Spot.SEAT_HIGH, heights.seatHigh());
        all.putAll(onHeadTube(heights));
        all.putAll(heights.rearEnd());
        all.forEach((spot, mm) -> read(operationId, spot, mm, spot.height() ? heights.gauge() : CALLIPER));
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
                        null),
                figures.saidOf(operationId));
    }

    private void read(long operationId, Spot spot, String mm, String gauge) {
        clock.pass(Duration.ofSeconds(40));
        figures.read(
                acts.by("SB"), operationId, new RawFigures.Typed(spot, new BigDecimal(mm), gauge, null, null, false));
    }
}
