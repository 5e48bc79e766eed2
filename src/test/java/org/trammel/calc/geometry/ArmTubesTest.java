package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

/**
 * The tubes of a swing arm: places and lengths worked by hand, both cuts against lines walked to their mates, and what cannot
 * be cut.
 */
class ArmTubesTest {

    private static final DropoutPlate PLATE = new DropoutPlate(6, 0.1, 25);
    private static final Point PIVOT = new Point(22, 72);
    private static final ArmPlan.Ends ENDS = new ArmPlan.Ends(18, 4, List.of());
    private static final ArmTubes.Mates MATES = new ArmTubes.Mates(34, 25, 40, PLATE);

    /** The shock's eye 182 from the pivot at 98°: 22 − 182 sin 8° ahead, 72 + 182 cos 8° above. */
    private static final Point EYE = new Point(22 - 25.3295, 72 + 180.2288);

    private static ArmPlan plan(StayBend... bends) {
        FrameGeometry geometry = DemoFrames.all()
                .filter(row -> row.name().equals("O-104"))
                .findFirst()
                .orElseThrow()
                .geometry();
        return value(ArmPlan.of(
                geometry,
                PIVOT,
                new ArmPlan.Sizes(48, 22, null, null, 148, PLATE, null),
                new ArmPlan.Ends(18, 4, List.of(bends))));
    }

    private static Answer<ArmTubes> tubes(double lower, double upper, ArmTubes.Mates mates) {
        return ArmTubes.of(plan(), EYE, TubeStock.plain(lower, 1.6), TubeStock.plain(upper, 1.4), mates, ENDS);
    }

    private static CutPiece piece(CutList list, FrameTube tube) {
        assertThat(list.notCut()).isEmpty();
        return list.pieces().stream()
                .filter(piece -> piece.tube() == tube)
                .findFirst()
                .orElseThrow();
    }

    private static <T> T value(Answer<T> answer) {
        assertThat(answer).as(answer.toString()).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<T>) answer).value();
    }

    /**
     * The axle lies 434,8241 behind the shell and 32 above it. Lower: 458,5720 − 18 in the side view and 43 outward, so
     * √(440,5720² + 43²) = 442,6655. Upper: √(431,4946² + 220,2288²) = 484,4464 from eye to axle, less 18, and from
     * 20 + 9 to 78 from the middle plane: √(466,4464² + 49²) = 469,0131.
     */
    @Test
    void bothMembersRunFromTheirMatesAxisToTheDropout() {
        ArmTubes tubes = value(tubes(22, 18, MATES));
        assertThat(tubes.lowerPath().developed_mm()).isCloseTo(442.6655, within(1e-3));
        assertThat(tubes.upperPath().developed_mm()).isCloseTo(469.0131, within(1e-3));
        assertThat(tubes.upperPath().chord().front().z_mm()).isEqualTo(29);
        assertThat(tubes.upperPath().chord().rear().z_mm()).isEqualTo(78);
    }

    @ParameterizedTest
    @CsvSource({"CHAINSTAY, 34, pivot boss", "SEATSTAY, 25, cross tube"})
    void eachIsCutOnWhatLiesAcrossTheFrame(FrameTube tube, double mate, String name) {
        ArmTubes tubes = value(tubes(22, 18, MATES));
        CutPiece piece = piece(tubes.cuts(CutListTest.RULES), tube);
        EndCut.Mitred end = (EndCut.Mitred) piece.endOne();
        assertThat(end.mate()).isEqualTo(name);
        Joint joint = end.mitre().curve().joint();
        assertThat(joint.mateOutside_mm()).isEqualTo(mate);
        BentStay path = tube == FrameTube.CHAINSTAY ? tubes.lowerPath() : tubes.upperPath();
        assertThat(joint.includedAngle_rad())
                .isCloseTo(Math.PI / 2 - path.chord().splay_rad(), within(1e-12));
        double least = Double.MAX_VALUE;
        for (MitreCurve.Station station : end.mitre().curve().stations()) {
            double walked = CylinderRays.setback_mm(joint, station.angle_rad());
            assertThat(station.setback_mm()).isCloseTo(walked, within(1e-7));
            least = Math.min(least, walked);
        }
        assertThat(piece.blank_mm())
                .as("axis less the shortest setback, and the trim of one cut")
                .isCloseTo(path.developed_mm() - least + CutListTest.RULES.trim_mm(), within(0.02));
        assertThat(piece.endTwo()).isInstanceOf(EndCut.Slotted.class);
    }

    /** Bent 6 outward at 70: the axis grows by what two sides of a triangle are longer than the third, the radius takes some. */
    @Test
    void aBentSideIsLongerThanAStraightOne() {
        ArmTubes bent = value(ArmTubes.of(
                plan(new StayBend(70, 6, 0)), EYE, TubeStock.plain(22, 1.6), TubeStock.plain(18, 1.4), MATES, ENDS));
        double chord = 442.6655;
        assertThat(bent.lowerPath().developed_mm())
                .isCloseTo(Math.hypot(70, 6) + Math.hypot(chord - 70, 6), within(1e-3));
        assertThat(Objects.requireNonNull(bent.upperPath().marks())).isEmpty();
    }

    @Test
    void sidesOfAnotherWidthThanTheirTubesAreNotCut() {
        assertThat(words(tubes(25, 18, MATES)))
                .containsExactly(
                        "The swing arm's sides are 22 mm wide and its chainstays 25 mm: only round sides can be cut.");
    }

    @Test
    void aMateThatIsNarrowerThanItsMemberIsNamedBesideTheOtherMember() {
        CutList list =
                value(tubes(22, 18, new ArmTubes.Mates(34, 16, 40, PLATE))).cuts(CutListTest.RULES);
        assertThat(list.pieces()).extracting(CutPiece::tube).containsExactly(FrameTube.CHAINSTAY);
        assertThat(list.notCut().get(0).words()).startsWith("Seatstay at the cross tube: The tube is 18 mm wide");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 25, 40, arm.boss",
        "34, -1, 40, arm.cross",
        "34, NaN, 40, arm.cross",
        "34, 25, 0, arm.upperInside",
        "34, 25, 1e308, arm.upperInside"
    })
    void aSizeThatCannotBeIsNamed(double boss, double cross, double inside, String input) {
        Answer<ArmTubes> answer = tubes(22, 18, new ArmTubes.Mates(boss, cross, inside, PLATE));
        assertThat(((Answer.NotDeterminable<ArmTubes>) answer).gaps())
                .extracting(Answer.Gap::input)
                .containsExactly(input);
    }

    @Test
    void anEyeAtTheDropoutLeavesNoMember() {
        Answer<ArmTubes> answer = ArmTubes.of(
                plan(), new Point(-434, 35), TubeStock.plain(22, 1.6), TubeStock.plain(18, 1.4), MATES, ENDS);
        assertThat(words(answer).get(0)).startsWith("Between the shock's eye and the dropout no room is left");
    }

    private static List<String> words(Answer<ArmTubes> answer) {
        return ((Answer.NotDeterminable<ArmTubes>) answer)
                .gaps().stream().map(Answer.Gap::words).toList();
    }
}
