package org.trammel.calc.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Source of the rules: ISO 80000-1:2009, 7.3.2 and 7.3.3 (decimal sign a comma or a point on the line, no such sign
 * between groups of digits; from memory); the Unicode code charts for minus, dashes and spaces.
 */
class TypedNumberTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0,3|0.3",
                "0.3|0.3",
                "0,30|0.30",
                "\u22120,331|-0.331",
                "-0,331|-0.331",
                "\u20130.331|-0.331",
                "+12|12",
                "\u00A017,5\u202F|17.5",
                "- 1,5|-1.5",
                ",5|0.5",
                "007|7",
                "000000000000012,5|12.5",
                "-0,00|0.00",
                "999999999.999999|999999999.999999"
            })
    void whatPeopleTypeIsReadWithItsDecimals(String typed, BigDecimal value) {
        assertThat(TypedNumber.of(typed)).isEqualTo(new TypedNumber.Read(value));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   ",
                "\u00A0",
                "1.234,5",
                "1,234.5",
                "1,2,3",
                "1.2.3",
                "1 234",
                "1\u00A0234",
                "1'234",
                "5,",
                "-",
                "+",
                ",",
                "--1",
                "+-1",
                "1-2",
                "0x1F",
                "1F",
                "1e308",
                "1E3",
                "NaN",
                "Infinity",
                "-Infinity",
                "\u221E",
                "12 mm",
                "½",
                "\u0663",
                "\uFF11",
                "\uD83D\uDD27",
                "\u202E3,0",
                "=1+1",
                "<b>1</b>",
                "1; drop table reading",
                "1234567890",
                "0,1234567"
            })
    void whatCouldBeTwoNumbersOrNoneIsRefusedInWords(String typed) {
        assertThat(TypedNumber.of(typed))
                .isInstanceOfSatisfying(
                        TypedNumber.Unreadable.class,
                        unreadable ->
                                assertThat(unreadable.reason()).endsWith(".").doesNotContain("<", "!"));
    }

    @Test
    void aFieldThatWasNotSentIsNotZero() {
        assertThat(TypedNumber.of(null)).isInstanceOf(TypedNumber.Unreadable.class);
    }

    @Test
    void aLongPasteIsRefusedAtOnce() {
        assertThat(TypedNumber.of("0".repeat(100_000))).isInstanceOf(TypedNumber.Unreadable.class);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8})
    void whatIsWrittenIsReadBackExactly(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            BigDecimal number = BigDecimal.valueOf(random.nextLong(2_000_000_000L) - 1_000_000_000L, random.nextInt(7));
            for (DecimalSign sign : DecimalSign.values()) {
                assertThat(TypedNumber.of(sign.write(number))).isEqualTo(new TypedNumber.Read(number));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {13, 21, 34})
    void whateverIsTypedHasAnAnswer(long seed) {
        Random random = new Random(seed);
        String keys = "0123456789,.+-\u2212 \u00A0eExXnNaAiI'\u0663\uD83D";
        for (int i = 0; i < 5000; i++) {
            StringBuilder typed = new StringBuilder();
            for (int length = random.nextInt(12); length > 0; length--) {
                typed.append(keys.charAt(random.nextInt(keys.length())));
            }
            assertThat(TypedNumber.of(typed.toString())).isNotNull();
        }
    }
}
