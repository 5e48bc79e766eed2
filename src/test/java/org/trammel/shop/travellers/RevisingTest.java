package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.ShopTest;
import org.trammel.shop.designs.Nominal;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;

/** A newer design revision takes the place of the one in the shop. */
@ShopTest
class RevisingTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    @Autowired
    private Revising revising;

    @Autowired
    private Bench bench;

    @Autowired
    private Signing signing;

    @Autowired
    private Holds holds;

    @Autowired
    private Shipping shipping;

    @Autowired
    private Travellers travellers;

    private WholeShop shop;
    private long worker;
    private long second;
    private long qa;
    private String calliper;
    private long route;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        second = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
        calliper = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
        route = shop.route(SmallRoute.of(
                        op("030").step("saw").sheet(),
                        op("080")
                                .step("look over")
                                .plain("080-1", "0.3")
                                .hold(Signer.SECOND)
                                .sheet(),
                        op("140").step("blast").sheet(),
                        op("150").irreversible().step("spray").sheet())
                .window("BLAST", 240, "140", "150")
                .sheet());
    }

    @Test
    void everyFinishedOperationIsListedAndWantsAVerdictWithAReason() {
        WholeShop.Frame frame = upTo150();
        assertThat(revising.finished(frame.orderId()))
                .extracting(Revising.Finished::code)
                .containsExactly("030", "080", "140");
        Map<Long, Revising.Said> two = said(frame, Carry.STILL_VALID);
        two.remove(revising.finished(frame.orderId()).get(2).operationId());
        assertThat(refused(frame, qa, two).why()).contains("140");
        Map<Long, Revising.Said> mute = said(frame, Carry.STILL_VALID);
        mute.replaceAll((id, one) -> new Revising.Said(one.verdict(), " "));
        assertThat(refused(frame, qa, mute).why()).contains("030");
        Map<Long, Revising.Said> essay = said(frame, Carry.STILL_VALID);
        essay.replaceAll((id, one) -> new Revising.Said(one.verdict(), "x".repeat(901)));
        assertThat(refused(frame, qa, essay).why()).contains("901");
        assertThat(refused(frame, worker, said(frame, Carry.STILL_VALID)).kind())
                .isEqualTo(Refusal.Kind.PERSON);
        assertThat(travellers.ofOrder(frame.orderId())).hasSize(1);
        assertThat(shop.sheet(frame).head().state()).isEqualTo(TravellerState.IN_WORK);
    }

    @Test
    void whatIsStillValidIsCarriedOverWithItsEvidenceItsClocksAndItsHolds() {
        WholeShop.Frame frame = upTo150();
        long hold = holds.place(
                shop.act(worker),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.OPERATION,
                        shop.at(frame).line().operationId(),
                        HoldReason.MATERIAL,
                        "powder missing",
                        "by hand",
                        Set.of()));
        supersede(frame, said(frame, Carry.STILL_VALID));
        WholeShop.Frame now = now(frame);
        assertThat(shop.sheet(frame).head().state()).isEqualTo(TravellerState.WITHDRAWN);
        assertThat(shop.sheet(now).head().letter()).isEqualTo("B");
        assertThat(shop.at(now).line().code()).isEqualTo("150");
        assertThat(shop.sheet(now).clocks())
                .singleElement()
                .satisfies(c -> assertThat(c.state()).isEqualTo(ClockState.RUNNING));
        assertThat(jdbc.sql("select verdict from carry_over c join operation o on o.id = c.new_operation_id"
                                + " where o.traveller_id = ? and c.person_id = ?")
                        .params(now.travellerId(), qa)
                        .query(String.class)
                        .list())
                .containsExactly("STILL_VALID", "STILL_VALID", "STILL_VALID");
        assertThat(refusal(() -> shop.tickAll(now, worker)).why()).contains("powder missing");
        FrameSheet.HoldLine moved = shop.sheet(now).holds().get(0);
        assertThat(moved.holdId()).isNotEqualTo(hold);
        holds.lift(shop.act(worker), moved.holdId(), "the powder came");
        shop.tickAll(now, worker);
        shipping.ship(shop.act(worker), now.travellerId(), now.serial());
    }

    @Test
    void whatIsNoLongerPartOfTheRouteIsAskedAboutTooAndStaysOnTheFramesRecord() throws Exception {
        WholeShop.Frame frame = upTo150();
        long shorter = shop.route(SmallRoute.of(
                        op("030").step("saw").sheet(), op("150").step("spray").sheet())
                .sheet());
        long drawing = shop.drawing(frame.designId(), 2, Map.of());
        long blasted = operation(frame, "140");
        Map<Long, Revising.Said> said = said(frame, Carry.STILL_VALID);
        said.put(blasted, new Revising.Said(Carry.REPEAT, "blast anew"));
        Refusal refused =
                refusal(() -> revising.supersede(shop.act(qa), frame.orderId(), drawing, shorter, said, null));
        assertThat(refused.field()).isEqualTo("said-" + blasted);
        assertThat(refused.why()).contains("140").contains("does not have it");
        said.put(blasted, new Revising.Said(Carry.STILL_VALID, "blasted and wiped, does no harm"));
        revising.supersede(shop.act(qa), frame.orderId(), drawing, shorter, said, null);
        assertThat(shop.at(now(frame)).line().code()).isEqualTo("150");
        assertThat(jdbc.sql("select old_operation_id from carry_over where new_operation_id is null"
                                + " and old_operation_id in (?, ?)")
                        .params(blasted, operation(frame, "080"))
                        .query(Long.class)
                        .list())
                .hasSize(2);
        assertThat(answer(get("/frames/" + frame.serial())).getContentAsString())
                .contains("no longer part of the route, still valid")
                .contains("blasted and wiped, does no harm");
    }

    @Test
    void theHoldOfAPartThatTheNewerRouteDoesNotHaveGoesOnAsAHoldOfTheFrame() {
        long parted = shop.route(SmallRoute.of(op("170").joins().step("join").sheet())
                .child("FT", SmallRoute.of(op("070").step("weld").sheet()))
                .sheet());
        WholeShop.Frame frame = shop.frame(parted);
        long part = travellers.inForce(frame.serial(), "FT").travellerId();
        holds.place(
                shop.act(worker),
                new Holds.Request(
                        part, HoldScope.PART, null, HoldReason.MATERIAL, "tube missing", "by hand", Set.of()));
        revising.supersede(
                shop.act(qa), frame.orderId(), shop.drawing(frame.designId(), 2, Map.of()), route, Map.of(), null);
        assertThat(shop.sheet(now(frame)).holds())
                .singleElement()
                .satisfies(h -> assertThat(h.words()).isEqualTo("tube missing"));
        assertThat(refusal(() -> shop.tickAll(now(frame), worker)).why()).contains("tube missing");
    }

    @Test
    void aWindowThatRanOutUnderTheOldRevisionIsClosedUnderTheNew() {
        WholeShop.Frame frame = upTo150();
        shop.clock().pass(Duration.ofHours(5));
        supersede(frame, said(frame, Carry.STILL_VALID));
        assertThat(refusal(() -> shop.tickAll(now(frame), worker)).why()).contains("closed at");
    }

    @Test
    void whatIsToBeRepeatedOrScrappedIsDoneAgainAndSignedAgain() {
        WholeShop.Frame frame = upTo150();
        Map<Long, Revising.Said> said = said(frame, Carry.STILL_VALID);
        said.put(operation(frame, "080"), new Revising.Said(Carry.REPEAT, "the new drawing moves the bridge"));
        said.put(operation(frame, "140"), new Revising.Said(Carry.SCRAP_PART, "blasted too far"));
        supersede(frame, said);
        WholeShop.Frame now = now(frame);
        assertThat(shop.at(now).line().code()).isEqualTo("080");
        shop.tickAll(now, worker);
        shop.read(worker, shop.at(now).characteristics().get(0).characteristicId(), calliper, "0.1");
        assertThat(shop.at(now).line().state()).isEqualTo(OperationState.AT_POINT);
        signing.sign(shop.act(second), shop.at(now).line().operationId(), second, Signer.SECOND);
        assertThat(shop.at(now).line().code()).isEqualTo("140");
    }

    @Test
    void whatWasMeasuredAgainstOtherLimitsIsNotStillValid() {
        WholeShop.Frame frame = upTo150();
        Map<String, Nominal> tighter =
                Map.of("080-1", new Nominal(BigDecimal.ZERO, new BigDecimal("-0.1"), new BigDecimal("0.1"), true));
        long drawing = shop.drawing(frame.designId(), 2, tighter);
        assertThat(refusal(() -> revising.supersede(
                                shop.act(qa), frame.orderId(), drawing, route, said(frame, Carry.STILL_VALID), null))
                        .why())
                .contains("what is asked of 080-1");
        Map<Long, Revising.Said> said = said(frame, Carry.STILL_VALID);
        said.put(operation(frame, "080"), new Revising.Said(Carry.REPEAT, "tighter now"));
        revising.supersede(shop.act(qa), frame.orderId(), drawing, route, said, null);
        assertThat(shop.at(now(frame)).characteristics())
                .singleElement()
                .satisfies(c -> assertThat(c.upperLimit()).isEqualByComparingTo("0.1"));
    }

    @Test
    void aNonconformanceIsDecidedBeforeItsTravellerIsWithdrawn() {
        WholeShop.Frame frame = shop.frame(route);
        shop.tickAll(frame, worker);
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), calliper, "0.5");
        assertThat(refused(frame, qa, said(frame, Carry.STILL_VALID)).why())
                .contains("NC-")
                .contains("not decided");
    }

    @Test
    void theOldTravellerIsRefusedToProgramsAndAtTheStationAndSaysWhereToGo() throws Exception {
        WholeShop.Frame frame = shop.frame(route);
        long saw = shop.at(frame).steps().get(0).stepId();
        supersede(frame, Map.of());
        MockHttpServletResponse tick = answer(post("/api/v1/ticks")
                .with(csrf())
                .contentType(MediaType.APPLICATION_JSON)
                .content("{\"actId\":\"" + UUID.randomUUID() + "\",\"steps\":[" + saw + "]}"));
        assertThat(tick.getStatus()).isEqualTo(409);
        assertThat(tick.getContentAsString()).contains("withdrawn").contains("newer revision");
        MockHttpServletResponse tag = answer(get("/api/v1/frames").param("code", frame.serial() + "/A"));
        assertThat(tag.getStatus()).isEqualTo(409);
        assertThat(tag.getContentAsString()).contains("superseded").contains("revision B");
        assertThat(answer(get("/api/v1/frames").param("code", frame.serial() + "/B"))
                        .getStatus())
                .isEqualTo(200);
        String page =
                answer(get("/station/" + frame.serial()).param("old", "A")).getContentAsString();
        assertThat(page).contains("Superseded");
        assertThat(answer(get("/api/v1/travellers/" + frame.travellerId())).getStatus())
                .isNotEqualTo(500);
        MockHttpServletResponse form = answer(post("/station/" + frame.serial() + "/tick")
                .with(csrf())
                .param("actId", UUID.randomUUID().toString())
                .param("step", String.valueOf(saw))
                .header("Referer", "http://localhost/station/" + frame.serial())
                .header("Host", "localhost"));
        assertThat(form.getStatus()).isEqualTo(303);
        assertThat(ticks(saw)).isZero();
    }

    @Test
    void whatThePieceHasBehindItCountsUnderEveryRevision() {
        long limited = shop.route(SmallRoute.of(
                        op("070").atMost(1).step("weld").sheet(),
                        op("200").step("pack").sheet())
                .sheet());
        WholeShop.Frame frame = shop.frame(limited);
        long weld = shop.at(frame).line().operationId();
        shop.tickAll(frame, worker);
        rework(weld);
        shop.tickAll(frame, worker);
        Map<Long, Revising.Said> said = said(frame, Carry.STILL_VALID);
        revising.supersede(
                shop.act(qa), frame.orderId(), shop.drawing(frame.designId(), 2, Map.of()), limited, said, null);
        WholeShop.Frame now = now(frame);
        long carried = operation(now, "070");
        Evidence evidence = beans.getBean(Evidence.class);
        assertThat(evidence.operationsOf(now.travellerId(), "070").stream()
                        .flatMap(id -> evidence.tookPart(id).stream())
                        .collect(Collectors.toSet()))
                .contains(worker);
        assertThat(refusal(() -> rework(carried)).why()).contains("allows 1");
    }

    private void rework(long operation) {
        beans.getBean(org.springframework.transaction.support.TransactionTemplate.class)
                .executeWithoutResult(t -> {
                    var act = shop.act(qa);
                    beans.getBean(org.trammel.shop.records.ActLog.class)
                            .opens(act, "rework of a test", "operation:" + operation, "shop");
                    beans.getBean(Rework.class)
                            .repeat(act, new Rework.Loop("070", operation, "test", false, java.util.Set.of()));
                });
    }

    /** Sawn, looked over by the worker and signed by the second, blasted. */
    private WholeShop.Frame upTo150() {
        WholeShop.Frame frame = shop.frame(route);
        shop.tickAll(frame, worker);
        shop.tickAll(frame, worker);
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), calliper, "0.2");
        signing.sign(shop.act(second), shop.at(frame).line().operationId(), second, Signer.SECOND);
        shop.tickAll(frame, worker);
        return frame;
    }

    private Map<Long, Revising.Said> said(WholeShop.Frame frame, Carry verdict) {
        Map<Long, Revising.Said> said = new HashMap<>();
        revising.finished(frame.orderId())
                .forEach(f -> said.put(f.operationId(), new Revising.Said(verdict, "the change lies elsewhere")));
        return said;
    }

    private void supersede(WholeShop.Frame frame, Map<Long, Revising.Said> said) {
        revising.supersede(
                shop.act(qa), frame.orderId(), shop.drawing(frame.designId(), 2, Map.of()), route, said, null);
    }

    private Refusal refused(WholeShop.Frame frame, long by, Map<Long, Revising.Said> said) {
        long drawing = jdbc.sql("select max(id) from design_revision where design_id = ? and position = 2")
                .param(frame.designId())
                .query(Long.class)
                .optional()
                .orElseGet(() -> shop.drawing(frame.designId(), 2, Map.of()));
        return refusal(() -> revising.supersede(shop.act(by), frame.orderId(), drawing, route, said, null));
    }

    private static Refusal refusal(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed) {
        Refusal refused = org.assertj.core.api.Assertions.catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        return refused;
    }

    /** The same frame under the revision in force. */
    private WholeShop.Frame now(WholeShop.Frame old) {
        return new WholeShop.Frame(
                old.orderId(),
                old.designId(),
                old.number(),
                travellers.inForce(old.serial(), "").travellerId(),
                old.serial());
    }

    private long operation(WholeShop.Frame frame, String code) {
        return travellers.strips(List.of(frame.travellerId())).get(frame.travellerId()).stream()
                .filter(o -> o.code().equals(code) && o.state() != OperationState.REPEATED)
                .findFirst()
                .orElseThrow()
                .operationId();
    }

    private long ticks(long step) {
        return jdbc.sql("select count(*) from tick where step_id = ?")
                .param(step)
                .query(Long.class)
                .single();
    }

    private MockHttpServletResponse answer(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(Signed.on(crew.byId(worker))))
                .andReturn()
                .getResponse();
    }
}
