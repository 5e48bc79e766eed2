package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;

/** What cannot be computed is decided in writing, whatever the reason, and no other answer stands in for the words. */
class GateAnswersTest extends AtTheDrawingDesk {

    /** What people alone know: nothing of the drawing is missing for it. */
    private static final Set<GateCheck> LOOKED_AT =
            EnumSet.of(GateCheck.RIDER_DATA, GateCheck.COMPONENTS, GateCheck.COUNTRY, GateCheck.DEPOSIT);

    @Autowired
    private TestFamilies families;

    @Test
    void aFrameWhoseGeometryIsEmptiedPassesNoComputedCheckWithoutWords() {
        long id = frame.trail("CHAINSTAY 428");
        assertThat(gate.notMet(id)).containsExactly(GateCheck.TYRE_CLEARANCE);
        office.change(hands.act(frame.owner), id, null, frame.draft(Map.of()));
        office.give(hands.act(frame.owner), id, null, Map.of("080-7", Nominal.of(new BigDecimal("65.5"))), Set.of());
        Set<GateCheck> computed = EnumSet.copyOf(gate.asked(id));
        computed.removeAll(LOOKED_AT);
        assertThat(gate.notComputed(id)).isEqualTo(computed);
        for (GateCheck check : computed) {
            for (GateAnswer other : List.of(GateAnswer.MEETS, GateAnswer.NOT_CONCERNED)) {
                assertThat(refused(id, check, other)).as(check.label()).startsWith("It was not computed: ");
            }
            gate.answer(hands.act(frame.qa), id, check, GateAnswer.DECIDED, "measured on the mock-up");
            assertThat(line(id, check).counts()).isTrue();
        }
    }

    @Test
    void aCheckThatCouldNotBeComputedIsNoneThatDoesNotConcernTheFrame() {
        long id = frame.trail("SEAT_TUBE_OUTSIDE -");
        assertThat(refused(id, GateCheck.TYRE_CLEARANCE, GateAnswer.NOT_CONCERNED))
                .isEqualTo("It was not computed: Seat tube outside is not given.");
        assertThat(line(id, GateCheck.TYRE_CLEARANCE).takes()).containsExactly(GateAnswer.DECIDED);
    }

    @ParameterizedTest
    @EnumSource(GateCheck.class)
    void onlyWhatAFrameMayDoWithoutDoesNotConcernIt(GateCheck check) {
        long id = frame.trail("STACK_ASKED 643 SADDLE_CLAMP 700 SEATPOST 400 SEATPOST_MARK 100");
        if (!gate.asked(id).contains(check)) {
            return;
        }
        Set<GateCheck> without = EnumSet.of(GateCheck.RIDER_DATA, GateCheck.COUNTRY, GateCheck.DEPOSIT);
        if (without.contains(check)) {
            gate.answer(hands.act(frame.qa), id, check, GateAnswer.NOT_CONCERNED, "built for the shop's own stock");
            assertThat(line(id, check).counts()).isTrue();
        } else {
            refused(id, check, GateAnswer.NOT_CONCERNED);
        }
        assertThat(line(id, check).takes().contains(GateAnswer.NOT_CONCERNED)).isEqualTo(without.contains(check));
    }

    /** As it stands in the books of a shop whose program let it pass. */
    @Test
    void anAnswerOfBeforeThatIsNoneNowHoldsNoLonger() {
        long id = frame.withNominals(frame.trail("SEAT_TUBE_OUTSIDE -"));
        frame.approved(frame.sent(id));
        frame.answerAll(id);
        frame.givePin(frame.owner);
        for (String answer : List.of("MEETS", "NOT_CONCERNED")) {
            jdbc.sql("update design_check set answer = ? where revision_id = ? and code = 'TYRE_CLEARANCE'")
                    .params(answer, id)
                    .update();
            assertThat(line(id, GateCheck.TYRE_CLEARANCE).counts()).isFalse();
            Refusal refused = DrawnFrame.refusal(
                    () -> gate.sign(hands.act(frame.owner), id, frame.owner, Role.OWNER, DrawnFrame.PIN));
            assertThat(refused.why())
                    .isEqualTo(
                            "Not computed and not decided: Rear tyre to seat tube (Seat tube outside is not given).");
        }
    }

    @Test
    void theStackAskedForIsNotTakenAwayToPassTheClosure() {
        long id = frame.trail("STACK_ASKED 640");
        assertThat(gate.notMet(id)).contains(GateCheck.CLOSURE);
        frame.retype(id, "");
        assertThat(refused(id, GateCheck.CLOSURE, GateAnswer.MEETS))
                .isEqualTo("It was not computed: Stack asked for is not given.");
    }

    @Test
    void withoutAnOrderNeitherStandoverNorTrailIsMet() {
        long id = frame.trail("");
        assertThat(refused(id, GateCheck.STANDOVER, GateAnswer.MEETS))
                .isEqualTo("It was not computed: No order tells about it.");
        assertThat(refused(id, GateCheck.TRAIL, GateAnswer.MEETS))
                .isEqualTo("It was not computed: No order tells about it.");
        assertThat(line(id, GateCheck.TRAIL).figures()).as("still shown").hasSize(1);
    }

    @Test
    void aFamilyThatNobodyKeepsCoversNothing() {
        long id = of("F-" + UUID.randomUUID().toString().substring(0, 8));
        assertThat(refused(id, GateCheck.TEST_FAMILY, GateAnswer.MEETS)).contains("is kept, so nothing is compared");
    }

    @Test
    void aFamilyThatLimitsTheRiderCoversNobodyWhoseMassIsNotTold() {
        String code = kept("110");
        assertThat(refused(of(code), GateCheck.TEST_FAMILY, GateAnswer.MEETS))
                .isEqualTo("It was not computed: No order tells the rider's mass, and test family " + code
                        + " limits it.");
    }

    @Test
    void aFamilyWithoutALimitCoversNothing() {
        String code = kept(null);
        assertThat(refused(of(code), GateCheck.TEST_FAMILY, GateAnswer.MEETS))
                .isEqualTo("It was not computed: Test family " + code + " has no limit, so nothing is compared.");
    }

    private String kept(String heaviest) {
        String code = "F-" + UUID.randomUUID().toString().substring(0, 8);
        families.enter(
                hands.act(frame.qa),
                new TestFamilies.Covered(
                        code,
                        "hardtail",
                        null,
                        heaviest == null ? null : new BigDecimal(heaviest),
                        null,
                        null,
                        "report 7, invented"),
                null);
        return code;
    }

    private long of(String family) {
        long id = frame.begin();
        DesignDraft plain = frame.draft(TrailFrame.nothingRed(""));
        office.change(
                hands.act(frame.owner),
                id,
                null,
                new DesignDraft(
                        plain.description(),
                        plain.metal(),
                        plain.kind(),
                        plain.routeRevisionId(),
                        family,
                        plain.components(),
                        plain.geometry(),
                        true));
        return id;
    }

    private String refused(long id, GateCheck check, GateAnswer answer) {
        return DrawnFrame.refusal(() -> gate.answer(hands.act(frame.qa), id, check, answer, "it is fine"))
                .why();
    }

    private RevisionStory.CheckLine line(long id, GateCheck check) {
        return reading.story(id, true).checks().stream()
                .filter(line -> line.check() == check)
                .findFirst()
                .orElseThrow();
    }
}
