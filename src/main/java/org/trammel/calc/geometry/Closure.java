package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.trammel.calc.units.Answer;

/**
 * Closes a frame from any sufficient set of dimensions.
 *
 * <p>The relations of {@link FrameGeometry}, solved for whatever is not given: in closed form where one follows from
 * the others, and by trying one value, most often the head angle over 0° to 90°, where several hang on each other. No
 * chance is involved. Where several frames fit, the one is taken whose dimensions lie nearest to those usual on upright
 * bicycles, and the others are named. What is given beyond need is not used but compared.
 *
 * <p>Validity: values at all possible, lengths to 100 m; a length that is tried is looked for to three times the longest
 * given one. Of the 179 396 sets of thirteen that suffice, 281 would need two values tried at once; one more is asked for
 * with those. Accuracy: 1e-9 mm where the given set is well conditioned; two solutions closer together than half a
 * degree may be found as one. Source: plane trigonometry of the side view.
 */
public final class Closure {

    /**
     * How far a value beyond need may be from what the others give and still agree.
     *
     * @param length_mm for lengths
     * @param angle_rad for angles
     */
    public record Agreement(double length_mm, double angle_rad) {

        /** A millimetre, a tenth of a degree: the trade's own judgement of what two drawings may differ by. */
        public static final Agreement USUAL = new Agreement(1, Math.toRadians(0.1));

        boolean holds(ClosureOutcome.Surplus surplus) {
            return Math.abs(surplus.residual()) <= (surplus.dimension().isAngle() ? angle_rad : length_mm);
        }
    }

    /** A solution must give back what was given to so much. */
    private static final double GIVEN_BACK = 1e-6;

    private static final double SAME_mm = 1e-6;

    /** Nearer to 0° or 90° an angle was mistyped, and what follows from it grows beyond all sense. */
    private static final double LEAST_rad = Math.toRadians(1);

    private Closure() {}

    /** Closes with the usual agreement. */
    public static ClosureOutcome of(Map<Dimension, Double> given) {
        return of(given, Agreement.USUAL);
    }

    /**
     * Closes the frame.
     *
     * @param given values in millimetres, those of angles in radians
     * @param agreement of values beyond need
     */
    public static ClosureOutcome of(Map<Dimension, Double> given, Agreement agreement) {
        Map<Dimension, Double> values = new EnumMap<>(Dimension.class);
        values.putAll(given);
        List<Answer.Gap> gaps = new ArrayList<>();
        values.forEach((dimension, value) -> refuse(gaps, dimension, value));
        if (!gaps.isEmpty()) {
            return new ClosureOutcome.Impossible(gaps);
        }
        Independence independence = Independence.of(values.keySet());
        int used = independence.used();
        ClosurePlan plan = ClosurePlan.of(used);
        if (!plan.isComplete()) {
            return new ClosureOutcome.UnderDetermined(MissingDimensions.of(plan, independence, values.keySet()));
        }
        ClosureOutcome closed = close(plan, used, values);
        if (closed instanceof ClosureOutcome.Closed frame
                && !frame.surplus().stream().allMatch(agreement::holds)) {
            return new ClosureOutcome.OverDetermined(frame.surplus(), offers(values, agreement));
        }
        return closed;
    }

    private static void refuse(List<Answer.Gap> gaps, Dimension dimension, double value) {
        String told = "The " + dimension.words() + " of " + dimension.written(value);
        if (dimension.allows(value)) {
            if (dimension.isAngle() && Math.min(value, Math.PI / 2 - value) < LEAST_rad) {
                gaps.add(new Answer.Gap(
                        dimension.input(),
                        told + " is within 1° of lying flat or standing upright: no frame is computed from it."));
            }
            return;
        }
        if (!Double.isFinite(value)) {
            gaps.add(new Answer.Gap(dimension.input(), "The " + dimension.words() + " is no number."));
        } else if (dimension.isAngle()) {
            gaps.add(new Answer.Gap(dimension.input(), told + " is not between 0° and 90°."));
        } else if (Math.abs(value) > Dimension.LONGEST_mm) {
            gaps.add(new Answer.Gap(dimension.input(), "The " + dimension.words() + " is longer than 100 m."));
        } else {
            gaps.add(new Answer.Gap(
                    dimension.input(),
                    told + (dimension.kind() == Dimension.Kind.FROM_ZERO ? " is below 0." : " is not above 0.")));
        }
    }

