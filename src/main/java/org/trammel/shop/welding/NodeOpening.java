package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/** What must be so before an arc is struck on a node. */
@Component
class NodeOpening {

    private final NodeRecords records;
    private final WeldLots lots;
    private final Welders welders;
    private final WeldGauges gauges;
    private final Evidence evidence;
    private final Travellers travellers;
    private final Settings settings;
    private final Formats formats;
    private final Clock clock;

    NodeOpening(
            NodeRecords records,
            WeldLots lots,
            Welders welders,
            WeldGauges gauges,
            Evidence evidence,
            Travellers travellers,
            Settings settings,
            Formats formats,
            Clock clock) {
        this.records = records;
        this.lots = lots;
        this.welders = welders;
        this.gauges = gauges;
        this.evidence = evidence;
        this.travellers = travellers;
        this.settings = settings;
        this.formats = formats;
        this.clock = clock;
    }

    /** The beginning of a node as it is kept, or a refusal. */
    NodeRecord.Opened judged(Act act, WeldTurn.At at, NodeRecord node, Welds.Begin entry, String deed) {
        long operationId = at.line().operationId();
        List<NodeRecord> all = records.of(at.head(), at.operation());
        requireTurn(node, all, deed);
        evidence.requireFree(operationId, "go on");
        refuseWhatIsInTheWay(at);
        evidence.requireQualified(act, operationId, deed);
        welders.requireCovered(at.procedure(), at.head(), at.operation(), act.by(), deed);
        String fillers = lots.require(at.head(), at.line(), LotKind.FILLER, at.procedure(), deed);
        String gases = lots.require(at.head(), at.line(), LotKind.GAS, at.procedure(), deed);
        requirePurged(at, deed);
        String reason = order(at, node, entry.reason(), deed);
        BigDecimal most = at.procedure().tacks(at.line().code())
                ? null
                : at.procedure().content().heat().mostInterpass_degC();
        boolean first = all.stream().allMatch(one -> one.opened() == null);
        boolean asked = most != null && !first;
        Means gauge = asked ? interpass(entry, most, deed) : null;
        return new NodeRecord.Opened(
                0,
                fillers,
                gases,
                asked ? entry.interpass_degC() : null,
                asked ? most : null,
                gauge == null ? null : gauges.guard(gauge),
                gauge == null ? null : gauge.code(),
                reason,
                act.by(),
                act.at());
    }

    private static void requireTurn(NodeRecord node, List<NodeRecord> all, String deed) {
        if (node.state() == NodeRecord.State.OPEN
                || node.state() == NodeRecord.State.DONE
                || node.state() == NodeRecord.State.HELD) {
            throw Refusal.state(
                    deed,
                    node.node() + " is " + node.state().word() + ".",
                    node.state() == NodeRecord.State.DONE
                            ? "Say that it is to be repaired, and why, before it is welded again."
                            : node.state() == NodeRecord.State.HELD
                                    ? "Its nonconformance decides what becomes of it."
                                    : "Weld it, and close it.");
        }
        all.stream()
                .filter(one -> one.state() == NodeRecord.State.OPEN)
                .findFirst()
                .ifPresent(open -> {
                    throw Refusal.state(deed, open.node() + " is open.", "Close that one first.");
                });
    }

    /** Holds, clocks and earlier operations, as they keep a step from being ticked. */
    private void refuseWhatIsInTheWay(WeldTurn.At at) {
        if (at.operation().steps().stream().allMatch(FrameSheet.StepLine::ticked)) {
            return;
        }
        travellers.sheet(at.head().travellerId()).inTheWay().stream()
                .findFirst()
                .ifPresent(refusal -> {
                    throw refusal;
                });
    }

    private void requirePurged(WeldTurn.At at, String deed) {
        BigDecimal most = at.procedure().content().nodes().mostPurge_ppm();
        if (most == null) {
            return;
        }
        List<PurgeRecord> all = records.purges(at.line().operationId());
        if (all.isEmpty()) {
            throw Refusal.state(
                    deed,
                    "Oxygen inside the frame was not read; at most " + said(most) + " ppm are allowed.",
                    "Purge, and read the meter at the outlet. No arc before.");
        }
        PurgeRecord newest = all.get(all.size() - 1);
        if (!newest.enough()) {
            throw Refusal.state(
                    deed,
                    "Oxygen inside was " + said(newest.oxygen_ppm()) + " ppm at " + formats.time(newest.at())
                            + (newest.guard_ppm().signum() == 0
                                    ? ""
                                    : ", and the doubt of the meter counts " + said(newest.guard_ppm()) + " ppm")
                            + "; at most " + said(newest.most_ppm()) + " ppm are allowed.",
                    "No arc. Purge on, and read the meter again.");
        }
        int minutes = settings.whole("weld.purge.minutes");
        if (newest.olderThan(minutes, clock.instant())) {
            throw Refusal.state(
                    deed,
                    "Oxygen inside was read at " + formats.time(newest.at()) + ", more than " + minutes + " min ago.",
                    "Read the meter again before the arc.");
        }
    }

    private static @Nullable String order(WeldTurn.At at, NodeRecord node, @Nullable String typed, String deed) {
        String reason =
                typed == null || typed.isBlank() ? null : TypedText.words("reason", "The reason", deed, typed, 1000);
        if (node.ticked()) {
            return reason;
        }
        for (FrameSheet.StepLine step : at.operation().steps()) {
            if (step.stepId() == node.stepId()) {
                return reason;
            }
            if (!step.ticked() && reason == null) {
                throw Refusal.ask(
                        "reason",
                        deed,
                        step.text() + " comes before it.",
                        "Do that first, or say why the order is another one this time.");
            }
        }
        return reason;
    }

    private Means interpass(Welds.Begin entry, BigDecimal most, String deed) {
        BigDecimal read = entry.interpass_degC();
        if (read == null) {
            throw Refusal.input(
                    "interpass",
                    deed,
                    "The temperature beside the last bead was not read; at most " + said(most) + " °C are allowed.",
                    "Read it and enter it in °C.");
        }
        Means gauge =
                gauges.read(entry.gauge() == null ? "" : entry.gauge(), "gauge", WeldGauges.HEAT, "°C", read, deed);
        BigDecimal guard = gauges.guard(gauge);
        if (read.add(guard).compareTo(most) > 0) {
            throw Refusal.input(
                    "interpass",
                    deed,
                    "The frame is at " + said(read) + " °C beside the last bead"
                            + (guard.signum() == 0
                                    ? ""
                                    : ", and the doubt of " + gauge.code() + " counts " + said(guard) + " °C")
                            + "; at most " + said(most)
                            + " °C are allowed between nodes.",
                    "Let it cool, and read it again.");
        }
        return gauge;
    }

    private String said(BigDecimal figure) {
        return formats.number(figure.stripTrailingZeros());
    }
}
