package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Pins;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Role;

/**
 * A welder's qualification holds on condition that the employer confirms every six months (ISO 9606-2, clause 9, cited
 * from memory). That condition alone may be overridden by the QA lead, for one operation of one frame, with a reason.
 * It is 18 March 2026.
 */
class ConfirmationOverrideTest extends AtTheTablet {

    private static final String KIND = "WELD:AL:141";
    private static final LocalDate ISSUED = LocalDate.of(2025, 1, 10);

    @Autowired
    private Pins pins;

    @Autowired
    private Qualifications qualifications;

    private long qa;

    @BeforeEach
    void aQaLeadIsThere() {
        qa = withPin(Role.QA_LEAD);
    }

    private long withPin(Role... roles) {
        long person = floor.hire(roles);
        pins.give(person, floor.hire(Role.OWNER));
        return person;
    }

    private long welder(String kind, LocalDate expiresOn, LocalDate confirmedOn) {
        long person = withPin(Role.WELDER);
        enter(person, kind, expiresOn, confirmedOn);
        return person;
    }

    private long enter(long person, String kind, LocalDate expiresOn, LocalDate confirmedOn) {
        Qualification entered = qualifications.enter(
                floor.act(qa), person, Qualification.of(kind, "ISO 9606-2", ISSUED, expiresOn, true));
        if (confirmedOn != null) {
            qualifications.confirm(floor.act(qa), entered.id(), confirmedOn);
        }
        return entered.id();
    }

    /** Confirmed on 10 July 2025, so good to 10 January 2026, and not expired. */
    private long lapsed() {
        return welder(KIND, LocalDate.of(2027, 1, 10), LocalDate.of(2025, 7, 10));
    }

    private Floor.Frame frame() {
        return floor.frame(SmallRoute.of(
                        SmallRoute.op("070")
                                .qualified(KIND)
                                .step("node 1")
                                .step("node 2")
                                .sheet(),
                        SmallRoute.op("080").step("looked over").sheet())
                .sheet());
    }

    @Test
    void theQaLeadLetsOneOperationBeDoneAndTheRecordSaysSo() throws Exception {
        long welder = lapsed();
        Floor.Frame frame = frame();
        assertThat(sent(tick(frame), welder))
                .contains("was not ticked")
                .contains("ran out on 2026-01-10")
                .contains("QA lead: let it be done");
        assertThat(page(address(frame) + "/confirmation", welder))
                .contains(person(welder).name())
                .contains(person(qa).name())
                .contains("10 Jan 2026");
        String reason = "<b>two</b> rings =1+1, O'Néill's bridge";
        assertThat(sent(override(frame, welder, qa, reason, Pins.PIN), welder))
                .contains("may do this operation")
                .doesNotContain("let it be done");
        assertThat(sent(tick(frame), welder)).contains("node 1, done");
        String story = page("/frames/" + frame.serial(), qa);
        assertThat(story)
                .contains("Confirmation overridden")
                .contains("&lt;b&gt;two&lt;/b&gt;")
                .doesNotContain("<b>two</b>")
                .contains("lapsed confirmation of " + KIND + " overridden for "
                        + person(welder).name());
        assertThat(page("/frames/" + frame.serial() + "?by=time", qa)).contains("lapsed confirmation of " + KIND);
        assertThat(page("/frames/" + frame.serial() + "/traveller", qa))
                .contains(
                        "the confirmation of " + KIND + " of " + person(welder).initials())
                .contains("&lt;b&gt;two&lt;/b&gt;");
        assertThat(page("/shop/people/" + welder, qa))
                .contains("Let work with a lapsed confirmation")
                .contains("070")
                .contains("&lt;b&gt;two&lt;/b&gt;");
    }

