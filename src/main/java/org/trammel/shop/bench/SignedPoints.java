package org.trammel.shop.bench;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.ConfirmationOverrides;
import org.trammel.shop.travellers.Signing;

/** A signature: first the signer's own PIN, checked and counted, then what is signed. */
@Component
class SignedPoints {

    private final Signatures signatures;
    private final Signing signing;
    private final ConfirmationOverrides overrides;

    SignedPoints(Signatures signatures, Signing signing, ConfirmationOverrides overrides) {
        this.signatures = signatures;
        this.signing = signing;
        this.overrides = overrides;
    }

    Person sign(Act act, long operationId, long signerId, Signer as, String pin, @Nullable Long deviceId) {
        Person person = signatures.sign(signerId, pin, deviceId);
        signing.sign(act, operationId, signerId, as);
        return person;
    }

    /** Overrides a lapsed confirmation: first the QA lead's own PIN, then the override. */
    Person override(Act act, Letting given, String pin, @Nullable Long deviceId) {
        Person person = signatures.sign(given.signer(), pin, deviceId);
        overrides.give(act, given.operation(), given.welder(), given.qualification(), given.signer(), given.reason());
        return person;
    }

    /** What the QA lead signs: whom they let do what, and why. */
    record Letting(
            long operation,
            long welder,
            String qualification,
            long signer,
            @Nullable String reason) {}

    void pass(Act act, long operationId) {
        signing.passWitness(act, operationId);
    }
}
