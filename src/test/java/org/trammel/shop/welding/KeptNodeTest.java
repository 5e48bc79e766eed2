package org.trammel.shop.welding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.welding.Imperfection;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.people.Role;
import org.trammel.shop.travellers.Carry;
import org.trammel.shop.travellers.Revising;
import org.trammel.shop.travellers.Travellers;

/** Which nodes may stay as an earlier loop left them, after what a look found. */
class KeptNodeTest extends AtTheTorch {

    private static final String FIRST = "Node 1: down tube to shell";
    private static final String SECOND = "Node 2: seat tube to shell";
    private static final String THIRD = "Node 3: down tube to head tube";

    @Autowired
    private WeldLooks looks;

    @Autowired
    private NodesPutRight putRight;

    @Autowired
    private Revising revising;

    @Autowired
    private Travellers travellers;

    private long looker;

    @Test
    void theNodeThatWasFoundCrackedDoesNotStayAsItWasWelded() {
        Floor.Frame frame = atTheLook();
        see(frame, FIRST, WeldLooks.Sighting.nothing());
        see(frame, SECOND, new WeldLooks.Sighting(Imperfection.CRACK, null, false, null, null, null));
        decide(frame, Decision.REWORK);
        assertThat(codeAt(frame)).isEqualTo(weld);
        refused(
                () -> keep(frame, SECOND),
                SECOND + " was looked at since it was welded",
                "A crack conforms to no level",
                "Open it before the arc");
        keep(frame, FIRST);
        keep(frame, THIRD);
        assertThat(codeAt(frame)).isEqualTo(weld);
        scan(frame, "filler", lot(LotKind.FILLER, "ER4643"));
        scan(frame, "gas", lot(LotKind.GAS, "ARGON"));
        clock.pass(java.time.Duration.ofMinutes(10));
        begin(frame, SECOND, null, null);
        end(frame, SECOND);
        assertThat(codeAt(frame)).isEqualTo(look);
        SeenNode again = looks.of(at(frame)).get(1);
        assertThat(again.passes()).isFalse();
        assertThat(again.looks()).isEmpty();
        assertThat(again.earlier())
                .singleElement()
                .satisfies(seen -> assertThat(seen.words()).contains("A crack conforms to no level"));
        see(frame, SECOND, WeldLooks.Sighting.nothing());
        assertThat(looks.of(at(frame)).get(1).passes()).isTrue();
        assertThat(looks.of(at(frame)).get(0).looks()).hasSize(1);
    }

    /** Once a step of the look is ticked, the loop looks at an operation of its own, and does not begin blank. */
    @Test
    void whatWasSeenBeforeTheLoopIsReadBesideEachNode() {
        Floor.Frame frame = atTheLook();
        see(frame, FIRST, WeldLooks.Sighting.nothing());
        tick(frame, "looked at");
        see(frame, SECOND, new WeldLooks.Sighting(Imperfection.CRACK, null, false, null, null, null));
        long before = at(frame);
        decide(frame, Decision.REWORK);
        weldOnly(frame, SECOND, FIRST, THIRD);
        assertThat(at(frame)).isNotEqualTo(before);
        assertThat(looks.of(at(frame))).allMatch(node -> node.looks().isEmpty());
        assertThat(looks.of(at(frame)).get(0).earlier())
                .extracting(SeenNode.Look::words)
                .containsExactly("Nothing found.");
        assertThat(looks.of(at(frame)).get(1).earlier())
                .extracting(SeenNode.Look::verdict)
                .containsExactly(LookVerdict.NOT_CONFORMING);
    }

    /** What was welded again since answers for itself. */
    @Test
    void aNodeWeldedAgainAfterTheFindingStaysInTheNextLoop() {
        Floor.Frame frame = atTheLook();
        see(frame, SECOND, new WeldLooks.Sighting(Imperfection.CRACK, null, false, null, null, null));
        decide(frame, Decision.REWORK);
        weldOnly(frame, SECOND, FIRST, THIRD);
        see(frame, FIRST, new WeldLooks.Sighting(Imperfection.CRACK, null, false, null, null, null));
        decide(frame, Decision.REWORK);
        refused(() -> keep(frame, FIRST), "was looked at since it was welded");
        keep(frame, SECOND);
    }

