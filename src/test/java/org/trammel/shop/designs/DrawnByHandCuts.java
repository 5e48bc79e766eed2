package org.trammel.shop.designs;

import static org.trammel.shop.designs.CutsInSpace.minus;
import static org.trammel.shop.designs.CutsInSpace.plus;
import static org.trammel.shop.designs.CutsInSpace.times;
import static org.trammel.shop.designs.CutsInSpace.unit;
import static org.trammel.shop.designs.CutsInSpace.v;

import java.util.stream.Stream;

/** The mitred ends of the frame that is drawn by hand in the browser, in space; of a pair the drive side's. */
final class DrawnByHandCuts {

    private DrawnByHandCuts() {}

    /** From the numbers that were typed, by plain trigonometry in this class alone. */
    static Stream<CutOnPaper> all() {
        double head = Math.toRadians(65);
        double seat = Math.toRadians(76.5);
        double[] down = v(Math.cos(head), -Math.sin(head), 0);
        double headTube = (632 - 32 + 44 * Math.cos(head)) / Math.sin(head) - 551 - 12;
        double[] top = v(470, 632, 0);
        double[] downTubeAtHead = plus(top, times(down, headTube - 40));
        double[] topTubeAtHead = plus(top, times(down, 28));
        double[] seatUp = v(-Math.cos(seat), Math.sin(seat), 0);
        double[] seatFoot = v(23 * Math.sin(seat), 23 * Math.cos(seat), 0);
        double[] topTubeAtSeat = plus(seatFoot, times(seatUp, 425 - 45));
        double[] shell = v(0, 0, 1);
        double[] downTube = times(downTubeAtHead, -1);
        double[] topTube = minus(topTubeAtSeat, topTubeAtHead);
        double[] axle = v(-Math.sqrt(436 * 436 - 32 * 32), 32, 0);
        double[] pivot = v(22, 72, 0);
        double arm = Math.toRadians(98);
        double[] eye = plus(pivot, v(182 * Math.cos(arm), 182 * Math.sin(arm), 0));
        double[] lower = minus(rearEnd(pivot, axle), plus(pivot, v(0, 0, 24 + 11)));
        double[] upper = minus(rearEnd(eye, axle), plus(eye, v(0, 0, 22 + 9)));
        // the lower member's first part points to its bend, 70 along and 6 off its straight line
        double[] outward = unit(minus(shell, times(unit(lower), unit(lower)[2])));
        double[] toTheBend = plus(times(unit(lower), 70), times(outward, 6));
        return Stream.of(
                CutOnPaper.round(
                        "Chainstay of the drive side", "first end, to the pivot boss", 11, 17, toTheBend, shell, shell),
                CutOnPaper.round(
                        "Seatstay of the drive side", "first end, to the cross tube", 9, 12.5, upper, shell, shell),
                CutOnPaper.round("Down tube", "first end, to the head tube", 21, 27, downTube, down, times(down, -1)),
                new CutOnPaper(
                        "Down tube",
                        "second end, to the shell",
                        CutOnPaper.otherHalf_mm(17.5, 21),
                        17.5,
                        21,
                        downTubeAtHead,
                        shell,
                        shell),
                CutOnPaper.round("Top tube", "first end, to the head tube", 17.45, 27, topTube, down, down),
                CutOnPaper.round(
                        "Top tube",
                        "second end, to the seat tube",
                        17.45,
                        19,
                        times(topTube, -1),
                        seatUp,
                        times(seatUp, -1)),
                CutOnPaper.round("Seat tube", "first end, to the shell", 19, 21, seatUp, shell, shell));
    }

    /** Where a member ends: 18 before the axle on its line of the side view, 74 + 4 from the middle plane. */
    private static double[] rearEnd(double[] front, double[] axle) {
        return plus(minus(axle, times(unit(minus(axle, front)), 18)), v(0, 0, 78));
    }
}
