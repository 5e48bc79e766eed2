package org.trammel.shop.records;

import java.util.concurrent.locks.ReentrantLock;
import org.springframework.stereotype.Component;

/** Verifies for pages and programs, one at a time, since each walks the whole log. */
@Component
class LogVerifier {

    private final ChainVerification verification;
    private final ReentrantLock running = new ReentrantLock();

    LogVerifier(ChainVerification verification) {
        this.verification = verification;
    }

    Verification verify(boolean files) {
        if (!running.tryLock()) {
            throw Refusal.state(
                    "No second verification was begun.",
                    "Somebody else's runs at this moment, and it walks the whole log.",
                    "Try again in a minute.");
        }
        try {
            return verification.verify(
                    files ? ChainVerification.Extent.RECORDS_AND_FILES : ChainVerification.Extent.RECORDS);
        } finally {
            running.unlock();
        }
    }
}
