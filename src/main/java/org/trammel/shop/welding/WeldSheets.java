package org.trammel.shop.welding;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.travellers.FrameSheet;

/** Tells other sheets where there is one of a weld. */
@Service
public class WeldSheets {

    private final Procedures procedures;

    WeldSheets(Procedures procedures) {
        this.procedures = procedures;
    }

    /** Whether an operation of a frame has one. */
    @Transactional(readOnly = true)
    public boolean at(FrameSheet.Head head, String operation) {
        return procedures.guarding(head, operation, null).isPresent();
    }
}
