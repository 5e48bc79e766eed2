package org.trammel.shop.bench;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Signing;

/** A signature: first the signer's own PIN, checked and counted, then what is signed. */
@Component
class SignedPoints {

    private final Signatures signatures;
    private final Signing signing;

    SignedPoints(Signatures signatures, Signing signing) {
        this.signatures = signatures;
        this.signing = signing;
    }

    Person sign(Act act, long operationId, long signerId, Signer as, String pin, @Nullable Long deviceId) {
        Person person = signatures.sign(signerId, pin, deviceId);
        signing.sign(act, operationId, signerId, as);
        return person;
    }

    void pass(Act act, long operationId) {
        signing.passWitness(act, operationId);
    }
}
