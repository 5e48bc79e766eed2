package org.trammel.shop.auditor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import com.jayway.jsonpath.JsonPath;
import java.math.BigDecimal;
import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Checkpoints;
import org.trammel.shop.routes.RouteDrafts;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Carry;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Revising;
import org.trammel.shop.travellers.Signing;

/**
 * An auditor reads every record and nobody's personal data: every address that the description of the API lists for
 * reading is asked for, about a frame that people and a customer left their names at wherever one can be left.
 */
@ShopTest
class AuditorReadsNoNamesTest {

    private static final Pattern HOLE = Pattern.compile("\\{(\\w+)}");

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Crew crew;

    @Autowired
    private Holds holds;

    private WholeShop shop;
    private long worker;
    private long second;
    private long qa;
    private long owner;
    private Person auditor;
    private String gauge;
    private String lot;
    private long drift;
    private String ovens;
    private LeftInTheShop.Coat coat;
    private LeftInTheShop.Torqued torqued;
    private long weld;
    private WholeShop.Frame frame;
    private WholeShop.Frame open;

    private final Set<String> secrets = new TreeSet<>();

    @BeforeEach
    void leaveNamesEverywhere() {
        shop = new WholeShop(beans);
        worker = named("Wilhelmina Overhang", Role.STATION_WORKER);
        second = named("Barnabas Quillfeather", Role.STATION_WORKER, Role.ALIGNER);
        qa = named("Ottoline Spindlewick", Role.QA_LEAD);
        owner = named("Thaddeus Marrowbone", Role.OWNER);
        auditor = crew.byId(shop.hire(Role.AUDITOR));
        gauge = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
        frame = shop.frame(route());
        open = shop.frame(route());
        customer(frame);
        customer(open);
        onItsWay();
        stillOpen();
        beans.getBean(RouteDrafts.class).drawUp(shop.act(qa), routeCode());
        lot = LeftBehind.lot(shop, beans, qa);
        secrets.addAll(LeftInTheShop.study(beans, shop.act(qa), gauge));
        drift = LeftBehind.axis(shop, beans, owner, qa, "Overhang");
        ovens = LeftInTheShop.ovens(beans, shop, qa, worker, second);
        coat = LeftInTheShop.coat(beans, shop, qa, worker);
        torqued = LeftInTheShop.torqued(beans, shop, qa, worker, second);
        weld = LeftAtTheTorch.weld(beans, shop, qa, worker);
        LeftAtTheSaw.cut(beans, shop, jdbc, worker);
        beans.getBean(Checkpoints.class).make();
    }

    private long named(String name, Role... roles) {
        long id = shop.hire(roles);
        jdbc.sql("update person set name = ? where id = ?").params(name, id).update();
        secrets.add(name.substring(name.indexOf(' ') + 1));
        return id;
    }

