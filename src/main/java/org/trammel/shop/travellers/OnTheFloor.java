package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.routes.Signer;

/** What waits in the shop for somebody's word, read for all frames at once. Changes nothing. */
@Service
@Transactional(readOnly = true)
public class OnTheFloor {

    private final StoryQueries queries;
    private final OperationRepository operations;
    private final SignatureRepository signatures;

    OnTheFloor(StoryQueries queries, OperationRepository operations, SignatureRepository signatures) {
        this.queries = queries;
        this.operations = operations;
        this.signatures = signatures;
    }

    /**
     * A hold or witness point that waits to be signed.
     *
     * @param missing who must still sign
     */
    public record PointWaiting(
            FrameSheet.Head head,
            FrameSheet.OperationLine operation,
            @Nullable Instant since,
            List<Signer> missing) {}

    /** Points that wait to be signed, longest first. */
    public List<PointWaiting> points() {
        List<Operation> waiting = operations.findByStateOrderByAtPointSince(OperationState.AT_POINT);
        if (waiting.isEmpty()) {
            return List.of();
        }
        Map<Long, Traveller> of = byId(
                queries.travellers(waiting.stream().map(Operation::travellerId).toList()));
        Map<Long, Operation> byId = waiting.stream().collect(Collectors.toMap(Operation::id, Function.identity()));
        Map<Long, Set<Signer>> signed = new HashMap<>();
        signatures.findByOperationIdInOrderById(byId.keySet()).stream()
                .filter(s -> byId.get(s.operationId()).counts(s))
                .forEach(s -> signed.computeIfAbsent(s.operationId(), id -> new HashSet<>())
                        .add(s.signer()));
        return waiting.stream()
                .filter(o -> of.get(o.travellerId()).state().open())
                .map(o -> new PointWaiting(
                        FrameSheet.Head.of(of.get(o.travellerId())),
                        FrameSheet.OperationLine.of(o),
                        o.atPointSince(),
                        o.signers().stream()
                                .filter(s ->
                                        !signed.getOrDefault(o.id(), Set.of()).contains(s))
                                .toList()))
                .toList();
    }

    /**
     * The operation at hand of a traveller.
     *
     * @param irreversible true if it cannot be undone once begun
     */
    public record AtHandNow(
            long travellerId, long operationId, String code, String name, OperationState state, boolean irreversible) {}

    /** Operations at hand, by traveller. */
    public Map<Long, AtHandNow> atHand(Collection<Long> travellerIds) {
        return travellerIds.isEmpty()
                ? Map.of()
                : queries.atHand(travellerIds).stream()
                        .collect(Collectors.toMap(
                                Operation::travellerId,
                                o -> new AtHandNow(
                                        o.travellerId(), o.id(), o.code(), o.name(), o.state(), o.irreversible())));
    }

    /** Operations that go on although the hold stays, by hold. */
    public Map<Long, Set<Long>> freed(Collection<Long> holdIds) {
        Map<Long, Set<Long>> freed = new HashMap<>();
        if (!holdIds.isEmpty()) {
            queries.freed(holdIds)
                    .forEach(f -> freed.computeIfAbsent(f.holdId(), id -> new HashSet<>())
                            .add(f.operationId()));
        }
        return freed;
    }

    /** Clocks within which something may still be cold-set, by traveller. */
    public Map<Long, Set<String>> coldSetsLeft(Collection<Long> travellerIds) {
        Map<Long, Set<String>> left = new HashMap<>();
        if (!travellerIds.isEmpty()) {
            queries.coldSetsLeft(travellerIds)
                    .forEach(c -> left.computeIfAbsent(c.getTravellerId(), id -> new HashSet<>())
                            .add(c.getClock()));
        }
        return left;
    }

    /** A characteristic whose newest reading is undecided. */
    public record Undecided(
            FrameSheet.Head head, FrameSheet.OperationLine operation, FrameSheet.CharacteristicLine characteristic) {}

    /** Undecided characteristics of open frames, oldest first. */
    public List<Undecided> undecided() {
        List<Characteristic> open = queries.undecided();
        if (open.isEmpty()) {
            return List.of();
        }
        Map<Long, Operation> at = queries
                .operations(open.stream().map(Characteristic::operationId).toList())
                .stream()
                .collect(Collectors.toMap(Operation::id, Function.identity()));
        Map<Long, Traveller> of = byId(queries.travellers(
                at.values().stream().map(Operation::travellerId).toList()));
        return open.stream()
                .map(c -> new Undecided(
                        FrameSheet.Head.of(of.get(at.get(c.operationId()).travellerId())),
                        FrameSheet.OperationLine.of(at.get(c.operationId())),
                        FrameSheet.CharacteristicLine.of(c)))
                .toList();
    }

    private static Map<Long, Traveller> byId(List<Traveller> travellers) {
        return travellers.stream().collect(Collectors.toMap(Traveller::id, Function.identity(), (a, b) -> a));
    }
}
