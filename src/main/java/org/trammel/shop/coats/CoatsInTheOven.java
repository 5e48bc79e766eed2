package org.trammel.shop.coats;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.materials.PowderSheets;
import org.trammel.shop.ovens.CuredByHeat;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Tells the oven which powders are on a frame, and what their sheets ask of the metal. */
@Component
class CoatsInTheOven implements CuredByHeat {

    private final SprayRepository sprays;
    private final PowderSheets sheets;
    private final Travellers travellers;

    CoatsInTheOven(SprayRepository sprays, PowderSheets sheets, Travellers travellers) {
        this.sprays = sprays;
        this.sheets = sheets;
        this.travellers = travellers;
    }

    /** Of what was scanned twice at one operation, the newest is on it. */
    @Override
    public List<Coat> on(long travellerId, @Nullable Instant after, Instant until) {
        FrameSheet.Head head = travellers.head(travellerId);
        List<Long> piece = travellers.heads(head.serial()).stream()
                .filter(one -> one.part().equals(head.part()))
                .map(FrameSheet.Head::travellerId)
                .toList();
        List<Long> operations = travellers.strips(piece).values().stream()
                .flatMap(List::stream)
                .map(FrameSheet.OperationLine::operationId)
                .toList();
        Map<Long, SurfaceRecord.Spray> newest = new LinkedHashMap<>();
        sprays.findByOperationIdInOrderById(operations).stream()
                .filter(row -> after == null || row.spray().at().isAfter(after))
                .filter(row -> !row.spray().at().isAfter(until))
                .forEach(row -> newest.put(row.operationId(), row.spray()));
        return newest.values().stream()
                .map(SurfaceRecord.Spray::lot)
                .distinct()
                .map(lot -> sheets.of(lot)
                        .map(sheet -> new Coat(lot, sheet.cure(), sheet.pairs().isEmpty() ? null : sheet.window()))
                        .orElseGet(() -> new Coat(lot, "", null)))
                .toList();
    }
}
