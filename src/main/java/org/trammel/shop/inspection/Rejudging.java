package org.trammel.shop.inspection;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.calc.metrology.Reduction;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Traces;
import org.trammel.shop.travellers.TravellerState;

/**
 * Judges readings again, so many in a transaction. Each portion is an act of the service whose id is kept with the
 * re-judgement, so that a portion done twice, or done again after a kill, is done once.
 */
@Component
class Rejudging {

    private final RejudgementRepository rejudgements;
    private final RejudgedFrameRepository frames;
    private final ReadingRepository readings;
    private final ObjectProvider<RawHeights> heights;
    private final SpanJudge judge;
    private final Traces traces;
    private final StandingReadings standing;
    private final Holds holds;
    private final EntityManager entities;
    private final RejudgedRows rows;
    private final ActLog log;
    private final Clock clock;
    private final TransactionTemplate transaction;
    private final Limit portion;

    /** @param portion readings judged in one transaction */
    Rejudging(
            RejudgementRepository rejudgements,
            RejudgedFrameRepository frames,
            ReadingRepository readings,
            ObjectProvider<RawHeights> heights,
            SpanJudge judge,
            Traces traces,
            StandingReadings standing,
            Holds holds,
            EntityManager entities,
            RejudgedRows rows,
            ActLog log,
            Clock clock,
            TransactionTemplate transaction,
            @Value("${trammel.rejudgement-portion:5000}") int portion) {
        this.rejudgements = rejudgements;
        this.frames = frames;
        this.readings = readings;
        this.heights = heights;
        this.judge = judge;
        this.traces = traces;
        this.standing = standing;
        this.holds = holds;
        this.entities = entities;
        this.rows = rows;
        this.log = log;
        this.clock = clock;
        this.transaction = transaction;
        this.portion = Limit.of(portion);
    }

    /** What was found of one reading. */
    private record Judged(Reading reading, String serial, SpanJudge.Found found) {

        boolean open() {
            return found.outcome() == ReadingOutcome.MEASURE_AGAIN;
        }
    }

    /** A portion judged and not kept yet. */
    private record Portion(UUID act, long after, List<Judged> judged) {

