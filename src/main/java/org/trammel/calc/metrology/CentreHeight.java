package org.trammel.calc.metrology;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Height of the centre of a tube, mandrel, bar or dummy axle above the plate.
 *
 * <pre>
 * both sides       (top + bottom) / 2
 * top and diameter top − d / 2
 * top alone        top: read at the centre itself, or where the diameter falls out of the result
 * </pre>
 *
 * @param top height of its upper side
 * @param bottom height of its lower side, or null if not read
 * @param diameter of tube, mandrel or bar, or null; not needed beside a bottom. Readings of one mandrel share the one
 *     reading of its diameter
 */
public record CentreHeight(
        RawReading top,
        @Nullable RawReading bottom,
        @Nullable RawReading diameter) {

    /** Read from above on something of known diameter. */
    public static CentreHeight above(RawReading top, RawReading diameter) {
        return new CentreHeight(top, null, diameter);
    }

    /** Read from both sides. */
    public static CentreHeight between(RawReading top, RawReading bottom) {
        return new CentreHeight(top, bottom, null);
    }

    /** Read once, at the centre or at the same side of something of one diameter. */
    public static CentreHeight at(RawReading height) {
        return new CentreHeight(height, null, null);
    }

    double height_mm() {
        if (bottom != null) {
            return (top.value_mm() + bottom.value_mm()) / 2;
        }
        return top.value_mm() - (diameter == null ? 0 : diameter.value_mm() / 2);
    }

    /** Heights, without the diameter. */
    List<RawReading> heights() {
        return Stream.of(top, bottom)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .toList();
    }

    double ownVariance_mm2() {
        double sum = heights().stream().mapToDouble(RawReading::ownVariance_mm2).sum();
        return bottom == null ? sum : sum / 4;
    }
}
