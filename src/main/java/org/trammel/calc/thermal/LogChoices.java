package org.trammel.calc.thermal;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a logger's file does not say of itself and somebody says in its place.
 *
 * @param zone whose clock the times are, where the file names no zone; an offset such as +01:00 for a logger that is
 *     never set to summer time
 * @param dayFirst whether 03/04/2026 is 3 April, where no row of the file shows it
 * @param start when the record began, where the file counts from its start
 * @param channels the columns to read, by their names; none for every column of temperatures
 * @param from rows before it are left out; null for none
 * @param until rows after it are left out; null for none
 */
public record LogChoices(
        @Nullable ZoneId zone,
        @Nullable Boolean dayFirst,
        @Nullable Instant start,
        List<String> channels,
        @Nullable Instant from,
        @Nullable Instant until) {

    public LogChoices {
        channels = List.copyOf(channels);
        if (from != null && until != null && until.isBefore(from)) {
            throw new IllegalArgumentException("A span ends after it begins: " + from + " to " + until);
        }
    }

    /** Nothing is said. */
    public static LogChoices none() {
        return new LogChoices(null, null, null, List.of(), null, null);
    }

    /** The clock of a place. */
    public static LogChoices in(ZoneId zone) {
        return new LogChoices(zone, null, null, List.of(), null, null);
    }

    public LogChoices dayFirst(boolean first) {
        return new LogChoices(zone, first, start, channels, from, until);
    }

    public LogChoices startedAt(Instant began) {
        return new LogChoices(zone, dayFirst, began, channels, from, until);
    }

    public LogChoices only(List<String> names) {
        return new LogChoices(zone, dayFirst, start, names, from, until);
    }

    /** Only what lies in the span of a run. */
    public LogChoices within(Instant begin, Instant end) {
        return new LogChoices(zone, dayFirst, start, channels, begin, end);
    }
}
