package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;

/** Knows which tolerances the shop judges with a kind of gauge. The register asks it what a gauge is too coarse for. */
public interface TolerancesAsked {

    /** A tolerance; the limits are counted from the nominal. */
    record Asked(String kind, String unit, String code, String name, BigDecimal lower, BigDecimal upper) {}

    List<Asked> of(Collection<String> kinds);
}
