package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FitsTest {

    /**
     * W. Gander, G. H. Golub, R. Strebel, Least-squares fitting of circles and ellipses, BIT 34 (1994): six points,
     * geometric circle centre (4,7398; 2,9835), radius 4,7142, sum of squares 1,2276. The algebraic circle of the same
     * paper, (5,3794; 7,2532) with 3,0370, is another.
     */
    @Test
    void theCircleIsTheGeometricOne() {
        double[][] points = {{1, 7}, {2, 6}, {5, 8}, {7, 7}, {9, 5}, {3, 7}};
        CircleFit circle = CircleFit.of(List.of(points)).orElseThrow();
        assertThat(circle.x_mm()).isCloseTo(4.7398, within(0.00005));
        assertThat(circle.y_mm()).isCloseTo(2.9835, within(0.00005));
        assertThat(circle.radius_mm()).isCloseTo(4.7142, within(0.00005));
        assertThat(6 * circle.residual_mm() * circle.residual_mm()).isCloseTo(1.2276, within(0.00005));
    }

    /** No neighbour has a smaller sum of squares: looked for at random, the way of somebody without a method. */
    @Test
    void noCircleNearbyFitsBetter() {
        Random random = new Random(11);
        for (int turn = 0; turn < 50; turn++) {
            List<double[]> points = new ArrayList<>();
            for (int i = 0; i < 7; i++) {
                double a = 2 * Math.PI * i / 7 + random.nextDouble() / 3;
                double r = 17 + 0.2 * random.nextGaussian();
                points.add(new double[] {300 + r * Math.cos(a), -200 + r * Math.sin(a)});
            }
            CircleFit best = CircleFit.of(points).orElseThrow();
            double least = squares(points, best.x_mm(), best.y_mm(), best.radius_mm());
            for (int i = 0; i < 200; i++) {
                double size = Math.pow(10, -1 - 4 * random.nextDouble());
                assertThat(squares(
                                points,
                                best.x_mm() + size * random.nextGaussian(),
                                best.y_mm() + size * random.nextGaussian(),
                                best.radius_mm() + size * random.nextGaussian()))
                        .isGreaterThanOrEqualTo(least);
            }
        }
    }

    @Test
    void pointsOnALineOrTooFewMakeNoCircle() {
        assertThat(CircleFit.of(List.of(new double[] {0, 0}, new double[] {1, 1})))
                .isEmpty();
        assertThat(CircleFit.of(List.of(new double[] {0, 0}, new double[] {1, 1}, new double[] {2, 2})))
                .isEmpty();
        assertThat(CircleFit.of(List.of(new double[] {1, 1}, new double[] {1, 1}, new double[] {1, 1})))
                .isEmpty();
    }

    private static double squares(List<double[]> points, double x, double y, double r) {
        return points.stream()
                .mapToDouble(p -> Math.hypot(p[0] - x, p[1] - y) - r)
                .map(d -> d * d)
                .sum();
    }

    /**
     * Exact cases among the tests of an open geometry library (scikit-spatial, BSD licence): points (0,0,0) (1,0,0)
     * (0,1,0) (0,0,1) have the plane through (¼,¼,¼) with normal (1,1,1)/√3 and the sum of squared distances ¼; doubled,
     * 1.
     */
    @Test
    void thePlaneOfFourCornersOfACube() {
        for (double size : new double[] {1, 2}) {
            List<Vec> points = List.of(Vec.ZERO, new Vec(size, 0, 0), new Vec(0, size, 0), new Vec(0, 0, size));
            Scatter scatter = Scatter.of(points, new double[] {1, 1, 1, 1});
            assertThat(Math.abs(scatter.across().dot(new Vec(1, 1, 1).unit()))).isCloseTo(1, within(1e-14));
            assertThat(4 * scatter.least_mm() * scatter.least_mm()).isCloseTo(0.25 * size * size, within(1e-14));
            assertThat(Vec.mean(points)).isEqualTo(new Vec(size / 4, size / 4, size / 4));
        }
    }

    /** K. Pearson 1901, ten points; best line at right angles y = 5,784 − 0,5456 x, mean (3,82; 3,70); from memory. */
    @Test
    void thePointsOfTheFirstPaperHaveItsLine() {
        double[] x = {0.0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4};
        double[] y = {5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5};
        List<Vec> points = new ArrayList<>();
        double[] weights = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            points.add(new Vec(x[i], y[i], 0));
            weights[i] = 1;
        }
        Vec mean = Vec.mean(points, weights);
        Vec along = Scatter.of(points, weights).along();
        double slope = along.y() / along.x();
        assertThat(mean.x()).isCloseTo(3.82, within(0.005));
        assertThat(mean.y()).isCloseTo(3.70, within(0.005));
        assertThat(slope).isCloseTo(-0.5456, within(0.00005));
        assertThat(mean.y() - slope * mean.x()).isCloseTo(5.784, within(0.0005));
    }
}
