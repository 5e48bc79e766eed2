package org.trammel.shop.coats;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.Travellers;

/** A frame that was sprayed before is stripped before it is blasted again; how is recorded, or refused for its metal. */
@Service
public class CoatStrips {

    private static final String DEED = "The strip was not recorded.";

    private final StripRepository rows;
    private final Travellers travellers;
    private final Evidence evidence;
    private final CoatTurn turn;
    private final ActLog log;

    CoatStrips(StripRepository rows, Travellers travellers, Evidence evidence, CoatTurn turn, ActLog log) {
        this.rows = rows;
        this.travellers = travellers;
        this.evidence = evidence;
        this.turn = turn;
        this.log = log;
    }

    /** The newest at an operation. */
    @Transactional(readOnly = true)
    public Optional<Strip> of(long operationId) {
        List<StripRow> all = rows.findByOperationIdOrderById(operationId);
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(all.get(all.size() - 1).strip());
    }

    /** Whether a blast of the finish finds a coat of an earlier turn on the frame: powder that was only scanned is none. */
    boolean finds(long travellerId, Finish finish) {
        return finish.content().coatOperations().stream()
                .flatMap(code -> evidence.operationsOf(travellerId, code).stream())
                .flatMap(operation -> travellers.operation(operation).steps().stream())
                .anyMatch(step -> step.irreversible() && step.ticked());
    }

    @Transactional
    public Strip strip(Act act, long operationId, @Nullable StripMethod method, @Nullable String words) {
        if (!turn.opens(act, "record-strip", operationId)) {
            return of(operationId).orElseThrow();
        }
        CoatTurn.At at = turn.atHand(act, operationId, DEED);
        if (!at.finish().blasts(at.line().code()) || !finds(at.head().travellerId(), at.finish())) {
            throw Refusal.state(
                    DEED,
                    "Nothing was sprayed on " + at.head().mark() + " before this operation.",
                    "Blast it as it is.");
        }
        if (method == null) {
            throw Refusal.input("method", DEED, "It is not said how the coat came off.", "Choose from the list.");
        }
        if (!method.spares(at.head().metal())) {
            throw Refusal.input(
                    "method",
                    DEED,
                    "Aged aluminium is not " + method.word() + ": "
                            + (method == StripMethod.BAKE
                                    ? "a bake at 350 to 450 °C takes its temper for good."
                                    : "what bites through a whole coat bites into thin walls."),
                    "Strip it in a bath, by the maker's sheet and local rules. If it was done already, keep the frame and"
                            + " call the QA lead.");
        }
        rows.saveAndFlush(new StripRow(
                operationId, method, TypedText.line("words", "With what and how long", DEED, words, 200), act));
        log.event(
                Chains.bearing(at.head().serial()),
                "stripped",
                Map.of("operation", operationId, "method", method.name()));
        turn.come(act, operationId);
        return of(operationId).orElseThrow();
    }
}
