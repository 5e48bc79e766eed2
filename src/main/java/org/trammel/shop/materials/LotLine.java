package org.trammel.shop.materials;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * A lot in a list, with what is to be said about it today.
 *
 * @param word its state in words, last day counted in
 * @param mark mark that goes with the word
 */
record LotLine(Lot lot, String word, String mark) {

    static LotLine of(Lot lot, LocalDate today, int warnDays) {
        return switch (lot.state()) {
            case QUARANTINED -> new LotLine(lot, lot.state().word(), "waiting");
            case BLOCKED -> new LotLine(lot, lot.state().word(), "stopped");
            case USED_UP -> new LotLine(lot, lot.state().word(), "done");
            case RELEASED -> released(lot, today, warnDays);
        };
    }

    private static LotLine released(Lot lot, LocalDate today, int warnDays) {
        LocalDate last = lot.expiresOn();
        if (last == null) {
            return new LotLine(lot, lot.state().word(), "in-work");
        }
        long left = ChronoUnit.DAYS.between(today, last);
        if (left < 0) {
            return new LotLine(lot, "expired", "stopped");
        }
        return left <= warnDays
                ? new LotLine(
                        lot, left == 0 ? "last day today" : left == 1 ? "1 day left" : left + " days left", "tight")
                : new LotLine(lot, lot.state().word(), "in-work");
    }
}
