package org.trammel.shop.cuts;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.travellers.FrameSheet;

/** Tells other sheets where there is one of cuts. */
@Service
public class CutSheets {

    private final CutTurn turn;

    CutSheets(CutTurn turn) {
        this.turn = turn;
    }

    /** Whether an operation of a frame has one. */
    @Transactional(readOnly = true)
    public boolean at(FrameSheet.Head head, String operationCode) {
        return !turn.pieces(head, operationCode).isEmpty();
    }
}
