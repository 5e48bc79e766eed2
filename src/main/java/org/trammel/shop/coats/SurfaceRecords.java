package org.trammel.shop.coats;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.dew.DewMargin;
import org.trammel.shop.dew.DewMargins;
import org.trammel.shop.dew.DewPurpose;

/** Reads what stands of the surface of a frame at an operation. */
@Component
@Transactional(readOnly = true)
class SurfaceRecords {

    private final MaskRepository masks;
    private final BlastRepository blasts;
    private final DewMargins margins;
    private final SprayRepository sprays;

    SurfaceRecords(MaskRepository masks, BlastRepository blasts, DewMargins margins, SprayRepository sprays) {
        this.masks = masks;
        this.blasts = blasts;
        this.margins = margins;
        this.sprays = sprays;
    }

    SurfaceRecord of(long operationId, Finish finish) {
        Map<String, MaskRow> newest = new HashMap<>();
        masks.findByOperationIdOrderById(operationId).forEach(row -> newest.put(row.landmark(), row));
        return new SurfaceRecord(
                operationId,
                finish.content().masks().stream()
                        .map(landmark -> {
                            MaskRow row = newest.get(landmark);
                            return row == null
                                    ? new SurfaceRecord.Mask(landmark, false, null, null)
                                    : new SurfaceRecord.Mask(landmark, row.fitted(), row.by(), row.at());
                        })
                        .toList(),
                last(blasts.findByOperationIdOrderById(operationId).stream().map(BlastRow::blast)),
                last(airs(operationId).stream()),
                last(sprays.findByOperationIdOrderById(operationId).stream().map(SprayRow::spray)));
    }

    /** Every time air and metal were measured at an operation, oldest first. */
    List<DewMargin> airs(long operationId) {
        return margins.all(List.of(operationId), DewPurpose.COAT).stream()
                .map(DewMargins.At::margin)
                .toList();
    }

    Set<Long> peopleAt(long operationId) {
        return Stream.of(
                        masks.peopleAt(operationId),
                        blasts.peopleAt(operationId),
                        margins.peopleAt(operationId),
                        sprays.peopleAt(operationId))
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
    }

    private static <T> @Nullable T last(Stream<T> rows) {
        return rows.reduce((before, after) -> after).orElse(null);
    }
}
