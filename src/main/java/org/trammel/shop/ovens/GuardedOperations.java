package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** An operation that an approved programme guards waits for the release of a run that the frame was in. */
@Component
class GuardedOperations implements Awaited {

    private final ProgrammeRevisionRepository revisions;
    private final LoadedRepository frames;
    private final RunRepository runs;
    private final Travellers travellers;

    GuardedOperations(
            ProgrammeRevisionRepository revisions, LoadedRepository frames, RunRepository runs, Travellers travellers) {
        this.revisions = revisions;
        this.frames = frames;
        this.runs = runs;
        this.travellers = travellers;
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        List<ProgrammeRevisionRow> guarding =
                operation.doneOutside() ? List.of() : inForce(operation.code(), operation.metal(), operation.begunAt());
        if (guarding.isEmpty()) {
            return Optional.empty();
        }
        List<LoadedRow> loaded = frames.findByOperationIdOrderById(operation.operationId());
        if (loaded.stream().anyMatch(frame -> frame.state() == FrameState.RELEASED)) {
            return Optional.empty();
        }
        Optional<LoadedRow> last = loaded.stream()
                .filter(frame -> frame.state() != FrameState.TAKEN_OUT)
                .reduce((a, b) -> b);
        if (last.isEmpty()) {
            return Optional.of(Refusal.state(
                    operation.cannot(),
                    "It was in no oven run, and programme "
                            + guarding.get(0).programme().called() + " guards this operation.",
                    "Load it, and have the run released."));
        }
        RunRow run = runs.findById(last.get().runId()).orElseThrow();
        if (last.get().state() == FrameState.KEPT) {
            return conceded(operation.operationId())
                    ? Optional.empty()
                    : Optional.of(Refusal.state(
                            operation.cannot(),
                            "It was kept back from run " + run.code() + ".",
                            "Another run of it is released, or a concession decides."));
        }
        return Optional.of(Refusal.state(
                operation.cannot(),
                "Oven run " + run.code() + " is " + run.state().word() + ", and not released.",
                run.state() == RunState.STOPPED
                        ? "It is released on its record, by who may; not by the clock."
                        : "Wait for the run and its release."));
    }

    /** Approved revisions that guard an operation of a frame of that metal; none where it goes by paper. */
    List<ProgrammeRevisionRow> inForce(String operation, String metal, @Nullable Instant begunAt) {
        List<ProgrammeRevisionRow> guarding = revisions.guarding(operation).stream()
                .filter(row -> row.guards(operation) && row.isFor(metal))
                .toList();
        return begunBefore(guarding, begunAt)
                ? List.of()
                : guarding.stream()
                        .filter(row -> row.state() == ProgrammeState.APPROVED)
                        .toList();
    }

    /** Whether any approved revision guards such an operation, of whatever metal, and its runs give something. */
    boolean gives(String operation) {
        return revisions.guarding(operation).stream()
                .anyMatch(row -> row.guards(operation)
                        && row.state() == ProgrammeState.APPROVED
                        && !row.gives().isEmpty());
    }

    /** What was in work before any programme guarded the operation goes by paper. */
    private static boolean begunBefore(List<ProgrammeRevisionRow> guarding, @Nullable Instant begunAt) {
        return begunAt != null
                && guarding.stream()
                        .map(ProgrammeRevisionRow::approvedAt)
                        .filter(java.util.Objects::nonNull)
                        .noneMatch(approved -> !begunAt.isBefore(approved));
    }

    private boolean conceded(long operationId) {
        return travellers.operation(operationId).characteristics().stream()
                .map(FrameSheet.CharacteristicLine::state)
                .anyMatch(state -> state == CharacteristicState.CONCESSION);
    }
}
