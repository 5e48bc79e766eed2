package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.Holds;

/** A torque tool was found wrong after frames were built with it. */
class ToolFailureTest extends AtTheStand {

    @Autowired
    private Holds holds;

    @Autowired
    private JdbcClient jdbc;

    /** By hand: a tool that showed 0.7 N·m too much gave 4.8 to 5.5, below 5; and 9.3 to 10, still within 8 to 12. */
    @Test
    void aToolFoundWrongHoldsTheFramesWhoseBoltsItMayHavePutOutside() {
        Floor.Frame frame = frame();
        give(frame, component(ComponentKind.SEAT_CLAMP, single("clamp", "5", "5.5", "6")), "");
        give(frame, component(ComponentKind.SADDLE, single("clamp", "8", "10", "12")), "");
        Floor.Frame other = frame();
        give(other, component(ComponentKind.SADDLE, single("clamp", "8", "10", "12")), "");
        tightenAll(frame);
        tightenAll(other);
        register.fail(
                crew.act(qa),
                tool,
                new Failure(
                        LocalDate.of(2026, 3, 18),
                        new BigDecimal("0.7"),
                        "N·m",
                        BigDecimal.TEN,
                        "read against the bench"));
        String mark = travellers.head(frame.travellerId()).mark();
        String otherMark = travellers.head(other.travellerId()).mark();
        assertThat(travellers.openCalls())
                .anySatisfy(call -> assertThat(call.words())
                        .contains(tool + " was found wrong", "Held until", mark + " (1)")
                        .doesNotContain(otherMark, "Owner"));
        assertThat(floor.sheet(other).holds()).isEmpty();
        FrameSheet.HoldLine hold = floor.sheet(frame).holds().get(0);
        assertThat(hold.reason()).isEqualTo(HoldReason.GAUGE_TRACE);
        assertThat(hold.words()).contains("clamp of seat clamp").doesNotContain("saddle");
        refused(() -> holds.lift(crew.act(fitter), hold.holdId(), "it is good"), "QA lead");
        holds.lift(crew.act(qa), hold.holdId(), "torqued again with another tool");
        assertThat(floor.sheet(frame).holds()).isEmpty();
    }

    @Test
    void aFrameThatHasLeftIsListedForTheOwnerAndABoltTorquedAgainIsNotInDoubt() {
        Floor.Frame gone = frame();
        Floor.Frame again = frame();
        for (Floor.Frame frame : List.of(gone, again)) {
            give(frame, component(ComponentKind.SEAT_CLAMP, single("clamp", "5", "5.5", "6")), "");
            tightenAll(frame);
        }
        TorqueSheet.Line line = sheet(again).lines().get(0);
        torques.again(
                crew.act(fitter), at(again), line.part().id(), line.fastener().id(), "with the other tool");
        torques.tighten(crew.act(fitter), at(again), next(again, tool("2", "14", "1"), null, null));
        jdbc.sql("update traveller set state = 'SHIPPED' where id = ?")
                .param(gone.travellerId())
                .update();
        String mark = travellers.head(gone.travellerId()).mark();
        register.fail(crew.act(qa), tool, new Failure(LocalDate.of(2026, 3, 18), null, "", null, "fell on the floor"));
        assertThat(travellers.openCalls())
                .anySatisfy(call -> assertThat(call.words())
                        .contains(tool + " was found wrong", "Owner: these have left the shop", mark + " (1)")
                        .doesNotContain("Held until"));
        assertThat(floor.sheet(again).holds()).isEmpty();
    }
}
