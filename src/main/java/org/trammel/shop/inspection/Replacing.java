package org.trammel.shop.inspection;

import org.trammel.shop.travellers.CharacteristicState;

/**
 * Whether a reading may take the place of the one that judges: the one rule for what is keyed, corrected, reduced from raw
 * figures or given by a record.
 *
 * <pre>
 * the one that judges     by a finer means   anew, no finer      corrected, no finer       put right
 * none, or conforming     taken              taken               taken                     taken
 * undecided               taken              not taken           taken unless conforming   taken
 * waits to be set         taken              not conforming      not conforming            taken
 * </pre>
 *
 * Finer is what has less uncertainty than every reading since the part was last changed, or last conformed: a coarse one
 * between two of the same means makes neither of them finer. Put right is what the person who typed it corrects at once,
 * or the QA lead corrects.
 */
enum Replacing {
    TAKEN,
    /** Only less uncertainty decides, whatever it says. */
    WANTS_FINER,
    /** It would have to say not conforming, be of a finer means, or be put right. */
    WANTS_REASON;

    /** How a reading comes to stand beside the one that judges. */
    enum Try {
        ANEW,
        CORRECTED,
        PUT_RIGHT
    }

    /**
     * @param settable whether the characteristic may be set cold; else what does not conform is a nonconformance
     * @param finer than every reading since the last change; false where nothing is known to compare with
     * @param verdict what the new reading says
     */
    static Replacing of(CharacteristicState before, boolean settable, boolean finer, Try how, Verdict verdict) {
        boolean undecided = before == CharacteristicState.UNDECIDED;
        boolean waits = before == CharacteristicState.NOT_CONFORMING && settable;
        if (!undecided && !waits || finer || how == Try.PUT_RIGHT) {
            return TAKEN;
        }
        if (undecided && how == Try.ANEW) {
            return WANTS_FINER;
        }
        boolean better = verdict == Verdict.CONFORMING || waits && verdict != Verdict.NOT_CONFORMING;
        return better ? WANTS_REASON : TAKEN;
    }
}
