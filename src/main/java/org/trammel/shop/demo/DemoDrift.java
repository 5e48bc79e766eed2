package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.calc.statistics.CumulativeSumSetting;
import org.trammel.calc.statistics.WeightedMeanSetting;
import org.trammel.shop.drift.Base;
import org.trammel.shop.drift.DriftBook;
import org.trammel.shop.drift.EarlierReading;
import org.trammel.shop.drift.NewBase;
import org.trammel.shop.drift.NewSeries;
import org.trammel.shop.drift.Series;

/**
 * Watches the rear axle on two jigs. What frames read before those of the story is taken over from an invented notebook,
 * and says so: each jig had either welder and either lot of tube, so that a shift can be told from both. One jig stands
 * still; of the other the eighth reading brings the alarm, on a day on which nobody looks.
 */
@Component
@Profile("demo")
class DemoDrift {

    private static final String AXLE = "080-3";
    private static final String NOTEBOOK = "invented earlier frames, as in a notebook of the alignment table";

    /** The first twenty are the base. */
    private static final List<String> STILL = List.of(
            "0.3", "-0.1", "0.2", "0.4", "0.1", "0.6", "0.5", "-0.3", "0.0", "0.2", "-0.2", "0.4", "0.3", "0.1", "-0.1",
            "0.5", "0.2", "0.0", "0.3", "-0.2", "0.1");

    private static final List<String> MOVES = List.of("0.3", "-0.1", "0.2", "0.4", "0.1", "0.6", "0.5", "0.8");

    private final DriftBook book;
    private final DemoActs acts;
    private final DemoClock clock;

    DemoDrift(DriftBook book, DemoActs acts, DemoClock clock) {
        this.book = book;
        this.acts = acts;
        this.clock = clock;
    }

    void watch() {
        clock.setTo(DemoStory.at("2026-02-14T10:00"));
        Series still = book.watch(acts.by("TR"), NewSeries.onJig("J1", AXLE, "Rear axle centre offset", "mm", false));
        book.takeOver(acts.by("TR"), still.id(), lines(STILL, "2025-12-04", 0), NOTEBOOK);
        book.base(acts.by("TR"), still.id(), base(Base.Kind.FIRST, 20, null, null, "first twenty of the notebook"));
        Series moves = book.watch(acts.by("TR"), NewSeries.onJig("J2", AXLE, "Rear axle centre offset", "mm", false));
        book.base(
                acts.by("TR"),
                moves.id(),
                base(
                        Base.Kind.GIVEN,
                        null,
                        BigDecimal.ZERO,
                        new BigDecimal("0.35"),
                        "shop setting: target and spread of a jig that was just checked"));
        book.takeOver(acts.by("TR"), moves.id(), lines(MOVES, "2026-01-12", 1), NOTEBOOK);
    }

    private static NewBase base(
            Base.Kind kind,
            @Nullable Integer first,
            @Nullable BigDecimal centre,
            @Nullable BigDecimal sigma,
            String source) {
        return new NewBase(
                kind,
                first,
                null,
                null,
                centre,
                sigma,
                BigDecimal.valueOf(WeightedMeanSetting.USUAL.weight()),
                BigDecimal.valueOf(WeightedMeanSetting.USUAL.width()),
                BigDecimal.valueOf(CumulativeSumSetting.USUAL.slack()),
                BigDecimal.valueOf(CumulativeSumSetting.USUAL.decision()),
                false,
                source,
                "the jig is watched from now on",
                null);
    }

    /** A frame every three days; welders take turns, lots every other frame. */
    private static List<EarlierReading> lines(List<String> values, String from, int turn) {
        List<EarlierReading> lines = new ArrayList<>();
        for (String value : values) {
            int at = lines.size();
            lines.add(new EarlierReading(
                    LocalDate.parse(from).plusDays(3L * at),
                    "earlier frame " + (at + 1),
                    new BigDecimal(value),
                    BigDecimal.ZERO,
                    new BigDecimal("-1"),
                    BigDecimal.ONE,
                    (at + turn) % 2 == 0 ? "IC" : "PW",
                    at / 2 % 2 == 0 ? "TL-6061-188" : "TL-7005-073"));
        }
        return lines;
    }
}
