package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** Against the invented workshop's frames, computed by a script written apart from this project. */
class CutListTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    /** The script looked for the shortest setback every degree; two ends can hide so much between. */
    private static final double EVERY_DEGREE_MM = 4.6e-3;

    static final SawRules RULES =
            SawRules.usual(List.of(28.6, 31.8, 34.9, 36.0, 38.0, 40.0, 42.0, 46.4, 50.0, 54.0, 56.0));

    private static final DropoutPlate PLATE = new DropoutPlate(6, 0.1, 25);

    static <T> T value(Answer<T> answer) {
        if (answer instanceof Answer.NotDeterminable<T> none) {
            throw new AssertionError(none.gaps());
        }
        return ((Answer.Determined<T>) answer).value();
    }

    static TubeSet tubes(DemoFrames.Row frame, @Nullable FormedEnd formed) {
        return new TubeSet(
                frame.number("head_tube_outside_mm"),
                frame.number("shell_outside_mm"),
                TubeStock.plain(frame.number("down_tube_outside_mm"), frame.number("dt_wall_mm")),
                TubeStock.plain(frame.number("top_tube_outside_mm"), frame.number("tt_wall_mm")),
                TubeStock.plain(frame.number("seat_tube_outside_mm"), frame.number("st_wall_mm")),
                formed == null ? Map.of() : Map.of(FormedPlace.DOWN_TUBE_AT_SHELL, formed),
                frame.has("CS_len3d") ? stays(frame) : null);
    }

    private static StaySet stays(DemoFrames.Row frame) {
        Stays stays = StaysTest.stays(frame);
        return new StaySet(
                value(BentStay.of(stays.chainstay(), List.of())),
                value(BentStay.of(stays.seatstay(), List.of())),
                TubeStock.plain(frame.number("chainstay_outside_mm", 22), frame.number("cs_wall_mm")),
                TubeStock.plain(frame.number("seatstay_outside_mm", 18), frame.number("ss_wall_mm")),
                PLATE);
    }

    static DemoFrames.Row frame(String name) {
        return DemoFrames.all()
                .filter(row -> row.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static CutList list(DemoFrames.Row frame, @Nullable FormedEnd formed) {
        return value(CutList.of(frame.axes(), tubes(frame, formed), RULES));
    }

    private static CutPiece piece(CutList list, FrameTube tube) {
        return list.pieces().stream()
                .filter(piece -> piece.tube() == tube)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void theBlanksOfEveryFrameAreReached(DemoFrames.Row frame) {
        CutList list = list(frame, null);
        assertThat(list.notCut()).isEmpty();
        assertThat(list.pieces())
                .extracting(CutPiece::tube)
                .containsExactly(
                        frame.has("CS_len3d")
                                ? FrameTube.values()
                                : new FrameTube[] {FrameTube.DOWN_TUBE, FrameTube.TOP_TUBE, FrameTube.SEAT_TUBE});
        assertBlank(piece(list, FrameTube.DOWN_TUBE), frame.number("DT_len"), frame.number("DT_blank"));
        assertBlank(piece(list, FrameTube.TOP_TUBE), frame.number("TT_len"), frame.number("TT_blank"));
        assertBlank(piece(list, FrameTube.SEAT_TUBE), frame.number("seat_tube_mm"), frame.number("ST_blank"));
    }

    private static void assertBlank(CutPiece piece, double axis, double blank) {
        assertThat(piece.axisLength_mm()).isCloseTo(axis, ALL_DIGITS);
        assertThat(piece.blank_mm()).isBetween(blank - 1e-9, blank + EVERY_DEGREE_MM);
        double everyDegree = axis;
        for (EndCut end : List.of(piece.endOne(), piece.endTwo())) {
            if (end instanceof EndCut.Mitred mitred) {
                Joint joint = mitred.mitre().curve().joint();
                everyDegree += 3
                        - IntStream.range(0, 360)
                                .mapToDouble(degree -> mitred.mitre().curve().setback_mm(Math.toRadians(degree)))
                                .min()
                                .orElseThrow();
                assertThat(joint.offset_mm()).isZero();
            }
        }
        assertThat(everyDegree).as("%s as the script looked", piece.tube()).isCloseTo(blank, ALL_DIGITS);
    }

    /** Worked apart: cut at 741,2, formed to 35 in the frame's plane, trimmed to 729,6. */
    @Test
    void aFormedEndIsTrimmedAfterForming() {
        FormedEnd formed = value(FormedEnd.of(42, 35, 60));
        CutPiece piece = piece(list(frame("O-101"), formed), FrameTube.DOWN_TUBE);
        assertThat(piece.blank_mm()).isCloseTo(741.2, within(0.05));
        assertThat(piece.forming()).isNotNull();
        assertThat(piece.forming().trimmed_mm()).isCloseTo(729.6, within(0.05));
        assertThat(kinds(piece)).doesNotContain(Caution.Kind.FEATHER_EDGE);
    }

    /** A tube wider than the shell can still be cut if its end is formed to go in. */
    @Test
    void aTubeWiderThanTheShellIsCutOnceItsEndIsFormed() {
        DemoFrames.Row frame = frame("O-101");
        TubeSet tubes = tubes(frame, value(FormedEnd.of(44, 36, 60)));
        TubeSet wide =
                new TubeSet(54, 42, TubeStock.plain(44, 1.4), tubes.topTube(), tubes.seatTube(), tubes.formed(), null);
        CutPiece piece = piece(value(CutList.of(frame.axes(), wide, RULES)), FrameTube.DOWN_TUBE);
        assertThat(piece.blank_mm() - piece.forming().trimmed_mm()).isCloseTo(Math.sqrt(21 * 21 - 18 * 18), ALL_DIGITS);
    }

    private static CutList formed(Map<FormedPlace, FormedEnd> ends) {
        DemoFrames.Row frame = frame("O-101");
        TubeSet plain = tubes(frame, null);
        return value(CutList.of(
                frame.axes(),
                new TubeSet(54, 42, plain.downTube(), plain.topTube(), plain.seatTube(), ends, plain.stays()),
                RULES));
    }

    /**
     * Every end that may be formed: its cut is walked up line by line on the oval (no formula of the curve), which stands
     * upright in the frame's plane; on the shell, which lies across, the two axes change places.
     */
    @ParameterizedTest
    @CsvSource({
        "DOWN_TUBE_AT_HEAD, 42, 36, false",
        "DOWN_TUBE_AT_SHELL, 42, 35, true",
        "TOP_TUBE_AT_HEAD, 34.9, 30, false",
        "TOP_TUBE_AT_SEAT, 34.9, 38, false",
        "SEAT_TUBE_AT_SHELL, 34.9, 38, true",
        "CHAINSTAY_AT_SHELL, 22, 26, true",
    })
    void aFormedEndIsCutAsItsOval(FormedPlace place, double round, double upright, boolean onShell) {
        FormedEnd end = value(FormedEnd.of(round, upright, 70));
        CutPiece before = piece(formed(Map.of()), place.tube());
        CutPiece piece = piece(formed(Map.of(place, end)), place.tube());
        boolean second = place == FormedPlace.DOWN_TUBE_AT_SHELL || place == FormedPlace.TOP_TUBE_AT_SEAT;
        MitreCurve curve = ((EndCut.Mitred) (second ? piece.endTwo() : piece.endOne()))
                .mitre()
                .curve();
        Section section = curve.joint().tube();
        assertThat(onShell ? section.acrossPlane_mm() : section.inPlane_mm()).isEqualTo(upright);
        assertThat(section.perimeter_mm()).isCloseTo(Math.PI * round, within(1e-9));
        double least = Double.MAX_VALUE;
        for (MitreCurve.Station station : curve.stations()) {
            double walked = CylinderRays.setback_mm(curve.joint(), station.angle_rad());
            assertThat(station.setback_mm()).isCloseTo(walked, within(1e-7));
            least = Math.min(least, walked);
        }
        assertThat(curve.least_mm()).isCloseTo(least, within(0.02));
        CutPiece.Forming forming = Objects.requireNonNull(piece.forming());
        assertThat(second ? forming.two() : forming.one()).isEqualTo(end);
        assertThat(second ? forming.one() : forming.two()).isNull();
        assertThat(piece.blank_mm()).as("sawn round").isCloseTo(before.blank_mm(), ALL_DIGITS);
        double roundLeast = (second ? before.endTwo() : before.endOne()).least_mm();
        assertThat(piece.blank_mm() - forming.trimmed_mm())
                .as("trimmed once formed")
                .isCloseTo(curve.least_mm() - roundLeast, within(1e-9));
    }

    @Test
    void bothEndsOfATubeMayBeFormedAndAZoneMustReachPastTheCut() {
        CutPiece down = piece(
                formed(Map.of(
                        FormedPlace.DOWN_TUBE_AT_HEAD, value(FormedEnd.of(42, 36, 10)),
                        FormedPlace.DOWN_TUBE_AT_SHELL, value(FormedEnd.of(42, 35, 60)))),
                FrameTube.DOWN_TUBE);
        assertThat(Objects.requireNonNull(down.forming()).one()).isNotNull();
        assertThat(down.forming().two()).isNotNull();
        double atHead = down.endOne().least_mm()
                - piece(formed(Map.of()), FrameTube.DOWN_TUBE).endOne().least_mm();
        assertThat(down.blank_mm() - down.forming().trimmed_mm())
                .isCloseTo(atHead + Math.sqrt(21 * 21 - 17.5 * 17.5), ALL_DIGITS);
        assertThat(down.cautions())
                .filteredOn(caution -> caution.kind() == Caution.Kind.SHORT_ZONE)
                .singleElement()
                .satisfies(caution -> assertThat(caution.words())
                        .startsWith("At the head tube the down tube is formed over 10 mm, and the cut is"));
    }

    @Test
    void zonesLongerThanTheTubeAreNamed() {
        CutList list = formed(Map.of(FormedPlace.TOP_TUBE_AT_HEAD, value(FormedEnd.of(34.9, 30, 640))));
        assertThat(list.pieces()).extracting(CutPiece::tube).doesNotContain(FrameTube.TOP_TUBE);
        assertThat(list.notCut()).singleElement().satisfies(gap -> {
            assertThat(gap.input()).isEqualTo("topTube.zone");
            assertThat(gap.words()).contains("long and would be formed over 640 mm.");
        });
    }

    private static List<Caution.Kind> kinds(CutPiece piece) {
        return piece.cautions().stream().map(Caution::kind).toList();
    }

    @Test
    void equalTubesAreToldAtTheirJoint() {
        CutList list = list(frame("O-101"), null);
        assertThat(piece(list, FrameTube.DOWN_TUBE).cautions()).singleElement().satisfies(caution -> {
            assertThat(caution.kind()).isEqualTo(Caution.Kind.FEATHER_EDGE);
            assertThat(caution.words()).startsWith("At the shell: A side of the tube of 42 mm");
        });
        assertThat(kinds(piece(list, FrameTube.TOP_TUBE))).containsExactly(Caution.Kind.FEATHER_EDGE);
        assertThat(kinds(piece(list, FrameTube.SEAT_TUBE))).isEmpty();
        assertThat(list(frame("O-102"), null).pieces())
                .allSatisfy(piece -> assertThat(kinds(piece)).isEmpty());
    }

    @Test
    void aSeatTubeAheadOfTheShellIsJoinedThroughAPart() {
        CutPiece seat = piece(list(frame("O-104"), null), FrameTube.SEAT_TUBE);
        assertThat(seat.cautions())
                .singleElement()
                .satisfies(caution -> assertThat(caution.words())
                        .startsWith(
                                "The seat tube's axis passes the shell's by 22 mm and could be cut on it up to 2 mm:"));
    }

    @Test
    void aSeatTubeALittleAheadOfTheShellIsCutWithItsOffset() {
        DemoFrames.Row frame = frame("O-101");
        Layout plain = frame.layout();
        Layout moved = new Layout(
                plain.headAngle_rad(),
                plain.seatAngle_rad(),
                plain.reach_mm(),
                plain.headTube_mm(),
                plain.lowerStack_mm(),
                plain.forkLength_mm(),
                plain.forkOffset_mm(),
                plain.shellDrop_mm(),
                plain.chainstay_mm(),
                plain.seatTube_mm(),
                2,
                plain.frontWheelRadius_mm(),
                plain.rearWheelRadius_mm());
        TubeAxes axes = value(TubeAxes.of(value(FrameGeometry.of(moved)), TubeAxesTest.places(frame)));
        CutPiece seat = piece(value(CutList.of(axes, tubes(frame, null), RULES)), FrameTube.SEAT_TUBE);
        // the front of the tube lies 17,45 + 2 ahead of the shell's axis
        assertThat(seat.endOne().least_mm()).isCloseTo(Math.sqrt(21 * 21 - 19.45 * 19.45), ALL_DIGITS);
        MitreCurve curve = ((EndCut.Mitred) seat.endOne()).mitre().curve();
        assertThat(curve.joint().offset_mm()).as("φ = 90° is to the rear").isCloseTo(-2, ALL_DIGITS);
    }

    @Test
    void aTubeThatCannotBeCutIsNamedBesideThoseThatCan() {
        DemoFrames.Row frame = frame("O-101");
        TubeSet tubes = tubes(frame, null);
        TubeSet wide =
                new TubeSet(54, 42, tubes.downTube(), TubeStock.plain(35, 1.1), tubes.seatTube(), Map.of(), null);
        CutList list = value(CutList.of(frame.axes(), wide, RULES));
        assertThat(list.pieces()).extracting(CutPiece::tube).containsExactly(FrameTube.DOWN_TUBE, FrameTube.SEAT_TUBE);
        assertThat(list.notCut())
                .containsExactly(new Answer.Gap(
                        "topTube.tubeOutside",
                        "Top tube at the seat tube: The tube is 35 mm wide and its mate only 34.9 mm: its sides meet"
                                + " nothing."));
    }

    /** The side that faces the rider's right foot, found by looking at the frame and not at the code. */
    @Test
    void phaseAndDriveSideAreThoseOfTheFrame() {
        CutList list = list(frame("O-102"), null);
        CutPiece top = piece(list, FrameTube.TOP_TUBE);
        assertThat(top.phase_rad()).isCloseTo(0, within(1e-12));
        // standing behind the head tube, cut up: the underside in front of one, the non-drive side to the right
        assertThat(((EndCut.Mitred) top.endOne()).driveSideAt_rad()).isCloseTo(-Math.PI / 2, within(1e-12));
        assertThat(((EndCut.Mitred) top.endTwo()).driveSideAt_rad()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(((EndCut.Mitred) top.endTwo()).lineAt_rad()).isCloseTo(0, within(1e-12));
        CutPiece down = piece(list, FrameTube.DOWN_TUBE);
        // φ = 0 at the head tube is the upper side; seen from there towards the shell the drive side is a quarter turn
        // anticlockwise, for one looks rearward and the drive side is to the left
        assertThat(down.phase_rad()).isCloseTo(-Math.PI / 2, within(1e-12));
        assertThat(((EndCut.Mitred) down.endTwo()).driveSideAt_rad()).isCloseTo(0, within(1e-12));
        assertThat(Math.abs(((EndCut.Mitred) down.endTwo()).lineAt_rad())).isCloseTo(Math.PI / 2, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.StaysTest#withStays")
    void theChainstayReachesTheShellWithItsLips(DemoFrames.Row frame) {
        CutPiece piece = piece(list(frame, null), FrameTube.CHAINSTAY);
        Stay stay = StaysTest.stays(frame).chainstay();
        double radius = frame.number("shell_outside_mm") / 2;
        MitreCurve curve = ((EndCut.Mitred) piece.endOne()).mitre().curve();
        assertThat(curve.joint().includedAngle_rad()).isCloseTo(Math.PI / 2 - stay.splay_rad(), ALL_DIGITS);
        assertThat(piece.axisLength_mm() - curve.axisSetback_mm()).isCloseTo(frame.number("CS_len3d"), ALL_DIGITS);
        assertThat(piece.blank_mm())
                .isCloseTo(
                        frame.number("CS_len3d") + radius / Math.cos(stay.splay_rad()) - curve.least_mm() + 3,
                        ALL_DIGITS);
        assertThat(piece.tube().count()).isEqualTo(2);
        CutPiece seatstay = piece(list(frame, null), FrameTube.SEATSTAY);
        assertThat(seatstay.blank_mm()).isCloseTo(frame.number("SS_len3d") + 3, ALL_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1.4, 54, downTube.outside, The down tube's outside of 0 mm is not above 0 and at most 10 m.",
        "42, 21, 54, downTube.wall, The down tube's wall of 21 mm leaves no bore in 42 mm.",
        "42, NaN, 54, downTube.wall, The down tube's wall of no number is not above 0 and at most 10 m.",
        "42, 1.4, -1, headTubeOutside, The head tube's outside of -1 mm is not above 0 and at most 10 m.",
    })
    void aNumberThatCannotBeIsNamed(double outside, double wall, double head, String input, String words) {
        DemoFrames.Row frame = frame("O-101");
        TubeSet tubes = tubes(frame, null);
        TubeSet wrong = new TubeSet(
                head, 42, TubeStock.plain(outside, wall), tubes.topTube(), tubes.seatTube(), Map.of(), null);
        Answer<CutList> answer = CutList.of(frame.axes(), wrong, RULES);
        assertThat(((Answer.NotDeterminable<CutList>) answer).gaps()).contains(new Answer.Gap(input, words));
    }

    @Test
    void aFormedEndOfAnotherTubeIsNamed() {
        DemoFrames.Row frame = frame("O-102");
        Answer<CutList> answer = CutList.of(frame.axes(), tubes(frame, value(FormedEnd.of(42, 35, 60))), RULES);
        assertThat(answer)
                .isEqualTo(Answer.none(
                        "downTube.formedAtShell",
                        "The formed end is that of a tube of 42 mm, and the down tube has 38 mm."));
    }
}
