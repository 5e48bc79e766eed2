package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Dimension;

/** How the dimensions that a layout is closed from and the inputs that a draft keeps go together. */
final class LayoutInput {

    /** What another fork or other wheels are. */
    static final List<Dimension> OTHER_PARTS = List.of(
            Dimension.FORK_LENGTH,
            Dimension.FORK_OFFSET,
            Dimension.LOWER_STACK,
            Dimension.FRONT_WHEEL_RADIUS,
            Dimension.REAR_WHEEL_RADIUS);

    /** What they change on a frame that is built. */
    static final List<Dimension> SHOWN_OF_OTHER_PARTS = List.of(
            Dimension.HEAD_ANGLE,
            Dimension.SEAT_ANGLE,
            Dimension.SHELL_HEIGHT,
            Dimension.STACK,
            Dimension.REACH,
            Dimension.TRAIL,
            Dimension.WHEELBASE);

    private LayoutInput() {}

    /** Whether a frame is built from it; else it is measured on one or asked for. */
    static boolean isBuiltFrom(Dimension dimension) {
        return dimension.compareTo(Dimension.STACK) < 0;
    }

    /** The input of a draft; null where a draft keeps none. */
    static @Nullable GeometryInput of(Dimension dimension) {
        return isBuiltFrom(dimension)
                ? GeometryInput.valueOf(dimension.name())
                : dimension == Dimension.STACK ? GeometryInput.STACK_ASKED : null;
    }

    /** As a draft's form names it, or the dimension's own words where a draft keeps none. */
    static String label(Dimension dimension) {
        GeometryInput input = isBuiltFrom(dimension) ? of(dimension) : null;
        String words = dimension.words();
        return input != null ? input.label() : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** What a draft says already; without a word about it the seat tube stands on the shell. */
    static Map<Dimension, BigDecimal> drawn(Map<String, String> geometry) {
        Map<Dimension, BigDecimal> given = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            GeometryInput input = of(dimension);
            if (input != null && geometry.containsKey(input.code())) {
                given.put(dimension, new BigDecimal(geometry.get(input.code())));
            }
        }
        given.putIfAbsent(Dimension.SEAT_TUBE_OFFSET, BigDecimal.ZERO);
        return given;
    }
}
