package org.trammel.shop.welding;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameStories;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;

class NodeTest extends AtTheTorch {

    @Autowired
    private FrameStories stories;

    @Autowired
    private Holds holds;

    @Test
    void aNodeIsOpenedAndClosedInOrderAndItsClosingTicksIt() {
        inForce(plain());
        String hot = gauge("IR-TEMP", "°C", "2");
        Floor.Frame frame = atTheArc();
        refused(() -> tick(frame, "Node 1"), "Node 1: down tube to shell is not recorded", "sheet of the weld");
        refused(() -> end(frame, "Node 1"), "is waiting, and not open");
        begin(frame, "Node 1", null, null);
        refused(() -> tick(frame, "Node 1"), "is open");
        refused(() -> begin(frame, "Node 2", "20", hot, "in haste"), "Node 1: down tube to shell is open");
        end(frame, "Node 1");
        assertThat(record(frame, "Node 1").ticked()).isTrue();
        refused(() -> begin(frame, "Node 1", "20", hot), "is welded");
        refused(() -> begin(frame, "Node 2", null, null), "was not read", "at most 120 °C");
        refused(() -> begin(frame, "Node 2", "120.5", hot), "120,5 °C", "at most 120 °C", "Let it cool");
        refused(() -> begin(frame, "Node 2", "80", ""), "not said what it was read with");
        refused(() -> begin(frame, "Node 2", "80", gauge("HYGRO", "°C", "1")), "asks for infrared thermometer");
        // Guard band 1.65 · 2 °C = 3.3 °C, so that 116.7 °C is the last reading a node may be begun on.
        refused(() -> begin(frame, "Node 2", "116.8", hot), "116,8 °C", "the doubt of " + hot + " counts 3,3 °C");
        begin(frame, "Node 2", "116.7", hot);
        NodeRecord.Opened begun = Objects.requireNonNull(record(frame, "Node 2").opened());
        assertThat(begun.interpassGuard_degC()).isEqualByComparingTo("3.3");
        end(frame, "Node 2");
        begin(frame, "Node 3", "60", hot);
        WeldSheet sheet = end(frame, "Node 3");
        assertThat(sheet.nodes()).allMatch(node -> node.state() == NodeRecord.State.DONE);
        assertThat(codeAt(frame)).isEqualTo(look);
    }

    @Test
    void anotherOrderWantsAReasonWhichIsKeptAndTold() {
        inForce(plain());
        Floor.Frame frame = atTheArc();
        try {
            begin(frame, "Node 3", null, null);
            throw new AssertionError("It was opened");
        } catch (Refusal asked) {
            assertThat(asked.field()).isEqualTo("reason");
            assertThat(asked.why()).isEqualTo("Node 1: down tube to shell comes before it.");
        }
        begin(frame, "Node 3", null, null, "jig clamp in the way of the shell");
        end(frame, "Node 3");
        NodeRecord kept = record(frame, "Node 3");
        assertThat(Objects.requireNonNull(kept.opened()).reason()).isEqualTo("jig clamp in the way of the shell");
        assertThat(stories.of(frame.serial())
                        .orElseThrow()
                        .travellers()
                        .get(0)
                        .operations()
                        .get(0)
                        .ticks())
                .anyMatch(tick -> "jig clamp in the way of the shell".equals(tick.reason()));
    }

    @Test
    void noArcWithoutTheFillerAndGasOfTheProcedure() {
        inForce(plain());
        Floor.Frame frame = frame("AL6061");
        refused(() -> begin(frame, "Node 1", null, null, "try"), "No filler rod was scanned", "asks for ER4643");
        scan(frame, "filler", lot(LotKind.FILLER, "ER4043"));
        scan(frame, "gas", lot(LotKind.GAS, "ARGON"));
        refused(() -> begin(frame, "Node 1", null, null), "is ER4043", "asks for ER4643");
        Floor.Frame other = frame("AL6061");
        String bad = lot(LotKind.FILLER, "ER4643");
        scan(other, "filler", bad);
        scan(other, "gas", lot(LotKind.GAS, "ARGON"));
        lots.block(crew.act(qa), bad, "wrong rods in the tube");
        refused(() -> begin(other, "Node 1", null, null), bad, "blocked");
    }

