package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.trammel.calc.geometry.SawRules;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.Signed;
import org.trammel.shop.routes.Kinds;

/**
 * A tandem is as long as its two shells lie apart. Expected figures are those of the invented workshop's tandem, whose
 * wheelbase of 1773,9 was computed apart from this project; by hand its rear axle lies √(440² − 68²) + 720 = 1154,71 behind
 * the front shell, and the lower end of its head tube at (398 + 170 cos 72,5°; 603,3 − 170 sin 72,5°) = (449,12; 441,17) is
 * √(1603,83² + 373,17²) = 1646,7 from it.
 */
class TandemGateTest extends AtTheDrawingDesk {

    private static final Map<GeometryInput, BigDecimal> TANDEM = inputs();

    @Autowired
    private SawDrawer saws;

    private static Map<GeometryInput, BigDecimal> inputs() {
        Map<GeometryInput, BigDecimal> inputs = new EnumMap<>(GeometryInput.class);
        String[] typed = ("HEAD_ANGLE 72.5 SEAT_ANGLE 73.5 REACH 398 HEAD_TUBE 170 LOWER_STACK 12 FORK_LENGTH 395"
                        + " FORK_OFFSET 50 SHELL_DROP 68 CHAINSTAY 440 SEAT_TUBE 520 SHELL_TO_SHELL 720"
                        + " FRONT_WHEEL_RADIUS 343 REAR_WHEEL_RADIUS 343 STACK_ASKED 603.3")
                .split(" ");
        for (int i = 0; i < typed.length; i += 2) {
            inputs.put(GeometryInput.valueOf(typed[i]), new BigDecimal(typed[i + 1]));
        }
        return inputs;
    }

    @Test
    void aTandemIsTooLongForTheOvenThatItsFrontPartWouldEnter() {
        RevisionStory.CheckLine line = line(drawn(TANDEM, "TANDEM"), GateCheck.OVERALL_LENGTH);
        assertThat(line.red()).isTrue();
        assertThat(line.figures())
                .singleElement()
                .satisfies(figure -> assertThat(figure.value().doubleValue()).isCloseTo(1646.7 + 18, within(0.05)));
        assertThat(line.lacking())
                .as("red already without them")
                .containsExactly(
                        "Head tube outside is not given.",
                        "Shell outside is not given.",
                        "Seat tube outside is not given.");
    }

    @Test
    void aTandemWhoseShellsAreNotToldIsNotTakenForAFrameWithOne() {
        Map<GeometryInput, BigDecimal> solo = new EnumMap<>(TANDEM);
        solo.remove(GeometryInput.SHELL_TO_SHELL);
        long id = drawn(solo, "TANDEM");
        assertThat(line(id, GateCheck.OVERALL_LENGTH).figures()).isEmpty();
        assertThat(line(id, GateCheck.OVERALL_LENGTH).lacking()).contains("Front shell to rear shell is not given.");
        assertThat(ComputedFrame.of(designs.revision(id), saws.rules()).wheelbase_mm())
                .isInstanceOf(Answer.NotDeterminable.class);
    }

    @Test
    void whatIsNotComputedForATandemSaysSo() {
        long id = drawn(TANDEM, "TANDEM");
        for (GateCheck check : List.of(
                GateCheck.TYRE_CLEARANCE,
                GateCheck.TYRE_STAYS,
                GateCheck.STANDOVER,
                GateCheck.MITRES,
                GateCheck.SEATPOST)) {
            assertThat(line(id, check).lacking())
                    .as(check.label())
                    .anySatisfy(words -> assertThat(words).endsWith("of a tandem is not computed."));
            assertThat(line(id, check).red()).as(check.label()).isFalse();
            assertThat(line(id, check).takes()).as(check.label()).containsExactly(GateAnswer.DECIDED);
        }
        assertThat(line(id, GateCheck.CLOSURE).red()).isFalse();
    }

    /** The front part and its mates are a tandem's own; stays, mass and views are nobody's. */
    @Test
    void theNominalsOfATandemAreItsOwn() {
        Map<String, String> typed = new TreeMap<>();
        TrailFrame.whole().forEach((input, amount) -> typed.put(input, amount.toPlainString()));
        TANDEM.forEach((input, amount) -> typed.put(input.code(), amount.toPlainString()));
        ComputedFrame frame = ComputedFrame.of(typed, SawRules.usual(List.of()));
        Answer<MassBasis.Metal> steel = Answer.of(new MassBasis.Metal(7850, "from memory", 0.05, 0.005, 0.01));
        DrawnFeature.Drawn drawn = new DrawnFeature.Drawn(
                new GivenInputs(typed),
                frame,
                FrameMass.of(typed, frame, steel),
                FrameMass.ofArm(typed, frame, SawRules.usual(List.of()), steel));
        assertThat(feature("Wheelbase", "mm").of(drawn).orElseThrow()).isCloseTo(1773.9, within(0.05));
        assertThat(feature("Jig read-back, rear axle x", "mm").of(drawn).orElseThrow())
                .isCloseTo(-1154.71, within(0.005));
        assertThat(feature("Jig read-back, rear axle y", "mm").of(drawn).orElseThrow())
                .isEqualTo(68);
        assertThat(feature("Shell to shell", "mm").of(drawn)).hasValue(720);
        assertThat(feature("Down tube blank", "mm").of(drawn)).isPresent();
        for (String none : List.of("Chainstay blank", "Seatstay blank")) {
            assertThat(feature(none, "mm").of(drawn)).as(none).isEmpty();
        }
        assertThat(feature("Mass uncoated", "g").of(drawn)).isEmpty();
        assertThat(frame.side()).isInstanceOf(Answer.NotDeterminable.class);
    }

    @Test
    void theDrawingsPageShowsTheWheelbaseOfATandemAndWhatItDoesNotDraw() throws Exception {
        long id = drawn(TANDEM, "TANDEM");
        String page = mvc.perform(
                        MockMvcRequestBuilders.get("/designs/{id}/frame", id).with(Signed.on(crew.byId(frame.owner))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page)
                .contains(
                        "1773,9\u00a0mm",
                        "Rear axle behind the front shell",
                        "1154,7\u00a0mm",
                        "The view from the drive side of a tandem is not computed.")
                .doesNotContain("1053,9");
    }

    private static DrawnFeature feature(String name, String unit) {
        return DrawnFeature.asked(Kinds.TANDEM, name, unit).orElseThrow();
    }

    private long drawn(Map<GeometryInput, BigDecimal> geometry, String kind) {
        long id = frame.begin();
        office.change(
                hands.act(frame.owner),
                id,
                null,
                new DesignDraft("Tandem", "AL6061", kind, frame.route, null, List.of(), geometry, true));
        return id;
    }

    private RevisionStory.CheckLine line(long id, GateCheck check) {
        return reading.story(id, true).checks().stream()
                .filter(line -> line.check() == check)
                .findFirst()
                .orElseThrow();
    }
}
