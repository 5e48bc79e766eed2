package org.trammel.shop.cuts;

import java.util.Optional;
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

    /** The operation at hand, where the tubes of a frame are measured; empty where none is. */
    @Transactional(readOnly = true)
    public Optional<Long> at(FrameSheet sheet) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        return at != null
                        && sheet.operations().stream().anyMatch(one -> turn.named(one.code()))
                        && at(sheet.head(), at.line().operationId(), at.line().code())
                ? Optional.of(at.line().operationId())
                : Optional.empty();
    }

    /** Whether an operation of a frame has one. */
    @Transactional(readOnly = true)
    public boolean at(FrameSheet.Head head, long operationId, String operationCode) {
        return !turn.pieces(head, operationId, operationCode).isEmpty()
                || turn.owed(head, operationId, operationCode) > 0;
    }
}
