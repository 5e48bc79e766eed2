package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.shop.records.Refusal;

class TypedGeometryTest {

    @ParameterizedTest(name = "{0} {1} is refused")
    @CsvSource({
        "HEAD_ANGLE, 655, 'If 65,5° was meant'",
        "HEAD_ANGLE, 90, type it again",
        "HEAD_ANGLE, 120, type it again",
        "SEAT_ANGLE, 0, type it again",
        "SEAT_ANGLE, 90, type it again",
        "SEAT_ANGLE, 7.45, 'If 74,5° was meant'",
        "SEAT_TUBE, 17.5, 'If 444,5 mm (17,5 inches) was meant'",
        "DOWN_TUBE_OUTSIDE, 0, type it again",
        "DOWN_TUBE_OUTSIDE, -42, type it again",
        "FORK_LENGTH, 999999999, type it again",
        "SADDLE_HEIGHT, 74.8, 'If 748 mm was meant'",
        "SADDLE_HEIGHT, 29.4, 'If 746,8 mm (29,4 inches) was meant'",
        "SADDLE_TO_BAR, 22, 'If 558,8 mm (22 inches) was meant'",
        "SADDLE_TO_BAR, -560, type it again",
        "STEM_RISE, 170, 'If 17° was meant'",
        "TOP_TUBE_LENGTH, 24, 'If 240 mm was meant'",
        "DOWN_TUBE_MIDDLE_WALL, 0, type it again",
        "FORMED_DOWN_TUBE_SHELL, -35, type it again",
        "SLOT_DEPTH, 0, type it again"
    })
    void whatCannotBeIsRefusedAndSaysWhatMayHaveBeenMeant(GeometryInput input, BigDecimal value, String instead) {
        Refusal refused = refusal(input, value, true);
        assertThat(refused.kind()).isEqualTo(Refusal.Kind.INPUT);
        assertThat(refused.instead()).contains(instead);
    }

    @ParameterizedTest(name = "{0} {1} is asked about")
    @CsvSource({
        "HEAD_ANGLE, 58, 'Confirm it'",
        "FORK_LENGTH, 620, 'Confirm it'",
        "SHELL_DROP, -60, 'Confirm it'",
        "DOWN_TUBE_WALL, 3.5, 'If 0,35'",
        "SADDLE_HEIGHT, 480, 'Confirm it'",
        "SADDLE_SETBACK, -80, 'Confirm it'",
        "DOWN_TUBE_MIDDLE_WALL, 2.6, 'Confirm it'",
        "CHAINSTAY_BEND_1_OUT, 45, 'Confirm it'"
    })
    void whatIsUnusualIsAskedAboutAndTakenWhenConfirmed(GeometryInput input, BigDecimal value) {
        assertThat(refusal(input, value, false).kind()).isEqualTo(Refusal.Kind.ASK);
        assertThatCode(() -> check(input, value, true)).doesNotThrowAnyException();
    }

    @Test
    void aShellAboveTheRearAxleIsANegativeDropAndValid() {
        assertThatCode(() -> check(GeometryInput.SHELL_DROP, new BigDecimal("-20"), false))
                .doesNotThrowAnyException();
    }

    @Test
    void moreDecimalsThanAreKeptAreRefusedInsteadOfRounded() {
        assertThat(refusal(GeometryInput.HEAD_ANGLE, new BigDecimal("65.50001"), false)
                        .why())
                .contains("more than 4 decimals");
        assertThatCode(() -> check(GeometryInput.HEAD_ANGLE, new BigDecimal("65.500000"), false))
                .doesNotThrowAnyException();
    }

    private static Refusal refusal(GeometryInput input, BigDecimal value, boolean confirmed) {
        Refusal refused = catchThrowableOfType(Refusal.class, () -> check(input, value, confirmed));
        assertThat(refused).isNotNull();
        return refused;
    }

    private static void check(GeometryInput input, BigDecimal value, boolean confirmed) {
        input.band().check("geometry." + input.code(), "The draft was not changed.", value, confirmed);
    }
}
