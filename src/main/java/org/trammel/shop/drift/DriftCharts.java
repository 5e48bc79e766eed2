package org.trammel.shop.drift;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    private final HistoryRepository histories;
    private final StrikeRepository strikes;

    DriftCharts(
            SeriesRepository series,
            BaseRepository bases,
            SeriesPoints points,
            HistoryRepository histories,
            StrikeRepository strikes) {
        this.series = series;
        this.bases = bases;
        this.points = points;
        this.histories = histories;
        this.strikes = strikes;
    }

    /** All of them, those that drift first. */
    List<Charted> all() {
        List<Charted> all = of(watched());
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

    /** Every series, jigs first. */
    List<Series> watched() {
        return series.findAllByOrderByFollowedAscJigCodeAscSubjectAscCharacteristicCodeAsc().stream()
                .map(SeriesRow::series)
                .toList();
    }

    /** The series of a characteristic. */
    List<Series> of(String code) {
        return series.findByCharacteristicCodeInOrderById(List.of(code)).stream()
                .map(SeriesRow::series)
                .toList();
    }

    List<Series> onJig(String jig) {
        return watched().stream().filter(each -> jig.equals(each.jig())).toList();
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

    /** Readings from before this program that were struck out of a series, with the reason. */
    List<Struck> struck(Series of) {
        Map<Long, HistoryRow> rows = new HashMap<>();
        histories.findBySeriesIdInOrderByReadAtAscIdAsc(List.of(of.id())).forEach(row -> rows.put(row.id(), row));
        return rows.isEmpty()
                ? List.of()
                : strikes.findByHistoryIdInOrderById(rows.keySet()).stream()
                        .map(row ->
                                new Struck(rows.get(row.historyId()).point(of), row.reason(), row.personId(), row.at()))
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
