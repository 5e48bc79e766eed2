package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.BarFit;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.SaddleFit;
import org.trammel.calc.units.Answer;

/**
 * The fit sheet beside what the closed frame allows: lengths only, what is decided on them is the builder's.
 *
 * @param points each contact point as asked for, and as parts reach it
 * @param saddle what the saddle's place asks of the seatpost
 * @param bar what the bar's place asks of stem and spacers
 * @param lacking what more would be computed by, or what cannot be
 */
record FitPage(List<Point> points, List<FramePage.Figure> saddle, List<FramePage.Figure> bar, List<String> lacking) {

    /**
     * A contact point in mm.
     *
     * @param asked by the fit sheet
     * @param reached by the parts given; null where they do not tell
     */
    record Point(
            String label, @Nullable Double asked, @Nullable Double reached) {

        /** How far the parts miss it; null where they do not tell. */
        public @Nullable Double off() {
            return asked == null || reached == null ? null : reached - asked;
        }
    }

    /** Of the saddle, then of the bar. */
    public List<FramePage.Figure> figures() {
        return Stream.concat(saddle.stream(), bar.stream()).toList();
    }

    public boolean isEmpty() {
        return points.isEmpty();
    }

    /** What is shown of a frame; nothing where no contact point was given. */
    static FitPage of(GivenInputs in, ComputedFrame computed) {
        if (Stream.of(
                        GeometryInput.SADDLE_HEIGHT,
                        GeometryInput.SADDLE_SETBACK,
                        GeometryInput.SADDLE_TO_BAR,
                        GeometryInput.SADDLE_OVER_BAR)
                .noneMatch(in::has)) {
            return new FitPage(List.of(), List.of(), List.of(), List.of());
        }
        FitInputs fit = new FitInputs(in);
        Set<String> lacking = new LinkedHashSet<>();
        FrameGeometry frame = found(computed.geometry(), lacking);
        SaddleFit saddle = frame == null ? null : found(fit.saddle(frame), lacking);
        BarFit bar = frame == null ? null : found(fit.bar(frame), lacking);
        BarFit.ByParts parts = frame == null || bar == null ? null : found(fit.byParts(frame, bar), lacking);
        return new FitPage(
                List.of(
                        point(in, GeometryInput.SADDLE_HEIGHT, null),
                        point(in, GeometryInput.SADDLE_SETBACK, null),
                        point(in, GeometryInput.SADDLE_TO_BAR, parts == null ? null : parts.saddleToBar_mm()),
                        point(in, GeometryInput.SADDLE_OVER_BAR, parts == null ? null : parts.saddleOverBar_mm())),
                saddle == null ? List.of() : saddle(in, saddle),
                bar == null ? List.of() : bar(in, bar, parts),
                List.copyOf(lacking));
    }

    /** The same with its sentences as the shop writes numbers. */
    FitPage inWords(UnaryOperator<String> written) {
        return new FitPage(points, saddle, bar, lacking.stream().map(written).toList());
    }

    private static <T> @Nullable T found(Answer<T> answer, Set<String> lacking) {
        if (answer instanceof Answer.Determined<T> there) {
            return there.value();
        }
        ((Answer.NotDeterminable<T>) answer).gaps().forEach(gap -> lacking.add(gap.words()));
        return null;
    }

    private static Point point(GivenInputs in, GeometryInput input, @Nullable Double reached) {
        return new Point(input.label(), in.has(input) ? in.number(input) : null, reached);
    }

    private static List<FramePage.Figure> saddle(GivenInputs in, SaddleFit fit) {
        List<FramePage.Figure> figures = new ArrayList<>();
        figures.add(new FramePage.Figure("Saddle's top above the shell", fit.level_mm(), "mm"));
        figures.add(new FramePage.Figure("Saddle clamp above the foot of the seat tube", fit.clamp_mm(), "mm"));
        if (in.has(GeometryInput.SADDLE_CLAMP)) {
            figures.add(new FramePage.Figure(
                    "Saddle clamp as typed, off that", in.number(GeometryInput.SADDLE_CLAMP) - fit.clamp_mm(), "mm"));
        }
        figures.add(new FramePage.Figure("Seatpost out of the seat tube", fit.out_mm(), "mm"));
        if (in.has(GeometryInput.SEATPOST)) {
            figures.add(new FramePage.Figure(
                    "Seatpost left inside", in.number(GeometryInput.SEATPOST) - fit.out_mm(), "mm"));
        }
        if (in.has(GeometryInput.SEATPOST_MARK) && in.has(GeometryInput.TOP_TUBE_AT_SEAT)) {
            figures.add(new FramePage.Figure(
                    "Shortest seatpost, by its mark and the top tube",
                    fit.out_mm()
                            + Math.max(
                                    in.number(GeometryInput.SEATPOST_MARK), in.number(GeometryInput.TOP_TUBE_AT_SEAT)),
                    "mm"));
        }
        return figures;
    }

    private static List<FramePage.Figure> bar(GivenInputs in, BarFit fit, BarFit.@Nullable ByParts parts) {
        List<FramePage.Figure> figures = new ArrayList<>();
        figures.add(new FramePage.Figure("Bar above the head tube, along the steerer", fit.above_mm(), "mm"));
        figures.add(new FramePage.Figure("Bar ahead of the steerer, square to it", fit.ahead_mm(), "mm"));
        if (parts != null) {
            figures.add(new FramePage.Figure("Spacers that bring it so high", parts.spacers_mm(), "mm"));
            if (in.has(GeometryInput.SPACERS)) {
                figures.add(new FramePage.Figure("Spacers given", in.number(GeometryInput.SPACERS), "mm"));
            }
        }
        return figures;
    }
}
