package org.trammel.calc.fastening;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.trammel.calc.units.Answer;

/** Torque, pull, order and stack of tolerances against what the trade and its standards say. */
class FasteningTest {

    /** ISO 6789-1, from memory: 6 % up to 10 N·m, 4 % above. */
    @Test
    void aHandToolMayErrBySixPerCentUpToTenNewtonMetresAndByFourAbove() {
        assertThat(ToolError.percent(figure("2"))).isEqualByComparingTo("6");
        assertThat(ToolError.percent(figure("10"))).isEqualByComparingTo("6");
        assertThat(ToolError.percent(figure("10.01"))).isEqualByComparingTo("4");
    }

    /** Worked by hand: 5.5 ± 6 % is 5.17 to 5.83, inside 5 to 6; 5.9 ± 6 % reaches 6.254. */
    @Test
    void aTargetFitsWhereAllTheToolMayErrByStaysInTheBand() {
        TorqueFit middle = TorqueFit.of(figure("5.5"), figure("5"), figure("6"), figure("6"));
        assertThat(middle.inside()).isTrue();
        assertThat(middle.low_Nm()).isEqualByComparingTo("5.17");
        assertThat(middle.high_Nm()).isEqualByComparingTo("5.83");
        TorqueFit high = TorqueFit.of(figure("5.9"), figure("5"), figure("6"), figure("6"));
        assertThat(high.verdict()).isEqualTo(TorqueFit.Verdict.EITHER);
        assertThat(high.high_Nm()).isEqualByComparingTo("6.254");
        assertThat(high.leastTarget_Nm()).isEqualByComparingTo("5.32");
        assertThat(high.mostTarget_Nm()).isEqualByComparingTo("5.66");
    }

    /** The ends of what fits are themselves inside, a hundredth further is not: they are rounded inwards. */
    @Test
    void theTargetsThatAreToldToFitDoAndTheNextOnesDoNot() {
        TorqueFit told = TorqueFit.of(figure("5"), figure("5"), figure("6"), figure("6"));
        assertThat(fits(told.leastTarget_Nm())).isTrue();
        assertThat(fits(told.mostTarget_Nm())).isTrue();
        assertThat(fits(told.leastTarget_Nm().subtract(figure("0.01")))).isFalse();
        assertThat(fits(told.mostTarget_Nm().add(figure("0.01")))).isFalse();
    }

    private static boolean fits(BigDecimal torque) {
        return TorqueFit.of(torque, figure("5"), figure("6"), figure("6")).inside();
    }

    /** A band of 4.8 to 5.2 is ± 4 % about its middle: with 6 % nothing fits, with 4 % the middle does. */
    @Test
    void aBandNarrowerThanTheToolHasNoTargetAndSaysWhichToolWouldDo() {
        TorqueFit none = TorqueFit.of(figure("5"), figure("4.8"), figure("5.2"), figure("6"));
        assertThat(none.leastTarget_Nm()).isNull();
        assertThat(none.mostTarget_Nm()).isNull();
        assertThat(none.errorThatWouldDo_percent()).isEqualByComparingTo("4");
        assertThat(TorqueFit.of(figure("5"), figure("4.8"), figure("5.2"), figure("4"))
                        .inside())
                .isTrue();
        assertThat(TorqueFit.of(figure("5.9"), figure("4.8"), figure("5.2"), figure("6"))
                        .verdict())
                .isEqualTo(TorqueFit.Verdict.OUTSIDE);
        assertThat(TorqueFit.of(figure("4.4"), figure("4.8"), figure("5.2"), figure("6"))
                        .verdict())
                .isEqualTo(TorqueFit.Verdict.OUTSIDE);
    }

    /** F = T / (K d), Shigley; 10 N·m on M6: 10 / (0.2 · 6) = 8.33 kN dry, 10 / (0.12 · 6) = 13.89 kN greased. */
    @Test
    void greasePullsTheSameBoltHarderAtTheSameTorque() {
        assertThat(Preload.of_kN(figure("10"), Preload.DRY, figure("6")))
                .isEqualTo(new Answer.Determined<>(figure("8.33")));
        assertThat(Preload.of_kN(figure("10"), Preload.GREASED, figure("6")))
                .isEqualTo(new Answer.Determined<>(figure("13.89")));
        Stream.of(
                        Preload.of_kN(figure("-1"), Preload.DRY, figure("6")),
                        Preload.of_kN(figure("10"), figure("0"), figure("6")),
                        Preload.of_kN(figure("10"), Preload.DRY, figure("0")))
                .forEach(none -> assertThat(none).isInstanceOf(Answer.NotDeterminable.class));
    }

    /** By hand: 0.3² + 0.3² + 0.1² + 0.2² = 0.23, its root 0.4796; the sum 0.9. */
    @Test
    void theStackOfAJoinedRearEndIsHalfTheWorstCase() {
        StackUp stack = StackUp.of(List.of(figure("0.3"), figure("0.3"), figure("0.1"), figure("0.2")));
        assertThat(stack.worst()).isEqualByComparingTo("0.9");
        assertThat(stack.rss()).isEqualByComparingTo("0.48");
    }

    /** 1 3 2 4 and 1 5 3 7 2 6 4 8: star pattern of ASME PCC-1, from memory. */
    @Test
    void boltsAreTightenedCrosswise() {
        assertThat(BoltOrder.cross(4)).containsExactly(1, 3, 2, 4);
        assertThat(BoltOrder.cross(8)).containsExactly(1, 5, 3, 7, 2, 6, 4, 8);
        assertThat(BoltOrder.cross(2)).containsExactly(1, 2);
        assertThat(BoltOrder.cross(6)).containsExactly(1, 4, 2, 5, 3, 6);
        assertThat(BoltOrder.inTurn(3)).containsExactly(1, 2, 3);
        IntStream.rangeClosed(1, 24)
                .forEach(n -> assertThat(new HashSet<>(BoltOrder.cross(n))).hasSize(n));
    }

    private static BigDecimal figure(String text) {
        return new BigDecimal(text);
    }
}
