package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** Nominals taken from the drawing, typed against it, and the tolerance classes they are held against. */
class DrawnNominalsTest extends AtTheDrawingDesk {

    private static final String CODE = "080-7";

    @Autowired
    private Tolerances tolerances;

    private RequestPostProcessor qa;

    @BeforeEach
    void sitDown() {
        qa = Signed.on(crew.byId(frame.qa));
    }

    @AfterEach
    void putTheShippedToleranceBack() {
        Tolerance now = tolerances.inForce().get("BUILT_ANGLE");
        if (now.by() != 0) {
            tolerances.change(
                    hands.act(frame.qa),
                    "BUILT_ANGLE",
                    new BigDecimal("-0.3"),
                    new BigDecimal("0.3"),
                    "as shipped " + UUID.randomUUID(),
                    "end of a test",
                    null);
        }
    }

    @Test
    void theDrawingGivesANominalThatFollowsItUntilSomebodyTypesAnother() {
        long id = frame.trail("");
        assertThat(nominal(id)).isEqualTo(Nominal.of(new BigDecimal("65.5")));
        assertThat(story(id).fromDrawing()).containsExactly(CODE);
        assertThat(story(id).lacking()).isZero();
        frame.retype(id, "HEAD_ANGLE 66");
        assertThat(nominal(id).nominal()).isEqualByComparingTo("66");

        give(id, "65.8");
        frame.retype(id, "HEAD_ANGLE 65.9");
        assertThat(nominal(id).nominal()).as("typed stays").isEqualByComparingTo("65.8");
        assertThat(story(id).fromDrawing()).isEmpty();
        office.give(hands.act(frame.qa), id, null, Map.of(), Set.of(CODE));
        assertThat(nominal(id).nominal()).as("the drawing's again").isEqualByComparingTo("65.9");

        frame.retype(id, "CHAINSTAY -");
        assertThat(designs.revision(id).nominals())
                .as("it does not close any more")
                .isEmpty();
        assertThat(story(id).lacking()).isOne();
        give(id, "65.5");
        assertThat(story(id).lacking()).as("typed where it is not computed").isZero();
    }

    @Test
    void aTypedNominalAgainstTheDrawingIsRedUntilItIsDecidedOrTakenBack() throws Exception {
        long id = frame.trail("");
        give(id, "65.8");
        assertThat(gate.notMet(id)).as("exactly its tolerance away").doesNotContain(GateCheck.NOMINALS);
        give(id, "65.81");
        assertThat(gate.notMet(id)).contains(GateCheck.NOMINALS);
        assertThat(page("/designs/" + id + "/characteristics")).contains("against the drawing: 65,5°", "1 against it");
        Refusal refused = catchThrowableOfType(
                Refusal.class, () -> gate.answer(hands.act(frame.qa), id, GateCheck.NOMINALS, GateAnswer.MEETS, null));
        assertThat(refused.why())
                .contains(
                        "typed nominals off the drawing 1, limit 0 or less",
                        "080-7 Head angle as built 65,81°, wanted 65,5° by the drawing");
        gate.answer(
                hands.act(frame.qa), id, GateCheck.NOMINALS, GateAnswer.DECIDED, "the customer's own bench says so");
        assertThat(line(id).counts()).isTrue();
        give(id, "70");
        assertThat(line(id).counts()).as("decided on another nominal").isFalse();
        office.give(hands.act(frame.qa), id, null, Map.of(), Set.of(CODE));
        gate.answer(hands.act(frame.qa), id, GateCheck.NOMINALS, GateAnswer.MEETS, null);
        assertThat(line(id).counts()).isTrue();
        assertThat(page("/designs/" + id + "/characteristics"))
                .contains("from the drawing")
                .doesNotContain("against it");
    }

    @Test
    void theNarrowerOfClassAndRouteHoldsAndAWiderClassLoosensNothing() {
        long id = frame.trail("");
        tolerance("-0.1", "0.5");
        frame.retype(id, "REACH 459");
        assertThat(nominal(id))
                .isEqualTo(new Nominal(new BigDecimal("65.5"), new BigDecimal("-0.1"), new BigDecimal("0.3"), true));
        assertThat(story(id).apart()).extracting(CharacteristicLine::code).containsExactly(CODE);
        tolerance("-5", null);
        frame.retype(id, "REACH 458");
        assertThat(nominal(id)).isEqualTo(Nominal.of(new BigDecimal("65.5")));
    }

