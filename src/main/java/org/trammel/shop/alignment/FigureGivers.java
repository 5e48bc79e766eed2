package org.trammel.shop.alignment;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.travellers.EvidenceGivers;

/** Whoever read a figure on the table took part in what was reduced from it, whoever had it reduced. */
@Component
class FigureGivers implements EvidenceGivers {

    private final FigureGiverRepository figures;
    private final Readings readings;

    FigureGivers(FigureGiverRepository figures, Readings readings) {
        this.figures = figures;
        this.readings = readings;
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        return figures.peopleAt(operationId);
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        List<Long> reductions = readings.of(characteristicIds).stream()
                .map(ReadingLine::reductionId)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        return reductions.isEmpty() ? Set.of() : figures.peopleOf(reductions);
    }
}
