package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.fastening.TorqueFit;
import org.trammel.shop.gauges.GaugeFailed;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Travellers;

/**
 * A torque tool was found wrong: in the same act the QA lead is called to every frame with a bolt that it may have put outside its
 * band since it was last good, those that have left among them.
 */
@Component
class ToolFailures {

    private static final int MOST_NAMED = 40;

    private final TorqueRepository torques;
    private final Travellers travellers;
    private final Remarks remarks;
    private final Settings settings;

    ToolFailures(TorqueRepository torques, Travellers travellers, Remarks remarks, Settings settings) {
        this.torques = torques;
        this.travellers = travellers;
        this.remarks = remarks;
        this.settings = settings;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void failed(GaugeFailed event) {
        Instant since = event.lastGoodOn() == null
                ? Instant.EPOCH
                : event.lastGoodOn().atStartOfDay(settings.zone()).toInstant();
        Map<String, Integer> bolts = new TreeMap<>();
        torques.findByGaugeAndAtGreaterThanEqualOrderById(event.code(), since).stream()
                .filter(row -> row.bolt().set_Nm().compareTo(row.bolt().target_Nm()) >= 0)
                .filter(row -> mayBeOutside(row.bolt(), event))
                .collect(Collectors.groupingBy(TorqueRow::operationId, Collectors.counting()))
                .forEach((operation, count) ->
                        bolts.merge(travellers.headOf(operation).mark(), count.intValue(), Integer::sum));
        if (bolts.isEmpty()) {
            return;
        }
        String named = bolts.entrySet().stream()
                .limit(MOST_NAMED)
                .map(one -> one.getKey() + " (" + one.getValue() + ")")
                .collect(Collectors.joining(", "));
        remarks.callWithin(
                event.act(),
                null,
                null,
                event.code() + " was found wrong. Bolts it may have put outside their bands since it was last good: "
                        + named
                        + (bolts.size() > MOST_NAMED ? " and " + (bolts.size() - MOST_NAMED) + " more frames" : "")
                        + ". Torque them again; call those that have left.");
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