    private static ClosureOutcome close(ClosurePlan plan, int used, Map<Dimension, Double> values) {
        Figures figures = new Figures();
        values.forEach((dimension, value) -> figures.put(dimension.ordinal(), value));
        Closing closing = new Closing(plan, used);
        List<FrameGeometry> frames = new ArrayList<>();
        for (Figures found : closing.all(figures)) {
            if (FrameGeometry.of(found.layout()) instanceof Answer.Determined<FrameGeometry> there
                    && givesBack(there.value(), used, values)
                    && frames.stream().noneMatch(other -> isSame(other, there.value()))) {
                frames.add(there.value());
            }
        }
        if (frames.isEmpty()) {
            Answer.Gap gap = closing.gap();
            return new ClosureOutcome.Impossible(List.of(gap != null ? gap : contradiction(used, values)));
        }
        frames.sort(Comparator.comparingDouble(frame -> oddity(frame, used, values)));
        FrameGeometry frame = frames.get(0);
        List<ClosureOutcome.Surplus> surplus = new ArrayList<>();
        values.forEach((dimension, value) -> {
            if ((used >> dimension.ordinal() & 1) == 0) {
                surplus.add(new ClosureOutcome.Surplus(dimension, value, dimension.of(frame)));
            }
        });
        return new ClosureOutcome.Closed(frame, surplus, frames.subList(1, frames.size()));
    }

    /** Where every way came to an end and none gives back what was given. */
    private static Answer.Gap contradiction(int used, Map<Dimension, Double> values) {
        Dimension last = Dimension.at(31 - Integer.numberOfLeadingZeros(used));
        return new Answer.Gap(
                last.input(),
                "No frame has the " + last.words() + " of " + last.written(values.getOrDefault(last, 0.0))
                        + " together with the other figures.");
    }

    private static boolean givesBack(FrameGeometry frame, int used, Map<Dimension, Double> values) {
        for (Map.Entry<Dimension, Double> entry : values.entrySet()) {
            boolean isUsed = (used >> entry.getKey().ordinal() & 1) == 1;
            if (isUsed && !(Math.abs(entry.getKey().of(frame) - entry.getValue()) <= GIVEN_BACK)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSame(FrameGeometry one, FrameGeometry other) {
        for (int place = 0; place < Figures.ALONG; place++) {
            Dimension dimension = Dimension.at(place);
            if (!(Math.abs(dimension.of(one) - dimension.of(other)) <= SAME_mm)) {
                return false;
            }
        }
        return true;
    }

    /** How unlike upright bicycles a frame is; between usual ones, how far from the middle; surplus values count too. */
    private static double oddity(FrameGeometry frame, int used, Map<Dimension, Double> values) {
        double oddity = 0;
        for (int place = 0; place < Figures.ALONG; place++) {
            Dimension dimension = Dimension.at(place);
            double value = dimension.of(frame);
            oddity += 1000 * dimension.unusual(value) + dimension.fromMiddle(value);
            if (values.containsKey(dimension) && (used >> place & 1) == 0) {
                oddity += 1e6 * dimension.share(value - values.get(dimension));
            }
        }
        return oddity;
    }

    /** Each value that the others do without, if they then agree. */
    private static List<ClosureOutcome.Offer> offers(Map<Dimension, Double> values, Agreement agreement) {
        List<ClosureOutcome.Offer> offers = new ArrayList<>();
        values.forEach((dimension, value) -> {
            Map<Dimension, Double> others = new EnumMap<>(values);
            others.remove(dimension);
            int used = Independence.of(others.keySet()).used();
            ClosurePlan plan = ClosurePlan.of(used);
            if (plan.isComplete()
                    && close(plan, used, others) instanceof ClosureOutcome.Closed closed
                    && closed.surplus().stream().allMatch(agreement::holds)) {
                offers.add(new ClosureOutcome.Offer(dimension, value, dimension.of(closed.geometry())));
            }
        });
        offers.sort(Comparator.comparingDouble(offer -> offer.dimension().share(offer.becomes() - offer.given())));
        return offers;
    }
}
