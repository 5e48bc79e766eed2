package org.trammel.shop.gauges;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is entered of a gauge when it is registered or changed.
 *
 * @param makerNumber the number the maker put on it; null if it has none
 * @param aid whether it is registered without an uncertainty
 */
public record NewGauge(
        String what, @Nullable String makerNumber, String location, boolean aid, List<GaugeRange> ranges) {

    public NewGauge {
        ranges = List.copyOf(ranges);
    }
}
