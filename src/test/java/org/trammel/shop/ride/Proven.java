package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.trammel.shop.Fixture;
import org.trammel.shop.TestClock;
import org.trammel.shop.assembly.BuildRecord;
import org.trammel.shop.assembly.Builds;
import org.trammel.shop.assembly.FrameComponents;
import org.trammel.shop.assembly.TorqueSheet;
import org.trammel.shop.assembly.TorqueSheets;
import org.trammel.shop.assembly.Torques;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.welding.WeldLooks;
import org.trammel.shop.welding.Welds;

/**
 * Records what a step rests on besides its tick: the first of several alike by hand in the browser, the others by the same
 * people without one. Each tick is tried before its record, and refused.
 */
@Fixture
class Proven {

    private final Welds welds;
    private final WeldLooks looks;
    private final FrameComponents components;
    private final TorqueSheets torqueSheets;
    private final Torques torques;
    private final Builds builds;
    private final Bench bench;
    private final TestClock clock;

    /** Part, operation and proof of each step that was refused while nothing was recorded. */
    final Set<String> refused = new TreeSet<>();

    Proven(
            Welds welds,
            WeldLooks looks,
            FrameComponents components,
            TorqueSheets torqueSheets,
            Torques torques,
            Builds builds,
            Bench bench,
            TestClock clock) {
        this.welds = welds;
        this.looks = looks;
        this.components = components;
        this.torqueSheets = torqueSheets;
        this.torques = torques;
        this.builds = builds;
        this.bench = bench;
        this.clock = clock;
    }

    /** One step of a frame, the tablet at it and who stands there. */
    record Turn(
            FrameSheet sheet,
            FrameSheet.OperationSheetOfFrame at,
            FrameSheet.StepLine step,
            Tablet tablet,
            Workshop shop,
            Hand doer) {

        long operation() {
            return at.line().operationId();
        }

        String tag() {
            return sheet.head().tag();
        }
    }

    void prove(Turn turn) {
        Proof proof = turn.step().proof();
        boolean first = refusesTheTick(turn);
        switch (proof) {
            case WELDED -> weld(turn, first);
            case LOOKED -> look(turn);
            case TORQUED -> torqueAll(turn);
            case TORQUED_AGAIN -> torqueSheets.of(turn.operation()).lines().forEach(line -> tighten(turn, line));
            case JOINED -> join(turn);
            case BEDDED -> bed(turn);
            case RIDDEN -> rides(turn);
            case COUNTRY -> country(turn);
            case PACKED -> pack(turn);
            default -> throw new AssertionError(proof + " is handwork");
        }
    }

    /** @return whether it is the first of its kind at this operation */
    private boolean refusesTheTick(Turn turn) {
        String part = turn.sheet().head().part();
        String code = turn.at().line().code();
        boolean first = refused.add(
                (part.isEmpty() ? code : part + " " + code) + " " + turn.step().proof());
        if (first) {
            assertThatThrownBy(() ->
                            bench.tick(act(turn.doer()), List.of(turn.step().stepId()), null, "in vain"))
                    .as(
                            "%s of %s without its record",
                            turn.step().text(), turn.at().line())
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("was not ticked");
        }
        return first;
    }

    private void weld(Turn turn, boolean byHand) {
        Tablet tablet = turn.tablet();
        if (byHand) {
            tablet.open(turn.tag());
            tablet.press(".plate a.btn.main");
            assertThat(tablet.page().locator("#h-node").innerText())
                    .isEqualTo(turn.step().text());
            tablet.press("button:has-text('Open the node')");
            for (String[] one :
                    new String[][] {{"volts", "14"}, {"amps", "95"}, {"length", "150"}, {"seconds", "60"}}) {
                tablet.page().locator("#f-close-" + one[0]).fill(one[1]);
            }
            tablet.press("button:has-text('Welded, close the node')");
            // 0.6 · 14 V · 95 A · 60 s / 150 mm = 0.319 kJ/mm, worked by hand (form of EN 1011-1)
            assertThat(tablet.page().locator("main").innerText()).contains("0,319 kJ/mm");
            Sheets.look(tablet.page(), turn.sheet().head().kind() + "-node-closed");
            return;
        }
        welds.open(
                act(turn.doer()),
                turn.operation(),
                turn.step().stepId(),
                new Welds.Begin(BigDecimal.valueOf(80), "IR-1", null));
        welds.close(
                act(turn.doer()),
                turn.operation(),
                turn.step().stepId(),
                new Welds.End(null, null, null, null, null, null, null, null, null));
    }

    private void look(Turn turn) {
        turn.tablet().sheet("/welds/" + turn.operation());
        turn.tablet().press("button:has-text('Nothing found')");
        looks.of(turn.operation()).stream()
                .filter(node -> node.looks().isEmpty())
                .forEach(node ->
                        looks.see(act(turn.doer()), turn.operation(), node.node(), WeldLooks.Sighting.nothing()));
    }

