package org.trammel.shop.gauges;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** What the routes in force have judged with a gauge although it is coarse for it. */
@Component
class TooCoarse {

    private final ObjectProvider<TolerancesAsked> asked;
    private final Gauges gauges;

    TooCoarse(ObjectProvider<TolerancesAsked> asked, Gauges gauges) {
        this.asked = asked;
        this.gauges = gauges;
    }

    /** A characteristic, and what speaks against this gauge. */
    record Line(String code, String name, List<String> doubts) {}

    List<Line> of(Gauge gauge) {
        List<String> kinds =
                gauge.ranges().stream().map(GaugeRange::kind).distinct().toList();
        List<Line> lines = new ArrayList<>();
        for (TolerancesAsked source : asked) {
            for (TolerancesAsked.Asked one : source.of(kinds)) {
                List<String> doubts = gauge.ranges().stream()
                        .filter(range -> range.serves(one.kind(), one.unit()))
                        .map(range -> gauges.doubts(means(gauge, range), one.lower(), one.upper()))
                        .filter(found -> !found.isEmpty())
                        .findFirst()
                        .orElse(List.of());
                if (!doubts.isEmpty()) {
                    lines.add(new Line(one.code(), one.name(), doubts));
                }
            }
        }
        return lines;
    }

    private static Means means(Gauge gauge, GaugeRange range) {
        LocalDate due = gauge.dueOn() == null ? LocalDate.MIN : gauge.dueOn();
        return new Means(
                gauge.id(),
                gauge.code(),
                gauge.what(),
                range.unit(),
                range.resolution(),
                range.uAtWorst(),
                due,
                gauge.aid());
    }
}
