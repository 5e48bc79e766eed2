package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.Map;
import org.trammel.calc.units.Answer;

/**
 * Knows the raw heights that readings were reduced from, and does the reduction again over the whole span of an error,
 * so that what cancels in a difference is seen to cancel. Every bean of this kind is asked.
 */
@FunctionalInterface
public interface RawHeights {

    /**
     * For each of the readings it knows the heights of: where the reduced value may truly have lain, or why that cannot
     * be said. Readings it does not know are left out.
     */
    Map<Long, Answer<TrueSpan>> spans(Collection<Long> readingIds, GaugeError error);
}
