package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.fastening.TorqueFit;
import org.trammel.shop.gauges.FailureReach;
import org.trammel.shop.gauges.GaugeFailed;
import org.trammel.shop.records.Chains;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/**
 * A torque tool was found wrong: in the same act every frame in the shop with a bolt that it may have put outside its band
 * since it was last good is held, and those that have left are listed for the owner. Who tightened one lifts no such hold.
 */
@Component
class ToolFailures implements FailureReach {

    private static final int MOST_NAMED = 40;

    private final TorqueRepository torques;
    private final TorqueSheets sheets;
    private final Travellers travellers;
    private final Holds holds;
    private final Remarks remarks;
    private final Settings settings;

    ToolFailures(
            TorqueRepository torques,
            TorqueSheets sheets,
            Travellers travellers,
            Holds holds,
            Remarks remarks,
            Settings settings) {
        this.torques = torques;
        this.sheets = sheets;
        this.travellers = travellers;
        this.holds = holds;
        this.remarks = remarks;
        this.settings = settings;
    }

    /** Bolts of one frame. */
    private record Doubt(FrameSheet.Head head, List<Bolt> bolts, Set<String> fasteners) {

        String said() {
            return head.mark() + " (" + bolts.size() + ")";
        }
    }

    @Override
    @Transactional(readOnly = true)
    public Set<String> chains(String gauge) {
        return torques.operationsWith(gauge, Instant.EPOCH).stream()
                .map(travellers::headOf)
                .filter(head -> head.state().open())
                .map(head -> Chains.bearing(head.serial()))
                .collect(Collectors.toSet());
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void failed(GaugeFailed event) {
        Instant since = event.lastGoodOn() == null
                ? Instant.EPOCH
                : event.lastGoodOn().atStartOfDay(settings.zone()).toInstant();
        Map<String, Doubt> doubts = new LinkedHashMap<>();
        torques.operationsWith(event.code(), since).forEach(operation -> doubt(operation, event, since, doubts));
        List<Doubt> held = doubts.values().stream()
                .filter(one -> one.head().state().open())
                .toList();
        List<Doubt> left = doubts.values().stream()
                .filter(one -> one.head().state() == TravellerState.SHIPPED)
                .toList();
        held.forEach(one -> hold(event, one));
        call(event, held, left);
    }

    private void doubt(long operation, GaugeFailed event, Instant since, Map<String, Doubt> doubts) {
        for (TorqueSheet.Line line : sheets.of(operation).lines()) {
            List<Bolt> bolts = line.bolts().stream()
                    .filter(bolt ->
                            bolt.gauge().equals(event.code()) && !bolt.at().isBefore(since))
                    .filter(bolt -> bolt.set_Nm().compareTo(bolt.target_Nm()) >= 0)
                    .filter(bolt -> mayBeOutside(bolt, event))
                    .toList();
            if (!bolts.isEmpty()) {
                FrameSheet.Head head = travellers.inForce(
                        travellers.headOf(operation).serial(),
                        travellers.headOf(operation).part());
                Doubt doubt = doubts.computeIfAbsent(
                        head.tag(),
                        tag -> new Doubt(head, new java.util.ArrayList<>(), new java.util.LinkedHashSet<>()));
                doubt.bolts().addAll(bolts);
                doubt.fasteners().add(line.called());
            }
        }
    }

    private void hold(GaugeFailed event, Doubt doubt) {
        holds.placeWithin(
                event.act(),
                new Holds.Request(
                        doubt.head().travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.GAUGE_TRACE,
                        event.code() + " was found wrong; it may have put outside their bands: "
                                + doubt.fasteners().stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
                                + ". Torque them again with a tool that is good.",
                        event.code(),
                        doubt.bolts().stream().map(Bolt::by).collect(Collectors.toSet())));
    }

    private void call(GaugeFailed event, List<Doubt> held, List<Doubt> left) {
        if (held.isEmpty() && left.isEmpty()) {
            return;
        }
        String words = event.code() + " was found wrong."
                + (held.isEmpty() ? "" : " Held until these bolts are torqued again: " + named(held) + ".")
                + (left.isEmpty()
                        ? ""
                        : " Owner: these have left the shop; call whoever rides them: " + named(left) + ".");
        remarks.callWithin(event.act(), null, null, words);
    }

    private static String named(List<Doubt> doubts) {
        return doubts.stream().limit(MOST_NAMED).map(Doubt::said).collect(Collectors.joining(", "))
                + (doubts.size() > MOST_NAMED ? " and " + (doubts.size() - MOST_NAMED) + " more frames" : "");
    }

    /** A tool that showed too much gave less by that, and the other way round; an error nobody knows may be any. */
    private static boolean mayBeOutside(Bolt bolt, GaugeFailed event) {
        BigDecimal least = event.least();
        BigDecimal greatest = event.greatest();
        return least == null
                || greatest == null
                || List.of(
                                bolt.reached_Nm().subtract(greatest),
                                bolt.reached_Nm().subtract(least))
                        .stream()
                        .anyMatch(torque -> torque.signum() <= 0
                                || !TorqueFit.of(torque, bolt.least_Nm(), bolt.most_Nm(), BigDecimal.ZERO)
                                        .inside());
    }
}
