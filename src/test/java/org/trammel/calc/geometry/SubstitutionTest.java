package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** What another number, fork or second seat makes of a frame: against figures worked by hand and by first order. */
class SubstitutionTest {

    private static <T> T value(Answer<T> answer) {
        assertThat(answer).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<T>) answer).value();
    }

    private static FrameGeometry o101() {
        return DemoFrames.all()
                .filter(row -> row.name().equals("O-101"))
                .findAny()
                .orElseThrow()
                .geometry();
    }

    /** Worked by hand: 663 (sin 66° − sin 65.5°) − 44 (cos 66° − cos 65.5°) = 2.73; 10 sin 65.5° = 9.10; a tenth of it. */
    @ParameterizedTest
    @CsvSource({"HEAD_ANGLE, 0.5, 2.73", "FORK_LENGTH, 10, 9.10", "HEAD_TUBE, 1, 0.91", "REACH, 7, 0"})
    void aSmallChangeMovesTheStack(Dimension changed, double step, double stack) {
        Sensitivity moved =
                value(Sensitivity.of(o101().layout(), changed, changed.isAngle() ? Math.toRadians(step) : step));
        assertThat(moved.stack_mm()).isCloseTo(stack, within(0.005));
        assertThat(moved.reach_mm()).isEqualTo(changed == Dimension.REACH ? 7 : 0);
    }

    /** Slopes by hand: wheelbase + cos HA per mm of fork; trail −(radius − offset cos HA) / sin² HA per radian. */
    @Test
    void wheelbaseAndTrailMoveByTheirSlopes() {
        Sensitivity fork = value(Sensitivity.of(o101().layout(), Dimension.FORK_LENGTH, 10));
        assertThat(fork.wheelbase_mm()).isCloseTo(10 * Math.cos(Math.toRadians(65.5)), within(1e-9));
        assertThat(fork.trail_mm()).isZero();
        double angle = Math.toRadians(65.5);
        double slope = -(370 - 44 * Math.cos(angle)) / Math.pow(Math.sin(angle), 2);
        Sensitivity steeper = value(Sensitivity.of(o101().layout(), Dimension.HEAD_ANGLE, 1e-6));
        assertThat(steeper.trail_mm() / 1e-6).isCloseTo(slope, within(0.01));
    }

    @Test
    void whatIsNoNumberOfTheLayoutOrCannotBecomeSoIsNamed() {
        assertThat(Sensitivity.of(o101().layout(), Dimension.TRAIL, 1))
                .isEqualTo(Answer.none("trail", "The trail follows from others and is not changed by itself."));
        assertThat(Sensitivity.of(o101().layout(), Dimension.HEAD_TUBE, -110))
                .isEqualTo(Answer.none("headTube", "The head tube would become 0 mm, which cannot be."));
        assertThat(Sensitivity.of(o101().layout(), Dimension.HEAD_ANGLE, Double.NaN))
                .isEqualTo(Answer.none("headAngle", "The head angle would become no number, which cannot be."));
    }

    /** By first order asin(20 sin 65.5° / 1201) = 0.87°, head angle 64.63°, shell up 428 mm · 0.01515 = 6.5 mm. */
    @Test
    void aForkLongerBy20PitchesTheFrame() {
        Substitution longer = value(
                Substitution.of(o101(), Substitution.Parts.of(o101().layout()).withForkLongerBy(20)));
        assertThat(Math.toDegrees(longer.pitch_rad())).isCloseTo(0.87, within(0.01));
        assertThat(Math.toDegrees(longer.after().layout().headAngle_rad())).isCloseTo(64.63, within(0.01));
        assertThat(Math.toDegrees(longer.after().layout().seatAngle_rad())).isCloseTo(73.63, within(0.01));
        assertThat(longer.shellRise_mm()).isCloseTo(6.5, within(0.1));
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void theFrameItselfStaysAsItWasBuilt(DemoFrames.Row row) {
        FrameGeometry frame = row.geometry();
        Layout drawn = frame.layout();
        Substitution other = value(Substitution.of(
                frame, new Substitution.Parts(10, drawn.forkLength_mm() + 35, drawn.forkOffset_mm() - 4, 362, 351)));
        FrameGeometry after = other.after();
        assertThat(after.headTubeTop().distance_mm(after.rearAxle()))
                .isCloseTo(frame.headTubeTop().distance_mm(frame.rearAxle()), within(1e-9));
        assertThat(after.headTubeTop().distance_mm(FrameGeometry.SHELL))
                .isCloseTo(frame.headTubeTop().distance_mm(FrameGeometry.SHELL), within(1e-9));
        assertThat(after.seatTubeTop().distance_mm(after.headTubeBottom()))
                .isCloseTo(frame.seatTubeTop().distance_mm(frame.headTubeBottom()), within(1e-9));
        assertThat(after.shellHeight_mm() + after.frontAxle().y_mm()).isCloseTo(362, within(1e-9));
        assertThat(after.shellHeight_mm() + after.rearAxle().y_mm()).isCloseTo(351, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void theSamePartsChangeNothing(DemoFrames.Row row) {
        FrameGeometry frame = row.geometry();
        Substitution same = value(Substitution.of(frame, Substitution.Parts.of(frame.layout())));
        assertThat(same.pitch_rad()).isCloseTo(0, within(1e-12));
        assertThat(same.after().wheelbase_mm()).isCloseTo(frame.wheelbase_mm(), within(1e-9));
        assertThat(same.after().trail_mm()).isCloseTo(frame.trail_mm(), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "NaN, 370, forkLength, The fork length of no number cannot be.",
        "541, 0, frontWheelRadius, The front wheel radius of 0 mm cannot be.",
        "541, 5000, frontWheelRadius, 'The wheels differ by 4630 mm, more than the axles are apart.'"
    })
    void partsThatCannotBeAreNamed(double fork, double wheel, String input, String words) {
        assertThat(Substitution.of(o101(), new Substitution.Parts(12, fork, 44, wheel, 370)))
                .isEqualTo(Answer.none(input, words));
    }

    /** Worked by a script apart from this project. */
    @Test
    void aTandemIsLongerByWhatItsShellsAreApart() {
        Layout layout = new Layout(
                Math.toRadians(72.5), Math.toRadians(73.5), 398, 170, 12, 395, 50, 68, 440, 540, 0, 343, 343);
        Tandem tandem = value(Tandem.of(layout, 720));
        assertThat(tandem.front().stack_mm()).isCloseTo(603.3, within(0.05));
        assertThat(tandem.front().frontAxle().x_mm()).isCloseTo(619.2, within(0.05));
        assertThat(tandem.wheelbase_mm()).isCloseTo(1773.9, within(0.05));
        assertThat(tandem.front().trail_mm()).isCloseTo(55.7, within(0.05));
        assertThat(Tandem.of(layout, 0))
                .isEqualTo(Answer.none("shellToShell", "The distance between the shells of 0 mm is not above 0."));
    }

    /** By hand: the front axle goes 10 cos 65.5° ahead and stays 58 above the shell; √(777.127² + 58²) − 775.153 = 4.135. */
    @Test
    void aLongerForkCarriesTheFrontCentreAhead() {
        Sensitivity fork = value(Sensitivity.of(o101().layout(), Dimension.FORK_LENGTH, 10));
        assertThat(fork.frontCentre_mm()).isCloseTo(4.135, within(0.001));
    }
}
