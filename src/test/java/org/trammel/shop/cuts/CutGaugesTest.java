package org.trammel.shop.cuts;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.inspection.ReadingOutcome;
import org.trammel.shop.inspection.RejudgementLine;
import org.trammel.shop.inspection.Rejudgements;
import org.trammel.shop.people.Role;

/** Tubes of one frame are measured with gauges of their own; each must be in date on its own day, and none is forgotten. */
@ShopTest(properties = "trammel.test.database=cuts")
class CutGaugesTest extends AtTheSaw {

    private static final LocalDate NEXT_YEAR = LocalDate.of(2027, 1, 1);

    /** The top tube with a feeler of its own. */
    private void top(long operation, Map<BigDecimal, String> drawer, String feeler) {
        Cuts.Entry top = sawn.entry(piece(cuts.of(operation), "TOP_TUBE"), drawer, "0.10");
        Map<String, String> gauges = new HashMap<>(top.gauges());
        gauges.put("gapGauge", feeler);
        cuts.record(
                shop.act(worker),
                operation,
                new Cuts.Entry(top.piece(), top.blank_mm(), top.phase_deg(), top.ends(), gauges));
    }

    private void fail(String gauge) {
        beans.getBean(GaugeRegister.class)
                .fail(
                        shop.act(shop.hire(Role.QA_LEAD)),
                        gauge,
                        new Failure(LocalDate.of(2026, 3, 18), null, "", null, "leaves are worn"));
    }

    @Test
    void aGaugeThatFellDueSinceIsNamedWithTheOthersAndFoundWhenItFails() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        long gap = shop.at(frame).characteristics().get(0).characteristicId();
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(operation).pieces());
        LocalDate today = LocalDate.ofInstant(shop.clock().instant(), ZoneOffset.UTC);
        String feeler = shop.gauge("FEELER", "mm", null, today.plusDays(1));
        top(operation, drawer, feeler);
        shop.clock().pass(Duration.ofDays(3));
        rest(operation, drawer, "TOP_TUBE");
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        long reading = readings.of(List.of(gap)).get(0).readingId();
        assertThat(jdbc.sql("select g.code from reading_gauge r join gauge g on g.id = r.gauge_id where reading_id = ?")
                        .param(reading)
                        .query(String.class)
                        .list())
                .as("both feelers")
                .hasSize(2)
                .contains(feeler);
        fail(feeler);
        Rejudgements rejudgements = beans.getBean(Rejudgements.class);
        rejudgements.judgeToTheEnd();
        RejudgementLine found = rejudgements.open().stream()
                .filter(line -> line.gauge().equals(feeler))
                .findFirst()
                .orElseThrow();
        assertThat(rejudgements.readings(found.id(), 0, 9)).singleElement().satisfies(line -> {
            assertThat(line.code()).isEqualTo("030-6");
            assertThat(line.outcome()).isEqualTo(ReadingOutcome.MEASURE_AGAIN);
        });
        assertThat(shop.sheet(frame).holds())
                .anySatisfy(hold -> assertThat(hold.source()).isEqualTo(found.number()));
        sawn.retireAll();
    }

    @Test
    void whatAGaugeReadThatWasFoundWrongSinceIsMeasuredAgain() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(operation).pieces());
        String feeler = shop.gauge("FEELER", "mm", null, NEXT_YEAR);
        top(operation, drawer, feeler);
        shop.clock().pass(Duration.ofHours(1));
        fail(feeler);
        shop.clock().pass(Duration.ofHours(1));
        assertThat(cuts.of(operation).recorded()).doesNotContainKey("TOP_TUBE");
        rest(operation, drawer, "TOP_TUBE");
        assertThat(shop.at(frame).line().code()).as("one tube is not measured").isEqualTo("030");
        top(operation, drawer, shop.gauge("FEELER", "mm", null, NEXT_YEAR));
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        sawn.retireAll();
    }

    @Test
    void aGaugeThatWasRetiredKeepsWhatItRead() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(operation).pieces());
        String feeler = shop.gauge("FEELER", "mm", null, NEXT_YEAR);
        top(operation, drawer, feeler);
        beans.getBean(GaugeRegister.class).retire(shop.act(shop.hire(Role.QA_LEAD)), feeler, "lost");
        rest(operation, drawer, "TOP_TUBE");
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        sawn.retireAll();
    }
}
