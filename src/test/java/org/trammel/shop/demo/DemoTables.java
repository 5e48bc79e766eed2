package org.trammel.shop.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.demo.TypedTable.parts;
import static org.trammel.shop.demo.TypedTable.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.gauges.Gauge;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.Lot;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotState;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.materials.MadeOf;
import org.trammel.shop.materials.WentInto;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Standing;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the running workshop says against what was typed from its own tables, before anybody touches it. */
abstract class DemoTables extends DemoHands {

    private static final Map<String, List<String>> ALIGNMENTS =
            Map.of("A1", List.of("080"), "A2", List.of("100"), "A3", List.of("120a", "135"));

    @Autowired
    private Travellers travellers;

    @Autowired
    private Lots lots;

    @Autowired
    private Gauges gauges;

    @Autowired
    private Readings readings;

    @Autowired
    private Crew crew;

    @Autowired
    private Stations stations;

    @Autowired
    private Qualifications qualifications;

    @Test
    void everyOrderStandsWhereTheTableSays() {
        Map<String, JsonNode> run = run();
        List<Map<String, String>> rows = table("orders");
        SoftAssertions all = new SoftAssertions();
        for (Map<String, String> row : rows) {
            String order = row.get("order");
            OrderSheet sheet = orders.byNumber(order).orElseThrow();
            all.assertThat(serial(sheet.serial())).as(order).isEqualTo(row.get("serial"));
            all.assertThat(sheet.description()).as(order).isEqualTo(row.get("description"));
            all.assertThat(sheet.metal()).as(order).isEqualTo(row.get("metal"));
            all.assertThat(String.valueOf(sheet.promised())).as(order).isEqualTo(row.get("promised"));
            all.assertThat(at(sheet)).as(order + " at").containsExactlyInAnyOrderElementsOf(parts(row.get("at")));
            all.assertThat(holds(sheet))
                    .as(order + " holds")
                    .containsExactlyInAnyOrderElementsOf(parts(row.get("holds")));
            JsonNode line = run.get(order);
            if (row.get("state").startsWith("shipped ")) {
                all.assertThat(line).as(order + " in the run").isNull();
                all.assertThat(sheet.shipped() == null ? "" : day(sheet.shipped()))
                        .as(order)
                        .isEqualTo(row.get("state").substring("shipped ".length()));
                continue;
            }
            all.assertThat(line).as(order + " in the run").isNotNull();
            if (line != null) {
                all.assertThat(line.get("station").asString())
                        .as(order + " station")
                        .isEqualTo(row.get("station"));
                all.assertThat(line.get("state").asString())
                        .as(order + " state")
                        .isEqualTo(row.get("state"));
                for (String reason : parts(row.get("reasons"))) {
                    all.assertThat(line.get("reasons").toString())
                            .as(order + " reasons")
                            .contains(reason);
                }
            }
        }
        all.assertAll();
        assertThat(rows).hasSize(21);
    }

    @Test
    void everyLotStandsAsTheTableSays() {
        SoftAssertions all = new SoftAssertions();
        for (Map<String, String> row : table("lots")) {
            Lot lot = lots.byCode(row.get("lot")).orElseThrow();
            all.assertThat(lot.certificateType()).as(lot.code()).isEqualTo(row.get("certificate"));
            all.assertThat(lot.state().name()).as(lot.code()).isEqualTo(row.get("state"));
            all.assertThat(lot.expiresOn() == null ? "" : lot.expiresOn().toString())
                    .as(lot.code() + " expires")
                    .isEqualTo(row.get("expires"));
            if (!row.get("received").isEmpty()) {
                all.assertThat(lot.receivedOn().toString()).as(lot.code()).isEqualTo(row.get("received"));
            }
            if (!row.get("heat").isEmpty()) {
                all.assertThat(lot.heat()).as(lot.code()).isEqualTo(row.get("heat"));
            }
        }
        all.assertAll();
    }

    @Test
    void noLotWentIntoAFrameBeforeItCameOrAfterItWasGone() {
        SoftAssertions all = new SoftAssertions();
        for (Lot lot : lots.page(null, null, null, 200)) {
            for (WentInto use : lots.wentInto(lot.code())) {
                all.assertThat(day(use.at()))
                        .as(lot.code() + " into " + use.serial())
                        .isGreaterThanOrEqualTo(lot.receivedOn().toString());
                if (lot.state() != LotState.RELEASED) {
                    all.assertThat(use.at())
                            .as(lot.code() + " into " + use.serial())
                            .isBefore(lot.stateSince());
                }
            }
        }
        all.assertAll();
        assertThat(lots.wentInto("FL-4643-022"))
                .as("what the bad rod went into, parts too")
                .extracting(WentInto::serial)
                .containsOnly("AV26101H", "AV26104B", "AV261163");
    }

