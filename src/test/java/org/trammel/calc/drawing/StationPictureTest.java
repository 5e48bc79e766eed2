package org.trammel.calc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.geometry.SideView.Part;

/** The part that a step names, told by the width of its lines and by its name. */
class StationPictureTest {

    private static final Letters LETTERS = DrawnSheetsTest.LETTERS;

    /** Steps as routes of the shop write them. */
    private static final List<String> STEPS = List.of(
            "Node 1: down tube to shell",
            "Node 2: seat tube to shell",
            "Node 3: down tube to head tube",
            "Node 4: top tube to head tube",
            "Node 5: top tube to seat tube",
            "Node 6: chainstays to shell",
            "Node 7: seatstays to seat tube",
            "Node 8: dropouts",
            "Shell end of down tube formed",
            "Penetrant at head tube and shell");

    static Stream<DrawnFrames.Drawn> frames() {
        return Stream.concat(DrawnFrames.demo(), DrawnFrames.random(40, 11));
    }

    private static DrawnSheet drawn(SideView view, String step) {
        return StationPicture.of(view, step, LETTERS, 124, 50).orElseThrow();
    }

    private static List<Mark> wide(DrawnSheet sheet) {
        return sheet.marks().stream()
                .filter(mark -> mark instanceof Mark.Path path && path.pen() == Pen.EMPHASIS
                        || mark instanceof Mark.Ring ring && ring.pen() == Pen.EMPHASIS)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("frames")
    void oneTextStandsInsideThePictureClearOfTheFramesOutlines(DrawnFrames.Drawn frame) {
        for (String step : STEPS) {
            DrawnSheet sheet = drawn(frame.side(), step);
            List<Mark.Words> words = sheet.marks().stream()
                    .filter(Mark.Words.class::isInstance)
                    .map(Mark.Words.class::cast)
                    .toList();
            assertThat(words).hasSize(1);
            Area ink = LETTERS.ink(words.get(0));
            assertThat(new Rectangle2D.Double(0, 0, 124, 50).contains(ink.getBounds2D()))
                    .as("%s on %s", step, frame)
                    .isTrue();
            assertThat(wide(sheet)).as("%s on %s", step, frame).isNotEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Node 1: down tube to shell, down tube to shell, DOWN_TUBE",
        "Node 4: top tube to head tube, top tube to head tube, TOP_TUBE",
        "Node 6: chainstays to shell, chainstays to shell, CHAINSTAY",
        "Node 7: seatstays to seat tube, seatstays to seat tube, SEATSTAY",
        "Shell end of down tube formed, shell end of down tube, SHELL",
        "Node 8: dropouts, dropouts, REAR_AXLE"
    })
    void whatIsNamedFirstStandsOut(String step, String words, Part part) {
        SideView view = DrawnFrames.demo("O-117").side();
        AtHand atHand = AtHand.in(step, List.of(Part.values()));
        assertThat(atHand.words()).isEqualTo(words);
        assertThat(atHand.parts()).startsWith(part);
        assertThat(drawn(view, step).finding()).isEqualTo("At hand: " + words + ".");
        view.members().stream()
                .filter(member -> member.part() == part)
                .findFirst()
                .ifPresent(member -> {
                    Mark.Path outline = (Mark.Path) wide(drawn(view, step)).get(0);
                    double length = Math.hypot(
                            member.to().x_mm() - member.from().x_mm(),
                            member.to().y_mm() - member.from().y_mm());
                    double width = Math.hypot(
                            outline.spots().get(3).x_mm()
                                    - outline.spots().get(0).x_mm(),
                            outline.spots().get(3).y_mm()
                                    - outline.spots().get(0).y_mm());
                    double drawnLength = Math.hypot(
                            (outline.spots().get(1).x_mm()
                                            + outline.spots().get(2).x_mm()
                                            - outline.spots().get(0).x_mm()
                                            - outline.spots().get(3).x_mm())
                                    / 2,
                            (outline.spots().get(1).y_mm()
                                            + outline.spots().get(2).y_mm()
                                            - outline.spots().get(0).y_mm()
                                            - outline.spots().get(3).y_mm())
                                    / 2);
                    assertThat(drawnLength / width)
                            .as("it is that tube's outline")
                            .isCloseTo(length / member.fromWidth_mm(), within(1e-9));
                });
    }

    @Test
    void ofASwingArmTheStaysAreTheArm() {
        SideView view = DrawnFrames.demo("O-104").side();
        assertThat(AtHand.in(
                                "Node 1: chainstays to pivot tube",
                                view.members().stream()
                                        .map(SideView.Member::part)
                                        .toList())
                        .parts())
                .containsExactly(Part.SWING_ARM);
        assertThat(wide(drawn(view, "Node 3: seatstays to dropouts"))).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({"Filler scanned", "Node 9: bridges", "Tacked all round", "''", "Shellac and tubes"})
    void whereNoPartIsNamedNothingIsDrawn(String step) {
        assertThat(StationPicture.names(step)).isFalse();
        assertThat(StationPicture.of(DrawnFrames.demo("O-101").side(), step, LETTERS, 124, 50))
                .isEmpty();
    }
}
