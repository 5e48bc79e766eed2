package org.trammel.shop.gauges;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * A gauge in a list, with what is to be said about it today.
 *
 * @param word its state in words, due date counted in
 * @param mark mark that goes with the word
 * @param measures its ranges in words
 */
record GaugeLine(Gauge gauge, String word, String mark, String measures) {

    static GaugeLine of(Gauge gauge, LocalDate today, int warnDays, String measures) {
        LocalDate due = gauge.dueOn();
        return switch (gauge.state()) {
            case BLOCKED, FAILED -> new GaugeLine(gauge, gauge.state().word(), "stopped", measures);
            case RETIRED -> new GaugeLine(gauge, gauge.state().word(), "done", measures);
            case IN_USE -> {
                if (due == null) {
                    yield new GaugeLine(gauge, "not calibrated", "waiting", measures);
                }
                long left = ChronoUnit.DAYS.between(today, due);
                yield left < 0
                        ? new GaugeLine(gauge, "overdue " + days(-left), "stopped", measures)
                        : left <= warnDays
                                ? new GaugeLine(
                                        gauge, left == 0 ? "due today" : "due in " + days(left), "tight", measures)
                                : new GaugeLine(gauge, "in use", "in-work", measures);
            }
        };
    }

    private static String days(long days) {
        return days == 1 ? "1 day" : days + " days";
    }
}
