package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * A frame's deviations, from raw readings, with uncertainty.
 *
 * <p>Steps: middle plane of least squares between the shell's faces (or the plate, where the shell is taken to sit truly
 * on its post); axes of least squares; {@link Deviation deviations} by their definitions; uncertainty by
 * {@link Propagation}. Fits are weighted by the readings' own variances, so that a further reading never raises an
 * uncertainty as long as what readings share they share alike. All is measured from the datum plane, so that neither how
 * the frame lies nor the axes of an arm matter.
 *
 * <p>A datum plane from the faces alone stands on points some 20 mm from the axis: its tilt is taken out, but its doubt
 * is carried to the rear axle some twenty times enlarged. The budget says so.
 *
 * @param datum the fit of the faces, or null if the plate is the datum
 * @param deviations all that the readings tell, in the order of {@link Deviation}
 * @param missing the others, each with what it needs
 * @param correlations of each two deviations that share more than a hundredth
 */
public record Alignment(
        @Nullable DatumFit datum,
        List<MeasuredDeviation> deviations,
        List<Missing> missing,
        List<Correlation> correlations) {

    private static final double WORTH_SAYING = 0.01;

    public Alignment {
        deviations = List.copyOf(deviations);
        missing = List.copyOf(missing);
        correlations = List.copyOf(correlations);
    }

    /** A deviation that the readings do not tell. */
    public record Missing(Deviation what, Answer.Gap gap) {}

    /**
     * How far two deviations are off together.
     *
     * @param r correlation coefficient, −1 to 1
     */
    public record Correlation(Deviation one, Deviation other, double r) {}

    /** Reduces readings; a datum plane within {@link DatumFit#CLEAN_WITHIN_MM} is called clean. */
    public static Answer<Alignment> of(AlignmentReadings readings) {
        return of(readings, DatumFit.CLEAN_WITHIN_MM);
    }

    /**
     * Reduces readings.
     *
     * @param cleanWithin_mm greatest residual of the shell's faces that a clean, faced shell shows
     */
    public static Answer<Alignment> of(AlignmentReadings readings, double cleanWithin_mm) {
        if (!(cleanWithin_mm > 0)) {
            return Answer.none(
                    "cleanWithin",
                    "The residual that a clean shell shows, " + Figure.written(cleanWithin_mm)
                            + " mm, is not above 0.");
        }
        return model(readings).then(model -> Answer.of(reduced(model, readings, cleanWithin_mm)));
    }

    /** The model of readings that make sense. */
    static Answer<FrameModel> model(AlignmentReadings readings) {
        return readings instanceof PlateReadings plate ? PlateCheck.of(plate) : PointCheck.of((PointReadings) readings);
    }

    private static Alignment reduced(FrameModel model, AlignmentReadings readings, double cleanWithin_mm) {
        double[] q = Propagation.values(model.quantities());
        double[] y = model.apply(q);
        Propagation propagation = Propagation.of(model.quantities(), model);
        List<MeasuredDeviation> deviations = new ArrayList<>();
        List<Correlation> correlations = new ArrayList<>();
        for (int j = 0; j < y.length; j++) {
            deviations.add(new MeasuredDeviation(model.told().get(j), y[j], propagation.budget(j)));
            for (int k = 0; k < j; k++) {
                double product = deviations.get(j).budget().u()
                        * deviations.get(k).budget().u();
                double r = product > 0 ? propagation.covariance(j, k) / product : 0;
                if (Math.abs(r) > WORTH_SAYING) {
                    correlations.add(
                            new Correlation(model.told().get(k), model.told().get(j), r));
                }
            }
        }
        DatumFit fit = model.datum() instanceof Datum.Faces faces
                ? DatumFit.of(faces, q, readings instanceof PlateReadings, cleanWithin_mm)
                : null;
        return new Alignment(fit, deviations, missing(model.told()), correlations);
    }

    private static List<Missing> missing(List<Deviation> told) {
        return Arrays.stream(Deviation.values())
                .filter(what -> !told.contains(what))
                .map(what -> new Missing(what, new Answer.Gap(what.input(), what.missing())))
                .toList();
    }

    /** One of the deviations, or what it needs. */
    public Answer<MeasuredDeviation> of(Deviation what) {
        return deviations.stream()
                .filter(one -> one.what() == what)
                .findFirst()
                .map(Answer::of)
                .orElseGet(() -> Answer.none(what.input(), what.missing()));
    }

    /** Correlation of two deviations; 0 where it is not worth saying, 1 of one with itself. */
    public double correlation(Deviation one, Deviation other) {
        if (one == other) {
            return 1;
        }
        return correlations.stream()
                .filter(c -> c.one() == one && c.other() == other || c.one() == other && c.other() == one)
                .mapToDouble(Correlation::r)
                .findFirst()
                .orElse(0);
    }
}
