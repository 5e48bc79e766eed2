package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

class MitreTest {

    private static final SawRules RULES = SawRules.usual(List.of(54.0, 28.6, 54.1, 35.0, 36.3));

    private static Mitre mitre(double outside, double wall, double mate, double angle_deg) {
        return ((Answer.Determined<Mitre>)
                        Mitre.of(Joint.meeting(Section.round(outside, wall), mate, Math.toRadians(angle_deg)), RULES))
                .value();
    }

    private static List<Caution.Kind> kinds(Mitre mitre) {
        return mitre.cautions().stream().map(Caution::kind).toList();
    }

    @Test
    void aUsualJointHasNoCaution() {
        assertThat(mitre(34.9, 1.15, 54, 91.38).cautions()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "54, 54",
                "53.95, 54",
                "53.9, 54",
                "54.01, 54.1",
                "34.8, 35",
                "34.79, none",
                "36, none",
                "36.1, 36.3",
                "55, none",
            })
    void theSawIsAsLargeAsTheMateOrAFifthOfAMillimetreMore(double mate, Double saw) {
        Answer<Double> answer = mitre(20, 1, mate, 80).fixture().holeSaw_mm();
        if (saw == null) {
            assertThat(answer)
                    .isEqualTo(Answer.none(
                            "holeSaws",
                            "No hole saw from " + Objections.shown(mate) + " to " + Objections.shown(mate + 0.2)
                                    + " is at hand."));
        } else {
            assertThat(answer).isEqualTo(Answer.of(saw));
        }
    }

    @Test
    void theFixtureTakesTheInteriorAngleAndItsSwingFromSquare() {
        FixtureSetting fixture = mitre(42, 1.4, 54, 114.69).fixture();
        assertThat(Math.toDegrees(fixture.includedAngle_rad())).isCloseTo(114.69, within(1e-9));
        assertThat(Math.toDegrees(fixture.swing_rad())).isCloseTo(24.69, within(1e-9));
        assertThat(Math.toDegrees(mitre(42, 1.4, 54, 70).fixture().swing_rad())).isCloseTo(-20, within(1e-9));
    }

    @Test
    void anOffsetTubeIsHeldAsMuchBesideTheSaw() {
        Joint joint = new Joint(Section.round(20, 1), 54, 1.4, 7);
        FixtureSetting fixture =
                ((Answer.Determined<Mitre>) Mitre.of(joint, RULES)).value().fixture();
        assertThat(fixture.offset_mm()).isEqualTo(-7);
    }

    @Test
    void whatSpoilsACutIsSaidWithItsFigures() {
        assertThat(mitre(34.9, 1.1, 34.9, 97.6).cautions())
                .contains(new Caution(
                        Caution.Kind.FEATHER_EDGE,
                        "A side of the tube of 34.9 mm ends where its mate of 34.9 mm ends: the cut runs out to a"
                                + " feather edge. Form the tube or decide."));
        assertThat(kinds(mitre(34.8, 1.1, 34.9, 97.6))).doesNotContain(Caution.Kind.FEATHER_EDGE);
        assertThat(mitre(20, 1, 54, 24.9).cautions())
                .containsExactly(new Caution(
                        Caution.Kind.SHALLOW_ANGLE,
                        "The tube leans to its mate at 24.9°, below 25°: cut by the template or on a mill, not with a"
                                + " hole saw."));
        assertThat(kinds(mitre(20, 1, 54, 155.1))).containsExactly(Caution.Kind.SHALLOW_ANGLE);
        assertThat(kinds(mitre(20, 1, 54, 25.1))).isEmpty();
        assertThat(kinds(mitre(20, 3.01, 54, 80))).containsExactly(Caution.Kind.BORE_TEMPLATE);
        assertThat(kinds(mitre(20, 3, 54, 80))).isEmpty();
        assertThat(kinds(mitre(20, 1, 55, 80))).containsExactly(Caution.Kind.NO_HOLE_SAW);
    }

    @Test
    void aTubeATenthWiderThanItsMateIsNotCut() {
        assertThat(Mitre.of(Joint.meeting(Section.round(35, 1.1), 34.9, 1.7), RULES))
                .isEqualTo(Answer.none(
                        "tubeOutside", "The tube is 35 mm wide and its mate only 34.9 mm: its sides meet nothing."));
    }

    @Test
    void rulesThatCannotBeAreNamed() {
        SawRules wrong = new SawRules(List.of(54.0, Double.NaN), -0.1, Double.NaN, 3, 3, 60);
        Answer<Mitre> answer = Mitre.of(Joint.meeting(Section.round(20, 1.1), 34.9, 1.7), wrong);
        assertThat(((Answer.NotDeterminable<Mitre>) answer).gaps())
                .extracting(Answer.Gap::input)
                .containsExactly("oversize", "shallowest", "holeSaws");
    }

    /** An oval with its narrow axis across the plane stands deeper in a mate of its own round size. */
    @Test
    void aFormedEndLosesItsFeatherEdgeOnTheShell() {
        FormedEnd end = ((Answer.Determined<FormedEnd>) FormedEnd.of(42, 35, 60)).value();
        Mitre mitre =
                ((Answer.Determined<Mitre>) Mitre.of(Joint.meeting(end.onShell(1.4), 42, Math.PI / 2), RULES)).value();
        assertThat(kinds(mitre)).doesNotContain(Caution.Kind.FEATHER_EDGE);
        assertThat(mitre.curve().least_mm()).isCloseTo(Math.sqrt(21 * 21 - 17.5 * 17.5), within(1e-9));
        assertThat(mitre.curve().most_mm()).isCloseTo(21, within(1e-9));
        assertThat(mitre.bore().least_mm()).isCloseTo(Math.sqrt(21 * 21 - 16.1 * 16.1), within(1e-9));
        assertThat(mitre.bore().stations()).hasSameSizeAs(mitre.curve().stations());
        assertThat(mitre.curve().joint().tube().isRound()).isFalse();
    }

    /** The right triangle 5-12-13: an axis 5 beside that of a mate of radius 13 leaves it at 12. */
    @Test
    void theSetbackOfAnOffsetAxisIsPythagoras() {
        Joint joint = new Joint(Section.round(10, 1), 26, Math.PI / 2, 5);
        assertThat(MitreCurveTest.curve(joint).axisSetback_mm()).isCloseTo(12, within(1e-12));
    }

    /** Along an oval's outline by very many chords, at every station. */
    @Test
    void theDevelopedLengthOfAnOvalIsThatOfItsChords() {
        double a = 48.46 / 2;
        double b = 17.5;
        MitreCurve curve = MitreCurveTest.curve(Joint.meeting(new Section(2 * a, 2 * b, 1.4), 42, Math.PI / 2));
        double chords = 0;
        int each = 2000;
        for (int i = 0; i < 72; i++) {
            assertThat(curve.stations().get(i).developed_mm()).isCloseTo(chords, within(1e-5));
            for (int j = 0; j < each; j++) {
                double from = 2 * Math.PI * (i + j / (double) each) / 72;
                double to = 2 * Math.PI * (i + (j + 1) / (double) each) / 72;
                chords += Math.hypot(a * (Math.cos(to) - Math.cos(from)), b * (Math.sin(to) - Math.sin(from)));
            }
        }
    }
}
