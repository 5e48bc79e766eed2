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

class MitreTemplateTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    private static EndCut.Mitred end(Section tube, double mate, double angle_deg, double offset) {
        Mitre mitre = value(
                Mitre.of(new Joint(tube, mate, Math.toRadians(angle_deg), offset), SawRules.usual(List.of(54.0))));
        return new EndCut.Mitred("head tube", mitre, -Math.PI / 2, Math.PI / 2);
    }

    private static MitreTemplate template(Section tube, double mate, double angle_deg, double offset) {
        return value(MitreTemplate.of(end(tube, mate, angle_deg, offset), 40));
    }

    @ParameterizedTest
    @CsvSource({"42, 42, 114.69, 0", "34.9, 34.9, 91.38, 5", "48.46, 35, 90, 0"})
    void thePaperIsAsWideAsTheTubeIsRoundAndAsHighAsTheCutIsDeep(
            double inPlane, double across, double angle_deg, double offset) {
        Section tube = new Section(inPlane, across, 1.4);
        MitreTemplate template = template(tube, 54, angle_deg, offset);
        List<PaperShape.Spot> cut = template.cutLine();
        assertThat(template.width_mm()).isCloseTo(tube.perimeter_mm(), ALL_DIGITS);
        assertThat(cut.get(0).x_mm()).isZero();
        assertThat(cut.get(cut.size() - 1).x_mm()).isCloseTo(tube.perimeter_mm(), ALL_DIGITS);
        assertThat(cut.get(cut.size() - 1).y_mm()).isEqualTo(cut.get(0).y_mm());
        assertThat(cut).allSatisfy(spot -> assertThat(spot.y_mm()).isBetween(40 - 1e-9, template.height_mm() + 1e-9));
        assertThat(cut.stream().mapToDouble(PaperShape.Spot::y_mm).min()).hasValueCloseTo(40.0, within(2e-3));
        assertThat(cut.stream().mapToDouble(PaperShape.Spot::y_mm).max())
                .hasValueCloseTo(template.height_mm(), within(2e-3));
        assertThat(template.height_mm()).isCloseTo(40 + template.depth_mm(), ALL_DIGITS);
    }

    /** Worked by hand for a tube of 42 on 54 at 114,69°: setbacks 20,06 at 0°, 39,37 at 180°, shortest 16,97. */
    @Test
    void thePaperIsCutDeepestWhereTheTubeIs() {
        MitreTemplate template = template(Section.round(42, 1.4), 54, 114.69, 0);
        assertThat(template.cutLine().get(180).y_mm()).isCloseTo(40, within(1e-9));
        assertThat(template.cutLine().get(0).y_mm()).isCloseTo(40 + 39.37 - 20.06, within(0.01));
        assertThat(template.depth_mm()).isCloseTo(39.37 - 16.97, within(0.01));
        assertThat(template.cutLine().get(30).x_mm()).isCloseTo(10.996, within(5e-4));
    }

    @Test
    void theLinesStandAtTheQuartersOfTheTube() {
        MitreTemplate template = template(new Section(48.46, 35, 1.4), 54, 90, 0);
        double quarter = template.width_mm() / 4;
        assertThat(template.centreLines())
                .extracting(line -> line.from().x_mm())
                .satisfiesExactly(
                        x -> assertThat(x).isZero(),
                        x -> assertThat(x).isCloseTo(quarter, ALL_DIGITS),
                        x -> assertThat(x).isCloseTo(2 * quarter, ALL_DIGITS),
                        x -> assertThat(x).isCloseTo(3 * quarter, ALL_DIGITS));
        assertThat(template.driveSide().from().x_mm()).isCloseTo(3 * quarter, ALL_DIGITS);
        assertThat(template.joiningLine().to())
                .isEqualTo(new PaperShape.Spot(template.joiningLine().from().x_mm(), template.height_mm()));
        assertThat(template.joiningLine().from().x_mm()).isCloseTo(quarter, ALL_DIGITS);
    }

    /** Wrapped back about the tube, every point of the paper is a point of the mate. */
    @Test
    void wrappedAboutTheTubeThePaperTouchesTheMateEverywhere() {
        EndCut.Mitred end = end(Section.round(34.9, 1.1), 54, 70, 3);
        MitreTemplate template = value(MitreTemplate.of(end, 40));
        Joint joint = end.mitre().curve().joint();
        double bottom = end.mitre().curve().most_mm();
        for (PaperShape.Spot spot : template.cutLine()) {
            double angle = spot.x_mm() / 17.45;
            double setback = bottom - (spot.y_mm() - 40);
            assertThat(setback).isCloseTo(CylinderRays.setback_mm(joint, angle), within(1e-7));
        }
    }

    @Test
    void theBoreHasANarrowerPaper() {
        MitreTemplate bore = value(MitreTemplate.ofBore(end(Section.round(38, 3.5), 54, 100, 0), 40));
        assertThat(bore.width_mm()).isCloseTo(31 * Math.PI, ALL_DIGITS);
    }

    @Test
    void aPaperWithoutABodyIsNamed() {
        assertThat(MitreTemplate.of(end(Section.round(38, 1), 54, 100, 0), Double.NaN))
                .isEqualTo(
                        Answer.none("body", "The paper below the cut of no number is not above 0 and at most 10 m."));
    }
}
