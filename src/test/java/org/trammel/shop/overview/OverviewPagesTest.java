package org.trammel.shop.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.when;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.Statements;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Remarks;

@FloorTest
class OverviewPagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Floor floor;

    @Autowired
    private Orders orders;

    @Autowired
    private Crew crew;

    @Autowired
    private Bench bench;

    @Autowired
    private Holds holds;

    @Autowired
    private Remarks remarks;

    @Autowired
    private Statements statements;

    private final List<OrderSheet> open = new ArrayList<>();
    private Person owner;
    private Person qa;
    private Person auditor;

    @BeforeEach
    void hire() {
        floor.open();
        open.clear();
        when(orders.open()).thenAnswer(i -> List.copyOf(open));
        owner = crew.byId(floor.hire(Role.OWNER));
        qa = crew.byId(floor.hire(Role.QA_LEAD));
        auditor = crew.byId(floor.hire(Role.AUDITOR));
    }

    @Test
    void eachOpensTheirOwnFirstSheet() throws Exception {
        Person welder = crew.byId(floor.hire(Role.WELDER));
        mvc.perform(get("/").with(Signed.on(owner))).andExpect(redirectedUrl("/run"));
        mvc.perform(get("/").with(Signed.on(qa))).andExpect(redirectedUrl("/qa"));
        mvc.perform(get("/").with(Signed.on(auditor))).andExpect(redirectedUrl("/run"));
        mvc.perform(get("/").with(Signed.atTablet(welder, null, "1"))).andExpect(redirectedUrl("/station"));
        mvc.perform(get("/")).andExpect(redirectedUrlPattern("/sign-on**"));
    }

    @Test
    void theRunSaysWhyAnOrderStands() throws Exception {
        Floor.Frame frame = frame(LocalDate.of(2026, 3, 10));
        long worker = floor.hire(Role.STATION_WORKER);
        hold(frame, worker, "seen <script>alert(1)</script>");
        String page = page("/run", owner);
        assertThat(page)
                .contains("held: oven trace", "/frames/" + frame.serial(), "8 days past")
                .contains("class=\"axis\"", ">on hold</span>")
                .doesNotContain("<script>alert", ">waiting</span>");
        mvc.perform(get("/api/v1/shop/run").with(Signed.on(owner)))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.orders[0].late").value(true))
                .andExpect(jsonPath("$.orders[0].daysLeft").value(-8))
                .andExpect(jsonPath("$.orders[0].reasons[0]").value("held: oven trace"));
    }

    @Test
    void aHoldOfALaterOperationStopsNothingYetOnAnySheet() throws Exception {
        Floor.Frame frame = frame(
                LocalDate.of(2026, 5, 2),
                SmallRoute.of(
                        SmallRoute.op("020").step("cut").sheet(),
                        SmallRoute.op("150").step("coat").sheet()));
        holds.place(
                floor.act(floor.hire(Role.STATION_WORKER)),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.OPERATION,
                        floor.sheet(frame).operations().get(1).operationId(),
                        HoldReason.SAFETY,
                        "not decided yet",
                        "by hand",
                        Set.of()));
        assertThat(page("/run", owner))
                .as("the order as a whole is held")
                .contains(">on hold</span>", "hold at 150: safety")
                .doesNotContain("held: safety");
        assertThat(row(page("/stations", owner), frame))
                .contains("waiting", "hold at 150: safety")
                .doesNotContain("on hold");
        assertThat(row(page("/station?at=1", owner), frame))
                .contains("waiting", "hold further on: safety")
                .doesNotContain("on hold");
    }

    /** What a list says of a frame. */
    private static String row(String page, Floor.Frame frame) {
        int from = page.indexOf(frame.serial() + "\">");
        assertThat(from).isPositive();
        return page.substring(from, page.indexOf("</a>", from));
    }

    @Test
    void aHeldFrameWhoseWindowRunsStandsAboveWhatIsHeldLonger() throws Exception {
        long worker = floor.hire(Role.STATION_WORKER);
        Floor.Frame longer = frame(LocalDate.of(2026, 4, 10));
        hold(longer, worker, "held for long");
        Floor.Frame window = frame(
                LocalDate.of(2026, 4, 10),
                SmallRoute.of(
                                SmallRoute.op("140").step("blast").sheet(),
                                SmallRoute.op("150").step("coat").sheet())
                        .window("BLAST", 240, "140", "150"));
        floor.tickAll(window, worker);
        hold(window, worker, "held since");
        String desk = page("/qa", qa);
        String held = desk.substring(desk.indexOf("Holds, "));
        assertThat(held.indexOf("/frames/" + window.serial()))
                .isPositive()
                .isLessThan(held.indexOf("/frames/" + longer.serial()));
    }

    @Test
    void lateOnesStandFirstThenTheNearestPromise() throws Exception {
        Floor.Frame far = frame(LocalDate.of(2026, 5, 1));
        Floor.Frame past = frame(LocalDate.of(2026, 3, 17));
        Floor.Frame near = frame(LocalDate.of(2026, 3, 18));
        String page = page("/run", owner);
        assertThat(page.indexOf(past.serial())).isPositive().isLessThan(page.indexOf(near.serial()));
        assertThat(page.indexOf(near.serial())).isLessThan(page.indexOf(far.serial()));
        assertThat(page("/run?pressing=true", owner)).contains(past.serial()).doesNotContain(far.serial());
    }

    @Test
    void theRunSaysWhichWindowRunsAndWhoMustSign() throws Exception {
        Floor.Frame window = frame(
                LocalDate.of(2026, 4, 10),
                SmallRoute.of(
                                SmallRoute.op("140").step("blast").sheet(),
                                SmallRoute.op("150").step("coat").sheet())
                        .window("BLAST", 240, "140", "150"));
        Floor.Frame point = frame(
                LocalDate.of(2026, 4, 11),
                SmallRoute.of(SmallRoute.op("080").step("look").hold(Signer.QA).sheet()));
        long worker = floor.hire(Role.STATION_WORKER);
        floor.tickAll(window, worker);
        floor.tickAll(point, worker);
        assertThat(page("/run", owner)).contains("operation 150 by ", "080 to be signed by QA lead");
        assertThat(page("/qa", qa)).contains("4\u00a0h", "Sign as QA lead", "operation 080");
    }

    @Test
    void aWindowThatNothingLeftAsksForIsSilent() throws Exception {
        Floor.Frame frame = frame(
                LocalDate.of(2026, 4, 10),
                SmallRoute.of(
                                SmallRoute.op("140").step("blast").sheet(),
                                SmallRoute.op("150").step("coat").sheet(),
                                SmallRoute.op("160").step("finish").sheet())
                        .window("SILENT", 240, "140", "145"));
        floor.tickAll(frame, floor.hire(Role.STATION_WORKER));
        assertThat(page("/run", owner)).doesNotContain("SILENT");
        assertThat(page("/qa", qa)).doesNotContain("SILENT");
    }

    @Test
    void theRunCostsTheSameStatementsHoweverManyOrdersAreOpen() throws Exception {
        frame(LocalDate.of(2026, 4, 10));
        int few = statements.during(() -> page("/run", owner)).size();
        long worker = floor.hire(Role.STATION_WORKER);
        for (int i = 0; i < 4; i++) {
            hold(frame(LocalDate.of(2026, 4, 10 + i)), worker, "why");
        }
        List<String> many = statements.during(() -> page("/run", owner));
        assertThat(many).hasSizeLessThanOrEqualTo(few + 1).hasSizeLessThanOrEqualTo(11);
    }

    @Test
    void theStoryTellsWhatHappenedAndStrikesWhatWasTakenBack() throws Exception {
        Floor.Frame frame = frame(
                LocalDate.of(2026, 4, 10),
                SmallRoute.of(SmallRoute.op("100")
                        .step("clamp it")
                        .guarded("A-1", "0.30", null, 0)
                        .hold(Signer.QA)
                        .sheet()));
        Person worker = crew.byId(floor.hire(Role.STATION_WORKER));
        long step = floor.at(frame).steps().get(0).stepId();
        bench.tick(floor.act(worker.id()), List.of(step), null, null);
        bench.untick(floor.act(worker.id()), step, "wrong frame <b>");
        bench.tick(floor.act(worker.id()), List.of(step), null, null);
        String gauge = floor.gauge("TWIST", "°", "0.02");
        floor.read(worker.id(), floor.at(frame).characteristics().get(0).characteristicId(), gauge, "0.120");
        remarks.note(floor.act(worker.id()), frame.travellerId(), null, "<img src=x onerror=alert(1)>");
        for (String path : List.of("/frames/" + frame.serial(), "/frames/" + frame.serial() + "?by=time")) {
            assertThat(page(path, owner))
                    .contains("ticked: clamp it", "tick taken back", "struck", "wrong frame &lt;b&gt;")
                    .contains("A-1", gauge, worker.name(), "conforming")
                    .contains("&lt;img src=x onerror=alert(1)&gt;")
                    .doesNotContain("<img src=x");
        }
        assertThat(page("/frames/" + frame.serial(), auditor))
                .contains(worker.initials())
                .doesNotContain(worker.name());
        String told = mvc.perform(
                        get("/api/v1/frames/" + frame.serial() + "/story").with(Signed.on(auditor)))
                .andExpect(status().isOk())
                .andExpect(
                        jsonPath("$.parts[0].operations[0].readings[0].verdict").value("conforming"))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(told).doesNotContain(worker.name());
    }

    /** One of them asks whether anything is recorded of its surface or coat. */
    @Test
    void theStoryCostsTheSameStatementsHoweverLongItIs() throws Exception {
        Floor.Frame frame = frame(
                LocalDate.of(2026, 4, 10),
                SmallRoute.of(
                        SmallRoute.op("100").step("a").step("b").step("c").sheet(),
                        SmallRoute.op("110").step("a").sheet(),
                        SmallRoute.op("120").step("a").sheet()));
        long worker = floor.hire(Role.STATION_WORKER);
        hold(frame, worker, "first");
        int few = statements
                .during(() -> page("/frames/" + frame.serial(), owner))
                .size();
        hold(frame, worker, "second");
        for (int i = 0; i < 5; i++) {
            remarks.note(floor.act(worker), frame.travellerId(), null, "note " + i);
        }
        int many = statements
                .during(() -> page("/frames/" + frame.serial(), owner))
                .size();
        assertThat(many).isEqualTo(few).isLessThanOrEqualTo(41);
    }

    @Test
    void aFrameIsFoundByItsSerialItsMarkItsDigitsAndItsOrder() throws Exception {
        Floor.Frame frame = frame(LocalDate.of(2026, 4, 10));
        String serial = frame.serial();
        String digits = serial.substring(serial.length() - 4, serial.length() - 1);
        String mark = digits + "-" + serial.substring(serial.length() - 1);
        for (String typed : List.of(serial, mark, digits, "T-" + frame.orderId())) {
            assertThat(page("/frames?find=" + typed, owner)).as(typed).contains("/frames/" + serial);
        }
        assertThat(page("/frames?find=ZZZ", owner)).contains("No frame was found.");
        assertThat(page("/frames?before=0", owner))
                .contains("No frame stands here.")
                .doesNotContain("No frame was found.");
        assertThat(page("/frames", owner)).contains("/frames/" + serial);
        mvc.perform(get("/frames/AV99999X").with(Signed.on(owner))).andExpect(status().isNotFound());
    }

    @Test
    void theQaLeadLiftsAndFreesFromTheDesk() throws Exception {
        Floor.Frame frame = frame(LocalDate.of(2026, 4, 10));
        long worker = floor.hire(Role.STATION_WORKER);
        long hold = hold(frame, worker, "oven trace of a test");
        assertThat(page("/qa", qa)).contains("oven trace of a test", "Free 020 operation 020, keep hold");
        assertThat(page("/qa", auditor)).contains("oven trace of a test").doesNotContain("Lift the hold");
        long operation = floor.at(frame).line().operationId();
        send("/qa/free", Map.of("hold", "" + hold, "operation", "" + operation, "reason", "it cannot wait"));
        assertThat(page("/qa", qa)).doesNotContain("name=\"operation\" value=\"" + operation + "\"");
        send("/qa/lift", Map.of("hold", "" + hold, "words", "looked at"));
        assertThat(page("/qa", qa)).doesNotContain("name=\"hold\" value=\"" + hold + "\"");
        assertThat(page("/frames/" + frame.serial() + "?by=time", qa)).contains("hold lifted", "looked at");
    }

    @Test
    void theStationsShowWhatStandsThere() throws Exception {
        Floor.Frame frame = frame(LocalDate.of(2026, 4, 10));
        assertThat(page("/stations", owner)).contains("Stations", "/frames/" + frame.serial());
        assertThat(page("/shop", owner)).contains("/shop/people", "/shop/log", "none is noted");
        assertThat(page("/shop", crew.byId(floor.hire(Role.WELDER)))).doesNotContain("/shop/log");
    }

    private Floor.Frame frame(LocalDate promised) {
        return frame(promised, SmallRoute.of(SmallRoute.op("020").step("cut").sheet()));
    }

    private Floor.Frame frame(LocalDate promised, SmallRoute route) {
        Floor.Frame frame = floor.frame(route.sheet());
        OrderSheet order = orders.byId(frame.orderId());
        open.add(new OrderSheet(
                order.id(),
                order.number(),
                frame.serial(),
                false,
                "test <i>frame</i>",
                order.metal(),
                order.kind(),
                order.state(),
                promised,
                order.percentile(),
                null,
                null,
                order.routeCode(),
                order.country(),
                order.ordered(),
                null));
        return frame;
    }

    private long hold(Floor.Frame frame, long by, String words) {
        return holds.place(
                floor.act(by),
                new Holds.Request(
                        frame.travellerId(), HoldScope.FRAME, null, HoldReason.OVEN_TRACE, words, "HT-0226", Set.of()));
    }

    private void send(String path, Map<String, String> fields) throws Exception {
        var request = post(path)
                .with(Signed.on(qa))
                .with(csrf())
                .param("actId", UUID.randomUUID().toString());
        fields.forEach(request::param);
        mvc.perform(request).andExpect(status().isSeeOther()).andExpect(redirectedUrl("/qa"));
    }

    private String page(String path, Person reader) throws Exception {
        return mvc.perform(get(path).with(Signed.on(reader)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void aTabletComesFromItsFramesToTheOvensAndBack() throws Exception {
        Person worker = crew.byId(floor.hire(Role.STATION_WORKER));
        String list = mvc.perform(get("/station").with(Signed.atTablet(worker, null, "1")))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(list).contains("href=\"/loads\"");
        String loads = mvc.perform(get("/loads").with(Signed.atTablet(worker, null, "1")))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(loads).contains("href=\"/station\"").doesNotContain("href=\"/nonconformances\"");
        assertThat(page("/loads", owner)).contains("href=\"/nonconformances\"");
    }
}
