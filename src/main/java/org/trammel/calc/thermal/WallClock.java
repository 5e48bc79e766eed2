package org.trammel.calc.thermal;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.Arrays;
import java.util.function.IntUnaryOperator;

/**
 * Turns times as a clock on the wall showed them into UTC, through the nights on which it was set.
 *
 * <p>Set forward: an hour does not exist, and a row in it shows that the logger was not set. Set back: an hour exists twice.
 * Where the rows step back once inside it, those before the step are the first hour, those behind it the second. Where they
 * do not, they are one of the two: the one that leaves the shorter gap to the rows around. Where the rows do not tell, or run
 * through without a step, there is no answer.
 */
final class WallClock {

    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");
    private static final long AROUND_MS = 26L * 3_600_000;

    private final ZoneRules rules;
    private final String zone;
    private final long[] times;
    private final IntUnaryOperator lines;

    private WallClock(ZoneId zone, long[] times, IntUnaryOperator lines) {
        this.rules = zone.getRules();
        this.zone = zone.getId();
        this.times = times;
        this.lines = lines;
    }

    /**
     * Puts the times right, in place.
     *
     * @param wall_ms as if the clock on the wall showed UTC, in the order of the file
     * @param lines of the file they stand in, by row
     */
    static void settle(ZoneId zone, long[] wall_ms, IntUnaryOperator lines) throws Unread {
        new WallClock(zone, wall_ms, lines).settle();
    }

    private void settle() throws Unread {
        long least = Long.MAX_VALUE;
        long greatest = Long.MIN_VALUE;
        for (long time : times) {
            least = Math.min(least, time);
            greatest = Math.max(greatest, time);
        }
        Instant from = Instant.ofEpochMilli(least - AROUND_MS);
        int offset = rules.getOffset(from).getTotalSeconds() * 1000;
        ZoneOffsetTransition change = rules.nextTransition(from);
        if (change == null || wall_ms(change.getDateTimeBefore()) - AROUND_MS > greatest) {
            for (int row = 0; row < times.length; row++) {
                times[row] -= offset;
            }
            return;
        }
        int[] offsets = new int[times.length];
        Arrays.fill(offsets, offset);
        while (change != null && wall_ms(change.getDateTimeBefore()) - AROUND_MS <= greatest) {
            through(change, offsets);
            change = rules.nextTransition(change.getInstant());
        }
        for (int row = 0; row < times.length; row++) {
            times[row] -= offsets[row];
        }
    }

    private void through(ZoneOffsetTransition change, int[] offsets) throws Unread {
        int before_ms = change.getOffsetBefore().getTotalSeconds() * 1000;
        int after_ms = change.getOffsetAfter().getTotalSeconds() * 1000;
        long from = wall_ms(change.isGap() ? change.getDateTimeBefore() : change.getDateTimeAfter());
        long until = wall_ms(change.isGap() ? change.getDateTimeAfter() : change.getDateTimeBefore());
        int first = -1;
        int last = -1;
        for (int row = 0; row < times.length; row++) {
            offsets[row] = times[row] >= until ? after_ms : times[row] < from ? offsets[row] : before_ms;
            if (times[row] >= from && times[row] < until) {
                first = first < 0 ? row : first;
                last = row;
            }
        }
        if (first < 0) {
            return;
        }
        if (change.isGap()) {
            throw new Unread(
                    lines.applyAsInt(first),
                    shown(times[first]) + " does not exist in " + zone
                            + ", as the clock is set forward over it. A logger"
                            + " that is not set is read with its own offset, such as " + change.getOffsetBefore()
                            + ".");
        }
        int second = secondHour(first, last, from, until, change);
        for (int row = first; row <= last; row++) {
            if (times[row] >= from && times[row] < until) {
                offsets[row] = row < second ? before_ms : after_ms;
            }
        }
    }

    /** The first row that belongs to the second of two like hours. */
    private int secondHour(int first, int last, long from, long until, ZoneOffsetTransition change) throws Unread {
        int step = -1;
        for (int row = first; row <= last; row++) {
            boolean outside = times[row] < from || times[row] >= until;
            long back = row > first ? times[row - 1] - times[row] : 0;
            // a clock set back steps by nearly all of the hour; a row out of its place by less
            boolean misplaced =
                    back > 0 && (step >= 0 || 2 * back < -change.getDuration().toMillis());
            if (outside || misplaced) {
                throw new Unread(
                        lines.applyAsInt(row),
                        "The clock of " + zone + " was set back at " + shown(until)
                                + ", and the rows around it do not stand in order: which of the two hours they mean cannot"
                                + " be told.");
            }
            if (back > 0) {
                step = row;
            }
        }
        return step >= 0 ? step : oneHour(first, last, change, until);
    }

    private int oneHour(int first, int last, ZoneOffsetTransition change, long until) throws Unread {
        long before = first == 0 ? Long.MAX_VALUE / 4 : times[first] - times[first - 1];
        long behind = last == times.length - 1 ? Long.MAX_VALUE / 4 : times[last + 1] - times[last];
        long hour = -change.getDuration().toMillis();
        boolean both = first > 0 && last < times.length - 1;
        boolean throughUnset = both && before < hour && behind < hour;
        if (throughUnset || first == 0 && last == times.length - 1 || before == behind) {
            ZoneOffset unset = change.getOffsetAfter();
            throw new Unread(
                    lines.applyAsInt(first),
                    shown(times[first]) + " exists twice in " + zone + ", as the clock was set back at " + shown(until)
                            + ", and the rows do not tell which is meant. A logger that is not set is read with its own"
                            + " offset, such as " + unset + ".");
        }
        return before < behind ? last + 1 : first;
    }

    private static long wall_ms(LocalDateTime wall) {
        return wall.toInstant(ZoneOffset.UTC).toEpochMilli();
    }

    private static String shown(long wall_ms) {
        return SHOWN.format(LocalDateTime.ofInstant(Instant.ofEpochMilli(wall_ms), ZoneOffset.UTC));
    }
}
