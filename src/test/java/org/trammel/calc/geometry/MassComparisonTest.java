package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.trammel.calc.units.Answer;

/** Against the worked example of the first frame (1678 g expected, 1774 g weighed) and against frames built wrong on purpose. */
class MassComparisonTest {

    private static final List<Double> WALLS = List.of(0.9, 1.15, 1.35, 1.4, 1.6, 1.8);
    private static final MassComparison.Search SEARCH = new MassComparison.Search(0, 3, WALLS, List.of(0.5, 1.5, 2.0));

    private static List<FramePart> parts() {
        return ExpectedMassTest.parts(DemoFrames.all().findFirst().orElseThrow());
    }

    private static ExpectedMass expected(List<FramePart> parts) {
        return ExpectedMassTest.value(ExpectedMass.of(parts, 0.05));
    }

    private static MassComparison compared(double weighed_kg) {
        return ExpectedMassTest.value(MassComparison.of(expected(parts()), weighed_kg, SEARCH));
    }

    /** The example divides rounded figures: 96 g by 15,6 g. */
    @Test
    void theDownTubeOfTheWrongWallIsTheNearestCause() {
        MassComparison compared = compared(1.774);
        assertThat(compared.difference_kg() * 1000).isCloseTo(96, within(0.5));
        assertThat(compared.differenceInU()).isCloseTo(96 / 15.6, within(0.02));
        assertThat(compared.flagged()).isTrue();
        MassComparison.RankedCause nearest = compared.causes().get(0);
        assertThat(nearest.cause()).isInstanceOfSatisfying(MassCause.OtherWall.class, cause -> {
            assertThat(cause.tube().name()).isEqualTo("DT");
            assertThat(cause.wall_mm()).isEqualTo(1.8);
            assertThat(cause.count()).isEqualTo(1);
        });
        assertThat(nearest.change_kg() * 1000).isCloseTo(97.6, within(0.05));
        assertThat(nearest.explains()).isTrue();
    }

    @Test
    void causesStandInOrderAndEachBringsTheDifferenceDown() {
        Random random = new Random(20260303);
        for (int i = 0; i < 100; i++) {
            MassComparison compared = compared(1.4 + 0.6 * random.nextDouble());
            double before = 0;
            for (MassComparison.RankedCause cause : compared.causes()) {
                double left = Math.abs(cause.leftOver_kg());
                assertThat(left).isGreaterThanOrEqualTo(before).isLessThan(Math.abs(compared.difference_kg()));
                assertThat(cause.change_kg() + cause.leftOver_kg()).isCloseTo(compared.difference_kg(), within(1e-12));
                assertThat(cause.explains()).isEqualTo(left <= 3 * compared.u_kg());
                before = left;
            }
        }
    }

    /** Each frame here is really built wrong, added up anew, and the cause found again. */
    @Test
    void whatWasBuiltWrongIsFound() {
        for (FramePart part : parts()) {
            if (part instanceof FramePart.Tube tube) {
                double other = tube.sections().get(0).meanWall_mm() > 1.5 ? 0.9 : 1.8;
                found(tube, tube.withWall(other), new MassCause.OtherWall(tube, other, tube.count()));
            } else if (part instanceof FramePart.Pieces pieces) {
                double each = pieces.mass_kg() / pieces.count();
                found(pieces, pieces(pieces, -each), new MassCause.Missing(pieces));
                found(pieces, pieces(pieces, each), new MassCause.Doubled(pieces));
            } else if (part instanceof FramePart.Weld weld) {
                found(weld, new FramePart.Weld("weld", 0.0225, 0.01), new MassCause.OtherWeld(weld, 0.0225));
                found(weld, new FramePart.Weld("weld", 0.09, 0.01), new MassCause.OtherWeld(weld, 0.09));
            }
        }
    }

    private static FramePart pieces(FramePart.Pieces pieces, double more_kg) {
        return new FramePart.Pieces(pieces.name(), pieces.mass_kg() + more_kg, pieces.u_kg(), pieces.count());
    }

    private static void found(FramePart part, FramePart built, MassCause cause) {
        List<FramePart> wrong =
                parts().stream().map(each -> each.equals(part) ? built : each).toList();
        MassComparison compared = compared(expected(wrong).mass_kg());
        assertThat(compared.causes())
                .as("%s built as %s", part, built)
                .filteredOn(ranked -> Math.abs(ranked.leftOver_kg()) < 1e-12)
                .extracting(MassComparison.RankedCause::cause)
                .contains(cause);
    }

    @Test
    void aFrameWithinTheLimitIsNotFlaggedAndTheScaleCounts() {
        ExpectedMass expected = expected(parts());
        double u = expected.u_kg();
        assertThat(compared(expected.mass_kg() + 2.99 * u).flagged()).isFalse();
        assertThat(compared(expected.mass_kg() + 3.01 * u).flagged()).isTrue();
        assertThat(compared(expected.mass_kg() - 3.01 * u).flagged()).isTrue();
        MassComparison doubtful = ExpectedMassTest.value(MassComparison.of(
                expected, expected.mass_kg() + 3.01 * u, new MassComparison.Search(0.02, 3, WALLS, List.of())));
        assertThat(doubtful.flagged()).isFalse();
        assertThat(doubtful.u_kg()).isCloseTo(Math.sqrt(u * u + 0.0004), within(1e-12));
    }

    @Test
    void whatCannotBeIsNamed() {
        MassComparison.Search search =
                new MassComparison.Search(-1, 0, List.of(Double.NaN), List.of(Double.POSITIVE_INFINITY));
        assertThat(ExpectedMassTest.gaps(MassComparison.of(expected(parts()), Double.NaN, search)))
                .containsExactly(
                        new Answer.Gap("weighed", "The weighed mass, no number, is not above 0."),
                        new Answer.Gap("scaleU", "The uncertainty of the scale, -1 kg, is not 0 or above."),
                        new Answer.Gap("limit", "The limit of the difference, 0 u, is not above 0."),
                        new Answer.Gap("walls", "The wall on hand, no number, is not above 0."),
                        new Answer.Gap("weldShares", "The share of the weld, no number, is not 0 or above."));
        ExpectedMass sure = ExpectedMassTest.value(
                ExpectedMass.of(List.of(new FramePart.Bored("shell", 42, 33.5, 73, 2700)), 0.05));
        assertThat(ExpectedMassTest.gaps(MassComparison.of(sure, 0.1, SEARCH)))
                .containsExactly(new Answer.Gap(
                        "u", "The expected mass and the scale have no uncertainty: a difference has no measure."));
    }
}