    /** The first fastener by hand, after a target that may leave its band; the witness by hand, with the own PIN. */
    private void torqueAll(Turn turn) {
        Tablet tablet = turn.tablet();
        for (String code : Fittings.at(turn.at().line().code())) {
            components.give(act(turn.shop().owner), turn.sheet().head().travellerId(), code, "");
        }
        tablet.open(turn.tag());
        assertThat(tablet.heading()).startsWith("Torque 1 of ");
        tablet.press(".plate a.btn.main");
        TorqueSheet.Line first = torqueSheets.of(turn.operation()).lines().get(0);
        tablet.page().locator("#f-bolt-gauge").selectOption("TW-1");
        tablet.page().locator("#f-bolt-target").fill(first.most_Nm().toPlainString());
        tablet.press(".clicked .btn.main");
        assertThat(tablet.refusal()).contains("Set it to");
        Sheets.look(tablet.page(), turn.sheet().head().kind() + "-target-refused");
        tablet.page().locator("#f-bolt-target").fill(first.target_Nm().toPlainString());
        tablet.press(".clicked .btn.main");
        assertThat(tablet.refusal()).isEmpty();
        torqueSheets.of(turn.operation()).lines().forEach(line -> tighten(turn, line));
        if (torqueSheets.of(turn.operation()).toWitness().isEmpty()) {
            return;
        }
        tablet.sheet("/torques/" + turn.operation());
        tablet.page().locator("input[name^='seen-']").all().forEach(box -> box.check());
        tablet.page()
                .locator("#f-signer")
                .selectOption(Long.toString(turn.shop().witness.id()));
        tablet.page().locator("#f-pin").fill(Hand.PIN);
        tablet.press("button:has-text('Sign as witness')");
        assertThat(torqueSheets.of(turn.operation()).toWitness()).isEmpty();
        Sheets.look(tablet.page(), turn.sheet().head().kind() + "-torques");
    }

    private void tighten(Turn turn, TorqueSheet.Line line) {
        TorqueSheet.Line now = line;
        while (now.next() != null) {
            long part = now.part().id();
            long fastener = now.fastener().id();
            now = torques
                    .tighten(
                            act(turn.doer()),
                            turn.operation(),
                            new Torques.Tightened(
                                    part,
                                    fastener,
                                    now.round(),
                                    now.next().pass(),
                                    now.next().bolt(),
                                    "TW-1",
                                    null,
                                    null))
                    .lines()
                    .stream()
                    .filter(one -> one.part().id() == part && one.fastener().id() == fastener)
                    .findFirst()
                    .orElseThrow();
        }
    }

    private void join(Turn turn) {
        Tablet tablet = turn.tablet();
        tablet.sheet("/builds/" + turn.operation());
        tablet.page().locator("#f-join-first").fill(turn.sheet().head().serial() + "-FT");
        tablet.page().locator("#f-join-second").fill(turn.sheet().head().serial() + "-SA");
        tablet.page().locator("#f-join-words").fill("falls by its own weight, tyre 8 mm from the tube");
        tablet.press("button:has-text('Join them')");
        // √(0.3² + 0.3² + 0.1² + 0.2²) = 0.48 mm, worked by hand
        assertThat(tablet.page().locator("main").innerText()).contains("0,48 mm");
        Sheets.look(tablet.page(), "joined");
    }

    private void bed(Turn turn) {
        Tablet tablet = turn.tablet();
        stops(turn, BuildRecord.Brake.FRONT, "12");
        assertThat(tablet.page().locator("main").innerText()).contains("not as asked");
        stops(turn, BuildRecord.Brake.FRONT, "22");
        stops(turn, BuildRecord.Brake.REAR, "22");
    }

    private static void stops(Turn turn, BuildRecord.Brake brake, String count) {
        Tablet tablet = turn.tablet();
        tablet.sheet("/builds/" + turn.operation());
        tablet.page().locator("#f-bed-brake").selectOption(brake.name());
        tablet.page().locator("#f-bed-stops").fill(count);
        tablet.page().locator("#f-bed-clear").check();
        tablet.press("button:has-text('Keep the stops')");
        assertThat(tablet.refusal()).isEmpty();
    }

    private static void rides(Turn turn) {
        Tablet tablet = turn.tablet();
        tablet.sheet("/builds/" + turn.operation());
        tablet.page()
                .locator("#f-ride-rider")
                .selectOption(Long.toString(turn.doer().id()));
        tablet.page().locator("#f-ride-words").fill("tracks straight, no noise");
        tablet.page().locator("#f-ride-good").check();
        tablet.page().locator("#f-ride-pin").fill(Hand.PIN);
        tablet.press("button:has-text('Sign the ride')");
        assertThat(tablet.page().locator("main").innerText()).contains("tracks straight");
        Sheets.look(tablet.page(), turn.sheet().head().kind() + "-ridden");
    }

    private void country(Turn turn) {
        turn.tablet().sheet("/builds/" + turn.operation());
        turn.tablet().press("button:has-text('It is there')");
        builds.of(turn.operation()).items().stream()
                .filter(item -> !item.there())
                .forEach(item -> builds.item(act(turn.doer()), turn.operation(), item.item(), true));
    }

    /** First with the papers of another frame in the box. */
    private static void pack(Turn turn) {
        Tablet tablet = turn.tablet();
        tablet.sheet("/builds/" + turn.operation());
        assertThat(tablet.page().locator("main").innerText()).doesNotContain("not whole");
        String serial = turn.sheet().head().serial();
        for (String paper : List.of("AV26999X", serial)) {
            tablet.sheet("/builds/" + turn.operation());
            assertThat(tablet.shows("#f-pack-frame"))
                    .as(tablet.page().locator("body").innerText())
                    .isTrue();
            tablet.page().locator("#f-pack-frame").fill(serial);
            tablet.page().locator("#f-pack-box").fill(serial);
            tablet.page().locator("#f-pack-paper").fill(paper);
            tablet.press("button:has-text('They are one')");
            if (!paper.equals(serial)) {
                assertThat(tablet.refusal()).contains("The paper says " + paper);
            }
        }
        assertThat(tablet.page().locator("main").innerText()).contains("one serial");
        Sheets.look(tablet.page(), turn.sheet().head().kind() + "-packed");
    }

    private Act act(Hand who) {
        return new Act(UUID.randomUUID(), who.id(), null, clock.instant(), null);
    }
}
