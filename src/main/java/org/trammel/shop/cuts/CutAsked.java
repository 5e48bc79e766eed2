package org.trammel.shop.cuts;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.trammel.shop.designs.CutTubes;

/**
 * What a characteristic of a route asks of the tubes of a frame, by its name: of every piece how far it is off its own
 * figure of the cut list, or the blank or an angle of one tube as it is.
 *
 * @param ofAll whether it speaks for every tube of a frame
 * @param figures of one tube; empty where it has none
 */
record CutAsked(CutFigure figure, boolean ofAll, Function<Cut, Stream<BigDecimal>> figures) {

    private static final Pattern BLANK = Pattern.compile("(.+) blank(?: before forming)?");
    private static final Pattern ANGLE = Pattern.compile("angle (.+) to (.+)");

    static Optional<CutAsked> of(String name, String unit) {
        return named(name.strip().toLowerCase(Locale.ROOT))
                .filter(asked -> asked.figure.unit().equals(unit));
    }

    private static Optional<CutAsked> named(String name) {
        return switch (name) {
            case "blanks off the cut list" ->
                asked(CutFigure.LENGTH, cut -> Stream.of(cut.off_mm().abs()));
            case "mitre angles off the cut list" ->
                asked(
                        CutFigure.ANGLE,
                        cut -> cut.ends().stream()
                                .map(end -> end.angle_deg()
                                        .subtract(end.wanted_deg())
                                        .abs()));
            case "wall at the mitre lips off the drawing" ->
                asked(
                        CutFigure.WALL,
                        cut -> cut.ends().stream()
                                .map(end -> end.wall_mm()
                                        .subtract(end.wantedWall_mm())
                                        .abs()));
            case "phase between ends" -> asked(CutFigure.PHASE, cut -> Stream.ofNullable(cut.phase_deg()));
            case "fit-up gap, mate held" ->
                asked(CutFigure.GAP, cut -> cut.ends().stream().flatMap(end -> end.gaps_mm().stream()));
            default -> ofOneTube(name);
        };
    }

    /** The names a drawing gives nominals to; the figure itself is judged. */
    private static Optional<CutAsked> ofOneTube(String name) {
        Matcher blank = BLANK.matcher(name);
        if (blank.matches()) {
            return one(
                    CutFigure.LENGTH,
                    cut -> cut.tube().equals(blank.group(1)) ? Stream.of(cut.blank_mm()) : Stream.of());
        }
        Matcher angle = ANGLE.matcher(name);
        return angle.matches()
                ? one(
                        CutFigure.ANGLE,
                        cut -> cut.ends().stream()
                                .filter(end -> cut.tube().equals(angle.group(1))
                                        && end.mate().equals(angle.group(2)))
                                .map(Cut.End::angle_deg))
                : Optional.empty();
    }

    private static Optional<CutAsked> asked(CutFigure figure, Function<Cut, Stream<BigDecimal>> figures) {
        return Optional.of(new CutAsked(figure, true, figures));
    }

    private static Optional<CutAsked> one(CutFigure figure, Function<Cut, Stream<BigDecimal>> figures) {
        return Optional.of(new CutAsked(figure, false, figures));
    }

    /** Whether it asks for differences from the drawing, without their sign. */
    boolean differs() {
        return ofAll && (figure == CutFigure.LENGTH || figure == CutFigure.ANGLE || figure == CutFigure.WALL);
    }

    List<BigDecimal> of(Collection<Cut> cuts) {
        return cuts.stream().flatMap(figures).toList();
    }

    /** Whether it asks something of a piece of the cut list. */
    boolean asks(CutTubes.Piece piece) {
        return !of(List.of(Cut.asDrawn(piece))).isEmpty();
    }

    /** Those cuts of which it asks something. */
    List<Cut> among(Collection<Cut> cuts) {
        return cuts.stream().filter(cut -> !of(List.of(cut)).isEmpty()).toList();
    }
}
