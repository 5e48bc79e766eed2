package org.trammel.shop.gauges;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A gauge or a measuring set-up as it stands in the register.
 *
 * @param setup whether it is a set-up made of several gauges
 * @param aid registered without an uncertainty: it serves the plain rule only
 * @param makerNumber the number the maker put on it, which tells two alike gauges apart
 * @param location where it is kept
 * @param stateReason why it is blocked, failed or retired, or why it was unblocked; empty if it never was
 * @param calibratedOn of the newest calibration; null before the first; of a set-up, the oldest among its parts
 * @param dueOn last day it may be used; of a set-up, the earliest among its parts
 * @param parts codes of the gauges a set-up is made of
 * @param version to be sent back with a change
 */
public record Gauge(
        long id,
        String code,
        String what,
        boolean setup,
        boolean aid,
        @Nullable String makerNumber,
        String location,
        GaugeState state,
        String stateReason,
        Instant stateSince,
        @Nullable LocalDate calibratedOn,
        @Nullable LocalDate dueOn,
        @Nullable String certificate,
        List<GaugeRange> ranges,
        List<String> parts,
        long version) {}
