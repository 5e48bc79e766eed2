package org.trammel.shop.welding;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Travellers;

/** What a weld was measured with was found wrong after frames were welded by it. */
class MeterFailureTest extends AtTheTorch {

    @Autowired
    private Travellers travellers;

    @Autowired
    private Holds holds;

    @Autowired
    private JdbcClient jdbc;

    /** By hand: a meter that read 20 ppm too little had 60 ppm inside where it showed 40, above 50; and 30 where it showed 10. */
    @Test
    void aMeterOfOxygenFoundWrongHoldsTheFramesThatMayHaveBeenPurgedTooLittle() {
        kind = "WELD:TI:141";
        welder = welder(held(kind, "ISO 9606-5", "0.7", "3", "BW, FW"));
        NewProcedure c = plain();
        inForce(Written.with(
                Written.whole("TI", tack, weld, look, "TI-3AL-2.5V"),
                new HeatRules(null, null, null, null, 0),
                new NodeRules(BigDecimal.valueOf(50), null, null, false, false, 2),
                c.looks()));
        String meter = gauge("OXYGEN", "ppm", "5");
        Floor.Frame close = titanium(meter, "40");
        Floor.Frame far = titanium(meter, "10");
        register.fail(crew.act(qa), meter, found("-20", "ppm"));
        assertThat(floor.sheet(far).holds()).isEmpty();
        FrameSheet.HoldLine hold = floor.sheet(close).holds().get(0);
        assertThat(hold.reason()).isEqualTo(HoldReason.GAUGE_TRACE);
        assertThat(hold.words()).contains(meter + " was found wrong", "the purge");
        refused(() -> holds.lift(crew.act(welder), hold.holdId(), "it is good"), "QA lead");
        assertThat(travellers.openCalls())
                .anySatisfy(call ->
                        assertThat(call.words()).contains(meter, mark(close)).doesNotContain(mark(far)));
    }

    @Test
    void aThermometerFoundWrongHoldsWhatMayHaveBeenWeldedTooHotAndNamesWhatHasLeft() {
        inForce(plain());
        String hot = gauge("IR-TEMP", "°C", "1");
        Floor.Frame here = secondNode(hot, "110");
        Floor.Frame cool = secondNode(hot, "60");
        Floor.Frame gone = secondNode(hot, "110");
        jdbc.sql("update traveller set state = 'SHIPPED' where id = ?")
                .param(gone.travellerId())
                .update();
        register.fail(crew.act(qa), hot, found("-15", "°C"));
        assertThat(floor.sheet(cool).holds()).isEmpty();
        assertThat(floor.sheet(here).holds().get(0).words()).contains("Node 2", "begun too hot");
        assertThat(travellers.openCalls())
                .anySatisfy(call -> assertThat(call.words()).contains(hot, "Owner: these have left", mark(gone)));
    }

    private Floor.Frame secondNode(String gauge, String degrees) {
        Floor.Frame frame = atTheArc();
        begin(frame, "Node 1", null, null);
        end(frame, "Node 1");
        begin(frame, "Node 2", degrees, gauge);
        return frame;
    }

    private Floor.Frame titanium(String meter, String ppm) {
        Floor.Frame frame = frame("TI");
        scan(frame, "filler", lot(LotKind.FILLER, "TI-3AL-2.5V"));
        scan(frame, "gas", lot(LotKind.GAS, "ARGON"));
        purges.read(crew.act(welder), at(frame), new Purges.Reading(new BigDecimal(ppm), meter, null, null));
        return frame;
    }

    private String mark(Floor.Frame frame) {
        return travellers.head(frame.travellerId()).mark();
    }

    private static Failure found(@Nullable String error, String unit) {
        return new Failure(
                LocalDate.of(2026, 3, 18),
                error == null ? null : new BigDecimal(error),
                unit,
                BigDecimal.TEN,
                "read against another");
    }
}