    @Test
    void aRodOfAnotherFamilyIsRefusedAtItsScanInThreeParts() {
        inForce(plain());
        Floor.Frame frame = frame("AL6061");
        String rod = lot(LotKind.FILLER, "ER80S");
        refused(
                () -> scan(frame, "filler", rod),
                rod + " was not issued.",
                "Steel rod, 80 class is for steel; the frame is aluminium.",
                "Take a lot for aluminium. Never try it.");
    }

    @Test
    void theQualificationMustReachTheWallsTheJointAndTheStandard() {
        inForce(plain());
        Floor.Frame frame = atTheArc();
        long right = welder;
        BigDecimal wall = new BigDecimal("0.7");
        welder = welder(held(kind, "ISO 9606-2", "1.5", "3", "BW, FW"));
        refused(() -> begin(frame, "Node 1", null, null), "for walls of 1.5 to 3 mm", "0.7");
        welder = welder(held(kind, "ISO 9606-2", "0.7", "3", "BW"));
        refused(() -> begin(frame, "Node 1", null, null), "it is for BW, and BW and FW are welded");
        welder = welder(held(kind, "shop rule", null, null, null));
        refused(() -> begin(frame, "Node 1", null, null), "the procedure asks for ISO 9606-2");
        welder = welder(held(kind, "ISO 9606-1", "0.7", "3", "BW, FW"));
        refused(() -> begin(frame, "Node 1", null, null), "the procedure asks for ISO 9606-2");
        welder = welder(held(kind, "ISO 9606-2", "0.7", "3", null).covering("steel", "141", wall, wall, "BW, FW"));
        refused(() -> begin(frame, "Node 1", null, null), "it is for steel");
        welder = welder(held(kind, "ISO 9606-2", "0.7", "3", null).covering("aluminium", "131", wall, wall, "BW, FW"));
        refused(() -> begin(frame, "Node 1", null, null), "it is for process 131, and this is 141");
        welder = floor.hire(Role.WELDER);
        refused(() -> begin(frame, "Node 1", null, null), "holds no qualification to weld aluminium (WELD:AL:141)");
        welder = welder(held(kind, "ISO 9606-2:2004", "0.7", "3", null)
                .covering("EN AW-6061", "141", new BigDecimal("0.7"), null, "BW, FW"));
        begin(frame, "Node 1", null, null);
        welder = welder(held(kind, "ISO 9606-2", "1.5", "3", "BW, FW"));
        refused(() -> end(frame, "Node 1"), "for walls of 1.5 to 3 mm");
        welder = right;
        end(frame, "Node 1");
        assertThat(record(frame, "Node 1").ticked()).isTrue();
    }

    /** What is left empty on a certificate was not tested, and one alloy is not the other. */
    @ParameterizedTest
    @CsvSource({
        ", 141, 0.7, 3, 'BW, FW', it names no metal",
        "aluminium, , 0.7, 3, 'BW, FW', it names no process",
        "aluminium, 141, , , 'BW, FW', it names no range of walls",
        "aluminium, 141, 0.7, 3, , it names no joint",
        "AL 7005, 141, 0.7, 3, 'BW, FW', it is for AL 7005"
    })
    void whatAQualificationLeavesEmptyItDoesNotCover(
            @Nullable String metal,
            @Nullable String process,
            @Nullable BigDecimal from,
            @Nullable BigDecimal to,
            @Nullable String joint,
            String gap) {
        inForce(plain());
        Floor.Frame frame = atTheArc();
        welder = welder(Qualification.of(kind, "ISO 9606-2", LocalDate.of(2025, 1, 1), LocalDate.of(2027, 1, 1), false)
                .covering(metal, process, from, to, joint));
        refused(() -> begin(frame, "Node 1", null, null), gap);
    }

