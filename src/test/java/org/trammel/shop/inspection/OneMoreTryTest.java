package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;

/** What is undecided stays so until a better gauge or the QA lead says otherwise; a slip of the finger is put right at once. */
class OneMoreTryTest extends AtTheTable {

    private WholeShop.Frame frame;
    private String gauge;
    private ReadingLine undecided;

    @BeforeEach
    void read() {
        frame = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        gauge = gauge("0.050");
        undecided = read(worker, frame, gauge, "0.28");
        assertThat(undecided.verdict()).isEqualTo(Verdict.UNDECIDED);
    }

    @Test
    void whoMistypedItPutsItRightAtOnce() {
        shop.clock().pass(Duration.ofMinutes(2));
        assertThat(correct(worker, undecided, gauge, "0.18").verdict()).isEqualTo(Verdict.CONFORMING);
    }

    @Test
    void laterOrBySomebodyElseItStaysUndecided() {
        assertThat(refusal(() -> correct(second, undecided, gauge, "0.18")).kind())
                .isEqualTo(Refusal.Kind.PERSON);
        shop.clock().pass(Duration.ofMinutes(3));
        Refusal refused = refusal(() -> correct(worker, undecided, gauge, "0.18"));
        assertThat(refused.kind()).isEqualTo(Refusal.Kind.PERSON);
        assertThat(refused.instead()).contains("QA lead");
        assertThat(readingsOf(frame)).isEqualTo(1);
    }

    @Test
    void aBetterGaugeOrTheQaLeadDecides() {
        shop.clock().pass(Duration.ofMinutes(3));
        assertThat(correct(worker, undecided, gauge("0.010"), "0.18").verdict()).isEqualTo(Verdict.CONFORMING);
        WholeShop.Frame other = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        ReadingLine doubtful = read(worker, other, gauge, "0.28");
        shop.clock().pass(Duration.ofMinutes(3));
        assertThat(correct(qa, doubtful, gauge, "0.18").verdict()).isEqualTo(Verdict.CONFORMING);
    }

    /** Two minutes are free by the rule of the shop, and they are counted once. */
    @Test
    void aCorrectionOfACorrectionBeginsNoNewTime() {
        shop.clock().pass(Duration.ofSeconds(100));
        ReadingLine still = correct(worker, undecided, gauge, "0.27");
        assertThat(still.verdict()).isEqualTo(Verdict.UNDECIDED);
        shop.clock().pass(Duration.ofSeconds(100));
        assertThat(refusal(() -> correct(worker, still, gauge, "0.18")).kind()).isEqualTo(Refusal.Kind.PERSON);
    }

    @Test
    void aCoarseReadingBetweenMakesTheSameGaugeNoFiner() {
        WholeShop.Frame other = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        read(worker, other, gauge, "0.28");
        shop.clock().pass(Duration.ofMinutes(3));
        ReadingLine coarse = correct(worker, last(other), gauge("0.080"), "0.28");
        assertThat(coarse.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(refusal(() -> read(worker, other, gauge, "0.18")).kind()).isEqualTo(Refusal.Kind.STATE);
        assertThat(read(worker, other, gauge("0.049"), "0.18").verdict()).isEqualTo(Verdict.CONFORMING);
    }

    private ReadingLine last(WholeShop.Frame other) {
        List<ReadingLine> all = readings.of(List.of(characteristic(other)));
        return all.get(all.size() - 1);
    }
}
