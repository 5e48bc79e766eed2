package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.web.Formats;

/** How wide tubes are across the plate where both of their sides were read, and so how far out of round. */
final class Across {

    private Across() {}

    static List<String> words(SheetLine sheet, Formats formats) {
        TableSetUp setUp = sheet.setUp();
        List<String> words = new ArrayList<>();
        if (setUp.bothSides()) {
            add(words, sheet, Spot.SEAT_LOW, Spot.SEAT_HIGH, setUp.seatDiameter_mm(), formats);
            add(words, sheet, Spot.HEAD_LOW, Spot.HEAD_HIGH, setUp.headDiameter_mm(), formats);
        }
        return words;
    }

    private static void add(
            List<String> words, SheetLine sheet, Spot low, Spot high, @Nullable BigDecimal outside, Formats formats) {
        BigDecimal one = mm(sheet, low);
        BigDecimal other = mm(sheet, high);
        if (one == null || other == null) {
            return;
        }
        BigDecimal apart = one.subtract(other).abs();
        BigDecimal off = outside == null
                ? null
                : one.subtract(outside).abs().max(other.subtract(outside).abs());
        words.add(low.group().words() + " across the plate: " + formats.number(one, 2) + " at the lower station and "
                + formats.with(other, 2, "mm") + " at the upper, " + formats.with(apart, 2, "mm") + " apart"
                + (off == null
                        ? "."
                        : "; up to " + formats.with(off, 2, "mm") + " off its "
                                + formats.with(outside.stripTrailingZeros(), 1, "mm") + ", so far out of round."));
    }

    private static @Nullable BigDecimal mm(SheetLine sheet, Spot spot) {
        RawLine top = sheet.at(spot);
        RawLine bottom = spot.below().map(sheet::at).orElse(null);
        return top == null || bottom == null
                ? null
                : Objects.requireNonNull(top.mm()).subtract(Objects.requireNonNull(bottom.mm()));
    }
}
