package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.drawing.Mark;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.calc.geometry.Paper;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;

/**
 * The room of a swing arm at the design gate and on the sheet of the frame. Expected figures are those of suspension.csv,
 * which a script written apart from this project computed, or worked by hand where the line says so.
 */
class SwingGateTest extends AtTheDrawingDesk {

    @Autowired
    private FramePage frames;

    @ParameterizedTest
    @MethodSource("org.trammel.shop.designs.SwingFrame#names")
    void everyFrameOfTheInventedWorkshopClearsItsTubesOverTheWholeTravel(String order) {
        long id = drawn(SwingFrame.inputs(order));
        RevisionStory.CheckLine line = swing(id);
        assertThat(line.red()).isFalse();
        assertThat(line.lacking()).isEmpty();
        assertThat(line.cannot()).isEmpty();
        assertThat(line.figures()).hasSize(6).allSatisfy(figure -> {
            assertThat(figure.source()).isNotBlank();
            assertThat(figure.margin()).isNotNull().isNotNegative();
        });
        double script = DemoFrames.read("/geometry/suspension.csv").stream()
                .filter(row -> row.name().equals(order))
                .findFirst()
                .orElseThrow()
                .number("clearance_end");
        assertThat(Objects.requireNonNull(line.figures().get(0).value()).doubleValue())
                .as("the tyre comes nearest at the end of the travel")
                .isCloseTo(script, within(1e-3));
        gate.answer(hands.act(frame.qa), id, GateCheck.SWING, GateAnswer.MEETS, null);
        assertThat(swing(id).counts()).isTrue();
    }

