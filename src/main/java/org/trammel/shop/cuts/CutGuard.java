package org.trammel.shop.cuts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private final CutUnjudged unjudged;
    private final Travellers travellers;

    CutGuard(CutTurn turn, CutRecords records, CutUnjudged unjudged, Travellers travellers) {
        this.turn = turn;
        this.records = records;
        this.unjudged = unjudged;
        this.travellers = travellers;
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        if (operation.doneOutside()) {
            return Optional.empty();
        }
        FrameSheet.Head head = travellers.head(operation.travellerId());
        List<CutTubes.Piece> pieces = turn.pieces(head, operation.operationId(), operation.code());
        Map<String, Cut> recorded = records.newest(head, operation.operationId());
        List<String> missing = pieces.stream()
                .filter(piece -> !recorded.containsKey(piece.code()))
                .map(CutTubes.Piece::called)
                .toList();
        int owed = missing.isEmpty() ? turn.owed(head, operation.operationId(), operation.code()) : 0;
        if (owed > 0) {
            return Optional.of(Refusal.state(
                    operation.cannot(),
                    (owed == 1 ? "A tube was" : owed + " tubes were")
                            + " scrapped after the cuts were measured, and none was measured in the place of "
                            + (owed == 1 ? "it" : "each") + " since.",
                    "Measure what is cut instead on the sheet of cuts, as the tube it is."));
        }
        return missing.isEmpty()
                ? unjudged.holding(head, operation.operationId(), operation.code(), recorded.values())
                        .map(why -> Refusal.state(
                                operation.cannot(),
                                why,
                                "Measure it again, cut another tube, or have its nonconformance decided."))
                : Optional.of(Refusal.state(
                        operation.cannot(),
                        "Not measured against its cut list: " + String.join(", ", missing) + ".",
                        "Record each on the sheet of cuts."));
    }
}
