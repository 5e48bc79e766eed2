package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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

    ProvenSteps(TravellerRepository travellers, OperationRepository operations, StepRepository steps) {
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
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
