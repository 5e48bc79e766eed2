package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
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
 * What a weld is measured with was found wrong: in the same act every frame in the shop is held whose arc may have been struck
 * on too much oxygen or too hot a frame, or whose fillets are not what was read, since it was last good; those that have left
 * are named for the owner.
 */
@Component
class MeterFailures implements FailureReach {

    private static final int MOST_NAMED = 40;

    private final PurgeRepository purges;
    private final NodeOpenedRepository opened;
    private final NodeDoneRepository done;
    private final Travellers travellers;
    private final Holds holds;
    private final Remarks remarks;
    private final Settings settings;

    MeterFailures(
            PurgeRepository purges,
            NodeOpenedRepository opened,
            NodeDoneRepository done,
            Travellers travellers,
            Holds holds,
            Remarks remarks,
            Settings settings) {
        this.purges = purges;
        this.opened = opened;
        this.done = done;
        this.travellers = travellers;
        this.holds = holds;
        this.remarks = remarks;
        this.settings = settings;
    }

    /** One record that the gauge may have falsified. */
    private record Doubt(long operationId, long by, String what) {}

    /** The frame as it stands now, and what is in doubt of it. */
    private record Doubts(FrameSheet.Head head, Set<String> what, Set<Long> people) {}

    @Override
    @Transactional(readOnly = true)
    public Set<String> chains(String gauge) {
        return Stream.of(
                        purges.findByGaugeAndAtGreaterThanEqualOrderById(gauge, Instant.EPOCH).stream()
                                .map(PurgeRow::operationId),
                        opened.findByGaugeAndAtGreaterThanEqualOrderById(gauge, Instant.EPOCH).stream()
                                .map(NodeOpenedRow::operationId),
                        done.findByGaugeAndAtGreaterThanEqualOrderById(gauge, Instant.EPOCH).stream()
                                .map(NodeDoneRow::operationId))
                .flatMap(ids -> ids)
                .distinct()
                .map(travellers::headOf)
                .map(head -> Chains.bearing(head.serial()))
                .collect(Collectors.toSet());
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void failed(GaugeFailed event) {
        Instant since = event.lastGoodOn() == null
                ? Instant.EPOCH
                : event.lastGoodOn().atStartOfDay(settings.zone()).toInstant();
        Map<Long, Doubts> here = new LinkedHashMap<>();
        TreeSet<String> gone = new TreeSet<>();
        doubts(event, since).forEach(doubt -> {
            FrameSheet.Head read = travellers.headOf(doubt.operationId());
            FrameSheet.Head piece = travellers.inForce(read.serial(), read.part());
            FrameSheet.Head whole = travellers.inForce(read.serial(), "");
            if (piece.state() == TravellerState.SHIPPED || whole.state() == TravellerState.SHIPPED) {
                gone.add(whole.mark());
                return;
            }
            FrameSheet.Head now = piece.state().open() ? piece : whole;
            if (now.state().open()) {
                Doubts all = here.computeIfAbsent(
                        now.travellerId(), id -> new Doubts(now, new TreeSet<>(), new HashSet<>()));
                all.what().add(doubt.what());
                all.people().add(doubt.by());
            }
        });
        here.values().forEach(one -> hold(event, one));
        if (!here.isEmpty() || !gone.isEmpty()) {
            call(event, here.values().stream().map(one -> one.head().mark()).toList(), List.copyOf(gone));
        }
    }

    private List<Doubt> doubts(GaugeFailed event, Instant since) {
        return Stream.of(
                        purges.findByGaugeAndAtGreaterThanEqualOrderById(event.code(), since).stream()
                                .filter(row -> row.purge().enough()
                                        && mayLieAbove(
                                                row.purge().oxygen_ppm(),
                                                row.purge().most_ppm(),
                                                "ppm",
                                                event))
                                .map(row -> new Doubt(
                                        row.operationId(),
                                        row.purge().by(),
                                        "the purge, of which more oxygen may have been left than allowed")),
                        opened.findByGaugeAndAtGreaterThanEqualOrderById(event.code(), since).stream()
                                .filter(row -> mayLieAbove(
                                        row.opened().interpass_degC(),
                                        row.opened().mostInterpass_degC(),
                                        "°C",
                                        event))
                                .map(row -> new Doubt(
                                        row.operationId(),
                                        row.opened().by(),
                                        row.node() + ", which may have been begun too hot")),
                        done.findByGaugeAndAtGreaterThanEqualOrderById(event.code(), since).stream()
                                .filter(row -> row.done().fillet_mm() != null)
                                .map(row -> new Doubt(
                                        row.operationId(),
                                        row.done().by(),
                                        row.node() + ", the fillet of which is to be measured again")))
                .flatMap(all -> all)
                .toList();
    }

    /** What it read less its least error is the most it may have been; an error nobody knows may be any. */
    private static boolean mayLieAbove(
            @Nullable BigDecimal read, @Nullable BigDecimal most, String unit, GaugeFailed event) {
        return read != null
                && most != null
                && (event.least() == null
                        || !unit.equals(event.unit())
                        || read.subtract(event.least()).compareTo(most) > 0);
    }

    private void hold(GaugeFailed event, Doubts doubts) {
        holds.placeWithin(
                event.act(),
                new Holds.Request(
                        doubts.head().travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.GAUGE_TRACE,
                        event.code() + " was found wrong; in doubt since it was last good: "
                                + doubts.what().stream().limit(MOST_NAMED).collect(Collectors.joining("; "))
                                + ". QA decides what becomes of it.",
                        event.code(),
                        doubts.people()));
    }

    private void call(GaugeFailed event, List<String> held, List<String> gone) {
        remarks.callWithin(
                event.act(),
                null,
                null,
                event.code() + " was found wrong."
                        + (held.isEmpty() ? "" : " Held for what was welded by it: " + named(held) + ".")
                        + (gone.isEmpty()
                                ? ""
                                : " Owner: these have left the shop, welded by it; call whoever rides them: "
                                        + named(gone) + "."));
    }

    private static String named(List<String> marks) {
        return marks.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
                + (marks.size() > MOST_NAMED ? " and " + (marks.size() - MOST_NAMED) + " more frames" : "");
    }
}