    @Test
    void aToleranceIsChangedOnItsPageAndKeepsItsHistoryAndSource() throws Exception {
        assertThat(page("/shop/tolerances")).contains("Angle as built", "common practice", "Head angle as built");
        long seen = tolerances.inForce().get("BUILT_ANGLE").id();
        mvc.perform(post("/shop/tolerances/BUILT_ANGLE")
                        .param("actId", UUID.randomUUID().toString())
                        .param("seen", Long.toString(seen))
                        .param("lower", "\u22120,25")
                        .param("upper", "0,25")
                        .param("source", "trial of the shop <b>7</b>")
                        .param("reason", "better jig")
                        .with(csrf())
                        .with(qa))
                .andExpect(redirectedUrl("/shop/tolerances/BUILT_ANGLE"));
        assertThat(page("/shop/tolerances/BUILT_ANGLE"))
                .contains(
                        "\u22120,25°", "+0,25°", "trial of the shop &lt;b&gt;7&lt;/b&gt;", "better jig", "\u22120,3°");
        mvc.perform(post("/shop/tolerances/BUILT_ANGLE")
                        .param("actId", UUID.randomUUID().toString())
                        .param("seen", Long.toString(seen))
                        .param("lower", "-0,2")
                        .param("upper", "0,2")
                        .param("source", "old page")
                        .param("reason", "old page")
                        .with(csrf())
                        .with(qa))
                .andExpect(status().isConflict());
        mvc.perform(get("/shop/tolerances/NONE").with(qa)).andExpect(status().isNotFound());
    }

    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource({
        "0.1, 0.5, nominal itself",
        "-0.5, -0.1, nominal itself",
        "0, 0, Nothing is left",
        ", , Both sides",
        "-0.12345, 0.1, decimals",
        "-1000, 0.1, no tolerance",
        "-0.1, 1e308, no tolerance",
    })
    void aToleranceThatCannotBeIsRefused(BigDecimal lower, BigDecimal upper, String why) {
        Refusal refused = catchThrowableOfType(
                Refusal.class,
                () -> tolerances.change(hands.act(frame.qa), "BUILT_ANGLE", lower, upper, "a book", "a test", null));
        assertThat(refused).isNotNull();
        assertThat(refused.kind()).isEqualTo(Refusal.Kind.INPUT);
        assertThat(refused.why()).contains(why);
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void onlyQaLeadAndOwnerChangeATolerance(Role role) {
        Act act = hands.act(hands.hire(role));
        String source = "of " + role + " " + UUID.randomUUID();
        if (role == Role.QA_LEAD || role == Role.OWNER) {
            Tolerance made = tolerances.change(
                    act, "JIG_ANGLE", BigDecimal.valueOf(-1, 1), BigDecimal.valueOf(1, 1), source, "a test", null);
            assertThat(tolerances
                            .change(act, "JIG_ANGLE", null, BigDecimal.ONE, "sent twice", "a test", null)
                            .id())
                    .as("one act, one change")
                    .isEqualTo(made.id());
        } else {
            Refusal refused = catchThrowableOfType(
                    Refusal.class,
                    () -> tolerances.change(act, "JIG_ANGLE", null, BigDecimal.ONE, source, "a test", null));
            assertThat(refused).isNotNull();
            assertThat(refused.kind()).isEqualTo(Refusal.Kind.PERSON);
        }
    }

    private void tolerance(String lower, String upper) {
        tolerances.change(
                hands.act(frame.qa),
                "BUILT_ANGLE",
                new BigDecimal(lower),
                upper == null ? null : new BigDecimal(upper),
                "a trial " + UUID.randomUUID(),
                "a test",
                null);
    }

    private void give(long id, String nominal) {
        office.give(hands.act(frame.qa), id, null, Map.of(CODE, Nominal.of(new BigDecimal(nominal))));
    }

    private Nominal nominal(long id) {
        return designs.revision(id).nominals().get(CODE);
    }

    private RevisionStory story(long id) {
        return reading.story(id, true);
    }

    /** The head angle of 65,46° is printed as 65,5°: 65,8° is 0,30° from what is printed and 0,34° from the frame. */
    @Test
    void aTypedNominalIsComparedWithTheDrawingBeforeItIsRounded() {
        long id = frame.trail("HEAD_ANGLE 65.46");
        assertThat(designs.revision(id).nominals().get(CODE).nominal())
                .as("what is printed and read back")
                .isEqualByComparingTo("65.5");
        assertThat(gate.notMet(id)).isEmpty();
        give(id, "65.5");
        assertThat(gate.notMet(id)).as("typed as it is printed").isEmpty();
        give(id, "65.7");
        assertThat(gate.notMet(id)).isEmpty();
        give(id, "65.8");
        assertThat(gate.notMet(id)).containsExactly(GateCheck.NOMINALS);
    }

    @Test
    void limitsOfRouteAndClassThatExcludeEachOtherAreNotPassedOverInSilence() {
        jdbc.sql("update route_characteristic set lower_deviation = 0.4, upper_deviation = 0.6 where code = ?"
                        + " and operation_id in (select id from route_operation where revision_id = ?)")
                .params(CODE, frame.route)
                .update();
        long id = frame.trail("");
        Refusal refused = DrawnFrame.refusal(
                () -> gate.answer(hands.act(frame.qa), id, GateCheck.NOMINALS, GateAnswer.MEETS, null));
        assertThat(refused.why())
                .contains(
                        "limits of route and tolerance class that exclude each other 1, limit 0 or less",
                        "080-7 Head angle as built route 0,4° to 0,6°, wanted class −0,3° to 0,3°");
    }

    /** A characteristic says by its name what it asks for; of one that was renamed the drawing knows nothing. */
    @Test
    void whatIsTypedBesideTheDrawingIsNamedAtTheGateAndOnTheSheet() throws Exception {
        long known = frame.trail("");
        assertThat(line(known).figures())
                .extracting(CheckFigure::label)
                .containsExactly("typed nominals off the drawing");
        jdbc.sql("update route_characteristic set name = 'Head angle, built' where code = ?"
                        + " and operation_id in (select id from route_operation where revision_id = ?)")
                .params(CODE, frame.route)
                .update();
        long id = frame.trail("");
        give(id, "70");
        assertThat(line(id).figures())
                .extracting(CheckFigure::words)
                .contains("typed, of which the drawing says nothing 1: 080-7");
        assertThat(page("/designs/" + id)).contains("typed, of which the drawing says nothing", "1: 080-7");
        assertThat(page("/designs/" + id + "/characteristics")).contains("typed; the drawing says nothing of it");
    }

    private RevisionStory.CheckLine line(long id) {
        return story(id).checks().stream()
                .filter(line -> line.check() == GateCheck.NOMINALS)
                .findFirst()
                .orElseThrow();
    }

    private String page(String address) throws Exception {
        return mvc.perform(get(address).with(qa)).andReturn().getResponse().getContentAsString();
    }
}