    /** A newer revision that repeats the weld, or scraps what was welded, says so of every node. */
    @ParameterizedTest
    @EnumSource(names = {"REPEAT", "SCRAP_PART"})
    void noNodeIsKeptOutOfAnOlderRevision(Carry verdict) {
        Floor.Frame frame = atTheLook();
        var said = revising.finished(frame.orderId()).stream()
                .collect(Collectors.toMap(
                        Revising.Finished::operationId, done -> new Revising.Said(verdict, "another head angle")));
        revising.supersede(
                crew.act(qa),
                frame.orderId(),
                floor.drawing(frame.orderId(), "AL6061", "B", Map.of()),
                floor.book(route("AL6061")),
                said,
                null);
        Floor.Frame now = new Floor.Frame(
                frame.orderId(), travellers.inForce(frame.serial(), "").travellerId(), frame.serial());
        assertThat(codeAt(now)).isEqualTo(weld);
        refused(() -> keep(now, FIRST), "No earlier loop", "weld it");
    }

    /** A reason lets a node be opened before the scan of its rod; the rod of the loop before is no rod of this one. */
    @Test
    void theRodOfAnEarlierLoopIsNotInUse() {
        byAProcedure();
        String rod = lot(LotKind.FILLER, "ER4643");
        String gas = lot(LotKind.GAS, "ARGON");
        Floor.Frame frame = frame("AL6061");
        scan(frame, "filler", rod);
        scan(frame, "gas", gas);
        toTheLook(frame);
        see(frame, SECOND, new WeldLooks.Sighting(Imperfection.CRACK, null, false, null, null, null));
        clock.pass(java.time.Duration.ofMinutes(10));
        decide(frame, Decision.REWORK);
        refused(() -> begin(frame, SECOND, null, null, "only this one"), "No filler rod was scanned", "Scan the label");
        scan(frame, "filler", rod);
        refused(() -> begin(frame, SECOND, null, null, "only this one"), "No gas was scanned");
        scan(frame, "gas", gas);
        begin(frame, SECOND, null, null, "only this one");
        assertThat(Objects.requireNonNull(record(frame, SECOND).opened()).fillers())
                .isEqualTo(rod);
    }

    /** Two repairs are allowed: the weld of each loop is one, the third is for the QA lead. */
    @Test
    void whatALoopWeldedAgainCountsAsARepairOfTheNode() {
        Floor.Frame frame = atTheLook();
        for (int loop = 0; loop < 2; loop++) {
            see(frame, SECOND, new WeldLooks.Sighting(Imperfection.CRACK, null, false, null, null, null));
            decide(frame, Decision.REWORK);
            keep(frame, FIRST);
            scan(frame, "filler", lot(LotKind.FILLER, "ER4643"));
            scan(frame, "gas", lot(LotKind.GAS, "ARGON"));
            begin(frame, SECOND, null, null);
            end(frame, SECOND);
            if (loop == 0) {
                weldLast(frame);
            }
        }
        welds.repair(crew.act(welder), at(frame), step(frame, SECOND), "pore at the stop");
        NodeRecord held = record(frame, SECOND);
        assertThat(held.state()).isEqualTo(NodeRecord.State.HELD);
        assertThat(held.repairs()).extracting(NodeRecord.Repair::number).containsExactly(3);
        assertThat(found(frame).words()).contains("Repair 3 of at most 2: pore at the stop");
    }

    private void weldLast(Floor.Frame frame) {
        keep(frame, THIRD);
        clock.pass(java.time.Duration.ofMinutes(10));
        assertThat(codeAt(frame)).isEqualTo(look);
    }

    private void weldOnly(Floor.Frame frame, String node, String... others) {
        clock.pass(java.time.Duration.ofMinutes(10));
        for (String other : others) {
            keep(frame, other);
        }
        scan(frame, "filler", lot(LotKind.FILLER, "ER4643"));
        scan(frame, "gas", lot(LotKind.GAS, "ARGON"));
        begin(frame, node, null, null);
        end(frame, node);
        clock.pass(java.time.Duration.ofMinutes(10));
    }

    private void keep(Floor.Frame frame, String node) {
        putRight.keep(crew.act(welder), at(frame), step(frame, node));
    }

    private List<SeenNode> see(Floor.Frame frame, String node, WeldLooks.Sighting sighting) {
        return looks.see(crew.act(looker), at(frame), node, sighting);
    }

    private Floor.Frame atTheLook() {
        byAProcedure();
        return toTheLook(atTheArc());
    }

    private Floor.Frame toTheLook(Floor.Frame frame) {
        for (String node : List.of(FIRST, SECOND, THIRD)) {
            begin(frame, node, null, null);
            end(frame, node);
        }
        clock.pass(java.time.Duration.ofMinutes(10));
        looker = floor.hire(Role.ALIGNER);
        return frame;
    }

    private void byAProcedure() {
        NewProcedure c = plain();
        inForce(Written.with(
                c,
                new HeatRules(null, null, null, null, 0),
                c.nodes(),
                new LookRules("C", "B: head tube", "ISO-5817-2014")));
    }
}
