package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.trammel.calc.metrology.BetterBase.Base;
import org.trammel.calc.metrology.BetterBase.Tube;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;

/** On the worked example of {@link AlignmentPlateTest}: undecided on 90 mm, decided by the mandrel of 300 mm. */
class BetterBaseTest {

    private static final Judging TWIST =
            Judging.guarded(Limits.between(new BigDecimal("-0.30"), new BigDecimal("0.30")));
    private static final List<Contribution> ON_TUBE =
            AlignmentPlateTest.reading("any", 150, true, true).contributions();
    private static final List<Contribution> ON_MANDREL =
            AlignmentPlateTest.reading("any", 150, false, true).contributions();
    private static final Base WIDER = new Base("the head tube over 110 mm", Tube.HEAD_TUBE, 110, "HG-1", ON_TUBE);
    private static final Base MANDREL = new Base("the mandrel over 300 mm", Tube.HEAD_TUBE, 300, "HG-1", ON_MANDREL);
    private static final Base SEAT = new Base("the seat tube over 400 mm", Tube.SEAT_TUBE, 400, "HG-1", ON_TUBE);

    /** u of the twist on the mandrel is 0,020°; −0,331° lies between 0,267 and 0,333 still, and −0,35° does not. */
    @Test
    void theMandrelIsProposedWhereItDecides() {
        BetterBase near = look(AlignmentPlateTest.example(AlignmentPlateTest.head90(), true), List.of(MANDREL));
        assertThat(near.decision().word()).isEqualTo("undecided");
        assertThat(near.prospects().get(0).u().doubleValue()).isCloseTo(0.020, within(0.0005));
        assertThat(near.proposed()).isEmpty();
        assertThat(near.words(DecimalSign.COMMA))
                .isEqualTo("The twist, −0,331°, is undecided, and would be with the mandrel over 300 mm as well: it"
                        + " lies too near its limit.");
        BetterBase further = look(leaning(149.85), List.of(WIDER, SEAT, MANDREL));
        assertThat(further.decision().word()).isEqualTo("undecided");
        assertThat(further.proposed()).map(p -> p.base().name()).contains(MANDREL.name());
        assertThat(further.words(DecimalSign.COMMA))
                .contains("Measure with the mandrel over 300 mm to decide", "not conforming");
        assertThat(further.prospects()).extracting(BetterBase.Prospect::decides).containsExactly(false, false, true);
    }

    /** u by hand for each base: √2 u (1/L_head ⊕ 1/L_seat). */
    @Test
    void theUncertaintyOfABaseIsKnownBeforehand() {
        BetterBase look = look(leaning(149.85), List.of(WIDER, SEAT, MANDREL));
        double u = Math.sqrt(0.012 * 0.012 + 2 * 0.03 * 0.03 + 0.006 * 0.006);
        double onTube = Math.hypot(u, 0.04);
        double[] expected = {
            Math.hypot(onTube / 110, onTube / 300),
            Math.hypot(onTube / 90, onTube / 400),
            Math.hypot(u / 300, onTube / 300)
        };
        for (int i = 0; i < 3; i++) {
            assertThat(look.prospects().get(i).u().doubleValue())
                    .isCloseTo(Math.toDegrees(Math.sqrt(2) * expected[i]), within(1e-4));
        }
    }

    /** JCGM 101:2008: draw what is known now, read anew on the base, count how often it decides. */
    @Test
    void theChanceToDecideIsThatOfRepeatedDraws() {
        BetterBase look = look(AlignmentPlateTest.example(AlignmentPlateTest.head90(), true), List.of(MANDREL));
        double u = Math.sqrt(0.012 * 0.012 + 2 * 0.03 * 0.03 + 0.006 * 0.006);
        double onTube = Math.hypot(u, 0.04);
        Random random = new Random(77);
        double y = look.decision().basis().value().doubleValue();
        DecisionBasis bounds = look.prospects().get(0).decision().basis();
        int decided = 0;
        int draws = 200_000;
        for (int i = 0; i < draws; i++) {
            // The seat tube's readings stay, so its error is in both; the head tube's true lean is what is not known.
            double trueLean = y - Math.toDegrees(Math.sqrt(2) * onTube / 90) * random.nextGaussian();
            double next = trueLean + Math.toDegrees(Math.sqrt(2) * u / 300) * random.nextGaussian();
            boolean conforms = next >= bounds.conformingFrom().doubleValue()
                    && next <= bounds.conformingTo().doubleValue();
            boolean not = next < bounds.notConformingBelow().doubleValue()
                    || next > bounds.notConformingAbove().doubleValue();
            decided += conforms || not ? 1 : 0;
        }
        assertThat(look.prospects().get(0).chance()).isCloseTo((double) decided / draws, within(0.005));
    }

    @Test
    void aBaseThatCannotBeIsRefusedInWords() {
        PlateReadings readings = AlignmentPlateTest.example(AlignmentPlateTest.head90(), true);
        for (double length : new double[] {0, -1, Double.NaN, 5}) {
            Base base = new Base("a base", Tube.HEAD_TUBE, length, "HG-1", ON_TUBE);
            assertThat(BetterBase.of(readings, Deviation.TWIST, TWIST, List.of(base)))
                    .isInstanceOf(Answer.NotDeterminable.class);
        }
        Base sure = new Base("a base", Tube.HEAD_TUBE, 300, "HG-1", List.of());
        assertThat(BetterBase.of(readings, Deviation.TWIST, TWIST, List.of(sure)))
                .isInstanceOf(Answer.NotDeterminable.class);
        assertThat(BetterBase.of(readings, Deviation.REAR_AXLE_OFFSET, TWIST, List.of(MANDREL)))
                .isInstanceOf(Answer.NotDeterminable.class);
    }

    @Test
    void whatIsDecidedNeedsNoOtherBase() {
        BetterBase look = look(leaning(150.2), List.of(MANDREL));
        assertThat(look.decision().word()).isEqualTo("conforming");
        assertThat(look.proposed()).isEmpty();
        assertThat(look.words(DecimalSign.POINT)).endsWith("is conforming.");
    }

    private static PlateReadings leaning(double upper_mm) {
        return AlignmentPlateTest.example(
                AlignmentPlateTest.headAt(
                        45,
                        AlignmentPlateTest.reading("HT lower", 150.31, true, true),
                        AlignmentPlateTest.reading("HT upper", upper_mm, true, true)),
                true);
    }

    private static BetterBase look(PlateReadings readings, List<Base> bases) {
        Answer<BetterBase> answer = BetterBase.of(readings, Deviation.TWIST, TWIST, bases);
        assertThat(answer).as(answer.toString()).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<BetterBase>) answer).value();
    }
}
