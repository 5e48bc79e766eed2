package org.trammel.shop.materials;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.designs.TubePlace;
import org.trammel.shop.travellers.FrameSheet;

/**
 * The tubes of a frame, or of a part of it, place by place.
 *
 * @param line the operation it is looked at from
 */
record TubeSheet(FrameSheet.Head head, FrameSheet.OperationLine line, List<Line> lines) {

    /**
     * One place.
     *
     * @param issued null while nothing is
     * @param wrong why what was issued does not stand; null where it does, or nothing was
     */
    record Line(
            TubePlace place,
            @Nullable TubeIssued issued,
            @Nullable String wrong) {

        public boolean stands() {
            return issued != null && wrong == null;
        }
    }

    /** The first place without a tube; null where every place has one. */
    public @Nullable Line next() {
        return lines.stream().filter(line -> line.issued() == null).findFirst().orElse(null);
    }

    public boolean complete() {
        return lines.stream().allMatch(Line::stands);
    }

    public long standing() {
        return lines.stream().filter(Line::stands).count();
    }
}
