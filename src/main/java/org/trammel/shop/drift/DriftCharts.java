package org.trammel.shop.drift;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Refusal;

/** Every series over its base, as it stands now. */
@Service
@Transactional(readOnly = true)
public class DriftCharts {

    private final SeriesRepository series;
    private final BaseRepository bases;
    private final SeriesPoints points;

    DriftCharts(SeriesRepository series, BaseRepository bases, SeriesPoints points) {
        this.series = series;
        this.bases = bases;
        this.points = points;
    }

    /** All of them, those that drift first. */
    List<Charted> all() {
        List<Charted> all = of(series.findAllByOrderByJigCodeAscCharacteristicCodeAsc().stream()
                .map(SeriesRow::series)
                .toList());
        return all.stream().sorted(Comparator.comparing(Charted::stand)).toList();
    }

    /** One of them. */
    Charted of(long seriesId) {
        return of(List.of(required(seriesId))).get(0);
    }

    Series required(long seriesId) {
        return series.findById(seriesId)
                .map(SeriesRow::series)
                .orElseThrow(() -> Refusal.missing(
                        "The chart was not found.",
                        "No axis is watched under this number.",
                        "Choose it from the list of drift charts."));
    }

    Optional<Series> watched(String jig, String code) {
        return series.findByJigCodeAndCharacteristicCode(jig, code).map(SeriesRow::series);
    }

    List<Series> onJig(String jig) {
        return series.findAllByOrderByJigCodeAscCharacteristicCodeAsc().stream()
                .map(SeriesRow::series)
                .filter(each -> each.jig().equals(jig))
                .toList();
    }

    List<Charted> of(List<Series> of) {
        Map<Long, Base> newest = new HashMap<>();
        if (!of.isEmpty()) {
            bases.findBySeriesIdInOrderById(of.stream().map(Series::id).toList())
                    .forEach(row -> newest.put(row.base().seriesId(), row.base()));
        }
        Map<Long, List<Point>> read = points.of(of);
        return of.stream()
                .map(each -> Charted.of(each, newest.get(each.id()), read.get(each.id())))
                .toList();
    }

    /** Every base a series had, newest first. */
    List<Base> bases(long seriesId) {
        return bases.findBySeriesIdInOrderById(List.of(seriesId)).stream()
                .map(BaseRow::base)
                .sorted(Comparator.comparing(Base::id).reversed())
                .toList();
    }
}
