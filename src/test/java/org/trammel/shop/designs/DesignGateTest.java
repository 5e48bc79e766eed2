package org.trammel.shop.designs;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.RouteBook;

@ShopTest
class DesignGateTest {

    @Autowired
    private DrawnFrame.DesignDesk desk;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TestCrew crew;

    @Autowired
    private TestClock clock;

    @Autowired
    private Designs designs;

    @Autowired
    private DrawingOffice office;

    @Autowired
    private DesignGate gate;

    @Autowired
    private RouteBook routes;

    private DrawnFrame frame;

    @BeforeEach
    void draw() {
        frame = new DrawnFrame(desk);
    }

    @Test
    void theCustomerApprovesTheRevisionThatWasSentLastAndNoOther() {
        long a = frame.sent();
        long b = office.revise(owner(), a, "longer chainstay").revisionId();
        office.draw(owner(), b, DrawnFrame.PDF, "application/pdf", "b.pdf");
        assertThat(state(a)).isEqualTo(DesignState.SENT);
        office.send(owner(), b);
        assertThat(state(a)).isEqualTo(DesignState.SUPERSEDED);
        Refusal refused = refusal(() -> frame.approved(a));
        assertThat(refused.kind()).isEqualTo(Refusal.Kind.STATE);
        assertThat(refused.why()).contains("superseded").contains("sent last");
        Refusal otherLetter = refusal(() ->
                gate.approve(owner(), b, new Approval("A", DrawnFrame.FILE, "Rider One", LocalDate.of(2026, 3, 18))));
        assertThat(otherLetter.field()).isEqualTo("letter");
        assertThat(state(b)).isEqualTo(DesignState.SENT);
    }

    @Test
    void anApprovalNamesTheFileThatWasSentAndADayThatCanBe() {
        long sent = frame.sent();
        Refusal file = refusal(() ->
                gate.approve(owner(), sent, new Approval("A", "0".repeat(64), "Rider One", LocalDate.of(2026, 3, 18))));
        assertThat(file.field()).isEqualTo("file");
        for (LocalDate day : new LocalDate[] {LocalDate.of(2026, 3, 17), LocalDate.of(2026, 3, 19)}) {
            Refusal on =
                    refusal(() -> gate.approve(owner(), sent, new Approval("A", DrawnFrame.FILE, "Rider One", day)));
            assertThat(on.field()).isEqualTo("on");
            assertThat(on.why()).contains("the drawing was sent on 18 Mar 2026");
        }
        assertThat(state(sent)).isEqualTo(DesignState.SENT);
    }

    @Test
    void whatMeetsTheRuleMayStandAloneAndAnyOtherAnswerSaysWhy() {
        long approved = frame.approved();
        for (GateAnswer other : List.of(GateAnswer.NOT_CONCERNED, GateAnswer.DECIDED)) {
            assertThat(refusal(() -> gate.answer(owner(), approved, GateCheck.DEPOSIT, other, " "))
                            .field())
                    .isEqualTo("check.DEPOSIT");
        }
        gate.answer(owner(), approved, GateCheck.DEPOSIT, GateAnswer.NOT_CONCERNED, "built for the shop's own stock");
        gate.answer(owner(), approved, GateCheck.DEPOSIT, GateAnswer.MEETS, null);
    }

    @Test
    void aDraftWithoutADrawingIsNotSent() {
        Refusal refused = refusal(() -> office.send(owner(), frame.begin()));
        assertThat(refused.why()).contains("no drawing file");
    }

    @Test
    void aDraftWithoutARouteIsNotSentSinceItsNominalsWouldLackAfterTheApproval() {
        long draft = frame.begin();
        office.draw(owner(), draft, DrawnFrame.PDF, "application/pdf", "frame.pdf");
        assertThat(refusal(() -> office.send(owner(), draft)).instead()).contains("Choose the route first");
    }

    @Test
    void aDrawingOfOtherInputsThanThoseOfNowIsNotSent() {
        long draft = frame.trail("");
        frame.withNominals(draft);
        frame.retype(draft, "CHAINSTAY 434");
        Refusal refused = refusal(() -> office.send(owner(), draft));
        assertThat(refused.why()).contains("Inputs were changed after its drawing was added");
        assertThat(refused.instead()).contains("add that file, then send it");
        assertThat(state(draft)).isEqualTo(DesignState.DRAFT);

        frame.retype(draft, "WELD_MASS 0.05");
        frame.retype(draft, "CHAINSTAY 434");
        office.draw(owner(), draft, DrawnFrame.PDF, "application/pdf", "drawn anew.pdf");
        assertThat(office.send(owner(), draft).state()).isEqualTo(DesignState.SENT);
    }

