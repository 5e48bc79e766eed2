package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;

/**
 * Tells what an operation waits for outside its traveller before its gate may be passed, such as the release of an oven
 * run, what a step of it that cannot be undone waits for,
 * and whether what the tick of a step rests on is there. Each module that keeps such a thing provides one; when the thing has come, it calls {@link HasCome#to}.
 */
public interface Awaited {

    /**
     * An operation whose work is done as far as its traveller knows.
     *
     * @param called its code with the loop, as people say it
     * @param begunAt when its work began
     * @param doneOutside whether it was sent out and booked back
     */
    record AtItsGate(
            long operationId,
            long travellerId,
            String serial,
            String mark,
            String metal,
            String code,
            String called,
            @Nullable Instant begunAt,
            boolean doneOutside) {

        static AtItsGate of(Traveller traveller, Operation operation, boolean doneOutside) {
            return new AtItsGate(
                    operation.id(),
                    traveller.id(),
                    traveller.serial(),
                    traveller.mark(),
                    traveller.metal(),
                    operation.code(),
                    operation.called(),
                    operation.startedAt(),
                    doneOutside);
        }

        /** What cannot be done meanwhile, as a sentence. */
        public String cannot() {
            return "Operation " + called + " of " + mark + " cannot pass.";
        }

        /** The same of one of its steps. */
        public String notTicked(String step) {
            return "“" + step + "” of " + mark + " was not ticked.";
        }
    }

    /** What is outstanding; empty if nothing is. */
    Optional<Refusal> outstanding(AtItsGate operation);

    /**
     * A step that cannot be undone.
     *
     * @param by who would tick it
     * @param first whether none of its operation that cannot be undone is ticked
     * @param startsClock code of the clock that its tick starts, if it does
     */
    record NoWayBack(
            long stepId,
            String text,
            long by,
            boolean first,
            @Nullable String startsClock) {}

    /** What is outstanding before such a step may be ticked; empty if nothing is. */
    default Optional<Refusal> before(AtItsGate operation, NoWayBack step) {
        return Optional.empty();
    }

    /** A step whose tick rests on something recorded elsewhere. */
    record ProvenStep(String text, Proof proof) {}

    /** What is missing or wrong of what the tick of a step rests on; empty if it is there, or is not this module's. */
    default Optional<Refusal> proof(AtItsGate operation, ProvenStep step) {
        return Optional.empty();
    }
}
