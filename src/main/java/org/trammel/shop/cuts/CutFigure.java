package org.trammel.shop.cuts;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What is measured of a tube that was cut, each with a gauge of its own. */
enum CutFigure {
    LENGTH("mm", Cut.With::length),
    ANGLE("°", Cut.With::angle),
    PHASE("°", Cut.With::phase),
    GAP("mm", Cut.With::gap),
    WALL("mm", Cut.With::wall);

    private final String unit;
    private final Function<Cut.With, @Nullable String> gauge;

    CutFigure(String unit, Function<Cut.With, @Nullable String> gauge) {
        this.unit = unit;
        this.gauge = gauge;
    }

    String unit() {
        return unit;
    }

    /** Numbers of the gauges it was read with. */
    List<String> readWith(Collection<Cut> cuts) {
        return cuts.stream()
                .map(cut -> gauge.apply(cut.with()))
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }
}
