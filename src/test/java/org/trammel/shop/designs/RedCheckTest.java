package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Setting;
import org.trammel.shop.settings.Settings;

/**
 * A figure that is not met shuts the gate. Expected figures are those of the invented workshop's frames in frames.csv,
 * which a script written apart from this project computed, or worked by hand where the line says so.
 */
class RedCheckTest extends AtTheDrawingDesk {

    @Autowired
    private Settings settings;

    /**
     * Closure: the stack is 643,06. The others by hand: tyre |cos 74,5° × 58 − sin 74,5° × √(428² − 58²)| − 370 − 17,45 =
     * 5,68, and with 430 and half of an end formed 40 high 5,07; the stay's line from (411; 24) to (18; 78) passes (350; 0)
     * at (61 × 54 + 24 × 393) / 396,69 = 32,08, less 20 and 11; the seatstay's, from
     * (446,69; 17,45), passes (357,5; 0) at (428,69 × 78 − 339,5 × 60,55) / 432,94 = 29,75, less 12,5 and 12; pedal √((310 + 663 cos 65,5° + 44 sin 65,5°)² + 58²) − 370 − 170 = 87,66; the down tube's edge on the head
     * tube 34 − 27 / tan 64,96° − 19 / sin 64,96° = 0,42; seatpost 350 − (700 − 430); longest
     * √((503,62 + √(1000² − 58²))² + (542,96 − 58)²), and half a head tube of 54 and a dropout of 18 beyond it.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(quoteCharacter = '"', textBlock = """
            CLOSURE,        STACK_ASKED 640,       "off the stack asked for 3,1 mm, limit 1,0 mm or less, margin −2,1 mm", STACK_ASKED 643
            TYRE_CLEARANCE, CHAINSTAY 428,         "tyre to tube 5,7 mm, limit 6,0 mm or more, margin −0,3 mm", CHAINSTAY 432
            TYRE_CLEARANCE, CHAINSTAY 430 FORMED_SEAT_TUBE_SHELL 40 FORMED_SEAT_TUBE_SHELL_ZONE 60, "tyre to tube 5,1 mm, limit 6,0 mm or more, margin −0,9 mm", CHAINSTAY 430
            TYRE_STAYS,     REAR_TYRE_WIDTH 40,    "tyre to chainstay 1,1 mm, limit 6,0 mm or more, margin −4,9 mm", REAR_TYRE_WIDTH 25
            TYRE_STAYS,     SEATSTAY_OUTSIDE 24,   "tyre to seatstay 5,3 mm, limit 6,0 mm or more, margin −0,7 mm", SEATSTAY_OUTSIDE 18
            TOE_CLEARANCE,  REACH 310,             "with the usual crank of 170 87,7 mm, limit 100,0 mm or more, margin −12,3 mm", REACH 458
            HEAD_NODES,     DOWN_TUBE_AT_HEAD 34,  "below the down tube 0,4 mm, limit 4,0 mm or more, margin −3,6 mm", DOWN_TUBE_AT_HEAD 40
            TOE_CLEARANCE,  REACH 310 CRANK 175,   "with a crank of 175 82,7 mm, limit 100,0 mm or more, margin −17,3 mm", REACH 310 CRANK 175 FEET_HELD 1
            MITRES,         TOP_TUBE_OUTSIDE 34.9, "joints to form or decide 1, limit 0 or less", TOP_TUBE_OUTSIDE 31.8
            MITRES,         TOP_TUBE_LENGTH 700 TOP_TUBE_BUTT_AT_HEAD 100 TOP_TUBE_MIDDLE_WALL 0.8 TOP_TUBE_BUTT_AT_SEAT 30, "butts left short at a weld 2, limit 0 or less", TOP_TUBE_LENGTH 620 TOP_TUBE_BUTT_AT_HEAD 100 TOP_TUBE_MIDDLE_WALL 0.8 TOP_TUBE_BUTT_AT_SEAT 100
            MITRES,         FORMED_DOWN_TUBE_SHELL 35 FORMED_DOWN_TUBE_SHELL_ZONE 5, "ends formed over less than their cut 1, limit 0 or less", FORMED_DOWN_TUBE_SHELL 35 FORMED_DOWN_TUBE_SHELL_ZONE 60
            MITRES,         DROPOUT_PLATE 8 SLOT_PLAY 0.2 SLOT_DEPTH 60, "slots through the side of a stay 2, limit 0 or less", DROPOUT_PLATE 6
            SEATPOST,       SADDLE_CLAMP 700 SEATPOST 350 SEATPOST_MARK 100, "inserted, to the mark 80,0 mm, limit 100,0 mm or more, margin −20,0 mm", SADDLE_CLAMP 700 SEATPOST 400 SEATPOST_MARK 100
            SEATPOST,       SADDLE_CLAMP 700 SEATPOST 310 SEATPOST_MARK 30, "inserted, to the top tube 40,0 mm, limit 45,0 mm or more, margin −5,0 mm", SADDLE_CLAMP 700 SEATPOST 320 SEATPOST_MARK 30
            SEATPOST,       SADDLE_CLAMP 700 SEATPOST 400 SEATPOST_MARK 100 SEATPOST_DEPTH 120, "inserted, in the free depth 130,0 mm, limit 120,0 mm or less, margin −10,0 mm", SADDLE_CLAMP 700 SEATPOST 390 SEATPOST_MARK 100 SEATPOST_DEPTH 120
            OVERALL_LENGTH, CHAINSTAY 1000,        "longest line over tubes and dropouts 1623,3 mm, limit 1500,0 mm or less, margin −123,3 mm", CHAINSTAY 432
            """)
    void redIsRefusedThenDecidedThenCuredByAnotherInput(GateCheck check, String red, String why, String cured) {
        long id = frame.trail(red);
        assertThat(gate.notMet(id)).containsExactly(check);
        for (GateAnswer other : List.of(GateAnswer.MEETS, GateAnswer.NOT_CONCERNED)) {
            Refusal refused =
                    DrawnFrame.refusal(() -> gate.answer(hands.act(frame.qa), id, check, other, "it is fine"));
            assertThat(refused.kind()).isEqualTo(Refusal.Kind.INPUT);
            assertThat(refused.field()).isEqualTo("check." + check.name());
            assertThat(refused.what()).contains(check.label(), "was not answered");
            assertThat(refused.why()).startsWith("Not met: ").contains(why);
            assertThat(refused.instead()).contains("decide it in writing for this frame");
        }
        gate.answer(hands.act(frame.qa), id, check, GateAnswer.DECIDED, "for this frame, since the rider asked for it");
        assertThat(line(id, check).counts()).isTrue();

        frame.retype(id, cured);
        assertThat(line(id, check).counts()).as("decided on other inputs").isFalse();
        gate.answer(hands.act(frame.qa), id, check, GateAnswer.MEETS, null);
        assertThat(line(id, check).counts()).isTrue();
        assertThat(gate.notMet(id)).isEmpty();
    }

    @Test
    void inputsThatContradictEachOtherAreRedAndInputsThatAreMissingAreNamed() {
        long id = frame.trail("CHAINSTAY 300 SHELL_DROP 150 REAR_WHEEL_RADIUS 500 FRONT_WHEEL_RADIUS 300");
        Refusal refused = DrawnFrame.refusal(
                () -> gate.answer(hands.act(frame.qa), id, GateCheck.TYRE_CLEARANCE, GateAnswer.MEETS, null));
        assertThat(refused.why()).contains("The chainstay of 300 mm does not reach the rear axle");

        frame.retype(id, "SEAT_TUBE_OUTSIDE -");
        assertThat(line(id, GateCheck.TYRE_CLEARANCE).lacking()).containsExactly("Seat tube outside is not given.");
        Refusal unknown = DrawnFrame.refusal(
                () -> gate.answer(hands.act(frame.qa), id, GateCheck.TYRE_CLEARANCE, GateAnswer.MEETS, "surely"));
        assertThat(unknown.why()).isEqualTo("It was not computed: Seat tube outside is not given.");
        gate.answer(hands.act(frame.qa), id, GateCheck.TYRE_CLEARANCE, GateAnswer.DECIDED, "measured on the mock-up");
        assertThat(line(id, GateCheck.TYRE_CLEARANCE).counts()).isTrue();
    }

    @Test
    void anAnswerGivenBeforeTheInputsChangedDoesNotCountAtTheSignature() {
        long id = frame.trail("");
        frame.answerAll(id);
        frame.retype(id, "CHAINSTAY 431");
        approve(id);
        frame.givePin(frame.owner);
        Refusal refused = DrawnFrame.refusal(() -> sign(id, frame.owner, Role.OWNER));
        assertThat(refused.why()).contains("Answered on other inputs than those of now: ", "Closure", "Mitres");
        assertThat(refused.why()).doesNotContain("Deposit");
        frame.answerAll(id);
        sign(id, frame.owner, Role.OWNER);
    }

    /** Whatever way the figure turned red after the answers, the frame is neither signed nor released. */
    @ParameterizedTest
    @EnumSource(
            value = GateCheck.class,
            names = {"CLOSURE", "TYRE_CLEARANCE", "TOE_CLEARANCE", "HEAD_NODES", "MITRES"})
    void aFrameWithARedUndecidedCheckIsNeverReleased(GateCheck check) {
        long id = checked("STACK_ASKED 643");
        String[] turned = switch (check) {
            case CLOSURE -> new String[] {"STACK_ASKED", "640"};
            case TYRE_CLEARANCE -> new String[] {"CHAINSTAY", "420"};
            case TOE_CLEARANCE -> new String[] {"REACH", "310"};
            case HEAD_NODES -> new String[] {"DOWN_TUBE_AT_HEAD", "30"};
            default -> new String[] {"TOP_TUBE_OUTSIDE", "34.9"};
        };
        jdbc.sql("update design_geometry set amount = ? where revision_id = ? and input = ?")
                .params(new BigDecimal(turned[1]), id, turned[0])
                .update();
        assertThat(gate.notMet(id)).contains(check);
        Refusal refused =
                DrawnFrame.refusal(() -> designs.release(hands.act(frame.owner), id, routes.revision(frame.route)));
        assertThat(refused.what()).contains("was not released");
        assertThat(refused.why()).startsWith("Not met and not decided: ").contains(check.label(), "limit");
        assertThat(designs.revision(id).state()).isEqualTo(DesignState.CHECKED);

        for (GateCheck red : gate.notMet(id)) {
            gate.answer(hands.act(frame.owner), id, red, GateAnswer.DECIDED, "seen, and right for this rider");
        }
        assertThat(designs.revision(id).state()).as("signed again").isEqualTo(DesignState.APPROVED);
        for (GateCheck other : gate.asked(id)) {
            if (!line(id, other).counts()) {
                frame.answer(id, other);
            }
        }
        sign(id, frame.owner, Role.OWNER);
        sign(id, frame.qa, Role.QA_LEAD);
        designs.release(hands.act(frame.owner), id, routes.revision(frame.route));
        assertThat(designs.revision(id).state()).isEqualTo(DesignState.RELEASED);
    }

