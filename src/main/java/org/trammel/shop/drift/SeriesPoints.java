package org.trammel.shop.drift;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.inspection.PreSetReadings;
import org.trammel.shop.inspection.ReadingLine;

/** Gathers the readings of series: those of frames by the jig they were set up in, and those from before this program. */
@Component
class SeriesPoints {

    private final HistoryRepository histories;
    private final JigUseRepository uses;
    private final PreSetReadings readings;

    SeriesPoints(HistoryRepository histories, JigUseRepository uses, PreSetReadings readings) {
        this.histories = histories;
        this.uses = uses;
        this.readings = readings;
    }

    /** The readings of each series by the time they were taken; four statements whatever there is. */
    Map<Long, List<Point>> of(Collection<Series> all) {
        Map<Long, List<Point>> points = new HashMap<>();
        all.forEach(series -> points.put(series.id(), new ArrayList<>()));
        if (all.isEmpty()) {
            return points;
        }
        histories
                .findBySeriesIdInOrderByReadAtAscIdAsc(points.keySet())
                .forEach(row -> points.get(row.seriesId()).add(row.point()));
        Map<String, Series> byJigAndCode =
                all.stream().collect(Collectors.toMap(series -> series.jig() + " " + series.code(), series -> series));
        Map<Long, JigUseRow> jigs = new HashMap<>();
        uses.findAllByOrderById().forEach(use -> jigs.put(use.travellerId(), use));
        for (ReadingLine line : readings.of(all.stream().map(Series::code).collect(Collectors.toSet()))) {
            JigUseRow use = jigs.get(line.travellerId());
            Series series = use == null ? null : byJigAndCode.get(use.jigCode() + " " + line.code());
            if (use != null && series != null && line.unit().equals(series.unit())) {
                points.get(series.id()).add(point(use, line));
            }
        }
        points.values().forEach(of -> of.sort(Comparator.comparing(Point::at)));
        return points;
    }

    private static Point point(JigUseRow use, ReadingLine line) {
        return new Point(
                "reading:" + line.readingId(),
                use.serial(),
                use.part(),
                false,
                line.value(),
                line.nominal(),
                line.lowerLimit(),
                line.upperLimit(),
                line.at(),
                null,
                null,
                "");
    }
}
