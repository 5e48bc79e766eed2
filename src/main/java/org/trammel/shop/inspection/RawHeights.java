package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * Knows the raw heights that readings were reduced from, and does the reduction again over the whole span of an error,
 * so that what cancels in a difference is seen to cancel. Every bean of this kind is asked.
 */
@FunctionalInterface
public interface RawHeights {

    /**
     * A reading that a gauge found wrong had to do with.
     *
     * @param reductionId what it was computed in; null if it was read plainly
     * @param raw its values in its unit, as they were given
     */
    record Suspect(long readingId, @Nullable Long reductionId, List<BigDecimal> raw) {}

    /**
     * For each of the readings it knows the heights of: where each of its raw values may truly have lain, in their order,
     * or why that cannot be said. Readings it does not know are left out.
     */
    Map<Long, Answer<List<TrueSpan>>> spans(Collection<Suspect> readings, GaugeError error);
}