    /**
     * By hand for O-104: the tyre is 1 mm nearer for 1 mm of radius, 6,6 − 1; beside the seat tube (40 − 38) / 2; the
     * moving eye lies (252,23 − 5,136) cos 76,5° − (3,33 + 21,39) sin 76,5° = 33,64 from the seat tube's axis, less 19 and
     * 15; the frame's eye as typed |205,139 · 559,002 − 257 · 504,119| / 752,741 = 19,77 from the down tube's, less 21 and
     * 10, with a shock as long as the way between the eyes, √(208,469² + 4,771²).
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(quoteCharacter = '"', textBlock = """
            REAR_WHEEL_RADIUS 371 FRONT_WHEEL_RADIUS 371, "tyre to seat tube, least at 140,0 of travel 5,6 mm, limit 6,0 mm or more, margin −0,4 mm"
            ARM_INSIDE 40, "swing arm to seat tube, least at 0,0 of travel 1,0 mm, limit 2,0 mm or more, margin −1,0 mm"
            SHOCK_EYE_OUTSIDE 30 SHOCK_OUTSIDE 70, "shock to seat tube, least at 0,0 of travel −0,4 mm, limit 2,0 mm or more"
            FRAME_EYE_AHEAD 205.139 FRAME_EYE_ABOVE 257 SHOCK_LENGTH 208.524 SHOCK_STROKE 56, "−11,2 mm, limit 2,0 mm or more, margin −13,2 mm"
            """)
    void redIsRefusedThenDecidedThenCured(String red, String why) {
        long id = drawn(SwingFrame.inputs("O-104", red));
        assertThat(swing(id).red()).isTrue();
        for (GateAnswer other : List.of(GateAnswer.MEETS, GateAnswer.NOT_CONCERNED)) {
            Refusal refused = refusal(() -> gate.answer(hands.act(frame.qa), id, GateCheck.SWING, other, "it is fine"));
            assertThat(refused.why()).startsWith("Not met: ").contains(why);
        }
        gate.answer(hands.act(frame.qa), id, GateCheck.SWING, GateAnswer.DECIDED, "for this frame: short rides only");
        assertThat(swing(id).counts()).isTrue();
        change(id, SwingFrame.inputs("O-104"));
        assertThat(swing(id).counts()).as("decided on other inputs").isFalse();
        assertThat(swing(id).red()).isFalse();
        gate.answer(hands.act(frame.qa), id, GateCheck.SWING, GateAnswer.MEETS, null);
        assertThat(gate.notMet(id)).doesNotContain(GateCheck.SWING);
    }

    /**
     * By hand for O-104, its sides straight: (340; 0) lies 46,352 from the line (458,572; 35) to (18; 78), less 30 and 11;
     * the bridge at 90: 458,572 − 90 − 9 − 370; (340; 0) lies (466,446 × 78 − 322 × 49) / 469,013 = 43,932 from the upper
     * member's line (484,446; 29) to (18; 78), less 30 and 9.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(quoteCharacter = '"', textBlock = """
            ARM_BEND - ARM_BEND_OUT - ARM_BEND_RADIUS -, "tyre to the sides of the swing arm 5,4 mm, limit 6,0 mm or more, margin −0,6 mm"
            ARM_BRIDGE 90, "tyre to the bridge of the swing arm −10,4 mm, limit 6,0 mm or more, margin −16,4 mm"
            ARM_UPPER_INSIDE 40, "tyre to the upper members of the swing arm 4,9 mm, limit 6,0 mm or more, margin −1,1 mm"
            """)
    void aTyreTooNearToItsArmIsRedAndIsDecidedInWriting(String red, String why) {
        long id = drawn(SwingFrame.inputs("O-104", red));
        Refusal refused = refusal(
                () -> gate.answer(hands.act(frame.qa), id, GateCheck.TYRE_STAYS, GateAnswer.MEETS, "it is fine"));
        assertThat(refused.why()).startsWith("Not met: ").contains(why);
        gate.answer(hands.act(frame.qa), id, GateCheck.TYRE_STAYS, GateAnswer.DECIDED, "dry roads only, and narrower");
        assertThat(line(id, GateCheck.TYRE_STAYS).counts()).isTrue();
        change(id, SwingFrame.inputs("O-104"));
        assertThat(line(id, GateCheck.TYRE_STAYS).counts())
                .as("decided on other inputs")
                .isFalse();
        gate.answer(hands.act(frame.qa), id, GateCheck.TYRE_STAYS, GateAnswer.MEETS, null);
    }

    /** A revision from before these inputs were asked: what is missing is said, and nothing is guessed in its place. */
    @Test
    void anArmThatDoesNotSayHowWideItStandsIsDrawnFromTheSideAloneAndSaysSo() {
        String before =
                "ARM_WIDTH - ARM_BEND - ARM_BEND_OUT - ARM_BEND_RADIUS - ARM_BOSS - ARM_OVER - REAR_TYRE_WIDTH -";
        long id = drawn(SwingFrame.inputs("O-104", before));
        assertThat(line(id, GateCheck.TYRE_STAYS).lacking())
                .containsExactly("Rear tyre width is not given.", "Swing arm, width of its sides is not given.");
        assertThat(sheets(id)).singleElement().asString().contains("The rear end is not drawn from above:");
        assertThat(sheets(id).get(0)).contains("Swing arm, width of its sides is not given.");

        change(id, SwingFrame.inputs("O-104", "ARM_BEND_OUT - ARM_OVER - ARM_BRIDGE_OUTSIDE - REAR_TYRE_WIDTH -"));
        assertThat(sheets(id).get(0)).contains("Swing arm, bend off the straight line outward is not given.");

        change(id, SwingFrame.inputs("O-104", "ARM_OVER - ARM_BRIDGE_OUTSIDE - REAR_TYRE_WIDTH -"));
        assertThat(sheets(id)).hasSize(2);
        assertThat(sheets(id).get(1))
                .contains(
                        "The pivot bosses are not drawn. Swing arm, over its pivot bosses is not given.",
                        "The bridge is not drawn. Swing arm, outside of its bridge is not given.",
                        "The tyre and its room are not drawn. Rear tyre width is not given.")
                .doesNotContain("tyre clear of");

        change(id, SwingFrame.inputs("O-104"));
        assertThat(sheets(id).get(1))
                .contains("456,8", "92,0", "tyre clear of the side by")
                .doesNotContain("not given");
    }

    /** The words of each view's sheet, one text after the other; a sentence may go on in the next line. */
    private List<String> sheets(long id) {
        return frames.of(reading.story(id, true), Paper.A4).drawings().stream()
                .map(sheet -> sheet.marks().stream()
                        .filter(Mark.Words.class::isInstance)
                        .map(mark -> ((Mark.Words) mark).words())
                        .collect(Collectors.joining(" ")))
                .toList();
    }

    @Test
    void inputsThatAreMissingAreNamedAndWhatIsKnownIsComputed() {
        long id = drawn(SwingFrame.inputs("O-104", "ARM_BRIDGE - SHOCK_OUTSIDE - DOWN_TUBE_OUTSIDE -"));
        RevisionStory.CheckLine line = swing(id);
        assertThat(line.lacking())
                .containsExactlyInAnyOrder(
                        "Swing arm, from pivot to its bridge is not given.",
                        "Shock, outside of its body is not given.",
                        "Down tube outside is not given.");
        assertThat(line.figures()).extracting(CheckFigure::label).hasSize(2);
        assertThat(line.figures().get(1).words()).contains("swing arm to seat tube", "5,0 mm");
    }

