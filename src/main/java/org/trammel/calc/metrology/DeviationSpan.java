package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * Where a deviation may truly lie while the gauge that read some of its figures was wrong by an unknown amount: the whole
 * reduction is done again over the span of the error, so that what two of them share falls out of their difference.
 *
 * @param value as it was read, mm, or rad for an angle
 * @param least the same; {@code value} where no reading of the gauge is in it
 * @param greatest the same
 * @param touched whether a figure of the gauge's scale moves it
 * @param coordinate name of a reading of the gauge in it that is none of a scale, of which an error over its reading says
 *     nothing; null if there is none
 */
public record DeviationSpan(
        Deviation what,
        double value,
        double least,
        double greatest,
        boolean touched,
        @Nullable String coordinate) {

    /**
     * Of every deviation the readings tell, in the order of {@link Deviation}.
     *
     * @param readings raw, as they were stored
     */
    public static Answer<List<DeviationSpan>> of(AlignmentReadings readings, ReadingError error) {
        return Alignment.model(readings)
                .then(model -> Answer.of(of(model, Propagation.of(model.quantities(), model), error)));
    }

    /** The same of a gauge whose error is known to be none: every deviation is what it was read as. */
    public static Answer<List<DeviationSpan>> asRead(AlignmentReadings readings) {
        return Alignment.model(readings).then(model -> {
            double[] y = model.apply(Propagation.values(model.quantities()));
            List<DeviationSpan> all = new ArrayList<>();
            for (int j = 0; j < y.length; j++) {
                all.add(new DeviationSpan(model.told().get(j), y[j], y[j], y[j], false, null));
            }
            return Answer.of(all);
        });
    }

    static List<DeviationSpan> of(FrameModel model, Propagation propagation, ReadingError error) {
        List<Integer> figures = new ArrayList<>();
        List<Integer> others = new ArrayList<>();
        for (int i = 0; i < model.quantities().size(); i++) {
            Quantity quantity = model.quantities().get(i);
            if (error.gauge().equals(quantity.gauge())) {
                (quantity.scale() == null ? others : figures).add(i);
            }
        }
        double[] y = model.apply(Propagation.values(model.quantities()));
        List<double[]> bounds = bounds(model, error, figures);
        List<DeviationSpan> all = new ArrayList<>();
        for (int j = 0; j < y.length; j++) {
            int result = j;
            boolean touched = figures.stream().anyMatch(i -> propagation.moves(result, i));
            all.add(new DeviationSpan(
                    model.told().get(j),
                    y[j],
                    touched ? bounds.get(j)[0] : y[j],
                    touched ? bounds.get(j)[1] : y[j],
                    touched,
                    others.stream()
                            .filter(i -> propagation.moves(result, i))
                            .map(i -> model.quantities().get(i).name())
                            .findFirst()
                            .orElse(null)));
        }
        return all;
    }

    /** Over every way to group the figures, the widest. */
    private static List<double[]> bounds(FrameModel model, ReadingError error, List<Integer> touched) {
        List<ErrorGroups.Figure> figures = touched.stream()
                .map(i -> model.quantities().get(i))
                .map(one ->
                        new ErrorGroups.Figure(BigDecimal.valueOf(one.value()), Objects.requireNonNull(one.scale())))
                .toList();
        List<double[]> widest = new ArrayList<>();
        for (List<List<Integer>> way : ErrorGroups.ofScales(figures, error.alike_mm())) {
            List<List<Integer>> groups = way.stream()
                    .map(group -> group.stream().map(touched::get).toList())
                    .toList();
            List<double[]> bounds = new ErrorSpan(
                            model,
                            groups,
                            error.low_mm().doubleValue(),
                            error.high_mm().doubleValue())
                    .bounds();
            if (widest.isEmpty()) {
                widest.addAll(bounds);
            }
            for (int j = 0; j < bounds.size(); j++) {
                widest.get(j)[0] = Math.min(widest.get(j)[0], bounds.get(j)[0]);
                widest.get(j)[1] = Math.max(widest.get(j)[1], bounds.get(j)[1]);
            }
        }
        return widest;
    }

    /** As it was read, in mm or degrees, to the decimals that are judged. */
    public BigDecimal judgedValue() {
        return judged(value);
    }

    /** Least value in mm or degrees. */
    public BigDecimal judgedLeast() {
        return judged(least);
    }

    /** Greatest value in mm or degrees. */
    public BigDecimal judgedGreatest() {
        return judged(greatest);
    }

    private BigDecimal judged(double figure) {
        return Figure.judged(what.angle() ? Math.toDegrees(figure) : figure);
    }
}
