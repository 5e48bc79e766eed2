package org.trammel.shop.cuts;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * Keeps the gate of an operation shut until every tube of the frame's own cut list is measured, and any later one until a
 * tube that took the place of another is.
 */
@Component
class CutGuard implements Awaited {

    private final CutTurn turn;
    private final CutRecords records;
    private final Travellers travellers;

    CutGuard(CutTurn turn, CutRecords records, Travellers travellers) {
        this.turn = turn;
        this.records = records;
        this.travellers = travellers;
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        if (operation.doneOutside()) {
            return Optional.empty();
        }
        FrameSheet.Head head = travellers.head(operation.travellerId());
        List<CutTubes.Piece> pieces = turn.pieces(head, operation.operationId(), operation.code());
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        Set<String> recorded = records.newest(head, operation.operationId()).keySet();
        List<String> missing = pieces.stream()
                .filter(piece -> !recorded.contains(piece.code()))
                .map(CutTubes.Piece::called)
                .toList();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.state(
                        operation.cannot(),
                        "Not measured against its cut list: " + String.join(", ", missing) + ".",
                        "Record each on the sheet of cuts."));
    }
}
