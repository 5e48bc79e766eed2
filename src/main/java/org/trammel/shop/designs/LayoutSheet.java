package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.Closure;
import org.trammel.calc.geometry.ClosureOutcome;
import org.trammel.calc.geometry.Dimension;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Sensitivity;
import org.trammel.calc.geometry.Substitution;
import org.trammel.calc.units.Answer;
import org.trammel.shop.web.Formats;

/** Closes a layout from whatever is known of the frame, and says what comes of it in words and rows. */
@Component
class LayoutSheet {

    /** Decimals that are kept of what is computed: a micrometre, a thousandth of a degree. */
    private static final int KEPT = 3;

    private static final int SHOWN = 1;

    /** A difference is shown from here on: what one decimal can tell. */
    private static final double LEAST_SHOWN = 0.05;

    private final Formats formats;

    LayoutSheet(Formats formats) {
        this.formats = formats;
    }

    /**
     * What the sheet shows.
     *
     * @param rows every dimension, those a frame is built from first
     * @param fits whether there is one frame that the given dimensions agree on
     * @param unusual what is unusual of that frame, one sentence each; they are among what is said
     * @param says what comes of them, one sentence each
     * @param offers what may be given up where they contradict each other
     * @param changes what a small change does; empty without a frame
     * @param swap the same frame with other parts; null if none were named or there is no frame
     */
    record Shown(
            List<Row> rows,
            boolean fits,
            List<String> unusual,
            List<String> says,
            List<Offer> offers,
            List<Change> changes,
            @Nullable Swap swap) {}

    /**
     * A dimension.
     *
     * @param code its name in forms
     * @param built whether a frame is built from it; else it is measured on one or asked for
     * @param computed in mm or degrees; null where there is no frame
     * @param off given less computed, where both are there and differ; null else
     * @param wrong why it cannot be; null if it can
     */
    record Row(
            String code,
            String label,
            String unit,
            boolean built,
            @Nullable Double computed,
            @Nullable Double off,
            @Nullable String wrong) {}

    /** A dimension that may be given up. */
    record Offer(String code, String words) {}

    /** What a change of one number does to others, in mm. */
    record Change(String words, Sensitivity by) {}

    /** A figure before and after other parts are put on, in mm or degrees. */
    record Beside(String label, String unit, double before, double after) {

        public double by() {
            return after - before;
        }
    }

    /** The frame with other parts, or why there is none. */
    record Swap(List<Beside> figures, List<String> gaps) {}

    Shown of(Map<Dimension, BigDecimal> given, Map<Dimension, BigDecimal> parts) {
        ClosureOutcome outcome = Closure.of(inRadians(given));
        Map<String, String> wrong = outcome instanceof ClosureOutcome.Impossible none ? gaps(none.gaps()) : Map.of();
        FrameGeometry frame = outcome instanceof ClosureOutcome.Closed closed ? closed.geometry() : null;
        List<String> unusual = frame == null ? List.of() : unusual(frame);
        return new Shown(
                rows(given, frame, wrong),
                frame != null,
                unusual,
                Stream.concat(says(outcome).stream(), unusual.stream()).toList(),
                offers(outcome),
                frame == null ? List.of() : changes(frame),
                frame == null || parts.isEmpty() ? null : swap(frame, parts));
    }

    /** What a draft takes: the thirteen numbers a frame is built from, given ones as they were given; empty without a frame. */
    Map<GeometryInput, BigDecimal> taken(Map<Dimension, BigDecimal> given) {
        Map<GeometryInput, BigDecimal> taken = new EnumMap<>(GeometryInput.class);
        if (Closure.of(inRadians(given)) instanceof ClosureOutcome.Closed closed) {
            for (Dimension dimension : Dimension.values()) {
                GeometryInput input = LayoutInput.of(dimension);
                if (input != null && LayoutInput.isBuiltFrom(dimension)) {
                    taken.put(input, given.getOrDefault(dimension, kept(dimension, closed.geometry())));
                }
            }
        }
        return taken;
    }

    /** Numbers a frame would be built from that are unusual, since one that is given or wanted asks for such a frame. */
    private static List<String> unusual(FrameGeometry frame) {
        return Stream.of(Dimension.values())
                .filter(dimension -> LayoutInput.of(dimension) != null)
                .flatMap(dimension -> Objects.requireNonNull(LayoutInput.of(dimension))
                        .band()
                        .saidIfUnusual(BigDecimal.valueOf(shown(dimension, dimension.of(frame)))
                                .setScale(SHOWN, RoundingMode.HALF_EVEN))
                        .stream())
                .toList();
    }

    private static BigDecimal kept(Dimension dimension, FrameGeometry frame) {
        return BigDecimal.valueOf(shown(dimension, dimension.of(frame))).setScale(KEPT, RoundingMode.HALF_EVEN);
    }

