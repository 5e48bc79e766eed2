package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.shop.people.Standing.State;

/**
 * ISO 9606-2, clause 9 (cited from memory, as are the days that follow from it): a welder's qualification holds to its
 * expiry on condition that the employer confirms every six months that the welder has worked within its range.
 */
class QualificationTest {

    @ParameterizedTest
    @CsvSource({
        // confirmed, expires, last day it holds
        "2025-09-20, 2026-11-30, 2026-03-20",
        "2025-12-10, 2027-02-14, 2026-06-10",
        "2026-01-09, 2026-05-01, 2026-05-01",
        "2025-08-31, 2027-01-01, 2026-02-28",
        "2023-08-31, 2025-01-01, 2024-02-29"
    })
    void itHoldsToItsExpiryOrSixMonthsAfterTheConfirmationWhicheverComesFirst(
            LocalDate confirmed, LocalDate expires, LocalDate last) {
        Qualification held = held(LocalDate.of(2023, 1, 1), expires, confirmed);
        assertThat(held.until()).isEqualTo(last);
        assertThat(held.state(last)).isEqualTo(State.VALID);
        assertThat(held.state(last.plusDays(1))).isNotEqualTo(State.VALID);
    }

    @Test
    void withoutAConfirmationTheSixMonthsCountFromTheTest() {
        Qualification held = held(LocalDate.of(2026, 1, 15), LocalDate.of(2028, 1, 15), null);
        assertThat(held.until()).isEqualTo(LocalDate.of(2026, 7, 15));
    }

    @Test
    void aLapsedConfirmationIsToldFromAnExpiry() {
        Qualification held = held(LocalDate.of(2025, 1, 1), LocalDate.of(2026, 11, 30), LocalDate.of(2025, 9, 20));
        assertThat(held.state(LocalDate.of(2026, 3, 21))).isEqualTo(State.CONFIRMATION_LAPSED);
        assertThat(held.state(LocalDate.of(2026, 12, 1))).isEqualTo(State.EXPIRED);
        assertThat(held.state(LocalDate.of(2024, 12, 31))).isEqualTo(State.NOT_HELD);
    }

    @Test
    void whatNeedsNoConfirmationHoldsToItsExpiry() {
        Qualification held =
                Qualification.of("PENETRANT", "ISO 9712", LocalDate.of(2022, 6, 1), LocalDate.of(2027, 5, 31), false);
        assertThat(held.until()).isEqualTo(LocalDate.of(2027, 5, 31));
        assertThat(Qualification.of("ALIGN", "shop", LocalDate.of(2022, 6, 1), null, false)
                        .until())
                .isNull();
    }

    @Test
    void ofSeveralOfOneKindTheBestCounts() {
        Qualification old = held(LocalDate.of(2022, 1, 1), LocalDate.of(2024, 1, 1), null);
        Qualification fresh = held(LocalDate.of(2025, 12, 1), LocalDate.of(2027, 12, 1), null);
        Standing standing = Crew.standing(List.of(old, fresh), "WELD:AL:141", LocalDate.of(2026, 3, 18));
        assertThat(standing.state()).isEqualTo(State.VALID);
        assertThat(standing.until()).isEqualTo(LocalDate.of(2026, 6, 1));
    }

    @Test
    void ofOneThatExpiredTheExpiryIsToldAndNotTheConfirmationThatRanOutBefore() {
        Qualification held = held(LocalDate.of(2025, 1, 1), LocalDate.of(2026, 3, 10), LocalDate.of(2025, 7, 10));
        Standing standing = Crew.standing(List.of(held), "WELD:AL:141", LocalDate.of(2026, 3, 18));
        assertThat(standing.state()).isEqualTo(State.EXPIRED);
        assertThat(standing.until()).isEqualTo(LocalDate.of(2026, 3, 10));
    }

    @ParameterizedTest
    @CsvSource({"0.69, false", "0.70, true", "1.5, true", "3.0, true", "3.01, false"})
    void theRangeOfWallsIncludesBothEnds(BigDecimal wall, boolean covered) {
        Qualification held = held(LocalDate.of(2025, 1, 1), null, null)
                .covering("Al", "141", new BigDecimal("0.7"), new BigDecimal("3.0"), "T-joint");
        assertThat(held.coversMm(wall)).isEqualTo(covered);
    }

    private static Qualification held(LocalDate issued, LocalDate expires, LocalDate confirmed) {
        return new Qualification(
                1,
                1,
                "WELD:AL:141",
                "ISO 9606-2",
                null,
                null,
                null,
                null,
                null,
                issued,
                expires,
                true,
                confirmed,
                null);
    }
}
