package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

class MitreCurveTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    /** What a curve as bent as these can hide between two degrees: 30 mm · (0,5°)² . */
    private static final double HALF_A_DEGREE_MM = 2.3e-3;

    static Joint joint(double outside, double mate, double angle_deg, double offset) {
        return new Joint(Section.round(outside, outside / 30), mate, Math.toRadians(angle_deg), offset);
    }

    static MitreCurve curve(Joint joint) {
        return curve(joint, MitreCurve.USUAL_STATIONS);
    }

    static MitreCurve curve(Joint joint, int stations) {
        return ((Answer.Determined<MitreCurve>) MitreCurve.of(joint, stations)).value();
    }

    /** Right triangles 3-4-5 and 5-12-13, and what Pythagoras gives beside them. */
    @ParameterizedTest
    @CsvSource({
        "6, 10, 0, 0, 5",
        "6, 10, 0, 90, 4",
        "6, 10, 0, 180, 5",
        "6, 10, 0, 270, 4",
        "10, 26, 0, 90, 12",
        "2, 4, 0, 30, 1.936491673103709",
        "2, 4, 0, 90, 1.7320508075688772",
        "2, 10, 2, 90, 4",
        "2, 10, 2, 270, 4.898979485566356",
    })
    void aSquareMitreIsPythagoras(double tube, double mate, double offset, double angle_deg, double setback) {
        assertThat(curve(joint(tube, mate, 90, offset)).setback_mm(Math.toRadians(angle_deg)))
                .isCloseTo(setback, within(1e-12));
    }

    /** Two equal cylinders meet in two plane ellipses; half the angle's cotangent and tangent are their slopes. */
    @ParameterizedTest
    @CsvSource({"60, 1.732051, .577350", "45, 2.414214, .414214", "73, 1.351422, .739961"})
    void equalTubesMeetInPlanes(double angle_deg, double front, double back) {
        MitreCurve curve = curve(joint(2, 2, angle_deg, 0));
        for (MitreCurve.Station station : curve.stations()) {
            double x = Math.cos(station.angle_rad());
            assertThat(station.setback_mm()).isCloseTo(x > 0 ? front * x : -back * x, within(1e-6));
        }
        assertThat(curve.least_mm()).isCloseTo(0, within(1e-12));
        assertThat(curve.most_mm()).isCloseTo(front, within(1e-6));
    }

    /** Half of Steinmetz' solid: 16/3 for two unit cylinders at right angles. */
    @Test
    void theVolumeUnderTheCurveIsHalfOfSteinmetzSolid() {
        double volume = 0;
        int rings = 400;
        for (int i = 0; i < rings; i++) {
            double radius = (i + 0.5) / rings;
            for (MitreCurve.Station station :
                    curve(joint(2 * radius, 2, 90, 0), 360).stations().subList(0, 360)) {
                volume += station.setback_mm() * radius / rings * 2 * Math.PI / 360;
            }
        }
        assertThat(volume).isCloseTo(8.0 / 3, within(1e-4));
    }

    /** Written for this: lines along the tube walked until they meet the mate. */
    @Test
    void everyStationIsWhereALineAlongTheTubeMeetsItsMate() {
        Random random = new Random(20260318);
        for (int i = 0; i < 300; i++) {
            Joint joint = randomJoint(random);
            for (MitreCurve.Station station : curve(joint, 24).stations()) {
                assertThat(station.setback_mm())
                        .as("%s at %s", joint, station)
                        .isCloseTo(CylinderRays.setback_mm(joint, station.angle_rad()), within(1e-7));
            }
        }
    }

    static Joint randomJoint(Random random) {
        double mate = 20 + 50 * random.nextDouble();
        double across = mate * (0.2 + 0.79 * random.nextDouble());
        double inPlane = random.nextBoolean() ? across : 10 + 50 * random.nextDouble();
        double room = (mate - across) / 2;
        double offset = random.nextBoolean() ? 0 : room * (2 * random.nextDouble() - 1);
        return new Joint(new Section(inPlane, across, 1), mate, Math.toRadians(20 + 140 * random.nextDouble()), offset);
    }

    /** The script of these frames looked at every degree. */
    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void leastAndMostSetbackOfEveryFrameAreReached(DemoFrames.Row frame) {
        TubeAxes axes = frame.axes();
        double head = frame.number("head_tube_outside_mm");
        double seat = frame.number("seat_tube_outside_mm");
        double shell = frame.number("shell_outside_mm");
        double top = frame.number("top_tube_outside_mm");
        double down = frame.number("down_tube_outside_mm");
        assertSetbacks(frame, "TT_HT", top, head, axes.topTubeToHeadTube_rad());
        assertSetbacks(frame, "TT_ST", top, seat, axes.topTubeToSeatTube_rad());
        assertSetbacks(frame, "DT_HT", down, head, axes.downTubeToHeadTube_rad());
        assertSetbacks(frame, "DT_BB", down, shell, Math.PI / 2);
        assertSetbacks(frame, "ST_BB", seat, shell, Math.PI / 2);
    }

    private static void assertSetbacks(DemoFrames.Row frame, String joint, double tube, double mate, double angle_rad) {
        MitreCurve curve = curve(Joint.meeting(Section.round(tube, 0.7), mate, angle_rad), 360);
        double least = frame.number("mitre_" + joint + "_least");
        double most = frame.number("mitre_" + joint + "_most");
        assertThat(curve.stations().stream()
                        .mapToDouble(MitreCurve.Station::setback_mm)
                        .min())
                .hasValueCloseTo(least, ALL_DIGITS);
        assertThat(curve.stations().stream()
                        .mapToDouble(MitreCurve.Station::setback_mm)
                        .max())
                .hasValueCloseTo(most, ALL_DIGITS);
        assertThat(curve.least_mm()).isBetween(least - HALF_A_DEGREE_MM, least + 1e-12);
        assertThat(curve.most_mm()).isBetween(most - 1e-12, most + HALF_A_DEGREE_MM);
    }

    /** Worked by hand for a top tube of 34,9 and a down tube of 42 on a head tube of 54. */
    @ParameterizedTest
    @CsvSource({
        "34.9, 91.38, 0, 26.59",
        "34.9, 91.38, 30, 25.19",
        "34.9, 91.38, 60, 22.17",
        "34.9, 91.38, 90, 20.61",
        "34.9, 91.38, 120, 22.59",
        "34.9, 91.38, 150, 25.92",
        "34.9, 91.38, 180, 27.43",
        "42, 114.69, 0, 20.06",
        "42, 114.69, 30, 19.02",
        "42, 114.69, 60, 17.14",
        "42, 114.69, 90, 18.68",
        "42, 114.69, 120, 26.79",
        "42, 114.69, 150, 35.74",
        "42, 114.69, 180, 39.37",
    })
    void theWorkedFiguresAreReached(double tube, double angle_deg, double at_deg, double setback) {
        MitreCurve curve = curve(joint(tube, 54, angle_deg, 0), 12);
        MitreCurve.Station station = curve.stations().get((int) Math.round(at_deg / 30));
        assertThat(station.setback_mm()).isCloseTo(setback, within(0.005));
        assertThat(station.developed_mm()).isCloseTo(tube * Math.PI * at_deg / 360, ALL_DIGITS);
    }

    @Test
    void leastAndMostAreThoseOfVeryManyStations() {
        Random random = new Random(7);
        for (int i = 0; i < 100; i++) {
            Joint joint = randomJoint(random);
            MitreCurve coarse = curve(joint);
            MitreCurve fine = curve(joint, 3600);
            assertThat(coarse.least_mm()).isCloseTo(fine.least_mm(), within(1e-8));
            assertThat(coarse.most_mm()).isCloseTo(fine.most_mm(), within(1e-8));
            for (MitreCurve.Station station : fine.stations()) {
                assertThat(station.setback_mm()).isBetween(coarse.least_mm() - 1e-9, coarse.most_mm() + 1e-9);
            }
        }
    }

    @Test
    void mirrorScaleAndTurnKeepTheCurve() {
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            Joint joint = randomJoint(random);
            double angle = 2 * Math.PI * random.nextDouble();
            MitreCurve curve = curve(joint, 8);
            Section tube = joint.tube();
            Joint mirrored = new Joint(tube, joint.mateOutside_mm(), joint.includedAngle_rad(), -joint.offset_mm());
            assertThat(curve(mirrored, 8).setback_mm(-angle)).isCloseTo(curve.setback_mm(angle), ALL_DIGITS);
            Joint turned =
                    new Joint(tube, joint.mateOutside_mm(), Math.PI - joint.includedAngle_rad(), joint.offset_mm());
            assertThat(curve(turned, 8).setback_mm(Math.PI - angle)).isCloseTo(curve.setback_mm(angle), ALL_DIGITS);
            Joint doubled = new Joint(
                    new Section(2 * tube.inPlane_mm(), 2 * tube.acrossPlane_mm(), 2),
                    2 * joint.mateOutside_mm(),
                    joint.includedAngle_rad(),
                    2 * joint.offset_mm());
            assertThat(curve(doubled, 8).setback_mm(angle)).isCloseTo(2 * curve.setback_mm(angle), ALL_DIGITS);
        }
    }

    @Test
    void theDevelopedCurveClosesAtThePerimeter() {
        for (Section tube : new Section[] {Section.round(42, 1.4), new Section(35, 48.46, 1.4)}) {
            MitreCurve curve = curve(Joint.meeting(tube, 54, 1.2));
            MitreCurve.Station first = curve.stations().get(0);
            MitreCurve.Station last = curve.stations().get(72);
            assertThat(curve.stations()).hasSize(73);
            assertThat(last.developed_mm()).isCloseTo(tube.perimeter_mm(), ALL_DIGITS);
            assertThat(last.setback_mm()).isEqualTo(first.setback_mm());
        }
    }

    /** Computed apart, for a tube of 31,8 and its bore of 30 on a mate of 36 at 73°. */
    @Test
    void theBoreHasACurveOfItsOwn() {
        Joint joint = new Joint(Section.round(31.8, 0.9), 36, Math.toRadians(73), 0);
        MitreCurve outer = curve(joint);
        MitreCurve inner = ((Answer.Determined<MitreCurve>) MitreCurve.ofBore(joint, 72)).value();
        assertThat(outer.setback_mm(0)).isCloseTo(23.6836, within(5e-5));
        assertThat(inner.setback_mm(0)).isCloseTo(23.4084, within(5e-5));
        assertThat(outer.setback_mm(Math.PI / 2)).isCloseTo(8.8229, within(5e-5));
        assertThat(inner.setback_mm(Math.PI / 2)).isCloseTo(10.4045, within(5e-5));
        assertThat(inner.joint().tube().perimeter_mm()).isCloseTo(30 * Math.PI, ALL_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({
        "35.0, 1, 34.9, 90, 0, tubeOutside, The tube is 35 mm wide and its mate only 34.9 mm: its sides meet nothing.",
        "28.6, 1, 31.8, 90, 2, offset, 'The offset of 2 mm puts a side of the tube of 28.6 mm outside its mate of 31.8 mm: it may be 1.6 mm at most.'",
        "28.6, 1, 31.8, 0, 0, includedAngle, The included angle of 0° is not between 5° and 175°.",
        "28.6, 1, 31.8, 180, 0, includedAngle, The included angle of 180° is not between 5° and 175°.",
        "28.6, 1, 31.8, NaN, 0, includedAngle, The included angle of no number is not between 5° and 175°.",
        "28.6, 1, 31.8, 1e308, 0, includedAngle, The included angle of many turns is not between 5° and 175°.",
        "28.6, 14.3, 31.8, 90, 0, wall, The wall of 14.3 mm leaves no bore in a tube of 28.6 mm.",
        "28.6, 0, 31.8, 90, 0, wall, The tube's wall of 0 mm is not above 0 and at most 10 m.",
        "-28.6, 1, 31.8, 90, 0, tubeOutside, The tube's outside of -28.6 mm is not above 0 and at most 10 m.",
        "28.6, 1, Infinity, 90, 0, mateOutside, The mate's outside of no number is not above 0 and at most 10 m.",
        "28.6, 1, 1e308, 90, 0, mateOutside, The mate's outside of more than 1 km is not above 0 and at most 10 m.",
        "28.6, 1, 31.8, 90, NaN, offset, The offset of the axes of no number is not within 10 m to either side.",
    })
    void whatCannotBeCutIsNamed(
            double tube, double wall, double mate, double angle_deg, double offset, String input, String words) {
        Answer<MitreCurve> answer =
                MitreCurve.of(new Joint(Section.round(tube, wall), mate, Math.toRadians(angle_deg), offset), 72);
        assertThat(((Answer.NotDeterminable<MitreCurve>) answer).gaps()).contains(new Answer.Gap(input, words));
    }

    @ParameterizedTest
    @CsvSource({"0", "7", "10", "4000", "-72"})
    void aCurveHasAReasonableNumberOfStations(int stations) {
        assertThat(MitreCurve.of(joint(28.6, 31.8, 90, 0), stations))
                .isEqualTo(Answer.none(
                        "stations",
                        "The curve has " + stations + " stations, and takes a multiple of 4 from 8 to 3600."));
    }
}
