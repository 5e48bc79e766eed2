package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.trammel.calc.units.Answer;

/** Outlines of tubes with formed ends, measured corner by corner from the tube's axis; expected figures by hand. */
class SideViewTest {

    private static final DemoFrames.Row FRAME = DemoFrames.all()
            .filter(row -> row.name().equals("O-101"))
            .findFirst()
            .orElseThrow();

    /** Head tube 54, down tube and shell 42, top tube and seat tube 34.9. */
    private static final SideView PLAIN = SideView.rigid(
            FRAME.axes(), FRAME.geometry().onSeatTube(55), new SideView.Outsides(54, 42, 34.9, 34.9, 22, 18, 42, 33.5));

    private static FormedEnd end(double round, double upright, double zone) {
        return ((Answer.Determined<FormedEnd>) FormedEnd.of(round, upright, zone)).value();
    }

    private static SideView.Member member(SideView view, SideView.Part part) {
        return view.members().stream()
                .filter(each -> each.part() == part)
                .findFirst()
                .orElseThrow();
    }

    /** Along the axis and away from it, corner by corner: the one side from end to end, then the other one back. */
    private static List<double[]> measured(SideView.Member member) {
        double dx = member.to().x_mm() - member.from().x_mm();
        double dy = member.to().y_mm() - member.from().y_mm();
        double length = Math.hypot(dx, dy);
        List<double[]> all = new ArrayList<>();
        for (Point corner : member.corners()) {
            double x = corner.x_mm() - member.from().x_mm();
            double y = corner.y_mm() - member.from().y_mm();
            all.add(new double[] {(x * dx + y * dy) / length, (x * dy - y * dx) / length});
        }
        return all;
    }

    private static void assertOutline(SideView.Member member, double[]... half) {
        List<double[]> all = measured(member);
        assertThat(all).hasSize(2 * half.length);
        for (int i = 0; i < half.length; i++) {
            double[] there = all.get(i);
            double[] back = all.get(all.size() - 1 - i);
            assertThat(there[0]).isCloseTo(half[i][0], within(1e-6));
            assertThat(back[0]).isCloseTo(half[i][0], within(1e-6));
            assertThat(there[1]).isCloseTo(-half[i][1], within(1e-6));
            assertThat(back[1]).isCloseTo(half[i][1], within(1e-6));
        }
    }

    /** Pressed to 35 over 60 behind the shell's 21, and to 38 over 50 behind the head tube's 27; the axis is 752.23 long. */
    @Test
    void aTubePressedAtBothEndsIsDrawnAsHighAsItsOvalsAndRoundBetween() {
        SideView view = PLAIN.formed(Map.of(
                FormedPlace.DOWN_TUBE_AT_SHELL, end(42, 35, 60),
                FormedPlace.DOWN_TUBE_AT_HEAD, end(42, 38, 50)));
        double length = Math.hypot(491.59, 569.35);
        List<double[]> all = measured(member(view, SideView.Part.DOWN_TUBE));
        assertThat(all.get(5)[0]).isCloseTo(length, within(0.01));
        double axis = all.get(5)[0];
        assertOutline(
                member(view, SideView.Part.DOWN_TUBE),
                new double[] {0, 17.5},
                new double[] {21, 17.5},
                new double[] {81, 21},
                new double[] {axis - 77, 21},
                new double[] {axis - 27, 19},
                new double[] {axis, 19});
    }

    @Test
    void everyOtherTubeStaysAsItIs() {
        SideView view = PLAIN.formed(Map.of(FormedPlace.SEAT_TUBE_AT_SHELL, end(34.9, 30, 40)));
        assertOutline(
                member(view, SideView.Part.SEAT_TUBE),
                new double[] {0, 15},
                new double[] {21, 15},
                new double[] {61, 17.45},
                new double[] {430, 17.45});
        for (SideView.Member plain : PLAIN.members()) {
            if (plain.part() != SideView.Part.SEAT_TUBE) {
                assertThat(member(view, plain.part())).isEqualTo(plain);
            }
        }
    }

    /** A top tube of 623 cannot be pressed over 400 at either end: the cut list refuses it, and it is drawn round there. */
    @Test
    void endsThatWouldRunIntoEachOtherAreNotDrawn() {
        SideView view = PLAIN.formed(Map.of(
                FormedPlace.TOP_TUBE_AT_HEAD, end(34.9, 30, 400),
                FormedPlace.TOP_TUBE_AT_SEAT, end(34.9, 30, 400)));
        SideView.Member top = member(view, SideView.Part.TOP_TUBE);
        assertThat(top.between()).hasSize(2);
        assertThat(top.toWidth_mm()).isEqualTo(30);
        assertThat(top.fromWidth_mm()).isEqualTo(34.9);
    }
}
