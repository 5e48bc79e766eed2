package org.trammel.shop.drift;

import java.time.Instant;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.statistics.ControlChart;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;

/** Every series over its base, as it stands now. */
@Service
@Transactional(readOnly = true)
public class DriftCharts {

    /** How many readings a page shows at once. */
    static final int STRETCH = 200;

    private static final int MOST_TOLD = 50;

    private final SeriesRepository series;
    private final BaseRepository bases;
    private final KeptRows rows;
    private final KeptStands stands;
    private final StrikeRepository strikes;

    DriftCharts(
            SeriesRepository series, BaseRepository bases, KeptRows rows, KeptStands stands, StrikeRepository strikes) {
        this.series = series;
        this.bases = bases;
        this.rows = rows;
        this.stands = stands;
        this.strikes = strikes;
    }

    /** All of them, those that drift first. */
    List<Standing> all() {
        return standing(watched()).stream()
                .sorted(Comparator.comparing(Standing::stand))
                .toList();
    }

    /** Where one of them stands. */
    Standing standing(long seriesId) {
        return standing(List.of(required(seriesId))).get(0);
    }

    private List<Standing> standing(List<Series> of) {
        Map<Long, Series> byId = new HashMap<>();
        of.forEach(each -> byId.put(each.id(), each));
        Map<Long, Base> newest = new HashMap<>();
        if (!of.isEmpty()) {
            bases.findBySeriesIdInOrderById(byId.keySet())
                    .forEach(row -> newest.put(row.base().seriesId(), row.base()));
        }
        Map<Long, KeptStand> kept = new HashMap<>();
        stands.of(byId.keySet()).forEach(stand -> kept.put(stand.seriesId(), stand));
        Map<Long, List<KeptRow>> told = rows.told(byId, Continued.REACH).stream()
                .collect(Collectors.groupingBy(
                        KeptRows.Told::seriesId, Collectors.mapping(KeptRows.Told::row, Collectors.toList())));
        return of.stream()
                .map(each -> {
                    Base base = newest.get(each.id());
                    List<KeptRow> upTo = told.get(each.id());
                    KeptStand stand = kept.getOrDefault(each.id(), KeptStand.nothing(each.id()));
                    return new Standing(each, base, stand, base == null || upTo == null ? null : last(base, upTo));
                })
                .toList();
    }

    /** The base in force. */
    @Nullable
    Base base(Series of) {
        return bases.findFirstBySeriesIdOrderByIdDesc(of.id())
                .map(BaseRow::base)
                .orElse(null);
    }

    /** The first alarm of the last of some rows. */
    static @Nullable Alarm last(Base base, List<KeptRow> upTo) {
        int end = upTo.size() - 1;
        return Continued.charts(
                        base, upTo.subList(0, end), List.of(upTo.get(end).value()))
                .stream()
                .flatMap(chart -> chart.alarms().stream())
                .findFirst()
                .orElse(null);
    }

    /** The newest readings of one of them on its charts. */
    Charted of(long seriesId) {
        return of(seriesId, null);
    }

    /**
     * A stretch of the readings of one of them on its charts.
     *
     * @param until number of its last reading; null for the newest
     */
    Charted of(long seriesId, @Nullable Integer until) {
        Standing standing = standing(seriesId);
        Series of = standing.series();
        Base base = standing.base();
        int total = standing.kept().charted();
        int end = until == null ? total : Math.max(Math.min(STRETCH, total), Math.min(until, total));
        int start = Math.max(1, end - STRETCH + 1);
        List<KeptRow> read = end == 0 ? List.of() : rows.numbered(of, start - Continued.REACH, end);
        int before =
                (int) read.stream().filter(row -> row.state().number() < start).count();
        List<KeptRow> stretch = read.subList(before, read.size());
        List<ControlChart> charts = base == null || stretch.isEmpty()
                ? List.of()
                : Continued.charts(
                        base,
                        read.subList(0, before),
                        stretch.stream().map(KeptRow::value).toList());
        Instant ends = base == null ? null : base.endsAt();
        List<Charted.Left> left = standing.kept().left() == 0
                ? List.of()
                : rows.left(of, MOST_TOLD).stream()
                        .map(row -> left(of, row.point()))
                        .toList();
        return new Charted(
                standing, stretch, charts, firsts(standing), ends == null ? 0 : rows.chartedUntil(of.id(), ends), left);
    }

    private static Charted.Left left(Series of, Point point) {
        return new Charted.Left(
                point,
                point.charted(of.scaled()) instanceof Answer.NotDeterminable<Double> none
                        ? none.gaps().get(0).words()
                        : "");
    }

    /** The first alarm of each chart, wherever it stands. */
    private Map<ControlChart.Kind, Alarm> firsts(Standing standing) {
        Base base = standing.base();
        KeptStand kept = standing.kept();
        Map<ControlChart.Kind, Alarm> firsts = new EnumMap<>(ControlChart.Kind.class);
        if (base != null) {
            for (Integer number : new Integer[] {kept.firstOfReadings(), kept.firstOfMeans(), kept.firstOfSums()}) {
                if (number != null) {
                    List<KeptRow> upTo = rows.numbered(standing.series(), number - Continued.REACH, number);
                    int end = upTo.size() - 1;
                    Continued.charts(
                                    base,
                                    upTo.subList(0, end),
                                    List.of(upTo.get(end).value()))
                            .forEach(chart -> chart.first()
                                    .ifPresent(alarm -> firsts.merge(
                                            chart.kind(),
                                            alarm,
                                            (one, other) -> one.index() <= other.index() ? one : other)));
                }
            }
        }
        return firsts;
    }

    /** What the base of a series was taken from, as its charts show it. */
    List<Double> base(Charted of) {
        return of.inBase() == 0
                ? List.of()
                : rows.numbered(of.series(), 1, of.inBase()).stream()
                        .map(KeptRow::value)
                        .toList();
    }

    /** Everything read of a series that can be charted, also what is older than its base; oldest first. */
    List<KeptRow> chartable(Series of) {
        return rows.chartable(of);
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
        return of(List.of(code));
    }

    /** The series of some characteristics. */
    List<Series> of(List<String> codes) {
        return codes.isEmpty()
                ? List.of()
                : series.findByCharacteristicCodeInOrderById(codes).stream()
                        .map(SeriesRow::series)
                        .toList();
    }

    /** Readings from before this program that were struck out of a series, with the reason; the newest. */
    List<Struck> struck(Series of) {
        return strikes.of(of.id(), Limit.of(MOST_TOLD)).stream()
                .map(line -> new Struck(
                        line.history().point(of, null),
                        line.strike().reason(),
                        line.strike().personId(),
                        line.strike().at()))
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