    @Test
    void whoWeldedWhatWithWhichLotAndGaugeIsWhatTheTableSays() {
        SoftAssertions all = new SoftAssertions();
        for (Map<String, String> row : table("trace")) {
            String order = row.get("order");
            OrderSheet sheet = orders.byNumber(order).orElseThrow();
            all.assertThat(lots.madeOf(String.valueOf(sheet.serial())).stream()
                            .filter(piece -> piece.kind() == LotKind.FILLER)
                            .map(MadeOf::lot)
                            .collect(Collectors.toSet()))
                    .as(order + " fillers")
                    .containsExactlyInAnyOrderElementsOf(parts(row.get("fillers")));
            List<FrameSheet.Head> heads = travellers.ofOrder(sheet.id());
            List<FrameSheet.OperationSheetOfFrame> operations = heads.stream()
                    .flatMap(head -> travellers.whole(head.travellerId()).stream())
                    .toList();
            List<FrameSheet.StepLine> welds = operations.stream()
                    .filter(operation -> operation.line().code().startsWith("070"))
                    .flatMap(operation -> operation.steps().stream())
                    .filter(FrameSheet.StepLine::ticked)
                    .toList();
            if (!row.get("welder").isEmpty()) {
                long welder = crew.byInitials(row.get("welder")).orElseThrow().id();
                all.assertThat(welds)
                        .as(order)
                        .extracting(FrameSheet.StepLine::tickedBy)
                        .containsOnly(welder);
                all.assertThat(welds.stream().map(step -> day(step.tickedAt())).max(Comparator.naturalOrder()))
                        .as(order + " last weld")
                        .hasValue(row.get("last weld"));
            }
            List<ReadingLine> read = readings.ofTravellers(
                    heads.stream().map(FrameSheet.Head::travellerId).toList());
            for (String alignment : parts(row.get("alignments"))) {
                String[] words = alignment.split(" ");
                all.assertThat(read.stream()
                                .filter(reading -> ALIGNMENTS.get(words[0]).contains(operation(reading)))
                                .flatMap(reading -> heightGauge(reading).map(gauge -> day(reading.at()) + " " + gauge))
                                .collect(Collectors.toSet()))
                        .as(order + " " + words[0])
                        .containsExactly(words[1] + " " + words[2]);
            }
        }
        all.assertAll();
    }

    /** The height gauge of a set-up; or itself, where raw heights were read with it. */
    private Stream<String> heightGauge(ReadingLine reading) {
        return gauges.byCode(reading.gauge()).stream()
                .flatMap(gauge -> Stream.concat(Stream.of(gauge.code()), gauge.parts().stream()))
                .filter(code -> code.startsWith("HG-"))
                .limit(1);
    }

    private static String operation(ReadingLine reading) {
        return reading.code().substring(0, reading.code().indexOf('-'));
    }

    @Test
    void everyGaugeStandsAsTheTableSays() {
        SoftAssertions all = new SoftAssertions();
        for (Map<String, String> row : table("gauges")) {
            Gauge gauge = gauges.byCode(row.get("gauge")).orElseThrow();
            GaugeRange first = gauge.ranges().get(0);
            all.assertThat(gauge.state().name()).as(gauge.code()).isEqualTo(row.get("state"));
            all.assertThat(figure(first.u(), "") + figure(first.uPercent(), " %"))
                    .as(gauge.code() + " uncertainty")
                    .isEqualTo(row.get("uncertainty"));
            if (!row.get("resolution").isEmpty()) {
                all.assertThat(figure(first.resolution(), ""))
                        .as(gauge.code() + " resolution")
                        .isEqualTo(row.get("resolution"));
            }
            if (!row.get("due").isEmpty()) {
                all.assertThat(String.valueOf(gauge.calibratedOn()))
                        .as(gauge.code() + " calibrated")
                        .isEqualTo(row.get("calibrated"));
                all.assertThat(String.valueOf(gauge.dueOn()))
                        .as(gauge.code() + " due")
                        .isEqualTo(row.get("due"));
            }
        }
        all.assertAll();
        assertThat(gauges.usableFor("LONG-CALLIPER", "mm", LocalDate.of(2026, 3, 18)))
                .as("the long calliper that is overdue cannot be chosen, another can")
                .extracting(Means::code)
                .contains("CA-5")
                .doesNotContain("CA-4");
        assertThat(stations.jigs().stream()
                        .map(jig -> jig.code() + " " + jig.checkedOn() + " " + jig.overdue(LocalDate.of(2026, 3, 18))))
                .containsExactly("J1 2026-02-02 false", "J2 2025-12-08 true", "J3 2026-02-02 false");
    }

