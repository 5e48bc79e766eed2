package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.shop.travellers.CharacteristicState;

/** The rule row by row, as the shop has it; rows are written by hand from its words. */
class ReplacingTest {

    @ParameterizedTest(name = "{0}, settable {1}, finer {2}, {3}, {4}: {5}")
    @CsvSource({
        "OPEN,           true,  false, ANEW,      CONFORMING,     TAKEN",
        "CONFORMING,     true,  false, ANEW,      CONFORMING,     TAKEN",
        "CONFORMING,     true,  false, ANEW,      UNDECIDED,      TAKEN",
        "CONFORMING,     true,  false, CORRECTED, NOT_CONFORMING, TAKEN",
        "FIRST_READ,     true,  false, ANEW,      CONFORMING,     TAKEN",
        "UNDECIDED,      true,  true,  ANEW,      CONFORMING,     TAKEN",
        "UNDECIDED,      true,  true,  ANEW,      NOT_CONFORMING, TAKEN",
        "UNDECIDED,      true,  false, ANEW,      CONFORMING,     WANTS_FINER",
        "UNDECIDED,      false, false, ANEW,      UNDECIDED,      WANTS_FINER",
        "UNDECIDED,      false, false, ANEW,      NOT_CONFORMING, WANTS_FINER",
        "UNDECIDED,      false, false, CORRECTED, CONFORMING,     WANTS_REASON",
        "UNDECIDED,      false, true,  CORRECTED, CONFORMING,     TAKEN",
        "UNDECIDED,      false, false, CORRECTED, UNDECIDED,      TAKEN",
        "UNDECIDED,      false, false, CORRECTED, NOT_CONFORMING, TAKEN",
        "UNDECIDED,      false, false, PUT_RIGHT, CONFORMING,     TAKEN",
        "NOT_CONFORMING, true,  false, ANEW,      CONFORMING,     WANTS_REASON",
        "NOT_CONFORMING, true,  false, ANEW,      UNDECIDED,      WANTS_REASON",
        "NOT_CONFORMING, true,  false, ANEW,      NOT_CONFORMING, TAKEN",
        "NOT_CONFORMING, true,  true,  ANEW,      UNDECIDED,      TAKEN",
        "NOT_CONFORMING, true,  true,  ANEW,      CONFORMING,     TAKEN",
        "NOT_CONFORMING, true,  false, CORRECTED, UNDECIDED,      WANTS_REASON",
        "NOT_CONFORMING, true,  false, CORRECTED, CONFORMING,     WANTS_REASON",
        "NOT_CONFORMING, true,  false, PUT_RIGHT, UNDECIDED,      TAKEN",
        "NOT_CONFORMING, true,  false, PUT_RIGHT, CONFORMING,     TAKEN",
        "NOT_CONFORMING, false, false, ANEW,      CONFORMING,     TAKEN",
    })
    void oneReadingTakesTheOthersPlace(
            CharacteristicState before,
            boolean settable,
            boolean finer,
            Replacing.Try how,
            Verdict verdict,
            Replacing expected) {
        assertThat(Replacing.of(before, settable, finer, how, verdict)).isEqualTo(expected);
    }
}