    @Test
    void aLimitTheShopChangesIsAnotherInputAndShutsAGateThatWasSigned() {
        long id = checked("");
        Setting before = settings.inForce("gate.tyre");
        limit("12", "own trial, muddy season");
        try {
            assertThat(DrawnFrame.refusal(
                                    () -> designs.release(hands.act(frame.owner), id, routes.revision(frame.route)))
                            .why())
                    .contains("Rear tyre to seat tube (tyre to tube 9,6 mm, limit 12,0 mm or more, margin −2,4 mm)");
            RevisionStory.CheckLine line = line(id, GateCheck.TYRE_CLEARANCE);
            assertThat(line.figures()).extracting(CheckFigure::source).containsExactly("own trial, muddy season");
            assertThat(line.answeredOn())
                    .extracting(CheckFigure::words)
                    .containsExactly("tyre to tube 9,6 mm, limit 6,0 mm or more, margin 3,6 mm");
            assertThat(line.answeredOn()).extracting(CheckFigure::setting).containsExactly(before.id());
        } finally {
            limit(before.value(), before.source());
        }
        designs.release(hands.act(frame.owner), id, routes.revision(frame.route));
    }

    private void limit(String value, String source) {
        settings.change(hands.act(frame.qa), "gate.tyre", value, source, "a test of the gate");
    }

