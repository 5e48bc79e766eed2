package org.trammel.shop.handwork;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.ProvenSteps;

/**
 * Records what a step rests on and ticks it, in one act, for one frame or for several that are done together. What was
 * recorded stays recorded where it is not enough for the tick: damp metal is a fact, also if nobody goes on with it.
 */
@Service
public class ProofTicks {

    private final ProvenSteps steps;
    private final Handwork handwork;
    private final SerialReads serials;
    private final HandTurn turn;
    private final HandGuard guard;
    private final Bench bench;
    private final TransactionTemplate transaction;

    ProofTicks(
            ProvenSteps steps,
            Handwork handwork,
            SerialReads serials,
            HandTurn turn,
            HandGuard guard,
            Bench bench,
            TransactionTemplate transaction) {
        this.steps = steps;
        this.handwork = handwork;
        this.serials = serials;
        this.turn = turn;
        this.guard = guard;
        this.bench = bench;
        this.transaction = transaction;
    }

    /**
     * Either all are ticked or none.
     *
     * @param lot as for {@link Bench#tick}
     * @param reason as for {@link Bench#tick}
     */
    public void tick(Act act, List<Long> stepIds, ProofEntry entry, @Nullable String lot, @Nullable String reason) {
        // A refusal thrown inside would take back what was recorded.
        Optional<Refusal> lacking = transaction.execute(begun -> inOneAct(act, stepIds, entry, lot, reason));
        lacking.ifPresent(refusal -> {
            throw refusal;
        });
    }

    private Optional<Refusal> inOneAct(
            Act act, List<Long> stepIds, ProofEntry entry, @Nullable String lot, @Nullable String reason) {
        List<ProvenSteps.Named> named = steps.named(stepIds);
        String subject = "step:"
                + named.stream().map(step -> String.valueOf(step.stepId())).collect(Collectors.joining(","));
        if (!turn.opens(act, "prove-and-tick", subject, operations(named))) {
            return lacking(named);
        }
        Optional<Refusal> wrong = named.stream()
                .filter(step -> !step.ticked())
                .map(step -> record(act, step, entry))
                .flatMap(Optional::stream)
                .reduce((first, later) -> first);
        Optional<Refusal> lacking = wrong.isPresent() ? wrong : lacking(named);
        if (lacking.isPresent() && entry.nothing()) {
            throw lacking.get();
        }
        if (lacking.isEmpty()) {
            bench.tick(act, stepIds, lot, reason);
        }
        return lacking;
    }

    private static List<Long> operations(List<ProvenSteps.Named> named) {
        return named.stream().map(ProvenSteps.Named::operationId).distinct().toList();
    }

    /** What is wrong with what was recorded, where the record itself does not tell. */
    private Optional<Refusal> record(Act act, ProvenSteps.Named step, ProofEntry entry) {
        long at = step.operationId();
        if (step.proof() == Proof.SERIAL_READ) {
            return entry.serial() == null || entry.serial().isBlank()
                    ? Optional.empty()
                    : serials.taken(act, at, entry.serial());
        }
        if (step.proof() == Proof.CLEANED || step.proof() == Proof.BRUSHED) {
            entry.tools().forEach(code -> handwork.touched(act, at, code));
        } else if (step.proof() == Proof.WARM_DRY && entry.air() != null) {
            handwork.measured(act, at, entry.air());
        } else if (step.proof() == Proof.WATER_BREAK && entry.water() != null) {
            handwork.water(act, at, entry.water());
        }
        return Optional.empty();
    }

    private Optional<Refusal> lacking(List<ProvenSteps.Named> named) {
        return named.stream()
                .filter(step -> step.proof() != null && step.proof().sheet() == Proof.Sheet.HANDWORK && !step.ticked())
                .flatMap(step -> guard.lacking(turn.of(step.operationId()), step.text(), step.proof()).stream())
                .findFirst();
    }
}
