package org.trammel.shop.travellers;

import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;

/** Opens operations again after something they were done by was taken back. */
@Component
class OpenAgain {

    private final SignatureRepository signatures;
    private final Progress progress;

    OpenAgain(SignatureRepository signatures, Progress progress) {
        this.signatures = signatures;
        this.progress = progress;
    }

    void open(Act act, Traveller traveller, Operation operation) {
        if (operation.state() == OperationState.IN_WORK) {
            return;
        }
        operation.reopen(signatures.findByOperationIdOrderById(operation.id()).stream()
                .map(Signature::id)
                .reduce((a, b) -> b)
                .orElse(null));
        progress.coldSetAgain(traveller, operation);
        progress.takeUpAgain(act, traveller);
        progress.standsAtFirstOpen(traveller);
    }
}
