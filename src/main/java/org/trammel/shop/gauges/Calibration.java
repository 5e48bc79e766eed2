package org.trammel.shop.gauges;

import java.time.Instant;
import java.time.LocalDate;

/**
 * One calibration of a gauge.
 *
 * @param dueOn last day the gauge may be used by it
 * @param certificate number of the certificate, or of the shop's own record
 * @param asFound what was found before anything was adjusted; may be empty
 */
public record Calibration(
        LocalDate calibratedOn, LocalDate dueOn, String certificate, String asFound, long by, Instant at) {}