        Set<String> inDoubt() {
            return judged.stream()
                    .filter(Judged::open)
                    .map(Judged::serial)
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /**
     * Judges the next portion. What the readings say never changes and is judged first; where the frames stand counts
     * from when nobody can move them any more.
     *
     * @return false if nothing was left to judge
     */
    boolean goOn(long id) {
        Portion next = transaction.execute(t -> next(id));
        return next != null && Boolean.TRUE.equals(transaction.execute(t -> keep(id, next)));
    }

    private @Nullable Portion next(long id) {
        Rejudgement found = rejudgements.findById(id).orElseThrow();
        if (found.state() != RejudgementState.JUDGING) {
            return null;
        }
        return new Portion(found.nextAct(), found.reachedId(), judged(found, suspects(found)));
    }

    /** The next readings in their order: those that name the gauge, and those reduced from figures that it read. */
    private List<Reading> suspects(Rejudgement of) {
        return Stream.concat(
                        readings
                                .suspect(
                                        of.means(), of.reachedId(), of.lastReadingId(), of.since(), of.until(), portion)
                                .stream(),
                        readings
                                .suspectUnderAnotherName(
                                        of.means(), of.reachedId(), of.lastReadingId(), of.since(), of.until(), portion)
                                .stream())
                .distinct()
                .sorted(Comparator.comparing(Reading::id))
                .limit(portion.max())
                .toList();
    }

    private boolean keep(long id, Portion portion) {
        Act act = new Act(portion.act(), Act.SERVICE, null, clock.instant(), null);
        Set<String> inDoubt = portion.inDoubt();
        String[] chains = Stream.concat(Stream.of(Chains.SHOP), inDoubt.stream().map(Chains::bearing))
                .toArray(String[]::new);
        if (!log.opens(act, "judge readings again", "rejudgement:" + id + " after:" + portion.after(), chains)) {
            return true;
        }
        Rejudgement rejudgement = rejudgements.findById(id).orElseThrow();
        if (portion.judged().isEmpty()) {
            rejudgement.allJudged();
            log.event(Chains.SHOP, "all judged again", Map.of("rejudgement", id));
            return false;
        }
        take(act, rejudgement, portion.judged(), inDoubt);
        return true;
    }

    private List<Judged> judged(Rejudgement rejudgement, List<Reading> portion) {
        GaugeError error = rejudgement.gaugeError();
        Map<Long, Answer<List<TrueSpan>>> byHeights = byHeights(portion, error);
        Map<Long, org.trammel.shop.routes.Reduction> reductions = traces.reductions(portion.stream()
                .filter(r -> r.raw().size() > 1)
                .map(Reading::characteristicId)
                .collect(Collectors.toSet()));
        Set<Long> figures = portion.isEmpty()
                ? Set.of()
                : readings.withGaugesOfFigures(portion.stream().map(Reading::id).toList());
        Map<Long, String> serials =
                traces.serials(portion.stream().map(Reading::travellerId).collect(Collectors.toSet()));
        return portion.stream()
                .map(r -> new Judged(
                        r,
                        serials.get(r.travellerId()),
                        judge.of(
                                r,
                                reduction(reductions.get(r.characteristicId())),
                                error,
                                byHeights,
                                figures.contains(r.id()))))
                .toList();
    }

    private static Reduction reduction(org.trammel.shop.routes.@Nullable Reduction of) {
        return of == null ? Reduction.SINGLE : Reduction.valueOf(of.name());
    }

    private Map<Long, Answer<List<TrueSpan>>> byHeights(List<Reading> portion, @Nullable GaugeError error) {
        if (error == null || portion.isEmpty()) {
            return Map.of();
        }
        List<RawHeights.Suspect> all = portion.stream()
                .map(r -> new RawHeights.Suspect(r.id(), r.reductionId(), r.raw()))
                .toList();
        Map<Long, Answer<List<TrueSpan>>> known = new HashMap<>();
        heights.forEach(source -> known.putAll(source.spans(all, error)));
        return known;
    }

    private void take(Act act, Rejudgement rejudgement, List<Judged> judged, Set<String> inDoubt) {
        Set<Long> inForce = standing.of(
                judged.stream().filter(Judged::open).map(Judged::reading).toList());
        Map<String, List<FrameSheet.Head>> heads = traces.heads(inDoubt);
        Map<String, List<Judged>> byFrame = new TreeMap<>();
        judged.forEach(one ->
                byFrame.computeIfAbsent(one.serial(), s -> new ArrayList<>()).add(one));
        Map<String, RejudgedFrame> known = new LinkedHashMap<>();
        frames.findByRejudgementIdAndSerialIn(rejudgement.id(), byFrame.keySet())
                .forEach(frame -> known.put(frame.serial(), frame));
        List<String> held = new ArrayList<>();
        byFrame.forEach((serial, ofFrame) -> {
            RejudgedFrame frame = known.get(serial);
            boolean fresh = frame == null;
            if (frame == null) {
                frame = new RejudgedFrame(rejudgement.id(), serial);
            }
            FrameOutcome before = frame.outcome();
            List<Judged> toMeasure = ofFrame.stream()
                    .filter(one -> one.open() && inForce.contains(one.reading().id()))
                    .toList();
            List<FrameSheet.Head> places = heads.getOrDefault(serial, List.of());
            frame.take(ofFrame.size(), toMeasure.size(), left(places));
            if (fresh) {
                entities.persist(frame);
            }
            if (before == FrameOutcome.CLEARED && frame.outcome() == FrameOutcome.MEASURE_AGAIN) {
                hold(act, rejudgement, places, toMeasure);
                held.add(serial);
            }
        });
        rows.add(judged.stream()
                .map(one -> new RejudgedReading(
                        rejudgement.id(),
                        one.reading().id(),
                        one.serial(),
                        one.found(),
                        inForce.contains(one.reading().id())))
                .toList());
        rejudgement.reach(judged.size(), judged.get(judged.size() - 1).reading().id());
        log.event(
                Chains.SHOP,
                "readings judged again",
                Map.of(
                        "rejudgement",
                        rejudgement.id(),
                        "readings",
                        judged.size(),
                        "toMeasure",
                        judged.stream().filter(Judged::open).count(),
                        "held",
                        held));
    }

    /** A frame that left the shop; parts of it went with it. */
    private static boolean left(List<FrameSheet.Head> heads) {
        return heads.stream().noneMatch(head -> head.state().open())
                && heads.stream().anyMatch(head -> head.state() == TravellerState.SHIPPED);
    }

    /** The whole frame where it is open, else whatever part of it is. Who read it does not lift the hold. */
    private void hold(Act act, Rejudgement rejudgement, List<FrameSheet.Head> heads, List<Judged> toMeasure) {
        List<FrameSheet.Head> open =
                heads.stream().filter(head -> head.state().open()).toList();
        List<FrameSheet.Head> whole =
                open.stream().filter(head -> head.part().isEmpty()).toList();
        Set<Long> readers =
                toMeasure.stream().map(one -> one.reading().personId()).collect(Collectors.toSet());
        String words = "Measure again what " + rejudgement.gaugeCode() + " read, which was found wrong: "
                + toMeasure.stream()
                        .map(one -> one.reading().characteristicCode())
                        .distinct()
                        .limit(8)
                        .collect(Collectors.joining(", "));
        (whole.isEmpty() ? open : whole)
                .forEach(head -> holds.placeWithin(
                        act,
                        new Holds.Request(
                                head.travellerId(),
                                HoldScope.FRAME,
                                null,
                                HoldReason.GAUGE_TRACE,
                                words,
                                rejudgement.number(),
                                readers)));
    }
}
