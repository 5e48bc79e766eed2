package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.geometry.CutListTest.value;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

/** Contact points against the turns of the plane of java.awt.geom and against halving, with no formula of ours. */
class FitSheetTest {

    private static final FrameGeometry FRAME =
            value(FrameGeometry.of(CutListTest.frame("O-101").layout()));

    private static final Point2D TOP = at(FRAME.headTubeTop());

    private static Point2D at(Point point) {
        return new Point2D.Double(point.x_mm(), point.y_mm());
    }

    /** Of a plane whose x runs up the steerer from the head tube's top; its y is to the rear. */
    private static AffineTransform upTheSteerer() {
        AffineTransform walk = new AffineTransform();
        walk.translate(TOP.getX(), TOP.getY());
        walk.rotate(Math.PI - FRAME.layout().headAngle_rad());
        return walk;
    }

    private static Point2D onTheSteerer(Point point) {
        try {
            return upTheSteerer().inverseTransform(at(point), null);
        } catch (NoninvertibleTransformException e) {
            throw new AssertionError(e);
        }
    }

    /** The seat tube is walked up in halves until it is as high as the clamp. */
    @ParameterizedTest
    @CsvSource({"748, 45, 0", "800, 0, 22", "620, 38.5, -10"})
    void theSaddleStandsWhereALevelLineMeetsTheLineOfTheSeatTube(double height, double stack, double ahead) {
        FrameGeometry frame = moved(ahead);
        SaddleFit fit = value(SaddleFit.of(frame, height, stack));
        Point2D foot = at(frame.seatTubeFoot());
        Point2D top = at(frame.seatTubeTop());
        double length = foot.distance(top);
        double rise = (top.getY() - foot.getY()) / length;
        assertThat(fit.level_mm()).isCloseTo(height * rise, within(1e-9));
        double low = 0;
        double high = 2000;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            if (foot.getY() + middle * rise < fit.level_mm() - stack) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(fit.clamp_mm()).isCloseTo(low, within(1e-9));
        assertThat(fit.out_mm()).isCloseTo(low - length, within(1e-9));
    }

    private static FrameGeometry moved(double ahead) {
        Layout plain = FRAME.layout();
        return value(FrameGeometry.of(new Layout(
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
                ahead,
                plain.frontWheelRadius_mm(),
                plain.rearWheelRadius_mm())));
    }

    /** The bar is where it is as far from the tip as told and as deep; its place on the steering axis is a projection. */
    @Test
    void theBarIsAsFarAndAsDeepFromTheSaddleAsToldAndItsPlaceOnTheSteererIsAProjection() {
        Random random = new Random(2203);
        for (int i = 0; i < 500; i++) {
            double height = 550 + 300 * random.nextDouble();
            double setback = -40 + 150 * random.nextDouble();
            double reach = 400 + 300 * random.nextDouble();
            double over = -120 + 260 * random.nextDouble();
            BarFit fit = value(BarFit.of(FRAME, new FitSheet(height, setback, reach, over)));
            Point2D tip = at(fit.saddleTip());
            Point2D bar = at(fit.bar());
            assertThat(tip.getX()).isCloseTo(-setback, within(1e-9));
            assertThat(tip.distance(bar)).isCloseTo(reach, within(1e-9));
            assertThat(tip.getY() - bar.getY()).isCloseTo(over, within(1e-9));
            assertThat(bar.getX()).isGreaterThan(tip.getX());
            assertThat(fit.above_mm()).isCloseTo(onTheSteerer(fit.bar()).getX(), within(1e-9));
            assertThat(fit.ahead_mm()).isCloseTo(-onTheSteerer(fit.bar()).getY(), within(1e-9));
        }
    }

    /** Walked by turns of a plane: up the steerer, then a quarter turn ahead less the stem's rise. */
    @ParameterizedTest
    @CsvSource({"12, 20, 40, 60, 0", "0, 0, 35, 100, -17", "15, 35, 42, 50, 35"})
    void aStemBringsTheBarWhereWalkingUpTheSteererLeads(
            double upper, double spacers, double clamp, double length, double rise) {
        AffineTransform walk = upTheSteerer();
        walk.translate(upper + spacers + clamp / 2, 0);
        walk.rotate(-Math.PI / 2 + Math.toRadians(rise));
        Point2D bar = walk.transform(new Point2D.Double(length, 0), null);

        BarFit fit = value(BarFit.of(FRAME, new FitSheet(748, 60, 560, 40)));
        BarFit.Parts parts = new BarFit.Parts(upper, spacers, clamp, length, Math.toRadians(rise));
        BarFit.ByParts by = value(fit.by(FRAME, parts));
        assertThat(by.bar().x_mm()).isCloseTo(bar.getX(), within(1e-9));
        assertThat(by.bar().y_mm()).isCloseTo(bar.getY(), within(1e-9));
        assertThat(by.saddleToBar_mm())
                .isCloseTo(bar.distance(fit.saddleTip().x_mm(), fit.saddleTip().y_mm()), within(1e-9));
        assertThat(by.saddleOverBar_mm()).isCloseTo(fit.saddleTip().y_mm() - bar.getY(), within(1e-9));

        BarFit.ByParts with =
                value(fit.by(FRAME, new BarFit.Parts(upper, by.spacers_mm(), clamp, length, Math.toRadians(rise))));
        assertThat(onTheSteerer(with.bar()).getX())
                .as("as high on the steerer as wanted")
                .isCloseTo(fit.above_mm(), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0   | 60  | 560 | 40  | saddleHeight  | The saddle height of 0 mm is not above 0 and at most 10 m.
            748 | NaN | 560 | 40  | saddleSetback | The saddle's setback of no number is not within 10 m to either side.
            748 | 60  | 30  | 40  | saddleOverBar | The bar cannot be 30 mm from the saddle's tip and 40 mm below it.
            748 | 60  | 40  | -40 | saddleOverBar | The bar cannot be 40 mm from the saddle's tip and 40 mm above it.
            748 | 60  | 1e308 | 40 | saddleToBar  | The distance from saddle to bar of more than 1 km is not above 0 and at most 10 m.
            """)
    void aNumberThatCannotBeIsNamed(
            double height, double setback, double toBar, double over, String input, String words) {
        Answer<BarFit> answer = BarFit.of(FRAME, new FitSheet(height, setback, toBar, over));
        assertThat(answer).isEqualTo(Answer.none(input, words));
    }

    @Test
    void aSaddleBelowTheSeatTubesTopAndAStemAlongTheSteererAreNamed() {
        assertThat(((Answer.NotDeterminable<SaddleFit>) SaddleFit.of(FRAME, 440, 45)).gaps())
                .singleElement()
                .satisfies(gap -> {
                    assertThat(gap.input()).isEqualTo("saddleHeight");
                    assertThat(gap.words()).contains("would stand below the seat tube's top at 430 mm");
                });
        BarFit fit = value(BarFit.of(FRAME, new FitSheet(748, 60, 560, 40)));
        assertThat(fit.by(FRAME, new BarFit.Parts(10, 0, 40, 60, Math.PI / 2)))
                .isEqualTo(Answer.none("rise", "The stem's rise of 90° is not between -90° and 90°."));
    }
}