    private static Map<Dimension, Double> inRadians(Map<Dimension, BigDecimal> given) {
        Map<Dimension, Double> values = new EnumMap<>(Dimension.class);
        given.forEach((dimension, amount) -> values.put(
                dimension, dimension.isAngle() ? Math.toRadians(amount.doubleValue()) : amount.doubleValue()));
        return values;
    }

    private static double shown(Dimension dimension, double value) {
        return dimension.isAngle() ? Math.toDegrees(value) : value;
    }

    private List<Row> rows(Map<Dimension, BigDecimal> given, @Nullable FrameGeometry frame, Map<String, String> wrong) {
        List<Row> rows = new ArrayList<>();
        for (Dimension dimension : Dimension.values()) {
            Double computed = frame == null ? null : shown(dimension, dimension.of(frame));
            BigDecimal typed = given.get(dimension);
            Double off = computed == null || typed == null ? null : typed.doubleValue() - computed;
            rows.add(new Row(
                    dimension.name(),
                    LayoutInput.label(dimension),
                    dimension.isAngle() ? "°" : "mm",
                    LayoutInput.isBuiltFrom(dimension),
                    computed,
                    off == null || Math.abs(off) < LEAST_SHOWN ? null : off,
                    wrong.get(dimension.input())));
        }
        return rows;
    }

    private Map<String, String> gaps(List<Answer.Gap> gaps) {
        Map<String, String> words = new HashMap<>();
        gaps.forEach(gap -> words.putIfAbsent(gap.input(), formats.sentence(gap.words())));
        return words;
    }

    private List<String> says(ClosureOutcome outcome) {
        List<String> says = new ArrayList<>();
        if (outcome instanceof ClosureOutcome.Closed closed) {
            closed.surplus().forEach(one -> says.add(one.words()));
            closed.others()
                    .forEach(other -> says.add("Another frame would do as well, less usual: head angle "
                            + Dimension.HEAD_ANGLE.written(other.layout().headAngle_rad()) + ", reach "
                            + Dimension.REACH.written(other.layout().reach_mm()) + ", stack "
                            + Dimension.STACK.written(other.stack_mm()) + "."));
        } else if (outcome instanceof ClosureOutcome.OverDetermined over) {
            over.surplus().forEach(one -> says.add(one.words()));
        } else if (outcome instanceof ClosureOutcome.UnderDetermined under) {
            says.add(under.words());
        } else if (outcome instanceof ClosureOutcome.Impossible none) {
            none.gaps().forEach(gap -> says.add(gap.words()));
        }
        return says.stream().map(formats::sentence).toList();
    }

    private List<Offer> offers(ClosureOutcome outcome) {
        return outcome instanceof ClosureOutcome.OverDetermined over
                ? over.offers().stream()
                        .map(offer -> new Offer(offer.dimension().name(), formats.sentence(offer.words())))
                        .toList()
                : List.of();
    }

    private static List<Change> changes(FrameGeometry frame) {
        List<Change> changes = new ArrayList<>();
        change(changes, frame, "Head angle half a degree steeper", Dimension.HEAD_ANGLE, Math.toRadians(0.5));
        change(changes, frame, "Fork 10 mm longer", Dimension.FORK_LENGTH, 10);
        change(changes, frame, "Head tube 10 mm longer", Dimension.HEAD_TUBE, 10);
        return changes;
    }

    private static void change(List<Change> to, FrameGeometry frame, String words, Dimension changed, double step) {
        if (Sensitivity.of(frame.layout(), changed, step) instanceof Answer.Determined<Sensitivity> there) {
            to.add(new Change(words, there.value()));
        }
    }

    private Swap swap(FrameGeometry frame, Map<Dimension, BigDecimal> parts) {
        Answer<Substitution> swapped = Substitution.of(
                frame,
                new Substitution.Parts(
                        part(frame, parts, Dimension.LOWER_STACK),
                        part(frame, parts, Dimension.FORK_LENGTH),
                        part(frame, parts, Dimension.FORK_OFFSET),
                        part(frame, parts, Dimension.FRONT_WHEEL_RADIUS),
                        part(frame, parts, Dimension.REAR_WHEEL_RADIUS)));
        if (swapped instanceof Answer.Determined<Substitution> there) {
            List<Beside> figures = new ArrayList<>();
            for (Dimension dimension : LayoutInput.SHOWN_OF_OTHER_PARTS) {
                figures.add(new Beside(
                        LayoutInput.label(dimension),
                        dimension.isAngle() ? "°" : "mm",
                        shown(dimension, dimension.of(frame)),
                        shown(dimension, dimension.of(there.value().after()))));
            }
            return new Swap(figures, List.of());
        }
        return new Swap(
                List.of(),
                ((Answer.NotDeterminable<Substitution>) swapped)
                        .gaps().stream()
                                .map(gap -> formats.sentence(gap.words()))
                                .toList());
    }

    private static double part(FrameGeometry frame, Map<Dimension, BigDecimal> parts, Dimension dimension) {
        BigDecimal typed = parts.get(dimension);
        return typed == null ? dimension.of(frame) : typed.doubleValue();
    }
}
