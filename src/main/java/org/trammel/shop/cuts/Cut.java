package org.trammel.shop.cuts;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.designs.CutTubes;

/**
 * A tube of a frame as it was measured after saw and mitre.
 *
 * @param piece its code within the frame
 * @param wanted_mm length of the blank by the cut list
 * @param phase_deg how far the second cut stands off its phase to the first; null where one end is not mitred
 */
public record Cut(
        String piece,
        String called,
        BigDecimal blank_mm,
        BigDecimal wanted_mm,
        @Nullable BigDecimal phase_deg,
        List<End> ends,
        With with,
        long by,
        Instant at) {

    /**
     * A mitred end.
     *
     * @param wall_mm thinnest at the lip
     * @param gaps_mm at eight places round it, the mate held
     */
    public record End(
            int place,
            String mate,
            String saw,
            BigDecimal angle_deg,
            BigDecimal wanted_deg,
            BigDecimal wall_mm,
            BigDecimal wantedWall_mm,
            List<BigDecimal> gaps_mm) {

        public BigDecimal worst_mm() {
            return gaps_mm.stream().max(Comparator.naturalOrder()).orElseThrow();
        }
    }

    /** Gauges it was measured with; null where nothing was measured with one. */
    public record With(
            String length,
            @Nullable String angle,
            @Nullable String phase,
            @Nullable String gap,
            @Nullable String wall) {

        Stream<String> all() {
            return Stream.of(length, angle, phase, gap, wall).filter(Objects::nonNull);
        }
    }

    /** A piece that measures what its drawing asks. */
    static Cut asDrawn(CutTubes.Piece piece) {
        return new Cut(
                piece.code(),
                piece.called(),
                piece.blank_mm(),
                piece.blank_mm(),
                piece.phased() ? BigDecimal.ZERO : null,
                piece.ends().stream()
                        .map(end -> new End(
                                end.place(),
                                end.mate(),
                                "",
                                end.angle_deg(),
                                end.angle_deg(),
                                end.wall_mm(),
                                end.wall_mm(),
                                List.of(BigDecimal.ZERO)))
                        .toList(),
                new With("", null, null, null, null),
                0,
                Instant.EPOCH);
    }

    /** The same with these ends only. */
    Cut with(List<End> some) {
        return new Cut(piece, called, blank_mm, wanted_mm, phase_deg, some, with, by, at);
    }

    /** Its name in the cut list, that of its mirror image too. */
    String tube() {
        return piece.replaceFirst("-.*", "").replace('_', ' ').toLowerCase(Locale.ROOT);
    }

    BigDecimal off_mm() {
        return blank_mm.subtract(wanted_mm);
    }
}
