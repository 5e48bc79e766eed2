package org.trammel.shop.cuts;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What is measured of a tube that was cut, each with a gauge of its own. */
enum CutFigure {
    LENGTH("mm", "cut.own.blank", Cut.With::length),
    ANGLE("°", "cut.own.angle", Cut.With::angle),
    PHASE("°", "cut.own.phase", Cut.With::phase),
    GAP("mm", "cut.own.gap", Cut.With::gap),
    WALL("mm", "cut.own.wall", Cut.With::wall);

    private final String unit;
    private final String allowed;
    private final Function<Cut.With, @Nullable String> gauge;

    CutFigure(String unit, String allowed, Function<Cut.With, @Nullable String> gauge) {
        this.unit = unit;
        this.allowed = allowed;
        this.gauge = gauge;
    }

    String unit() {
        return unit;
    }

    /** The setting that says how far it may be off where no characteristic judges it. */
    String allowed() {
        return allowed;
    }

    /** Number of the gauge it was read with; null where it was not read. */
    @Nullable
    String readWith(Cut cut) {
        return gauge.apply(cut.with());
    }
}