    @Test
    void everybodyIsQualifiedAsTheTableSays() {
        SoftAssertions all = new SoftAssertions();
        List<String> said = new ArrayList<>();
        for (Person person : crew.all()) {
            String who = person.initials() + " " + person.name() + " " + person.roles();
            List<Qualification> held = qualifications.of(person.id());
            held.forEach(one -> said.add(who + " " + one.kind() + " " + one.standard() + " "
                    + Objects.toString(one.expiresOn(), "") + " " + Objects.toString(one.confirmedOn(), "")));
            if (held.isEmpty()) {
                said.add(who);
            }
        }
        List<Map<String, String>> rows = table("people");
        for (Map<String, String> row : rows) {
            String who = row.get("initials") + " " + row.get("name") + " [" + row.get("roles") + "]";
            all.assertThat(said)
                    .contains(
                            row.get("kind").isEmpty()
                                    ? who
                                    : who + " " + row.get("kind") + " " + row.get("standard") + " " + row.get("expires")
                                            + " " + row.get("confirmed"));
        }
        all.assertThat(said).hasSameSizeAs(rows);
        all.assertAll();
        assertThat(crew.standing(crew.byInitials("PW").orElseThrow().id(), "WELD:AL:141", LocalDate.of(2026, 3, 20))
                        .state())
                .as("last day of the six months after 20 September")
                .isEqualTo(Standing.State.VALID);
        assertThat(crew.standing(crew.byInitials("PW").orElseThrow().id(), "WELD:AL:141", LocalDate.of(2026, 3, 21))
                        .state())
                .isEqualTo(Standing.State.CONFIRMATION_LAPSED);
    }

    private static String figure(@Nullable BigDecimal value, String unit) {
        return value == null ? "" : value.stripTrailingZeros().toPlainString() + unit;
    }

    @Test
    void theReadingsTheStoryTellsAreOnRecord() {
        assertThat(told("O-101", "", "100-1")).containsExactly("-0.331 UNDECIDED", "-0.344 NOT_CONFORMING");
        assertThat(told("O-101", "", "080-1")).containsExactly("-0.250 NOTED");
        assertThat(told("O-104", "FT", "120a-1")).containsExactly("-0.053 CONFORMING");
        assertThat(told("O-110", "", "135-1")).containsExactly("-0.246 CONFORMING");
        assertThat(told("O-116", "FT", "120a-1")).containsExactly("-0.032 CONFORMING");
        assertThat(told("O-113", "", "080-3")).containsExactly("0.70 CONFORMING");
        assertThat(told("O-114", "", "080-3")).containsExactly("0.9 CONFORMING");
        assertThat(told("O-102", "", "080-3")).containsExactly("0.8 CONFORMING");
        assertThat(told("O-105", "SA", "080-3"))
                .as("set straight once in its window")
                .containsExactly("1.00 NOT_CONFORMING", "0.20 CONFORMING");
    }

    private List<String> told(String order, String part, String code) {
        String serial = String.valueOf(orders.byNumber(order).orElseThrow().serial());
        return readings.ofTravellers(List.of(travellers.inForce(serial, part).travellerId())).stream()
                .filter(reading -> reading.code().equals(code))
                .sorted(Comparator.comparing(ReadingLine::at))
                .map(reading -> toldFigure(reading.raw().get(0)) + " "
                        + reading.verdict().name())
                .toList();
    }

    /** A figure that was reduced from heights has nine decimals, the story tells three. */
    private static BigDecimal toldFigure(BigDecimal figure) {
        return figure.scale() > 3 ? figure.setScale(3, RoundingMode.HALF_UP) : figure;
    }

    @Test
    void theClocksOfTheMorningRun() {
        assertThat(left("O-101", "COLD-SET")).isEqualTo(Duration.ofMinutes(130));
        assertThat(left("O-107", "COAT-BY")).isEqualTo(Duration.ofMinutes(200));
        assertThat(ends("O-105", "NATURAL-AGE")).isEqualTo(Instant.parse("2026-03-16T15:40:00Z"));
    }

    private Duration left(String order, String clock) {
        return Duration.between(DemoClock.MORNING, ends(order, clock));
    }

    /** When a running clock of the order ends; of two parts, the later. */
    private Instant ends(String order, String code) {
        return travellers.ofOrder(orders.byNumber(order).orElseThrow().id()).stream()
                .flatMap(head -> travellers.sheet(head.travellerId()).clocks().stream())
                .filter(one -> one.code().equals(code) && one.startedAt() != null)
                .map(ClockView::endsAt)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private Map<String, JsonNode> run() {
        String answer = String.valueOf(qa.evaluate("fetch('/api/v1/shop/run').then(answer => answer.text())"));
        Map<String, JsonNode> lines = new HashMap<>();
        JsonMapper.builder()
                .build()
                .readTree(answer)
                .get("orders")
                .forEach(line -> lines.put(line.get("order").asString(), line));
        return lines;
    }

    private List<String> at(OrderSheet order) {
        return travellers.ofOrder(order.id()).stream()
                .filter(head -> !head.state().word().equals("shipped"))
                .map(head -> (head.part().isEmpty() ? "" : head.part() + " ")
                        + (head.currentCode() == null ? head.state().word() : head.currentCode()))
                .toList();
    }

    private List<String> holds(OrderSheet order) {
        return order.serial() == null
                ? List.of()
                : travellers.holdsOf(order.serial()).stream()
                        .filter(hold -> hold.liftedAt() == null)
                        .map(hold -> hold.reason().name())
                        .toList();
    }

    private static String serial(String stored) {
        return stored != null && SerialNumber.read(stored) instanceof SerialNumber.Result.Whole whole
                ? whole.serial().shown()
                : String.valueOf(stored);
    }

    static String day(Instant at) {
        return at.atZone(DemoOrder.ZONE).toLocalDate().toString();
    }
}
