package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.routes.Proof;

/** What the steps of a frame tell that rest on more than their tick, its parts and older revisions included. */
@Service
@Transactional(readOnly = true)
public class ProvenSteps {

    private static final Set<String> COATS = Set.of("POWDER", "PAINT");

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final TickRepository ticks;

    ProvenSteps(
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            TickRepository ticks) {
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.ticks = ticks;
    }

    /** A step as it stands. */
    public record Named(
            long stepId,
            long operationId,
            String text,
            @Nullable Proof proof,
            boolean ticked) {}

    /** Steps by their ids, in that order. */
    public List<Named> named(List<Long> stepIds) {
        return stepIds.stream()
                .distinct()
                .map(id -> steps.findById(id).orElseThrow(() -> Bench.noSuch("step")))
                .map(step -> new Named(step.id(), step.operationId(), step.text(), step.proof(), step.ticked()))
                .toList();
    }

    /**
     * When the last was ticked of the steps of an operation that rest on one of these; long ago where it has none, empty
     * while one is not ticked.
     */
    public Optional<Instant> allTicked(long operationId, Set<Proof> proofs) {
        List<Step> asked = steps.findByOperationIdOrderByPosition(operationId).stream()
                .filter(step -> step.proof() != null && proofs.contains(step.proof()))
                .toList();
        return asked.stream().allMatch(Step::ticked)
                ? Optional.of(asked.stream()
                        .map(step -> Objects.requireNonNull(step.tickedAt()))
                        .max(Comparator.naturalOrder())
                        .orElse(Instant.MIN))
                : Optional.empty();
    }

    /** A step that is ticked. */
    public record Done(long operationId, long by, Instant at) {}

    /**
     * Every ticked step that rests on this: those of the piece itself, older revisions included, and where it has none, as a
     * frame that was joined of parts, those of all of the frame.
     */
    public List<Done> ticked(long travellerId, Proof proof) {
        List<Done> own = done(travellers.ofSamePiece(travellerId), proof);
        return own.isEmpty()
                ? done(
                        travellers.findBySerialOrderById(travellers
                                .findById(travellerId)
                                .orElseThrow(() -> Bench.noSuch("traveller"))
                                .serial()),
                        proof)
                : own;
    }

    /** What the ticked steps of an operation rest on. */
    public Set<Proof> tickedAt(long operationId) {
        return steps.provenAt(operationId);
    }

    /**
     * How the serial came into the metal of a piece.
     *
     * @param stands whether a step that strikes it is ticked
     * @param tick id of the newest tick of such a step, also where it was taken back; 0 where there is none
     * @param by everybody who ever ticked such a step, also where it was taken back
     * @param parts those that bear it, such as the piece's own; empty for a whole frame
     */
    public record Struck(boolean stands, long tick, Set<Long> by, Set<String> parts) {}

    /** Of a piece without a step that strikes, as a frame that was joined of parts, it is that of all of the frame. */
    public Struck struck(long travellerId) {
        List<Traveller> of = travellers.ofSamePiece(travellerId);
        List<Operation> at = operations.ofSamePiece(of);
        List<Step> striking = striking(at);
        if (striking.isEmpty()) {
            of = travellers.findBySerialOrderById(travellers
                    .findById(travellerId)
                    .orElseThrow(() -> Bench.noSuch("traveller"))
                    .serial());
            at = operations.ofSamePiece(of);
            striking = striking(at);
        }
        Set<Long> inForce = at.stream()
                .filter(one -> one.travellerId() == travellerId && one.state() != OperationState.REPEATED)
                .map(Operation::id)
                .collect(Collectors.toSet());
        List<Step> now = striking.stream()
                .filter(step -> inForce.contains(step.operationId()))
                .toList();
        Set<Long> ids = striking.stream().map(Step::id).collect(Collectors.toSet());
        Set<Long> places = striking.stream().map(Step::operationId).collect(Collectors.toSet());
        List<Tick> blows = ticks.findByOperationIdInOrderById(places).stream()
                .filter(tick -> !tick.untick() && ids.contains(tick.stepId()))
                .toList();
        Set<Long> bearing = at.stream()
                .filter(one -> places.contains(one.id()))
                .map(Operation::travellerId)
                .collect(Collectors.toSet());
        return new Struck(
                (now.isEmpty() ? striking : now).stream().anyMatch(Step::ticked),
                blows.isEmpty() ? 0 : blows.get(blows.size() - 1).id(),
                blows.stream().map(Tick::personId).collect(Collectors.toSet()),
                of.stream()
                        .filter(one -> bearing.contains(one.id()))
                        .map(Traveller::part)
                        .collect(Collectors.toSet()));
    }

    private List<Step> striking(List<Operation> at) {
        return steps
                .findByOperationIdInOrderByOperationIdAscPositionAsc(
                        at.stream().map(Operation::id).toList())
                .stream()
                .filter(step -> step.proof() == Proof.SERIAL_STRUCK)
                .toList();
    }

    private List<Done> done(List<Traveller> pieces, Proof proof) {
        List<Long> at =
                operations.ofSamePiece(pieces).stream().map(Operation::id).toList();
        return steps.findByOperationIdInOrderByOperationIdAscPositionAsc(at).stream()
                .filter(step -> step.ticked() && step.proof() == proof)
                .map(step -> new Done(
                        step.operationId(),
                        Objects.requireNonNull(step.tickedBy()),
                        Objects.requireNonNull(step.tickedAt())))
                .toList();
    }

    /** Whether powder or paint was booked to the piece, also under an older revision. */
    public boolean coated(long travellerId) {
        return steps
                .findByOperationIdInOrderByOperationIdAscPositionAsc(
                        operations.ofSamePiece(travellers.ofSamePiece(travellerId)).stream()
                                .map(Operation::id)
                                .toList())
                .stream()
                .anyMatch(step -> step.ticked() && step.lotKind() != null && COATS.contains(step.lotKind()));
    }
}
