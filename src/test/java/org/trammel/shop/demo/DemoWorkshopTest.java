package org.trammel.shop.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.ClassOrderer;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestClassOrder;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ActiveProfiles;
import org.trammel.shop.gauges.GaugeState;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.materials.LotState;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.nonconformance.NonconformanceState;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.records.ChainVerification;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/** The invented workshop stands on its morning where its story says. */
@Tag("browser")
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {
            "trammel.home=target/demo-workshop-test",
            "spring.datasource.url=jdbc:h2:mem:demo;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1"
        })
@ActiveProfiles("demo")
@TestClassOrder(ClassOrderer.OrderAnnotation.class)
class DemoWorkshopTest {

    @Autowired
    private Orders orders;

    @Autowired
    private Travellers travellers;

    @Autowired
    private NonconformanceReads nonconformances;

    @Autowired
    private Lots lots;

    @Autowired
    private Gauges gauges;

    @Autowired
    private ChainVerification verification;

    @Autowired
    private DemoClock clock;

    @Test
    void everyOrderStandsWhereTheStorySays() {
        Map<String, String> where = new LinkedHashMap<>();
        for (DemoOrder order : DemoOrders.read()) {
            long id = orders.byNumber(order.order()).orElseThrow().id();
            StringBuilder places = new StringBuilder();
            for (FrameSheet.Head head : travellers.ofOrder(id)) {
                places.append(places.isEmpty() ? "" : " ")
                        .append(head.part().isEmpty() ? "" : head.part() + " ")
                        .append(head.currentCode() == null ? head.state().word() : head.currentCode());
            }
            where.put(order.order(), places.toString());
        }
        assertThat(where)
                .containsEntry("O-101", "100")
                .containsEntry("O-102", "140")
                .containsEntry("O-103", "shipped")
                .containsEntry("O-104", "170 FT 150 SA 140")
                .containsEntry("O-105", "170 FT 110 SA 110")
                .containsEntry("O-106", "170 FT ready SA 140")
                .containsEntry("O-107", "150")
                .containsEntry("O-108", "shipped")
                .containsEntry("O-109", "070")
                .containsEntry("O-110", "180")
                .containsEntry("O-111", "")
                .containsEntry("O-112", "140")
                .containsEntry("O-113", "190")
                .containsEntry("O-114", "150.3")
                .containsEntry("O-115", "shipped")
                .containsEntry("O-116", "170 FT 130 SA 130")
                .containsEntry("O-117", "070")
                .containsEntry("O-118", "")
                .containsEntry("O-119", "020")
                .containsEntry("O-120", "130")
                .containsEntry("O-121", "080R");

        FrameSheet twisted = sheet("O-101");
        assertThat(twisted.at().characteristics().get(0).state()).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(twisted.holds()).extracting(FrameSheet.HoldLine::reason).containsExactly(HoldReason.LOT_TRACE);
        ClockView window = twisted.clocks().stream()
                .filter(c -> c.code().equals("COLD-SET"))
                .findFirst()
                .orElseThrow();
        assertThat(Duration.between(DemoClock.MORNING, window.endsAt()))
                .isBetween(Duration.ofHours(2), Duration.ofHours(4));
        assertThat(sheet("O-116").holds())
                .extracting(FrameSheet.HoldLine::reason)
                .contains(HoldReason.CUSTOMER_PART, HoldReason.OVEN_TRACE, HoldReason.LOT_TRACE);
        assertThat(sheet("O-103").head().state()).isEqualTo(TravellerState.SHIPPED);
        assertThat(nonconformances.page(Long.MAX_VALUE, 100))
                .extracting(NonconformanceLine::state)
                .isNotEmpty()
                .containsOnly(NonconformanceState.DECIDED);
        assertThat(lots.byCode("FL-4643-022").orElseThrow().state()).isEqualTo(LotState.BLOCKED);
        assertThat(gauges.byCode("HG-2").orElseThrow().state()).isEqualTo(GaugeState.FAILED);
        assertThat(clock.instant())
                .isAfterOrEqualTo(DemoClock.MORNING)
                .isBefore(DemoClock.MORNING.plus(Duration.ofHours(1)));
        assertThat(verification
                        .verify(ChainVerification.Extent.RECORDS_AND_FILES)
                        .faults())
                .isEmpty();
    }

    private FrameSheet sheet(String order) {
        List<FrameSheet.Head> heads =
                travellers.ofOrder(orders.byNumber(order).orElseThrow().id());
        return travellers.sheet(heads.get(0).travellerId());
    }

    /** Looked at before anybody plays in it. */
    @Nested
    @Order(1)
    class Tables extends DemoTables {}

    @Nested
    @Order(1)
    class Rejudged extends DemoRejudged {}

    @Nested
    @Order(2)
    class Heat extends DemoHeat {}

    @Nested
    @Order(2)
    class Morning extends DemoMorning {}

    @Nested
    @Order(3)
    class Joints extends DemoJoints {}

    /** Played after it was looked at, in the same workshop: to load it once more would take longer than the scenes. */
    @Nested
    @Order(4)
    class Scenes extends DemoScenes {}

    @Nested
    @Order(5)
    class Wrench extends DemoWrench {}
}