    @Test
    void aCurrentOrAHeatOutsideTheProcedureOpensANonconformanceAndIsNotTicked() {
        NewProcedure c = plain();
        inForce(Written.with(
                c,
                new HeatRules(null, new BigDecimal("0.22"), new BigDecimal("0.40"), new BigDecimal("0.6"), 1),
                c.nodes(),
                c.looks()));
        Floor.Frame frame = atTheArc();
        begin(frame, "Node 1", null, null);
        refused(() -> end(frame, "Node 1", sample("14", null, "150", "60")), "Enter all four, or none");
        refused(() -> end(frame, "Node 1", sample("14", "95", "0", "60")), "length of the weld, 0 mm");
        end(frame, "Node 1", sample("14", "95", "150", "60"));
        NodeRecord.Done done = Objects.requireNonNull(record(frame, "Node 1").done());
        // 0.6 · 14 · 95 · 60 / (150 · 1000), form of EN 1011-1, worked by hand.
        assertThat(done.heat_kJ_per_mm()).isEqualByComparingTo("0.3192");
        assertThat(done.nonconformance()).isNull();
        begin(frame, "Node 2", null, null);
        end(frame, "Node 2", sample("14", "95", "100", "60"));
        NodeRecord hot = record(frame, "Node 2");
        assertThat(hot.state()).isEqualTo(NodeRecord.State.HELD);
        assertThat(hot.ticked()).isFalse();
        assertThat(found(frame).words()).contains("Node 2", "0,479 kJ/mm", "0,22 to 0,4 kJ/mm");
        assertThat(found(frame).faultCode()).isEqualTo(weld);
        refused(() -> tick(frame, "Node 2"), "on hold");
        refused(() -> begin(frame, "Node 3", null, null, "meanwhile"), "on hold");
        refused(() -> decide(frame, Decision.CLEARED), "does not conform by what was entered of it last");
        decide(frame, Decision.CONCESSION);
        assertThat(record(frame, "Node 2").state()).isEqualTo(NodeRecord.State.DONE);
        tick(frame, "Node 2");
        begin(frame, "Node 3", null, null);
        end(frame, "Node 3", new Welds.End(null, new BigDecimal("111"), null, null, null, null, null, null, null));
        assertThat(found(frame).words()).contains("Greatest current 111 A");
        assertThat(codeAt(frame)).isEqualTo(weld);
    }

    @Test
    void theLastNodeLeftIsTheSample() {
        NewProcedure c = plain();
        inForce(Written.with(
                c, new HeatRules(null, null, new BigDecimal("0.40"), new BigDecimal("0.6"), 1), c.nodes(), c.looks()));
        Floor.Frame frame = atTheArc();
        begin(frame, "Node 1", null, null);
        end(frame, "Node 1");
        begin(frame, "Node 2", null, null);
        end(frame, "Node 2");
        begin(frame, "Node 3", null, null);
        refused(() -> end(frame, "Node 3"), "heat input of 1 of its nodes", "0 have it");
        end(frame, "Node 3", sample("14", "95", "150", "60"));
        assertThat(codeAt(frame)).isEqualTo(look);
    }

    @Test
    void repairsAreCountedWithTheirReasonAndOneTooManyIsForTheQaLead() {
        NewProcedure c = plain();
        inForce(Written.with(
                c,
                new HeatRules(null, null, null, null, 0),
                new NodeRules(null, null, null, false, false, 1),
                c.looks()));
        Floor.Frame frame = atTheArc();
        begin(frame, "Node 1", null, null);
        refused(() -> repair(frame, "Node 1", "too early"), "is in work", "after it was welded");
        end(frame, "Node 1");
        refused(() -> repair(frame, "Node 1", " "), "reason");
        repair(frame, "Node 1", "pore at the start");
        assertThat(record(frame, "Node 1").state()).isEqualTo(NodeRecord.State.TO_REPAIR);
        begin(frame, "Node 1", null, null);
        end(frame, "Node 1");
        begin(frame, "Node 2", null, null);
        end(frame, "Node 2");
        repair(frame, "Node 1", "pore again");
        NodeRecord held = record(frame, "Node 1");
        assertThat(held.state()).isEqualTo(NodeRecord.State.HELD);
        assertThat(held.repairs()).extracting(NodeRecord.Repair::number).containsExactly(1, 2);
        assertThat(found(frame).words()).contains("Repair 2 of at most 1: pore again");
        refused(() -> begin(frame, "Node 3", null, null), "on hold");
        decide(frame, Decision.REWORK);
        assertThat(record(frame, "Node 1").repairs()).hasSize(2);
        assertThat(record(frame, "Node 1").state()).isEqualTo(NodeRecord.State.WAITING);
    }