    private long route() {
        return shop.route(SmallRoute.of(
                        SmallRoute.op("070").step("weld").sheet(),
                        SmallRoute.op("080")
                                .plain("080-1", "0.3")
                                .hold(Signer.SECOND)
                                .sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
    }

    private void customer(WholeShop.Frame of) {
        jdbc.sql("update customer set name = 'Philomena Cartwheel', contact = 'Harbour road 37, philomena@example.org,"
                        + " +46 70 5550199' where id = (select customer_id from shop_order where id = ?)")
                .param(of.orderId())
                .update();
        secrets.addAll(List.of("Cartwheel", "Harbour road", "example.org", "5550199"));
    }

    /** Ticked, read, decided by concession, signed, held, freed, noted, sent on under a newer revision. */
    private void onItsWay() {
        shop.tickAll(frame, worker);
        long operation = shop.at(frame).line().operationId();
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.5");
        decide(frame);
        beans.getBean(Signing.class).sign(shop.act(second), operation, second, Signer.SECOND);
        Remarks remarks = beans.getBean(Remarks.class);
        remarks.note(shop.act(worker), frame.travellerId(), operation, "a shade darker here");
        remarks.call(shop.act(worker), frame.travellerId(), operation, "somebody look at it");
        hold(frame);
        Revising revising = beans.getBean(Revising.class);
        Map<Long, Revising.Said> said = new TreeMap<>();
        revising.finished(frame.orderId())
                .forEach(f ->
                        said.put(f.operationId(), new Revising.Said(Carry.CONCESSION, "the change lies elsewhere")));
        revising.supersede(
                shop.act(qa),
                frame.orderId(),
                shop.drawing(frame.designId(), 2, Map.of()),
                shop.sheet(frame).head().routeRevisionId(),
                said,
                new Revising.Agreed(
                        owner,
                        "Philomena Cartwheel said yes on +46 70 5550199",
                        "this frame",
                        LocalDate.of(2027, 12, 31)));
    }

    private void hold(WholeShop.Frame of) {
        holds.place(
                shop.act(worker),
                new Holds.Request(
                        of.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.MATERIAL,
                        "powder missing",
                        "by hand",
                        Set.of()));
    }

    private void decide(WholeShop.Frame of) {
        Deciding deciding = beans.getBean(Deciding.class);
        long id = deciding.of(of.serial()).get(0).id();
        Proposal proposal = new Proposal(
                Decision.CONCESSION,
                "looked at it",
                null,
                "this frame",
                LocalDate.of(2026, 12, 31),
                true,
                "Philomena Cartwheel wrote from philomena@example.org",
                false,
                BigDecimal.ONE,
                null,
                Set.of());
        deciding.propose(shop.act(qa), id, proposal);
        deciding.agree(shop.act(owner), id, deciding.byId(id).decisionNumber());
    }

    /** Another one whose decision waits for the owner, under a hold and with a call nobody answered. */
    private void stillOpen() {
        shop.tickAll(open, worker);
        shop.read(second, shop.at(open).characteristics().get(0).characteristicId(), gauge, "0.5");
        hold(open);
    }

    @Test
    void noAddressThatReadsTellsAnAuditorAName() throws Exception {
        beans.getBean(GaugeRegister.class)
                .fail(
                        shop.act(qa),
                        gauge,
                        new Failure(LocalDate.of(2026, 3, 18), new BigDecimal("0.05"), "mm", null, "reads high"));
        Map<String, List<String>> told = walk(auditor);
        Map<String, List<String>> leaks = new LinkedHashMap<>();
        told.forEach((path, found) -> {
            if (!found.isEmpty()) {
                leaks.put(path, found);
            }
        });
        assertThat(leaks).isEmpty();
        // The same walk by the owner finds names, so the fixture leaves them where they can be found.
        assertThat(walk(crew.byId(owner)).values().stream()
                        .filter(found -> !found.isEmpty())
                        .count())
                .isGreaterThan(6);
    }

    @Test
    void noSheetTellsAnAuditorAName() throws Exception {
        for (String page : torqued.pagesAnd(
                "/run",
                "/frames",
                "/frames/" + frame.serial(),
                "/station/" + frame.serial(),
                "/station/" + open.serial(),
                "/nonconformances",
                "/nonconformances/" + value("nonconformances", "id", ""),
                "/orders",
                "/orders/" + frame.orderId(),
                "/designs/" + value("designs", "id", ""),
                "/shop/lots",
                "/shop/lots/" + lot,
                "/shop/gauges",
                "/shop/gauges/" + gauge,
                "/shop/ovens",
                "/shop/ovens/" + ovens,
                "/shop/programmes/" + ovens,
                "/shop/finishes",
                "/shop/finishes/" + coat.finish(),
                "/welds/" + weld,
                "/coats/" + coat.operationId(),
                "/handwork/" + coat.operationId(),
                "/tubes/" + coat.operationId(),
                "/cuts/" + id("select max(operation_id) from tube_cut"),
                "/shop/coupons",
                "/loads",
                "/loads/" + ovens,
                "/cold-store",
                "/loads/" + ovens + "/paper",
                "/oven-traces",
                "/oven-traces/" + id("select max(id) from oven_trace"),
                "/routes",
                "/routes/" + routeCode(),
                "/shop/people",
                "/shop/people/" + worker,
                "/shop/settings",
                "/shop/tolerances",
                "/shop/tolerances/BUILT_ANGLE",
                "/qa",
                "/shop/log")) {
            MockHttpServletResponse answer = answer(page, auditor);
            assertThat(answer.getStatus()).as(page).isIn(200, 303, 403);
            String text = answer.getContentAsString();
            assertThat(secrets.stream().filter(text::contains)).as(page).isEmpty();
        }
    }

    @Test
    void noSignatureInForceTellsAnAuditorAName() throws Exception {
        WholeShop.Frame signed = shop.frame(route());
        shop.tickAll(signed, worker);
        long operation = shop.at(signed).line().operationId();
        shop.read(worker, shop.at(signed).characteristics().get(0).characteristicId(), gauge, "0.1");
        beans.getBean(Signing.class).sign(shop.act(second), operation, second, Signer.SECOND);
        for (String address : List.of(
                "/api/v1/frames/" + signed.serial() + "/operations",
                "/api/v1/frames/" + signed.serial(),
                "/frames/" + signed.serial())) {
            String text = answer(address, auditor).getContentAsString();
            assertThat(secrets.stream().filter(text::contains)).as(address).isEmpty();
        }
        assertThat(answer("/api/v1/frames/" + signed.serial() + "/operations", crew.byId(owner))
                        .getContentAsString())
                .contains("Barnabas Quillfeather");
    }

    /** What of the secrets each address tells; every address that reads is asked, and answers. */
    private Map<String, List<String>> walk(Person reader) throws Exception {
        String description = answer("/api/docs/openapi", reader).getContentAsString();
        Map<String, Map<String, Object>> paths = JsonPath.read(description, "$.paths");
        Map<String, List<String>> told = new TreeMap<>();
        List<String> silent = new ArrayList<>();
        for (Map.Entry<String, Map<String, Object>> path : paths.entrySet()) {
            if (!path.getValue().containsKey("get")) {
                continue;
            }
            MockHttpServletResponse answer = answer(filled(path.getKey()), reader);
            if (answer.getStatus() != 200 && answer.getStatus() != 403) {
                silent.add(path.getKey() + " " + answer.getStatus() + " " + answer.getContentAsString());
            }
            String text = answer.getContentAsString();
            told.put(path.getKey(), secrets.stream().filter(text::contains).toList());
        }
        assertThat(told).hasSizeGreaterThan(50);
        assertThat(silent).isEmpty();
        return told;
    }

    private MockHttpServletResponse answer(String path, Person reader) throws Exception {
        return mvc.perform(get(URI.create(path)).with(Signed.on(reader)))
                .andReturn()
                .getResponse();
    }

    /** The address with the ids of what the fixture left. */
    private String filled(String path) {
        String of = path.replaceFirst("^/api/v1/", "").replaceFirst("/.*", "");
        Matcher hole = HOLE.matcher(path);
        StringBuilder filled = new StringBuilder();
        while (hole.find()) {
            hole.appendReplacement(filled, String.valueOf(value(of, hole.group(1), path)));
        }
        hole.appendTail(filled);
        return filled + query(path);
    }

    private Object value(String of, String hole, String path) {
        return switch (of + " " + hole) {
            case "frames serial", "frames tag" -> frame.serial();
            case "orders id", "orders orderId" -> frame.orderId();
            case "designs id" -> id("select max(id) from design_revision where design_id = " + frame.designId());
            case "nonconformances id" ->
                id("select max(id) from nonconformance where serial = '" + frame.serial() + "'");
            case "people id" -> worker;
            case "gauges code" -> gauge;
            case "gauges id" -> id("select max(id) from gauge_study");
            case "lots code" -> lot;
            case "ovens code", "oven-programmes code", "oven-loads code" -> ovens;
            case "oven-programmes id" -> id("select max(id) from oven_programme_revision");
            case "routes code" -> routeCode();
            case "log name" -> "frame:" + frame.serial();
            case "log id" ->
                jdbc.sql("select act_id from tick where person_id = ? order by id fetch first 1 rows only")
                        .param(worker)
                        .query(UUID.class)
                        .single();
            case "drift id" -> drift;
            case "finishes code" -> coat.finish();
            case "weld-procedures code" -> "W-STEEL";
            case "weld-limits code" -> "ISO-5817-2014";
            case "welds operationId" -> weld;
            case "components code" -> torqued.component();
            case "torques operationId", "builds operationId" -> torqued.operationId();
            case "cuts operationId" -> id("select max(operation_id) from tube_cut");
            case "coats operationId", "handwork operationId", "tubes operationId" -> coat.operationId();
            case "oven-traces id" -> id("select max(id) from oven_trace");
            case "rejudgements id" -> id("select max(id) from rejudgement");
            case "operations id" -> shop.at(open).line().operationId();
            case "characteristics id" -> shop.at(open).characteristics().get(0).characteristicId();
            default -> LeftBehind.shipped(of + " " + hole);
        };
    }

    private String query(String path) {
        return switch (path) {
            case "/api/v1/frames" -> "?code=" + frame.serial();
            case "/api/v1/orders/{orderId}/release-warnings" ->
                "?designRevisionId=" + id("select max(id) from design_revision where design_id = " + frame.designId());
            default -> LeftBehind.QUERIES.getOrDefault(path, "");
        };
    }

    private String routeCode() {
        return jdbc.sql("select r.code from route r join route_revision v on v.route_id = r.id where v.id = ?")
                .param(shop.sheet(frame).head().routeRevisionId())
                .query(String.class)
                .single();
    }

    private long id(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }
}
