package org.trammel.shop.dew;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
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
 * been damp or cold since the meter was last good, and the frames that have left are named in one call for each purpose.
 */
@Component
class AirFailures {

    private static final int MOST_NAMED = 40;
    private static final String DEGREES = "°C";

    private final DewMarginRepository margins;
    private final Travellers travellers;
    private final Remarks remarks;
    private final Settings settings;

    AirFailures(DewMarginRepository margins, Travellers travellers, Remarks remarks, Settings settings) {
        this.margins = margins;
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
        Map<Long, Set<DewPurpose>> purposes = new LinkedHashMap<>();
        Map<DewPurpose, TreeSet<String>> gone = new TreeMap<>();
        for (DewMarginRow row : margins.readWith(event.code(), since)) {
            if (!mayFallShort(row.margin(List.of()), event)) {
                continue;
            }
            FrameSheet.Head head = inForce(travellers.headOf(row.operationId()));
            TravellerState whole = travellers.inForce(head.serial(), "").state();
            if (head.state() == TravellerState.SHIPPED || whole == TravellerState.SHIPPED) {
                gone.computeIfAbsent(row.purpose(), one -> new TreeSet<>()).add(head.mark());
            } else if (head.state().open()) {
                here.put(head.travellerId(), head);
                purposes.computeIfAbsent(head.travellerId(), one -> EnumSet.noneOf(DewPurpose.class))
                        .add(row.purpose());
            }
        }
        String found = event.code() + " was found wrong. ";
        here.forEach((id, head) -> remarks.callWithin(
                event.act(),
                id,
                null,
                found + head.mark() + ": air and metal were measured with it since it was last good; "
                        + purposes.get(id).stream().map(DewPurpose::doubt).collect(Collectors.joining(" "))));
        gone.forEach((purpose, marks) -> remarks.callWithin(
                event.act(),
                null,
                null,
                found + "Frames that have left, whose metal " + purpose.mayHaveBeen() + ": "
                        + String.join(", ", marks.stream().limit(MOST_NAMED).toList())
                        + (marks.size() > MOST_NAMED ? " and " + (marks.size() - MOST_NAMED) + " more" : "") + ". "
                        + purpose.look()));
    }

    private FrameSheet.Head inForce(FrameSheet.Head head) {
        return head.state() == TravellerState.WITHDRAWN ? travellers.inForce(head.serial(), head.part()) : head;
    }

    /** What was enough as it was read; an error of the metal's own meter is reckoned, any other may have been enough to spoil it. */
    private static boolean mayFallShort(DewMargin read, GaugeFailed event) {
        BigDecimal high = event.greatest();
        boolean reckoned = high != null
                && DEGREES.equals(event.unit())
                && event.code().equals(read.metalGauge())
                && !event.code().equals(read.airGauge());
        BigDecimal least = read.least_degC();
        return read.enough()
                && (!reckoned
                        || read.margin_K().subtract(high).compareTo(read.wanted_K()) < 0
                        || least != null && read.metal_degC().subtract(high).compareTo(least) < 0);
    }
}