    @Test
    void anAnswerThatWasPutThereByNobodyDoesNotOpenTheGateEither() {
        long id = checked("");
        jdbc.sql("update design_check set given_on = '' where revision_id = ?")
                .param(id)
                .update();
        assertThat(DrawnFrame.refusal(() -> designs.release(hands.act(frame.owner), id, routes.revision(frame.route)))
                        .why())
                .startsWith("Answered on other inputs");
    }

    @Test
    void pageAndApiRefuseAlikeAndTheSheetShowsValueLimitAndMargin() throws Exception {
        long id = frame.trail("CHAINSTAY 428");
        var owner = Signed.on(crew.byId(frame.owner));
        mvc.perform(post("/api/v1/designs/{id}/gate", id)
                        .header("Act-Id", UUID.randomUUID())
                        .contentType("application/json")
                        .content("{\"check\": \"TYRE_CLEARANCE\", \"answer\": \"MEETS\"}")
                        .with(csrf())
                        .with(owner))
                .andExpect(status().is(422));
        mvc.perform(post("/designs/{id}/check", id)
                        .param("actId", UUID.randomUUID().toString())
                        .param("check", "TYRE_CLEARANCE")
                        .param("answer", "MEETS")
                        .with(csrf())
                        .with(owner))
                .andExpect(status().is(422));
        assertThat(line(id, GateCheck.TYRE_CLEARANCE).answer()).isNull();
        String sheet = mvc.perform(get("/designs/{id}", id).with(owner))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(sheet)
                .contains("5,7\u00a0mm", "limit 6,0\u00a0mm or more", "by 0,3\u00a0mm", "passes by a decision");
        assertThat(mvc.perform(get("/api/v1/designs/{id}/gate", id).with(owner))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("\"red\":true", "\"limit\":6,");
    }

    private long checked(String inputs) {
        long id = frame.trail(inputs);
        approve(id);
        frame.checked(id);
        return id;
    }

    private void approve(long id) {
        office.give(hands.act(frame.owner), id, null, Map.of("080-7", Nominal.of(new BigDecimal("65.5"))), Set.of());
        office.draw(hands.act(frame.owner), id, DrawnFrame.PDF, "application/pdf", "frame.pdf");
        frame.approved(frame.sent(id));
    }

    private RevisionStory.CheckLine line(long id, GateCheck check) {
        return reading.story(id, true).checks().stream()
                .filter(line -> line.check() == check)
                .findFirst()
                .orElseThrow();
    }

    private void sign(long id, long person, Role capacity) {
        gate.sign(hands.act(frame.owner), id, person, capacity, DrawnFrame.PIN);
    }
}
