package org.trammel.shop.assembly;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which operations have a sheet of a join, a final check or a packing. */
@Service
public class BuildSheets {

    private final BuildRulesBook book;

    BuildSheets(BuildRulesBook book) {
        this.book = book;
    }

    /** Whether an operation has one. */
    @Transactional(readOnly = true)
    public boolean at(String operation) {
        return book.inForce().filter(rules -> rules.names(operation)).isPresent();
    }
}
