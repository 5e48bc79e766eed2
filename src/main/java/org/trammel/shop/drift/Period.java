package org.trammel.shop.drift;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * From one day to another of the shop.
 *
 * @param starts null: from the very first
 * @param ends the moment after the last day; null: up to now
 */
record Period(@Nullable Instant starts, @Nullable Instant ends) {

    static Period of(@Nullable LocalDate from, @Nullable LocalDate until, ZoneId zone) {
        return new Period(
                from == null ? null : from.atStartOfDay(zone).toInstant(),
                until == null ? null : until.plusDays(1).atStartOfDay(zone).toInstant());
    }

    List<Point> of(List<Point> all) {
        return all.stream().filter(this::holds).toList();
    }

    boolean holds(Point point) {
        return (starts == null || !point.at().isBefore(starts))
                && (ends == null || point.at().isBefore(ends));
    }
}
