package org.trammel.shop.coats;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tells other sheets where there is one of a coat. */
@Service
public class CoatSheets {

    private final Finishes finishes;

    CoatSheets(Finishes finishes) {
        this.finishes = finishes;
    }

    /** Whether an operation of a frame of that metal has one. */
    @Transactional(readOnly = true)
    public boolean at(String operation, String metal) {
        return finishes.guarding(operation, metal).isPresent();
    }
}
