package org.trammel.shop.people;

import org.jspecify.annotations.Nullable;

/** Checks a signer's own PIN at the moment of a signature. Being signed on is not a signature. */
public interface Signatures {

    /**
     * Checks the signer's PIN. A wrong one is counted as a guess, whatever becomes of the transaction around it.
     *
     * @param deviceId tablet or desk it was keyed at; null if it is not known
     * @return the signer
     * @throws org.trammel.shop.records.Refusal if the PIN is wrong, must be changed first, or is closed to guesses now
     */
    Person sign(long personId, String pin, @Nullable Long deviceId);

    /**
     * Asks the signed-on person once more for their secret before something that weighs: the PIN at a tablet, the
     * password at a desk.
     *
     * @throws org.trammel.shop.records.Refusal if it is wrong or closed to guesses now
     */
    void confirm(SignedOn who, String secret);
}
