package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
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
 * What a customer's own fork or shock was measured with was found wrong: in the same act every frame in the shop is held whose
 * part may not be what the frame was drawn for, and those that have left are named for the owner.
 */
@Component
class OwnPartFailures implements FailureReach {

    private static final int MOST_NAMED = 40;
    private static final String MILLIMETRES = "mm";

    private final OwnPartCheckRepository rows;
    private final Travellers travellers;
    private final Holds holds;
    private final Remarks remarks;
    private final Settings settings;

    OwnPartFailures(
            OwnPartCheckRepository rows, Travellers travellers, Holds holds, Remarks remarks, Settings settings) {
        this.rows = rows;
        this.travellers = travellers;
        this.holds = holds;
        this.remarks = remarks;
        this.settings = settings;
    }

    @Override
    @Transactional(readOnly = true)
    public Set<String> chains(String gauge) {
        return rows.ordersWith(gauge, Instant.EPOCH).stream()
                .flatMap(order -> travellers.ofOrder(order).stream())
                .map(head -> Chains.bearing(head.serial()))
                .collect(Collectors.toSet());
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void failed(GaugeFailed event) {
        Instant since = event.lastGoodOn() == null
                ? Instant.EPOCH
                : event.lastGoodOn().atStartOfDay(settings.zone()).toInstant();
        List<FrameSheet.Head> gone = rows.ordersWith(event.code(), since).stream()
                .filter(order -> inDoubt(order, since, event))
                .flatMap(order -> travellers.ofOrder(order).stream())
                .filter(head -> head.parentId() == null)
                .filter(head -> !held(head, event) && head.state() == TravellerState.SHIPPED)
                .toList();
        if (!gone.isEmpty()) {
            remarks.callWithin(
                    event.act(),
                    null,
                    null,
                    event.code()
                            + " was found wrong. Owner: these have left the shop with a customer's own part measured"
                            + " with it; call whoever rides them: "
                            + gone.stream()
                                    .limit(MOST_NAMED)
                                    .map(FrameSheet.Head::mark)
                                    .collect(Collectors.joining(", "))
                            + (gone.size() > MOST_NAMED ? " and " + (gone.size() - MOST_NAMED) + " more frames" : "")
                            + ".");
        }
    }

    private boolean held(FrameSheet.Head head, GaugeFailed event) {
        if (!head.state().open()) {
            return false;
        }
        holds.placeWithin(
                event.act(),
                new Holds.Request(
                        head.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.GAUGE_TRACE,
                        event.code()
                                + " was found wrong; the customer's own part was measured with it and may not be what the"
                                + " frame is drawn for. Measure it again with a gauge that is good.",
                        event.code(),
                        Set.of()));
        remarks.callWithin(
                event.act(),
                head.travellerId(),
                null,
                event.code() + " was found wrong. Held until the customer's own part is measured again: " + head.mark()
                        + ".");
        return true;
    }

    /** The newest check of each part counts: one measured again since with another gauge is in no doubt. */
    private boolean inDoubt(long order, Instant since, GaugeFailed event) {
        Map<Long, OwnPartCheck> newest = new HashMap<>();
        rows.findByOrderIdOrderById(order).forEach(row -> newest.put(row.check().ownPartId(), row.check()));
        return newest.values().stream()
                .anyMatch(check -> event.code().equals(check.gauge())
                        && !check.at().isBefore(since)
                        && check.conforming()
                        && mayBeOutside(check, event));
    }

    /** What it read less its error; an error nobody knows may be any. */
    private static boolean mayBeOutside(OwnPartCheck check, GaugeFailed event) {
        BigDecimal least = event.least();
        BigDecimal greatest = event.greatest();
        if (least == null || greatest == null || !MILLIMETRES.equals(event.unit())) {
            return true;
        }
        BigDecimal off =
                Objects.requireNonNull(check.measured_mm()).subtract(Objects.requireNonNull(check.nominal_mm()));
        BigDecimal within = Objects.requireNonNull(check.within_mm());
        return off.subtract(greatest).compareTo(within.negate()) < 0
                || off.subtract(least).compareTo(within) > 0;
    }
}
