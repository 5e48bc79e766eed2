package org.trammel.shop.welding;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.people.Role;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;

/** What becomes of a node whose record is in question, and who may say so. */
class PutRightTest extends AtTheTorch {

    @Autowired
    private NodesPutRight putRight;

    @Autowired
    private Holds holds;

    @BeforeEach
    void byAProcedure() {
        NewProcedure c = plain();
        inForce(Written.with(
                c,
                new HeatRules(null, null, new BigDecimal("0.40"), new BigDecimal("0.6"), 0),
                new NodeRules(null, null, null, true, false, 2),
                c.looks()));
    }

    @Test
    void whatWasEnteredWronglyIsEnteredAgainAndThenCleared() {
        Floor.Frame frame = atTheArc();
        begin(frame, "Node 1", null, null);
        refused(() -> correct(frame, "Node 1", came("70", BeadColour.SILVER), "typed"), "is in work");
        end(frame, "Node 1", came("111", BeadColour.GREY));
        assertThat(found(frame).words()).contains("Greatest current 111 A", "Bead grey");
        refused(() -> decide(frame, Decision.CLEARED), "does not conform by what was entered of it last");
        refused(() -> decide(frame, Decision.CONCESSION), "Node 1", "came out grey, which is cut out");
        refused(() -> correct(frame, "Node 1", came(null, BeadColour.SILVER), " "), "why");
        correct(
                frame,
                "Node 1",
                came(null, BeadColour.SILVER),
                "wrong button, and the current was 101 of another frame");
        NodeRecord node = record(frame, "Node 1");
        assertThat(node.state()).isEqualTo(NodeRecord.State.HELD);
        assertThat(node.wrong())
                .singleElement()
                .satisfies(wrong -> assertThat(wrong.colour()).isEqualTo(BeadColour.GREY));
        decide(frame, Decision.CLEARED);
        assertThat(record(frame, "Node 1").state()).isEqualTo(NodeRecord.State.DONE);
        tick(frame, "Node 1");
        refused(() -> correct(frame, "Node 1", came(null, BeadColour.SILVER), "again"), "is welded");
    }

    @Test
    void aLoopOfOneNodeLeavesTheOthersAsTheyWere() {
        Floor.Frame frame = atTheArc();
        for (String node : List.of("Node 1", "Node 2")) {
            begin(frame, node, null, null);
            end(frame, node, came(null, BeadColour.SILVER));
        }
        refused(() -> keep(frame, "Node 3"), "No earlier loop");
        begin(frame, "Node 3", null, null);
        end(frame, "Node 3", came(null, BeadColour.BLUE));
        long before = Objects.requireNonNull(record(frame, "Node 1").done()).id();
        decide(frame, Decision.REWORK);
        assertThat(welds.of(at(frame)).nodes()).allMatch(node -> node.state() == NodeRecord.State.WAITING);
        scan(frame, "filler", lot(org.trammel.shop.materials.LotKind.FILLER, "ER4643"));
        scan(frame, "gas", lot(org.trammel.shop.materials.LotKind.GAS, "ARGON"));
        refused(() -> keep(frame, "Node 3"), "No earlier loop");
        keep(frame, "Node 1");
        keep(frame, "Node 2");
        NodeRecord kept = record(frame, "Node 1");
        assertThat(kept.state()).isEqualTo(NodeRecord.State.DONE);
        assertThat(kept.ticked()).isTrue();
        assertThat(Objects.requireNonNull(kept.done()).id()).isEqualTo(before);
        assertThat(kept.kept()).isNotNull();
        assertThat(codeAt(frame)).isEqualTo(weld);
        begin(frame, "Node 3", null, null);
        end(frame, "Node 3", came(null, BeadColour.SILVER));
        assertThat(codeAt(frame)).isEqualTo(look);
    }

    @Test
    void whatCameOutUnderAHoldIsRecordedAndTickedAfterIt() {
        Floor.Frame frame = atTheArc();
        begin(frame, "Node 1", null, null);
        long hold = holds.place(
                crew.act(qa),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.GAUGE_TRACE,
                        "wait",
                        "by hand",
                        java.util.Set.of()));
        end(frame, "Node 1", came(null, BeadColour.SILVER));
        NodeRecord node = record(frame, "Node 1");
        assertThat(node.state()).isEqualTo(NodeRecord.State.DONE);
        assertThat(node.ticked()).isFalse();
        refused(() -> tick(frame, "Node 1"), "on hold");
        holds.lift(crew.act(qa), hold, "looked at");
        tick(frame, "Node 1");
    }

    @Test
    void aNodeIsClosedByWhoeverOpenedItOrMightHaveWeldedIt() {
        Floor.Frame frame = atTheArc();
        begin(frame, "Node 1", null, null);
        long opened = welder;
        welder = floor.hire(Role.APPRENTICE);
        refused(() -> end(frame, "Node 1", came(null, BeadColour.SILVER)), "WELD:AL:141");
        welder = welder(held(kind, "ISO 9606-2", "3", "10", "BW, FW"));
        refused(() -> end(frame, "Node 1", came(null, BeadColour.SILVER)), "walls of");
        welder = opened;
        end(frame, "Node 1", came(null, BeadColour.SILVER));
        assertThat(record(frame, "Node 1").state()).isEqualTo(NodeRecord.State.DONE);
    }

    private void correct(Floor.Frame frame, String node, Welds.End end, String reason) {
        putRight.correct(crew.act(welder), at(frame), step(frame, node), end, reason);
    }

    private void keep(Floor.Frame frame, String node) {
        putRight.keep(crew.act(welder), at(frame), step(frame, node));
    }

    private static Welds.End came(@Nullable String amps, BeadColour colour) {
        return new Welds.End(
                null, amps == null ? null : new BigDecimal(amps), null, null, null, null, colour, null, null);
    }
}