    @Test
    void whatAFrameShouldWeighIsNotDrawnAndAsksForNoOtherDrawing() {
        long draft = frame.trail("");
        frame.withNominals(draft);
        frame.retype(draft, "WELD_MASS 0.05");
        assertThat(office.send(owner(), draft).state()).isEqualTo(DesignState.SENT);
    }

    @Test
    void theFileThatWasApprovedForOneRevisionIsAskedAboutForTheNextAndNeverTakenForOtherInputs() {
        long a = frame.trail("");
        frame.approved(frame.sent(frame.withNominals(a)));
        long b = office.revise(owner(), a, "longer chainstay").revisionId();
        office.draw(owner(), b, DrawnFrame.PDF, "application/pdf", "b.pdf");
        Refusal asked = refusal(() -> office.send(owner(), b));
        assertThat(asked.kind()).isEqualTo(Refusal.Kind.ASK);
        assertThat(asked.why()).contains("approved for revision A");

        frame.retype(b, "CHAINSTAY 434");
        office.draw(owner(), b, DrawnFrame.PDF, "application/pdf", "b.pdf");
        Refusal refused = refusal(() -> office.send(owner(), b, true));
        assertThat(refused.kind()).isEqualTo(Refusal.Kind.STATE);
        assertThat(refused.why()).contains("approved for revision A", "the inputs are others now");
        office.draw(owner(), b, "%PDF-1.4\nof its own\n%%EOF\n".getBytes(US_ASCII), "application/pdf", "b.pdf");
        assertThat(office.send(owner(), b).state()).isEqualTo(DesignState.SENT);
    }

    @Test
    void theGateStaysShutWhileAChecksOrANominalIsMissing() {
        long approved = frame.approved();
        frame.givePin(frame.owner);
        assertThat(refusal(() -> sign(approved, frame.owner, Role.OWNER)).why()).contains("Not answered yet");
        frame.answerAll(approved);
        sign(approved, frame.owner, Role.OWNER);

        long bare = frame.begin();
        office.change(owner(), bare, null, frame.draft(Map.of()));
        office.draw(owner(), bare, DrawnFrame.PDF, "application/pdf", "frame.pdf");
        Refusal early = refusal(() -> office.send(owner(), bare));
        assertThat(early.why()).contains("080-7 Head angle as built");
        assertThat(state(bare)).isEqualTo(DesignState.DRAFT);
        frame.approved(frame.sent(frame.withNominals(bare)));
        jdbc.sql("delete from design_nominal where revision_id = ?").param(bare).update();
        frame.answerAll(bare);
        Refusal lacking = refusal(() -> sign(bare, frame.owner, Role.OWNER));
        assertThat(lacking.why()).contains("080-7 Head angle as built");
        assertThat(designs.readyFor(bare, routes.revision(frame.route)))
                .extracting(Lacking::code)
                .containsExactly("080-7");
    }

    @Test
    void theGateIsSignedByTwoDifferentPeopleEachWithTheirOwnPin() {
        long both = crew.hire(Role.OWNER, Role.QA_LEAD);
        frame.givePin(both);
        frame.givePin(frame.qa);
        long approved = frame.approved();
        frame.answerAll(approved);
        sign(approved, both, Role.OWNER);
        assertThat(refusal(() -> sign(approved, both, Role.QA_LEAD)).why()).contains("two different people");
        assertThat(refusal(() -> gate.sign(owner(), approved, frame.qa, Role.QA_LEAD, "999999"))
                        .field())
                .isEqualTo("pin");
        assertThat(state(approved)).isEqualTo(DesignState.APPROVED);
        sign(approved, frame.qa, Role.QA_LEAD);
        assertThat(state(approved)).isEqualTo(DesignState.CHECKED);
    }

