package org.trammel.shop.routes;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * One step to tick.
 *
 * @param text what is ticked, a few words
 * @param instruction how, short enough for the station screen; may be empty
 * @param photo the tick wants a photo
 * @param irreversible the tick cannot be undone in the work itself; an open hold keeps it shut
 * @param lotKind kind of material whose lot must be scanned: TUBE, FILLER, GAS, MEDIA, POWDER, …
 * @param startsClock code of the clock that this tick starts
 * @param qualification what whoever ticks must hold, where it is more than the operation's, such as PENETRANT
 * @param proof what the tick rests on, recorded before it; not written where there is none, so that the seal of a revision that
 *     knew no proofs stays what it was
 * @param secondPerson ticked by somebody who did none of the operation's work; not written where it is not asked, for the
 *     same reason
 */
public record StepSheet(
        String text,
        String instruction,
        boolean photo,
        boolean irreversible,
        @Nullable String lotKind,
        @Nullable String startsClock,
        @Nullable String qualification,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Proof proof,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean secondPerson) {

    public StepSheet(
            String text,
            String instruction,
            boolean photo,
            boolean irreversible,
            @Nullable String lotKind,
            @Nullable String startsClock,
            @Nullable String qualification) {
        this(text, instruction, photo, irreversible, lotKind, startsClock, qualification, null, false);
    }

    public StepSheet(
            String text,
            String instruction,
            boolean photo,
            boolean irreversible,
            @Nullable String lotKind,
            @Nullable String startsClock,
            @Nullable String qualification,
            @Nullable Proof proof) {
        this(text, instruction, photo, irreversible, lotKind, startsClock, qualification, proof, false);
    }
}
