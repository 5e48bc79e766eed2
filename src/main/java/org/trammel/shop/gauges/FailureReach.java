package org.trammel.shop.gauges;

import java.util.Set;

/** Tells into which chains a failure of a gauge is written, so that they are locked in their order before it is recorded. */
public interface FailureReach {

    Set<String> chains(String gauge);
}
