package org.trammel.calc.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.trammel.calc.marks.SerialNumber.Result;

/** The form is the workshop's; the check characters are those of its list of serials (ISO/IEC 7064, MOD 37,36). */
class SerialNumberTest {

    private static final SerialNumber FRAME = SerialNumber.of("AV", 26, 101);

    @Test
    void aSerialIsShownStoredAndTaggedInItsThreeForms() {
        assertThat(FRAME.shown()).isEqualTo("AV26-101-H");
        assertThat(FRAME.stored()).isEqualTo("AV26101H");
        assertThat(FRAME.tag()).isEqualTo("101-H");
        SerialNumber swingArm = SerialNumber.of("AV", 26, 104).part("SA");
        assertThat(swingArm.shown()).isEqualTo("AV26-104-B-SA");
        assertThat(swingArm.stored()).isEqualTo("AV26104B-SA");
        assertThat(swingArm.tag()).isEqualTo("104-B-SA");
        assertThat(swingArm.frame().stored()).isEqualTo("AV26104B");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "AV26-101-H",
                "av26101h",
                " AV26 101 H ",
                "AV26\u2011101\u2011H",
                "AV/26.101-H",
                "AV261O1H",
                "AV26IOIH",
                "av26l0lh"
            })
    void awholeSerialIsReadInManyForms(String typed) {
        assertThat(SerialNumber.read(typed)).isEqualTo(new Result.Whole(FRAME));
    }

    @Test
    void theCheckCharacterZeroMayBeTypedAsLetter() {
        assertThat(SerialNumber.read("AV26-118-O")).isEqualTo(new Result.Whole(SerialNumber.of("AV", 26, 118)));
    }

    @Test
    void leadingZerosAreKept() {
        SerialNumber old = SerialNumber.of("AV", 24, 37);
        assertThat(old.shown()).isEqualTo("AV24-037-V");
        assertThat(SerialNumber.read("037v")).isEqualTo(new Result.Tag(37, 'V', null));
    }

    @ParameterizedTest
    @ValueSource(strings = {"AV26104B-FT", "av26-104-b-ft", "AV26104BFT"})
    void aSubAssemblyIsReadWithItsPart(String typed) {
        assertThat(SerialNumber.read(typed))
                .isEqualTo(new Result.Whole(SerialNumber.of("AV", 26, 104).part("FT")));
    }

    @Test
    void aTagIsThatOfOneFrameOnly() {
        Result.Tag tag = (Result.Tag) SerialNumber.read("101-h");
        assertThat(tag.isOf(FRAME)).isTrue();
        assertThat(tag.isOf(SerialNumber.of("AV", 26, 102))).isFalse();
        assertThat(tag.isOf(SerialNumber.of("AV", 25, 101)))
                .as("same number of another year has another check character")
                .isFalse();
        assertThat(tag.isOf(FRAME.part("FT"))).as("a child is not its frame").isFalse();
        assertThat(((Result.Tag) SerialNumber.read("104-B-SA"))
                        .isOf(SerialNumber.of("AV", 26, 104).part("SA")))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"AV26-101-K", "AV26-110-H", "AV62-101-H", "VA26-101-H", "AV26-107-H"})
    void aWrongCheckCharacterSaysSo(String typed) {
        assertThat(SerialNumber.read(typed))
                .isInstanceOfSatisfying(
                        Result.WrongCheck.class,
                        wrong -> assertThat(wrong.reason()).contains("check character"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   ",
                "AV26",
                "101",
                "AV26-101-H-XX",
                "AV26-1O1-HH",
                "\uD83D\uDEB2",
                "\u0661\u0660\u0661H",
                "' or 1=1",
                "<script>",
                "A\u00DF26101H"
            })
    void whatIsNoSerialIsRefusedInWords(String typed) {
        assertThat(SerialNumber.read(typed)).isInstanceOf(Result.Unreadable.class);
    }

    @Test
    void aLongPasteIsRefusedAtOnce() {
        assertThat(SerialNumber.read("1".repeat(100_000))).isInstanceOf(Result.Unreadable.class);
        assertThat(SerialNumber.read(null)).isInstanceOf(Result.Unreadable.class);
    }

    @Test
    void noSerialIsMadeWithAWrongCheckCharacter() {
        assertThatThrownBy(() -> new SerialNumber("AV", 26, 101, 'K', null))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SerialNumber.of("AV", 26, 1000)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void everySerialIsReadBackFromEachOfItsForms(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            SerialNumber serial = SerialNumber.of("AV", random.nextInt(100), random.nextInt(1000));
            assertThat(SerialNumber.read(serial.shown())).isEqualTo(new Result.Whole(serial));
            assertThat(SerialNumber.read(serial.part("SA").stored())).isEqualTo(new Result.Whole(serial.part("SA")));
            assertThat(((Result.Tag) SerialNumber.read(serial.tag())).isOf(serial))
                    .isTrue();
        }
    }
}