    @Test
    void itHoldsForThatOperationOfThatFrameAndThatWelderOnly() throws Exception {
        long welder = lapsed();
        long other = lapsed();
        Floor.Frame frame = frame();
        Floor.Frame next = frame();
        sent(override(frame, welder, qa, "one ring left", Pins.PIN), welder);
        assertThat(sent(tick(next), welder)).contains("was not ticked");
        assertThat(sent(tick(frame), other)).contains("was not ticked");
        assertThat(sent(tick(frame), welder)).contains("node 1, done");
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"QA_LEAD"},
            mode = EnumSource.Mode.EXCLUDE)
    void nobodyElseOverridesIt(Role role) throws Exception {
        long welder = lapsed();
        long signer = withPin(role);
        Floor.Frame frame = frame();
        MockHttpServletResponse refused = api(frame, welder, KIND, signer, "wanted", Pins.PIN, qa);
        assertThat(refused.getStatus()).as(refused.getContentAsString()).isEqualTo(403);
        assertThat(sent(tick(frame), welder)).contains("was not ticked");
    }

    @Test
    void aQaLeadDoesNotOverrideTheirOwn() throws Exception {
        long both = withPin(Role.QA_LEAD, Role.WELDER);
        enter(both, KIND, LocalDate.of(2027, 1, 10), LocalDate.of(2025, 7, 10));
        Floor.Frame frame = frame();
        MockHttpServletResponse refused = api(frame, both, KIND, both, "wanted", Pins.PIN, both);
        assertThat(refused.getStatus()).isEqualTo(403);
        assertThat(refused.getContentAsString()).contains("for themself");
    }

    @Test
    void itTakesThePinOfTheQaLeadWhoeverIsSignedOn() throws Exception {
        long welder = lapsed();
        Floor.Frame frame = frame();
        assertThat(sent(override(frame, welder, qa, "wanted", "918273"), qa))
                .contains("Not signed")
                .contains("value=\"wanted\"")
                .doesNotContain("918273");
        assertThat(sent(tick(frame), welder)).contains("was not ticked");
        assertThat(api(frame, welder, KIND, qa, "wanted", null, qa).getStatus()).isEqualTo(422);
    }

    @Test
    void itTakesAReason() throws Exception {
        long welder = lapsed();
        Floor.Frame frame = frame();
        assertThat(api(frame, welder, KIND, qa, "  ", Pins.PIN, qa).getContentAsString())
                .contains("\"field\":\"reason\"");
        assertThat(api(frame, welder, KIND, qa, "x".repeat(1001), Pins.PIN, qa).getStatus())
                .isEqualTo(422);
        assertThat(sent(tick(frame), welder)).contains("was not ticked");
    }

    @Test
    void aQualificationThatExpiredWasTakenBackOrWasNeverHeldIsNotOverridden() throws Exception {
        Floor.Frame frame = frame();
        long expired = welder(KIND, LocalDate.of(2026, 3, 17), null);
        long none = withPin(Role.WELDER);
        long ended = withPin(Role.WELDER);
        qualifications.end(
                floor.act(qa),
                enter(ended, KIND, LocalDate.of(2027, 1, 10), null),
                LocalDate.of(2026, 3, 1),
                "not seen to weld");
        for (long welder : List.of(expired, none, ended)) {
            MockHttpServletResponse refused = api(frame, welder, KIND, qa, "wanted", Pins.PIN, qa);
            assertThat(refused.getStatus()).isEqualTo(403);
            assertThat(refused.getContentAsString()).contains("never a qualification");
            assertThat(page(address(frame), welder)).doesNotContain("let it be done");
        }
    }

    @Test
    void onceGivenItDoesNotOutliveTheQualification() throws Exception {
        long welder = welder(KIND, LocalDate.of(2026, 3, 19), LocalDate.of(2025, 7, 10));
        Floor.Frame frame = frame();
        sent(override(frame, welder, qa, "one ring left", Pins.PIN), welder);
        assertThat(sent(tick(frame), welder)).contains("node 1, done");
        clock.pass(java.time.Duration.ofDays(2));
        assertThat(sent(tick(frame), welder)).contains("was not ticked").contains("expired on 2026-03-19");
    }

    @Test
    void onlyWhatTheOperationAsksOfItsWelderIsOverridden() throws Exception {
        long welder = lapsed();
        enter(welder, "WELD:TI:141", LocalDate.of(2027, 1, 10), LocalDate.of(2025, 7, 10));
        enter(welder, "OVEN", LocalDate.of(2027, 1, 10), LocalDate.of(2025, 7, 10));
        Floor.Frame frame = frame();
        assertThat(api(frame, welder, "WELD:TI:141", qa, "wanted", Pins.PIN, qa).getStatus())
                .isEqualTo(422);
        Floor.Frame oven = floor.frame(SmallRoute.of(
                        SmallRoute.op("110").qualified("OVEN").step("loaded").sheet())
                .sheet());
        assertThat(api(oven, welder, "OVEN", qa, "wanted", Pins.PIN, qa).getStatus())
                .isEqualTo(422);
    }

    @Test
    void aValidOneNeedsNoneAndOneGivenIsNotGivenTwice() throws Exception {
        Floor.Frame frame = frame();
        long valid = welder(KIND, LocalDate.of(2027, 1, 10), LocalDate.of(2025, 7, 1));
        qualifications.confirm(floor.act(qa), qualifications.of(valid).get(0).id(), LocalDate.of(2025, 12, 30));
        assertThat(api(frame, valid, KIND, qa, "wanted", Pins.PIN, qa).getStatus())
                .isEqualTo(409);
        long welder = lapsed();
        assertThat(api(frame, welder, KIND, qa, "wanted", Pins.PIN, qa).getStatus())
                .isEqualTo(200);
        assertThat(api(frame, welder, KIND, qa, "again", Pins.PIN, qa).getStatus())
                .isEqualTo(409);
    }

    private MockHttpServletRequestBuilder override(
            Floor.Frame frame, long welder, long signer, String reason, String pin) {
        return form(address(frame) + "/confirmation", address(frame) + "/confirmation")
                .param("operation", "" + floor.at(frame).line().operationId())
                .param("welder", welder + " " + KIND)
                .param("signer", "" + signer)
                .param("reason", reason)
                .param("pin", pin);
    }

    private MockHttpServletResponse api(
            Floor.Frame frame, long welder, String kind, long signer, String reason, String pin, long by)
            throws Exception {
        String body = "{\"actId\":\"%s\",\"welder\":%d,\"qualification\":\"%s\",\"signer\":%d,\"reason\":\"%s\"%s}"
                .formatted(
                        UUID.randomUUID(), welder, kind, signer, reason, pin == null ? "" : ",\"pin\":\"" + pin + "\"");
        return answer(
                post("/api/v1/operations/" + floor.at(frame).line().operationId() + "/confirmation-overrides")
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(body),
                by);
    }
}
