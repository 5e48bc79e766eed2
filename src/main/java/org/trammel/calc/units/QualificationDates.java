package org.trammel.calc.units;

import java.time.LocalDate;
import java.util.List;

/**
 * Until when a welder's or brazer's qualification holds: to the end date on the certificate, and only as long as the
 * work is confirmed every six months.
 *
 * <p>valid until = min(end date, last confirmation + {@value #CONFIRMATION_MONTHS} months), that day included. The day
 * of the test weld counts as the first confirmation. Months are calendar months; where the day does not exist the last
 * day of the month is taken (31 August + 6 months = 28 or 29 February), and the next period counts from that
 * confirmation. A confirmation that comes after the period before it ended revives nothing: the qualification lapsed and
 * a new test is due, whatever its end date.
 *
 * <p>Source: ISO 9606-2:2004, 9.2 and 9.3 (aluminium), with the same six months in ISO 9606-1:2012, 9.2 (steel), ISO
 * 9606-5:2000 (titanium) and ISO 13585 (brazing). The end date is read from the certificate, because the standards
 * differ in years (two or three) and the certificate says which applies.
 */
public sealed interface QualificationDates {

    /** Months a confirmation lasts. */
    int CONFIRMATION_MONTHS = 6;

    /** Which of the two dates ends it. */
    enum EndsBy {
        CONFIRMATION,
        END_DATE
    }

    /** Holds up to and including the day. */
    record ValidUntil(LocalDate day, EndsBy by) implements QualificationDates {}

    /** The confirmation due on the day was missed before the next one came: only a new test helps. */
    record Lapsed(LocalDate confirmationDueBy) implements QualificationDates {}

    /** The dates contradict each other. */
    record NotDeterminable(String reason) implements QualificationDates {}

    /**
     * Rule over the whole history.
     *
     * @param tested day of the test weld
     * @param ends end date on the certificate, that day included
     * @param confirmations days of the confirmations since, in any order
     */
    static QualificationDates of(LocalDate tested, LocalDate ends, List<LocalDate> confirmations) {
        if (ends.isBefore(tested)) {
            return new NotDeterminable("The end date lies before the test.");
        }
        LocalDate last = tested;
        for (LocalDate confirmation : confirmations.stream().sorted().toList()) {
            if (confirmation.isBefore(tested)) {
                return new NotDeterminable("A confirmation lies before the test.");
            }
            LocalDate dueBy = last.plusMonths(CONFIRMATION_MONTHS);
            if (confirmation.isAfter(dueBy)) {
                return new Lapsed(dueBy);
            }
            last = confirmation;
        }
        return of(last, ends);
    }

    /**
     * Rule where only the newest confirmation is known.
     *
     * @param lastConfirmed day of the newest confirmation, or of the test weld
     * @param ends end date on the certificate, that day included
     */
    static ValidUntil of(LocalDate lastConfirmed, LocalDate ends) {
        LocalDate dueBy = lastConfirmed.plusMonths(CONFIRMATION_MONTHS);
        return dueBy.isBefore(ends)
                ? new ValidUntil(dueBy, EndsBy.CONFIRMATION)
                : new ValidUntil(ends, EndsBy.END_DATE);
    }

    /** Whether the qualification holds on that day. */
    default boolean holdsOn(LocalDate day) {
        return this instanceof ValidUntil valid && !day.isAfter(valid.day());
    }
}
