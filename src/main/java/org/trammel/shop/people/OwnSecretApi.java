package org.trammel.shop.people;

import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

/** Changes the own PIN and password, for programs. */
@RestController
@RequestMapping("/api/v1/own-secrets")
class OwnSecretApi {

    private final Credentials credentials;
    private final Signatures signatures;

    OwnSecretApi(Credentials credentials, Signatures signatures) {
        this.credentials = credentials;
        this.signatures = signatures;
    }

    /**
     * @param secret the PIN at a tablet, the password at a desk, once more
     * @param own the new one
     */
    record Change(String secret, String own) {}

    @PostMapping("/pin")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void pin(Act act, SignedOn who, @RequestBody Change change) {
        signatures.confirm(who, change.secret());
        credentials.keepPin(act, change.secret(), change.own());
    }

    @PostMapping("/password")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void password(Act act, SignedOn who, @RequestBody Change change) {
        signatures.confirm(who, change.secret());
        credentials.keepPassword(act, change.secret(), change.own());
    }
}
