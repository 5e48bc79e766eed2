package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.trammel.shop.TestClock;

class FormatsTest {

    private final Formats formats = new Formats(Face.house(), new TestClock());

    @Test
    void figuresCarryTheShopsDecimalSignATrueMinusAndNoThousandsSeparator() {
        assertThat(formats.number(new BigDecimal("-12345.678"), 2)).isEqualTo("\u221212345,68");
        assertThat(formats.number(new BigDecimal("0.30"))).isEqualTo("0,30");
        assertThat(formats.number(1344)).isEqualTo("1344");
        assertThat(formats.number(null, 2)).isEmpty();
    }

    @Test
    void zeroHasNoSignHoweverItCameAbout() {
        assertThat(formats.number(new BigDecimal("-0.004"), 2)).isEqualTo("0,00");
        assertThat(formats.signed(new BigDecimal("0.004"), 2)).isEqualTo("0,00");
        assertThat(formats.signed(new BigDecimal("0.3"), 2)).isEqualTo("+0,30");
        assertThat(formats.signed(new BigDecimal("-0.3"), 2)).isEqualTo("\u22120,30");
    }

    @Test
    void aDegreeSignTouchesItsFigureAndNoOtherUnitDoes() {
        assertThat(formats.with(new BigDecimal("0.344"), 3, "°")).isEqualTo("0,344°");
        assertThat(formats.with(new BigDecimal("150"), 0, "°C")).isEqualTo("150\u00a0°C");
        assertThat(formats.with(new BigDecimal("12.5"), 1, "mm")).isEqualTo("12,5\u00a0mm");
    }

    @Test
    void timesAreTheShopsAndTodayNeedsNoDay() {
        assertThat(formats.time(TestClock.START)).isEqualTo("08:30");
        assertThat(formats.moment(TestClock.START)).isEqualTo("08:30");
        assertThat(formats.moment(Instant.parse("2026-03-16T10:20:00Z"))).isEqualTo("Mon 16 Mar 11:20");
        assertThat(formats.moment(Instant.parse("2025-12-31T23:30:00Z"))).isEqualTo("Thu 1 Jan 00:30");
        assertThat(formats.moment(Instant.parse("2025-09-30T10:00:00Z"))).isEqualTo("30 Sep 2025 12:00");
        assertThat(formats.day(LocalDate.of(2026, 3, 18))).isEqualTo("Wed 18 Mar");
        assertThat(formats.date(LocalDate.of(2026, 3, 18))).isEqualTo("18 Mar 2026");
    }

    @Test
    void whatIsLeftIsSaidInWordsAndNeverRoundedUp() {
        Instant now = TestClock.START;
        assertThat(formats.left(now.plus(Duration.ofMinutes(130)))).isEqualTo("2\u00a0h\u00a010\u00a0min");
        assertThat(formats.left(now.plus(Duration.ofSeconds(3599)))).isEqualTo("59\u00a0min");
        assertThat(formats.left(now.plus(Duration.ofSeconds(59)))).isEqualTo("59\u00a0s");
        assertThat(formats.left(now)).isEqualTo("no time");
        assertThat(formats.left(now.minusSeconds(5))).isEqualTo("no time");
        assertThat(formats.span(Duration.ofHours(50))).isEqualTo("2\u00a0days\u00a02\u00a0h");
        assertThat(formats.span(Duration.ofDays(9))).isEqualTo("9\u00a0days");
        assertThat(formats.hoursAndMinutes(Duration.ofMinutes(130))).isEqualTo("2:10");
    }

    @Test
    void theNumberOnTheTagIsTheLastThreeDigitsAndTheCheckCharacter() {
        assertThat(formats.mark("AV26101H")).isEqualTo("101\u2011H");
        assertThat(formats.mark("AV26101H-FT")).isEqualTo("101\u2011H");
        assertThat(formats.serial("AV26101H-FT")).isEqualTo("AV26\u2011101\u2011H\u2011FT");
    }

    @Test
    void anAmountIsWholeWhereItIsWhole() {
        assertThat(formats.money(new BigDecimal("1240.00"))).isEqualTo("1240\u00a0EUR");
        assertThat(formats.money(new BigDecimal("12.5"))).isEqualTo("12,50\u00a0EUR");
    }

    @Test
    void daysAreCountedOnTheShopsCalendar() {
        assertThat(formats.days(LocalDate.of(2026, 3, 18))).isEqualTo("0");
        assertThat(formats.days(LocalDate.of(2026, 3, 6))).isEqualTo("\u221212");
    }
}
