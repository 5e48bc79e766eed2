package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.geometry.CutListTest.value;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

class BentStayTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    /** Straight to the rear, 400 long, parallel to the middle plane. */
    private static final Stay LEVEL = new Stay(new SpacePoint(-20, 0, 50), new SpacePoint(-420, 0, 50));

    @Test
    void withoutABendItIsTheStraightStay() {
        BentStay straight = value(BentStay.of(LEVEL, List.of()));
        assertThat(straight.developed_mm()).isCloseTo(400, ALL_DIGITS);
        assertThat(straight.marks()).isEmpty();
        assertThat(straight.atFront()).isEqualTo(straight.atRear());
    }

    /** Sides 3-4-5: two straight parts of 250 about a corner 150 outside; each slopes by atan(3/4). */
    @Test
    void aCornerIsRoundedByItsRadius() {
        BentStay bent = value(BentStay.of(LEVEL, List.of(new StayBend(200, 150, 60))));
        double turn = 2 * Math.atan2(3, 4);
        double tangent = 60 * Math.tan(Math.atan2(3, 4));
        assertThat(tangent).isCloseTo(45, ALL_DIGITS);
        assertThat(bent.developed_mm()).isCloseTo(500 - 90 + 60 * turn, ALL_DIGITS);
        assertThat(bent.marks()).singleElement().satisfies(mark -> {
            assertThat(mark.begins_mm()).isCloseTo(205, ALL_DIGITS);
            assertThat(mark.arc_mm()).isCloseTo(60 * turn, ALL_DIGITS);
            assertThat(mark.turn_rad()).as("turns inward").isCloseTo(-turn, ALL_DIGITS);
        });
        assertThat(bent.atFront().z_mm()).isCloseTo(0.6, ALL_DIGITS);
        assertThat(bent.atRear().z_mm()).isCloseTo(-0.6, ALL_DIGITS);
    }

    /** An S that leaves both ends as they pointed: the second mark follows the first by the straight between. */
    @Test
    void twoBendsOfAnSTurnBothWays() {
        Stay splayed = new Stay(new SpacePoint(0, 0, 0), new SpacePoint(-390, 0, 52));
        BentStay bent = value(BentStay.of(splayed, List.of(new StayBend(120, -16, 100), new StayBend(270, 16, 100))));
        BentStay.Mark first = bent.marks().get(0);
        BentStay.Mark second = bent.marks().get(1);
        assertThat(first.turn_rad()).isPositive();
        assertThat(second.turn_rad()).isNegative();
        assertThat(bent.developed_mm()).isBetween(splayed.length_mm(), splayed.length_mm() * 1.02);
        assertThat(second.begins_mm()).isGreaterThan(first.begins_mm() + first.arc_mm());
        assertThat(bent.atFront().angleTo_rad(splayed.rearward())).isCloseTo(Math.atan2(16, 120), ALL_DIGITS);
    }

    /** With sharp corners it is the way along the corners. */
    @Test
    void aRadiusOfNothingIsASharpCorner() {
        BentStay bent = value(BentStay.of(LEVEL, List.of(new StayBend(100, 75, 0), new StayBend(300, 75, 0))));
        assertThat(bent.developed_mm()).isCloseTo(125 + 200 + 125, ALL_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 10, 50, along, The bend at 0 mm is not between 0 mm and the stay's end at 400 mm.",
        "400, 10, 50, along, The bend at 400 mm is not between 0 mm and the stay's end at 400 mm.",
        "NaN, 10, 50, along, The bend at no number is not between 0 mm and the stay's end at 400 mm.",
        "200, NaN, 50, outward, The bend's way off the straight line of no number is not within 10 m to either side.",
        "200, 10, -5, radius, The radius of the bend of -5 mm is not 0 or more and at most 10 m.",
        "200, 300, 10, outward, 'Bend 1 turns by 112.6°, more than 90°.'",
        "100, 75, 400, radius, Bend 1 with a radius of 400 mm begins 65.388 mm before the straight part ahead of it.",
    })
    void whatCannotBeBentIsNamed(double along, double outward, double radius, String input, String words) {
        Answer<BentStay> answer = BentStay.of(LEVEL, List.of(new StayBend(along, outward, radius)));
        assertThat(((Answer.NotDeterminable<BentStay>) answer).gaps()).contains(new Answer.Gap(input, words));
    }

    @Test
    void bendsThatRunIntoEachOtherOrPastTheEndAreNamed() {
        assertThat(BentStay.of(LEVEL, List.of(new StayBend(200, 10, 50), new StayBend(150, 10, 50))))
                .isEqualTo(
                        Answer.none("along", "The bend at 150 mm is not between 200 mm and the stay's end at 400 mm."));
        Answer<BentStay> past = BentStay.of(LEVEL, List.of(new StayBend(395, 10, 200)));
        assertThat(((Answer.NotDeterminable<BentStay>) past).gaps())
                .last()
                .satisfies(gap -> assertThat(gap.words()).startsWith("The last bend runs "));
    }

    /** A slope of 5 in 13: over a slot of 24 the plate drifts by 10. */
    @Test
    void aSlotRunsTiltedThroughASplayedStay() {
        SpacePoint rearward = new SpacePoint(-12.0 / 13, 0, 5.0 / 13);
        DropoutSlot slot = DropoutSlot.in(40, rearward, new DropoutPlate(6, 0.5, 24));
        assertThat(slot.width_mm()).isEqualTo(6.5);
        assertThat(slot.drift_mm()).isCloseTo(10, ALL_DIGITS);
        assertThat(Math.sin(slot.tilt_rad())).isCloseTo(5.0 / 13, ALL_DIGITS);
        assertThat(slot.left_mm()).isCloseTo(20 - 10 - 3.25 * 13 / 12, ALL_DIGITS);
        assertThat(new EndCut.Slotted(slot).cautions()).isEmpty();
    }

    @Test
    void aSlotThatBreaksOutIsTold() {
        SpacePoint rearward = new SpacePoint(-12.0 / 13, 0, -5.0 / 13);
        DropoutSlot slot = DropoutSlot.in(22, rearward, new DropoutPlate(6, 0, 24));
        assertThat(slot.drift_mm()).isCloseTo(-10, ALL_DIGITS);
        assertThat(new EndCut.Slotted(slot).cautions())
                .singleElement()
                .satisfies(caution -> assertThat(caution.kind()).isEqualTo(Caution.Kind.SLOT_BREAKS_OUT));
    }
}
