package org.trammel.shop.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.shop.demo.TypedTable.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.inspection.FrameOutcome;
import org.trammel.shop.inspection.ReadingOutcome;
import org.trammel.shop.inspection.RejudgedFrameLine;
import org.trammel.shop.inspection.RejudgedLine;
import org.trammel.shop.inspection.RejudgementLine;
import org.trammel.shop.inspection.RejudgementState;
import org.trammel.shop.inspection.Rejudgements;

/**
 * What the failed height gauge left of seven frames, against what a script worked out apart from the program: hg2.csv is
 * what hg2.py prints of the raw heights. The script says its formulas and their sources.
 */
abstract class DemoRejudged extends DemoHands {

    @Autowired
    private Rejudgements rejudgements;

    private RejudgementLine of(String gauge) {
        return rejudgements.page(Long.MAX_VALUE, 50).stream()
                .filter(line -> line.gauge().equals(gauge))
                .findFirst()
                .orElseThrow();
    }

    private String serial(String order) {
        return Objects.requireNonNull(orders.byNumber(order).orElseThrow().serial());
    }

    @Test
    void sevenFramesAreWhatTheScriptMakesOfTheirHeights() {
        Map<String, String> expected = new HashMap<>();
        table("hg2").forEach(row -> expected.put(serial(row.get("order")), row.get("frame")));
        RejudgementLine done = of("HG-2");
        assertThat(rejudgements.frames(done.id(), 0, 50).stream()
                        .collect(Collectors.toMap(
                                RejudgedFrameLine::serial,
                                frame -> frame.outcome().name())))
                .hasSize(7)
                .isEqualTo(expected);
        assertThat(expected.values())
                .contains(
                        FrameOutcome.CLEARED.name(),
                        FrameOutcome.MEASURE_AGAIN.name(),
                        FrameOutcome.CONTACT_OWNER.name());
        assertThat(done.judged()).isEqualTo(done.readings());
        assertThat(done.waiting()).isEqualTo(2);
        assertThat(done.state()).isEqualTo(RejudgementState.OPEN);
    }

    @Test
    void everyDeviationLiesWhereTheScriptFindsIt() {
        Map<String, RejudgedLine> found = readings(of("HG-2"));
        SoftAssertions all = new SoftAssertions();
        List<Map<String, String>> rows = table("hg2");
        for (Map<String, String> row : rows) {
            String what = serial(row.get("order")) + " " + row.get("characteristic");
            RejudgedLine line = found.get(what);
            assertThat(line).as(what).isNotNull();
            all.assertThat(figure(line.value())).as(what).isCloseTo(figure(row.get("value")), within(2e-6));
            all.assertThat(figure(line.least())).as(what).isCloseTo(figure(row.get("least")), within(2e-6));
            all.assertThat(figure(line.greatest())).as(what).isCloseTo(figure(row.get("greatest")), within(2e-6));
            // 1.65 times the uncertainty, rounded up to thousandths.
            all.assertThat(figure(line.guardBand()) - 1.65 * figure(row.get("u")))
                    .as(what)
                    .isBetween(-1e-6, 1.1e-3);
            all.assertThat(line.outcome().name()).as(what).isEqualTo(row.get("outcome"));
        }
        all.assertAll();
        assertThat(rows).hasSize(65);
        List<RejudgedLine> others = new ArrayList<>(found.values());
        others.removeIf(line -> line.code().matches(".*-(1|2|3|9|10)"));
        assertThat(others).isNotEmpty().extracting(RejudgedLine::outcome).containsOnly(ReadingOutcome.CLEARED);
    }

    private Map<String, RejudgedLine> readings(RejudgementLine done) {
        Map<String, RejudgedLine> all = new HashMap<>();
        for (RejudgedLine line : rejudgements.readings(done.id(), 0, 1000)) {
            assertThat(all.put(line.serial() + " " + line.code(), line)).isNull();
        }
        assertThat(all).hasSize((int) done.readings());
        return all;
    }

    private static double figure(@Nullable BigDecimal figure) {
        return Objects.requireNonNull(figure).doubleValue();
    }

    private static double figure(@Nullable String figure) {
        return Double.parseDouble(Objects.requireNonNull(figure));
    }

    /** No reading was taken with the thermocouple that is judged by itself, so there was nothing to do. */
    @Test
    void theThermocoupleThatReadNothingLeavesNothingOpen() {
        assertThat(of("TC-07").state()).isEqualTo(RejudgementState.CLOSED);
        assertThat(rejudgements.open()).extracting(RejudgementLine::gauge).containsExactly("HG-2");
    }

    @Test
    void theSheetOfTheFailedGaugeSaysWhatIsToBeDone() {
        hands.open(qa, "/rejudgements/" + of("HG-2").id());
        assertThat(qa.locator("main").innerText())
                .contains("7 frames")
                .contains("2 of 7 wait for a result")
                .contains("contact the owner")
                .contains("measure again")
                .contains("cleared by calculation")
                .contains("120a-2")
                .contains("120a-3");
        hands.look(qa, "rejudged-height-gauge");
    }
}
