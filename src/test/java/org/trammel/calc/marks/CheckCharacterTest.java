package org.trammel.calc.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.trammel.calc.marks.CheckCharacter.Result;

class CheckCharacterTest {

    @ParameterizedTest
    @CsvSource({
        // GRid standard 2.1 (release identifier of recordings), worked example A1-2425G-ABC1234002-M
        "A12425GABC1234002, M",
        // ISO 15706 (ISAN), example of the registration agency, 0000-0000-D07A-0090-Q-0000-0000-X; from memory
        "00000000D07A0090, Q",
        "00000000D07A009000000000, X",
        // documentation page of a data-integration product for ISO 7064 Mod 37/36
        "123AB, X"
    })
    void publishedExamplesComeOut(String text, char check) {
        assertThat(CheckCharacter.of(text)).isEqualTo(new Result.Determined(check));
        assertThat(CheckCharacter.verifies(text + check)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        // the workshop's own list of serials, worked by hand before there was a program
        "AV26101, H",
        "AV26102, F",
        "AV26105, 9",
        "AV26118, 0",
        "AV26119, Y",
        "AV24037, V"
    })
    void theWorkshopsSerialsComeOut(String seven, char check) {
        assertThat(CheckCharacter.of(seven)).isEqualTo(new Result.Determined(check));
    }

    @Test
    void smallLettersAreReadAsCapitals() {
        assertThat(CheckCharacter.of("a12425gabc1234002")).isEqualTo(new Result.Determined('M'));
        assertThat(CheckCharacter.verifies("av26101h")).isTrue();
    }

    @Test
    void letterOAndDigitZeroAreDifferentCharacters() {
        assertThat(CheckCharacter.of("AV2610O")).isNotEqualTo(CheckCharacter.of("AV26100"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "AV-26101", "AV 26101", "ÅV26101", "\u00DF", "\u0131", "\u0663"})
    void otherCharactersHaveNoCheckCharacter(String text) {
        assertThat(CheckCharacter.of(text)).isInstanceOf(Result.NotDeterminable.class);
        assertThat(CheckCharacter.verifies(text + "H")).isFalse();
    }

    /** Source: ISO/IEC 7064:2003, clause on error detection: all single substitutions are found (from memory). */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8})
    void everySingleWrongCharacterIsFound(long seed) {
        Random random = new Random(seed);
        String characters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
        for (int i = 0; i < 200; i++) {
            SerialNumber serial = SerialNumber.of("AV", random.nextInt(100), random.nextInt(1000));
            String right = serial.stored();
            int at = random.nextInt(right.length());
            for (char other : characters.toCharArray()) {
                String text = right.substring(0, at) + other + right.substring(at + 1);
                assertThat(CheckCharacter.verifies(text)).isEqualTo(text.equals(right));
            }
        }
    }
}
