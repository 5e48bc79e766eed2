package org.trammel.calc.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Days written by ISO 8601, and what is typed in their place. */
class TypedDayTest {

    @ParameterizedTest
    @ValueSource(strings = {"1950-01-01", "2024-02-29", "2026-03-18", "2149-12-31", " 2026-03-18\u00A0"})
    void aDayIsRead(String typed) {
        String plain = typed.replace("\u00A0", "").strip();
        assertThat(TypedDay.of(typed.replace("\u00A0", " "))).isEqualTo(new TypedDay.Read(LocalDate.parse(plain)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"31.02.2026", "18/03/2026", "2026-3-18", "tomorrow", "+9999-01-01x"})
    void whatIsNoDayIsRefused(String typed) {
        assertThat(TypedDay.of(typed))
                .isEqualTo(new TypedDay.Unreadable(
                        "There is no such day. It is written as 2026-03-18, year, month, day."));
    }

    /** Days of the months by the Gregorian calendar, as ISO 8601 takes it. */
    @ParameterizedTest
    @CsvSource({
        "2026-02-31, that month has 28 days.",
        "2026-02-29, that month has 28 days.",
        "2024-02-30, that month has 29 days.",
        "2026-04-31, that month has 30 days.",
        "2026-13-01, a year has no month 13.",
        "2026-00-10, a year has no month 00."
    })
    void aDayTheCalendarDoesNotHaveIsToldSo(String typed, String why) {
        assertThat(TypedDay.of(typed)).isEqualTo(new TypedDay.Unreadable("There is no such day: " + why));
    }

    @ParameterizedTest
    @CsvSource({"0001-01-01, 1", "1900-01-01, 1900", "1949-12-31, 1949", "2150-01-01, 2150", "9999-12-31, 9999"})
    void aYearNoShopMeansIsRefused(String typed, int year) {
        assertThat(TypedDay.of(typed))
                .isEqualTo(new TypedDay.Unreadable("The year " + year + " is not between 1950 and 2149."));
    }

    @Test
    void anEmptyFieldIsNoDay() {
        assertThat(TypedDay.of("  ")).isEqualTo(new TypedDay.Unreadable("A day is missing."));
        assertThat(TypedDay.of((String) null)).isEqualTo(new TypedDay.Unreadable("A day is missing."));
    }
}
