package org.trammel.calc.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.QualificationDates.EndsBy;
import org.trammel.calc.units.QualificationDates.Lapsed;
import org.trammel.calc.units.QualificationDates.NotDeterminable;
import org.trammel.calc.units.QualificationDates.ValidUntil;

/**
 * Source: ISO 9606-2:2004, 9.1 to 9.3, as certifiers' pages cite it (validity from the day of welding, confirmation by
 * the employer every six months, end after two years). The dates below are counted by hand on the calendar.
 */
class QualificationDatesTest {

    private static final LocalDate TESTED = LocalDate.of(2025, 3, 15);
    private static final LocalDate TWO_YEARS = LocalDate.of(2027, 3, 15);

    @Test
    void withoutConfirmationItHoldsSixMonthsFromTheTestWeld() {
        assertThat(QualificationDates.of(TESTED, TWO_YEARS, List.of()))
                .isEqualTo(new ValidUntil(LocalDate.of(2025, 9, 15), EndsBy.CONFIRMATION));
    }

    @Test
    void eachConfirmationCarriesItSixMonthsOn() {
        List<LocalDate> confirmed = List.of(LocalDate.of(2026, 3, 1), LocalDate.of(2025, 9, 10));
        assertThat(QualificationDates.of(TESTED, TWO_YEARS, confirmed))
                .isEqualTo(new ValidUntil(LocalDate.of(2026, 9, 1), EndsBy.CONFIRMATION));
    }

    @Test
    void theEndDateEndsItWhateverWasConfirmed() {
        List<LocalDate> confirmed =
                List.of(LocalDate.of(2025, 9, 15), LocalDate.of(2026, 3, 15), LocalDate.of(2026, 9, 15), TWO_YEARS);
        assertThat(QualificationDates.of(TESTED, TWO_YEARS, confirmed))
                .isEqualTo(new ValidUntil(TWO_YEARS, EndsBy.END_DATE));
    }

    @Test
    void aMissedConfirmationIsNotRevivedByALaterOne() {
        List<LocalDate> confirmed = List.of(LocalDate.of(2025, 9, 16));
        assertThat(QualificationDates.of(TESTED, TWO_YEARS, confirmed))
                .isEqualTo(new Lapsed(LocalDate.of(2025, 9, 15)));
        assertThat(QualificationDates.of(TESTED, TWO_YEARS, confirmed).holdsOn(LocalDate.of(2025, 9, 17)))
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "2025-08-31, 2026-02-28", // six months end on a day that does not exist
        "2023-08-31, 2024-02-29", // leap year
        "2023-08-29, 2024-02-29",
        "2024-02-29, 2024-08-29",
        "2025-03-31, 2025-09-30",
        "2025-12-31, 2026-06-30",
        "2025-09-20, 2026-03-20"
    })
    void monthsAreCalendarMonthsAndClipAtTheMonthsEnd(LocalDate confirmed, LocalDate until) {
        assertThat(QualificationDates.of(confirmed, LocalDate.of(2030, 1, 1)))
                .isEqualTo(new ValidUntil(until, EndsBy.CONFIRMATION));
    }

    @Test
    void theLastDayStillHoldsAndTheNextDoesNot() {
        ValidUntil valid = QualificationDates.of(LocalDate.of(2025, 9, 20), LocalDate.of(2026, 11, 30));
        assertThat(valid.holdsOn(LocalDate.of(2026, 3, 20))).isTrue();
        assertThat(valid.holdsOn(LocalDate.of(2026, 3, 21))).isFalse();
    }

    @Test
    void datesThatContradictEachOtherHaveNoAnswer() {
        assertThat(QualificationDates.of(TESTED, TESTED.minusDays(1), List.of()))
                .isInstanceOf(NotDeterminable.class);
        assertThat(QualificationDates.of(TESTED, TWO_YEARS, Arrays.asList(TESTED.minusDays(1))))
                .isInstanceOf(NotDeterminable.class);
    }
}
