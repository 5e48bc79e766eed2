package org.trammel.shop.records;

import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tells when the log was last written to: no clock of this service may tell an earlier time. */
@Service
public class LastAct {

    private final LogEntryRepository entries;

    LastAct(LogEntryRepository entries) {
        this.entries = entries;
    }

    @Transactional(readOnly = true)
    public Optional<Instant> at() {
        return entries.latest();
    }
}