    @Test
    void oneCapacityIsSignedOnce() {
        long other = crew.hire(Role.OWNER);
        frame.givePin(frame.owner);
        frame.givePin(other);
        long approved = frame.approved();
        frame.answerAll(approved);
        sign(approved, frame.owner, Role.OWNER);
        assertThat(refusal(() -> sign(approved, other, Role.OWNER)).why()).contains("signed already as owner");
    }

    @Test
    void anAnswerThatChangesAfterASignatureTakesTheSignatureBack() {
        frame.givePin(frame.owner);
        frame.givePin(frame.qa);
        long approved = frame.approved();
        frame.answerAll(approved);
        sign(approved, frame.owner, Role.OWNER);
        gate.answer(
                owner(), approved, GateCheck.TOE_CLEARANCE, GateAnswer.DECIDED, "sold with pedals that hold the feet");
        sign(approved, frame.qa, Role.QA_LEAD);
        assertThat(state(approved)).isEqualTo(DesignState.APPROVED);
        sign(approved, frame.owner, Role.OWNER);
        assertThat(state(approved)).isEqualTo(DesignState.CHECKED);
    }

    @Test
    void aFrameOutsideEveryFamilyNeedsAWrittenDecision() {
        long draft = frame.begin();
        office.change(
                owner(),
                draft,
                null,
                new DesignDraft(
                        "Fork of 610 mm", "AL6061", "HARDTAIL", null, null, java.util.List.of(), Map.of(), false));
        assertThat(refusal(() -> gate.answer(owner(), draft, GateCheck.TEST_FAMILY, GateAnswer.MEETS, null))
                        .why())
                .contains("no test family");
        assertThat(refusal(() -> gate.answer(owner(), draft, GateCheck.TEST_FAMILY, GateAnswer.DECIDED, " "))
                        .why())
                .contains("empty");
        gate.answer(
                owner(),
                draft,
                GateCheck.TEST_FAMILY,
                GateAnswer.DECIDED,
                "Fork longer than tested: frame test booked");
    }

    @Test
    void aReleasedRevisionNeverChangesAndTheNextOneSupersedesIt() {
        long a = frame.checked();
        designs.release(owner(), a, routes.revision(frame.route));
        DesignSheet released = designs.revision(a);
        assertThat(refusal(() -> office.give(
                                owner(), a, null, Map.of("080-7", Nominal.of(BigDecimal.valueOf(66))), Set.of()))
                        .why())
                .contains("released");
        long b = office.revise(owner(), a, "customer wants a longer fork").revisionId();
        DesignSheet copy = designs.revision(b);
        assertThat(copy.letter()).isEqualTo("B");
        assertThat(copy.nominals()).isEqualTo(released.nominals());
        assertThat(copy.drawing()).isNull();
        assertThat(refusal(() -> office.revise(owner(), a, "again")).why()).contains("Revision B is being drawn");
        office.draw(owner(), b, DrawnFrame.PDF, "application/pdf", "b.pdf");
        office.send(owner(), b, true);
        frame.checked(frame.approved(b));
        assertThat(state(a)).isEqualTo(DesignState.RELEASED);
        designs.release(owner(), b, routes.revision(frame.route));
        assertThat(state(a)).isEqualTo(DesignState.SUPERSEDED);
        assertThat(designs.revision(a).nominals()).isEqualTo(released.nominals());
    }

    @Test
    void theSameActIsCarriedOutOnce() {
        long draft = frame.draft();
        Act act = owner();
        office.send(act, draft);
        assertThat(office.send(act, draft).state()).isEqualTo(DesignState.SENT);
        clock.pass(Duration.ofMinutes(1));
        Act revise = owner();
        long b = office.revise(revise, draft, "a wish").revisionId();
        assertThat(office.revise(revise, draft, "a wish").revisionId()).isEqualTo(b);
    }

    @Test
    void aPageThatIsOlderThanTheRevisionIsRefused() {
        long draft = frame.draft();
        Refusal stale = refusal(() -> office.change(owner(), draft, 0L, frame.draft(Map.of())));
        assertThat(stale.kind()).isEqualTo(Refusal.Kind.STALE);
    }

    private void sign(long revision, long person, Role capacity) {
        gate.sign(owner(), revision, person, capacity, DrawnFrame.PIN);
    }

    private Act owner() {
        return crew.act(frame.owner);
    }

    private DesignState state(long revision) {
        return designs.revision(revision).state();
    }

    private static Refusal refusal(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        return refused;
    }
}
