package org.trammel.shop.handwork;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.gauges.GaugeFailed;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/**
 * A meter of air or metal was found wrong: in the same act somebody is called to every frame in the shop whose metal may have
 * been damp or cold since the meter was last good, and the frames that have left are named in one call.
 */
@Component
class AirFailures {

    private static final int MOST_NAMED = 40;
    private static final String DEGREES = "°C";

    private final MetalAirRepository airs;
    private final Travellers travellers;
    private final Remarks remarks;
    private final Settings settings;

    AirFailures(MetalAirRepository airs, Travellers travellers, Remarks remarks, Settings settings) {
        this.airs = airs;
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
        Map<Long, FrameSheet.Head> here = new LinkedHashMap<>();
        TreeSet<String> gone = new TreeSet<>();
        airs.readWith(event.code(), since).stream()
                .filter(row -> mayFallShort(row.air(), event))
                .map(row -> inForce(travellers.headOf(row.operationId())))
                .forEach(head -> {
                    TravellerState whole = travellers.inForce(head.serial(), "").state();
                    if (head.state() == TravellerState.SHIPPED || whole == TravellerState.SHIPPED) {
                        gone.add(head.mark());
                    } else if (head.state().open()) {
                        here.put(head.travellerId(), head);
                    }
                });
        String found = event.code() + " was found wrong. ";
        here.values()
                .forEach(head -> remarks.callWithin(
                        event.act(),
                        head.travellerId(),
                        null,
                        found + head.mark()
                                + ": air and metal were measured with it since it was last good; the metal may"
                                + " have been damp or cold at the arc. Measure again before it is welded, or look at its"
                                + " welds for pores."));
        if (!gone.isEmpty()) {
            remarks.callWithin(
                    event.act(),
                    null,
                    null,
                    found + "Frames that have left, whose metal may have been damp or cold at the arc: "
                            + String.join(", ", gone.stream().limit(MOST_NAMED).toList())
                            + (gone.size() > MOST_NAMED ? " and " + (gone.size() - MOST_NAMED) + " more" : "")
                            + ". Look at their welds.");
        }
    }

    private FrameSheet.Head inForce(FrameSheet.Head head) {
        return head.state() == TravellerState.WITHDRAWN ? travellers.inForce(head.serial(), head.part()) : head;
    }

    /** What was enough as it was read; an error of the metal's own meter is reckoned, any other may have been enough to spoil it. */
    private static boolean mayFallShort(HandRecord.Air air, GaugeFailed event) {
        BigDecimal high = event.greatest();
        boolean reckoned = high != null
                && DEGREES.equals(event.unit())
                && event.code().equals(air.metalGauge())
                && !event.code().equals(air.airGauge());
        return air.enough()
                && (!reckoned
                        || air.margin_K().subtract(high).compareTo(air.wanted_K()) < 0
                        || air.metal_degC().subtract(high).compareTo(air.least_degC()) < 0);
    }
}