    @Test
    void aRearEndThatCannotSwingSoIsRedInWords() {
        long id = drawn(SwingFrame.inputs("O-104", "SHOCK_STROKE 70"));
        assertThat(swing(id).cannot())
                .singleElement()
                .asString()
                .contains("The stroke of 70 mm is longer than the way of the shock's eye over the travel");
        long eyes = drawn(SwingFrame.inputs("O-104", "FRAME_EYE_AHEAD 200 FRAME_EYE_ABOVE 277"));
        assertThat(swing(eyes).cannot()).singleElement().asString().contains("than the way between its eyes");
        long half = drawn(SwingFrame.inputs("O-104", "FRAME_EYE_AHEAD 205.1"));
        assertThat(swing(half).lacking()).containsExactly("Shock's eye on the frame, above the shell is not given.");
    }

    @Test
    void aFrameWithoutASwingArmIsNotAskedAndItsGateClosesWithoutIt() throws Exception {
        long id = frame.begin();
        change(id, TrailFrame.inputs(""), "HARDTAIL");
        assertThat(gate.asked(id)).doesNotContain(GateCheck.SWING).hasSize(GateCheck.values().length - 1);
        assertThat(reading.story(id, true).checks())
                .extracting(RevisionStory.CheckLine::check)
                .doesNotContain(GateCheck.SWING);
        Refusal refused = refusal(() -> gate.answer(hands.act(frame.qa), id, GateCheck.SWING, GateAnswer.MEETS, null));
        assertThat(refused.why()).contains("has no swing arm");
        assertThat(page(id, "")).doesNotContain("Room of the swing arm");
        assertThat(page(id, "/frame")).doesNotContain("Swing arm and shock");
        change(id, TrailFrame.inputs(""), "FULL_SUSPENSION");
        assertThat(gate.asked(id)).contains(GateCheck.SWING);
        assertThat(page(id, "/frame")).contains("Swing arm and shock", "Main pivot ahead of the shell is not given.");
    }

    /** Ratio, rotation, mean, change, lengths and axle at the end are the script's of O-104; the stack-up is by hand. */
    @Test
    void theSheetShowsRatioAxlePathShockAndTheNumbersOfTheJoin() throws Exception {
        long id = drawn(SwingFrame.inputs("O-104"));
        String page = page(id, "/frame");
        assertThat(page)
                .contains("140,0\u00a0mm", "458,6\u00a0mm", "17,6°", ">2,51<", ">2,61<", ">2,55<", "−3,8\u00a0%")
                .contains("210,0\u00a0mm", "155,0\u00a0mm", "193,5\u00a0mm", "6,6\u00a0mm")
                .contains("The ratio rises towards the end");
        assertThat(page)
                .as("the curve says what it shows, and a table stands beside it")
                .contains("class=\"curve\"", "role=\"img\"", "from 2,51 at the start by 2,53 at the sag to 2,61")
                .contains("<th scope=\"row\" class=\"num\">140,0</th><td class=\"num\">−425,5</td>"
                        + "<td class=\"num\">172,0</td><td class=\"num\">155,0</td><td class=\"num\">2,61</td>");
        assertThat(page.split("<th scope=\"row\" class=\"num\">", -1)).hasSize(12);
        assertThat(page)
                .contains("22,0\u00a0mm ahead, 72,0\u00a0mm above", "−456,8\u00a0mm along, −40,0\u00a0mm up")
                .contains("limit 6,0 or more (common practice)")
                .as("0,3 + 0,3 + 0,1 + 0,2 and √(0,09 + 0,09 + 0,01 + 0,04)")
                .contains("0,90\u00a0mm if all are off to one side, 0,48\u00a0mm by the root of the squares");
        assertThat(page)
                .contains("Expected mass of the front triangle, uncoated", "The swing arm is weighed by itself");
        String sheet = page(id, "");
        assertThat(sheet)
                .contains("Room of the swing arm", "tyre to seat tube, least at 140,0 of travel", "0,6 to spare")
                .contains("twice what joined parts may be off together");
    }

    private long drawn(Map<GeometryInput, BigDecimal> inputs) {
        long id = frame.begin();
        change(id, inputs);
        return id;
    }

    private void change(long id, Map<GeometryInput, BigDecimal> inputs) {
        change(id, inputs, "FULL_SUSPENSION");
    }

    private void change(long id, Map<GeometryInput, BigDecimal> inputs, String kind) {
        office.change(
                hands.act(frame.owner),
                id,
                null,
                new DesignDraft("Swinging", "AL6061", kind, null, null, List.of(), inputs, true));
    }

    private RevisionStory.CheckLine swing(long id) {
        return line(id, GateCheck.SWING);
    }

    private RevisionStory.CheckLine line(long id, GateCheck check) {
        return reading.story(id, true).checks().stream()
                .filter(line -> line.check() == check)
                .findFirst()
                .orElseThrow();
    }

    private String page(long id, String sheet) throws Exception {
        return Objects.requireNonNull(mvc.perform(get("/designs/" + id + sheet).with(Signed.on(crew.byId(frame.owner))))
                .andReturn()
                .getResponse()
                .getContentAsString());
    }

    private static Refusal refusal(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        return refused;
    }
}
