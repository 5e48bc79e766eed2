package org.trammel.shop.people;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.QualificationDates;

/**
 * A qualification or authorisation that a person holds.
 *
 * @param kind code that routes ask for, such as "WELD:AL:141", "BRAZE", "ALIGN", "PENETRANT", "VISUAL", "OVEN"
 * @param standard standard and edition, or the shop's own authorisation, as the QA lead wrote it
 * @param expiresOn last day; null if it has no end
 * @param sixMonthConfirmation whether it must be confirmed every six months
 * @param confirmedOn day of the last confirmation
 * @param endedOn day from which it was taken back; null while it stands
 */
public record Qualification(
        long id,
        long personId,
        String kind,
        String standard,
        @Nullable String metal,
        @Nullable String process,
        @Nullable BigDecimal thicknessFromMm,
        @Nullable BigDecimal thicknessToMm,
        @Nullable String joint,
        LocalDate issuedOn,
        @Nullable LocalDate expiresOn,
        boolean sixMonthConfirmation,
        @Nullable LocalDate confirmedOn,
        @Nullable LocalDate endedOn) {

    /** A qualification to be entered. */
    public static Qualification of(
            String kind, String standard, LocalDate issuedOn, @Nullable LocalDate expiresOn, boolean sixMonth) {
        return new Qualification(
                0, 0, kind, standard, null, null, null, null, null, issuedOn, expiresOn, sixMonth, null, null);
    }

    /** The same, with what it covers. */
    public Qualification covering(
            @Nullable String coveredMetal,
            @Nullable String coveredProcess,
            @Nullable BigDecimal fromMm,
            @Nullable BigDecimal toMm,
            @Nullable String coveredJoint) {
        return new Qualification(
                id,
                personId,
                kind,
                standard,
                coveredMetal,
                coveredProcess,
                fromMm,
                toMm,
                coveredJoint,
                issuedOn,
                expiresOn,
                sixMonthConfirmation,
                confirmedOn,
                endedOn);
    }

    /**
     * Last day on which it holds: the expiry or the end of the six months after the last confirmation, whichever comes
     * first; see {@link QualificationDates}.
     *
     * @return null if it has no end
     */
    public @Nullable LocalDate until() {
        if (!sixMonthConfirmation) {
            return expiresOn;
        }
        return expiresOn == null
                ? confirmedUntil()
                : QualificationDates.of(lastConfirmed(), expiresOn).day();
    }

    /** Last day of the six months that the last confirmation, or the test itself, is good for. */
    public @Nullable LocalDate confirmedUntil() {
        return sixMonthConfirmation ? lastConfirmed().plusMonths(QualificationDates.CONFIRMATION_MONTHS) : null;
    }

    private LocalDate lastConfirmed() {
        return confirmedOn == null ? issuedOn : confirmedOn;
    }

    /** What it is worth on a day. */
    public Standing.State state(LocalDate on) {
        LocalDate confirmed = confirmedUntil();
        if (endedOn != null && !on.isBefore(endedOn)) {
            return Standing.State.ENDED;
        }
        if (on.isBefore(issuedOn)) {
            return Standing.State.NOT_HELD;
        }
        if (expiresOn != null && on.isAfter(expiresOn)) {
            return Standing.State.EXPIRED;
        }
        return confirmed != null && on.isAfter(confirmed) ? Standing.State.CONFIRMATION_LAPSED : Standing.State.VALID;
    }

    /** Whether the wall of this thickness lies in its range; a range that is not given has no bound. */
    public boolean coversMm(BigDecimal thicknessMm) {
        return (thicknessFromMm == null || thicknessMm.compareTo(thicknessFromMm) >= 0)
                && (thicknessToMm == null || thicknessMm.compareTo(thicknessToMm) <= 0);
    }
}
