package org.trammel.calc.welding;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Sizes of the weld that limits are drawn from, in mm.
 *
 * @param wall thickness of the thinner wall, or of the butt
 * @param width of the weld's face; null if it was not measured
 * @param throat of a fillet; null if it was not measured
 */
public record WeldSizes(
        BigDecimal wall,
        @Nullable BigDecimal width,
        @Nullable BigDecimal throat) {}