    /** One repair more is conceded, never the node that was cut open for it. */
    @Test
    void aConcededRepairIsWeldedBeforeTheGateOpens() {
        NewProcedure c = plain();
        inForce(Written.with(
                c,
                new HeatRules(null, null, null, null, 0),
                new NodeRules(null, null, null, false, false, 0),
                c.looks()));
        Floor.Frame frame = atTheArc();
        begin(frame, "Node 1", null, null);
        end(frame, "Node 1");
        repair(frame, "Node 1", "crack at the stop");
        assertThat(found(frame).words()).contains("Repair 1 of at most 0: crack at the stop");
        decide(frame, Decision.CONCESSION);
        assertThat(record(frame, "Node 1").state()).isEqualTo(NodeRecord.State.TO_REPAIR);
        for (String node : List.of("Node 2", "Node 3")) {
            begin(frame, node, null, null);
            end(frame, node);
        }
        assertThat(codeAt(frame)).isEqualTo(weld);
        begin(frame, "Node 1", null, null);
        end(frame, "Node 1");
        assertThat(codeAt(frame)).isEqualTo(look);
    }

    @Test
    void aRepairThatWaitsKeepsTheGateShut() {
        NewProcedure c = plain();
        inForce(Written.with(c, new HeatRules(null, null, null, null, 0), c.nodes(), c.looks()));
        Floor.Frame frame = atTheArc();
        for (String node : List.of("Node 1", "Node 2")) {
            begin(frame, node, null, null);
            end(frame, node);
        }
        repair(frame, "Node 2", "undercut at the stop");
        begin(frame, "Node 3", null, null);
        end(frame, "Node 3");
        assertThat(codeAt(frame)).isEqualTo(weld);
        assertThat(floor.sheet(frame).inTheWay())
                .anyMatch(refusal -> refusal.why().contains("is to be welded again: undercut at the stop"));
        begin(frame, "Node 2", null, null);
        end(frame, "Node 2");
        assertThat(codeAt(frame)).isEqualTo(look);
    }

    @Test
    void underAHoldNoNodeIsOpened() {
        inForce(plain());
        Floor.Frame frame = atTheArc();
        holds.place(
                crew.act(qa),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.SAFETY,
                        "wait",
                        "by hand",
                        java.util.Set.of()));
        refused(() -> begin(frame, "Node 1", null, null), "on hold");
    }

    @Test
    void whatIsSentTwiceIsDoneOnce() {
        inForce(plain());
        Floor.Frame frame = atTheArc();
        long operation = at(frame);
        long node = step(frame, "Node 1");
        Act opens = crew.act(welder);
        welds.open(opens, operation, node, new Welds.Begin(null, null, null));
        welds.open(opens, operation, node, new Welds.Begin(null, null, null));
        Act closes = crew.act(welder);
        welds.close(closes, operation, node, Welds.End.plain());
        welds.close(closes, operation, node, Welds.End.plain());
        Act mends = crew.act(welder);
        welds.repair(mends, operation, node, "pore");
        assertThat(welds.repair(mends, operation, node, "pore").nodes().get(0).repairs())
                .hasSize(1);
    }

    @Test
    void whatWasInWorkBeforeAnyProcedureGoesByPaper() {
        Floor.Frame frame = atTheArc();
        clock.pass(java.time.Duration.ofMinutes(5));
        inForce(plain());
        tick(frame, "Node 1");
        tick(frame, "Node 2");
        tick(frame, "Node 3");
        assertThat(codeAt(frame)).isEqualTo(look);
        Floor.Frame later = atTheArc();
        refused(() -> tick(later, "Node 1"), "is not recorded");
    }

    @Test
    void aReaderRecordsNothingAndWhoeverWeldedTookPart() {
        inForce(plain());
        Floor.Frame frame = atTheArc();
        long auditor = floor.hire(Role.AUDITOR);
        refused(
                () -> welds.open(
                        crew.act(auditor), at(frame), step(frame, "Node 1"), new Welds.Begin(null, null, null)),
                "A reader changes nothing.");
        begin(frame, "Node 1", null, null);
        refused(
                () -> welds.open(crew.act(welder), at(frame), step(frame, "gas"), new Welds.Begin(null, null, null)),
                "no such node");
        end(frame, "Node 1");
    }

    private void repair(Floor.Frame frame, String node, String reason) {
        welds.repair(crew.act(welder), at(frame), step(frame, node), reason);
    }

    private static Welds.End sample(String volts, String amps, String length, String seconds) {
        return new Welds.End(
                null,
                null,
                new BigDecimal(volts),
                amps == null ? null : new BigDecimal(amps),
                new BigDecimal(length),
                new BigDecimal(seconds),
                null,
                null,
                null);
    }
}
