/**
 * Gauges and measuring set-ups: what they measure, how well, and whether they may be used today.
 *
 * <p>Invariants: nothing is measured with a gauge that is blocked, failed, retired, before its first calibration or
 * past its due date; a code is never given to a second gauge; calibrations and failures are only added to.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Gauges",
        allowedDependencies = {"records", "settings", "people", "web"})
package org.trammel.shop.gauges;
