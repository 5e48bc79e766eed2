package org.trammel.shop.drift;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.event.ApplicationStartedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.travellers.Pieces;

/**
 * Keeps the points of each series with where its charts stand after them. A reading that comes last is added to what is
 * kept and nothing before it is looked at; one that comes in between, moves or goes has all from there on made again.
 * Whoever changes a series locks it, in the order of their numbers, after the chains of its act and before an alarm is
 * written.
 */
@Component
class KeptCharts {

    private final SeriesRepository series;
    private final BaseRepository bases;
    private final SeriesPoints points;
    private final KeptRows rows;
    private final KeptStands stands;
    private final Pieces pieces;

    KeptCharts(
            SeriesRepository series,
            BaseRepository bases,
            SeriesPoints points,
            KeptRows rows,
            KeptStands stands,
            Pieces pieces) {
        this.series = series;
        this.bases = bases;
        this.points = points;
        this.rows = rows;
        this.stands = stands;
        this.pieces = pieces;
    }

    /** Makes the points of every series that has none yet, as after a newer version began to keep them. */
    @EventListener(ApplicationStartedEvent.class)
    @Transactional
    public void atStart() {
        Set<Long> stale = new HashSet<>(stands.stale());
        if (!stale.isEmpty()) {
            again(series.findAllByOrderByFollowedAscJigCodeAscSubjectAscCharacteristicCodeAsc().stream()
                    .map(SeriesRow::series)
                    .filter(each -> stale.contains(each.id()))
                    .toList());
        }
    }

    /** Makes series again from what was read. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void again(List<Series> all) {
        List<Series> inOrder = inOrder(all);
        inOrder.forEach(each -> stands.lock(each.id()));
        Map<Long, List<Point>> read = points.of(inOrder);
        Map<Long, Base> inForce = bases(inOrder);
        inOrder.forEach(each -> anew(each, inForce.get(each.id()), read.get(each.id())));
    }

    private void anew(Series of, @Nullable Base base, List<Point> read) {
        rows.removeFrom(of.id(), 1);
        write(of, base, KeptStand.nothing(of.id()), 1, List.of(), read);
    }

    /** Codes of characteristics under which a frame stands on any chart. */
    List<String> codesOf(String serial) {
        return rows.codesOf(serial);
    }

    /** Holds a series and the others of its axis before a chain is: a reading that raises an alarm takes them in this order. */
    void hold(long seriesId) {
        stands.hold(seriesId);
    }

    /**
     * Begins to keep a series. A reading whose transaction began before this one ended saw no series, and was not seen here;
     * so all is made anew once more by whoever looks next.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void begin(Series of) {
        stands.begin(of.id());
        again(List.of(of));
        stands.makeAnew(of.id());
    }

    /**
     * A series that changed.
     *
     * @param place of the first point that was written
     */
    record Changed(Series series, int place) {}

    /**
     * Looks what was read of a piece and puts it where it belongs.
     *
     * @param travellerId the newest traveller of the piece
     * @param watching the series it may stand on
     * @return those that changed
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<Changed> look(long travellerId, List<Series> watching) {
        List<Long> travellers = pieces.same(travellerId);
        long piece = travellers.get(travellers.size() - 1);
        Set<Factor> factors = EnumSet.noneOf(Factor.class);
        watching.forEach(each -> factors.add(each.by()));
        Map<String, Point> read =
                points.ofPiece(travellers, watching.stream().map(Series::code).collect(Collectors.toSet()), factors);
        Map<Long, List<KeptRows.Standing>> stood =
                rows.ofPiece(piece, watching.stream().map(Series::id).toList()).stream()
                        .collect(Collectors.groupingBy(KeptRows.Standing::seriesId));
        List<Series> changed = new ArrayList<>();
        for (Series each : inOrder(watching)) {
            Point now = read.get(each.code());
            List<Point> come = now != null && each.takes(now) ? List.of(now) : List.of();
            List<KeptRows.Standing> there = stood.getOrDefault(each.id(), List.of());
            if (!there.stream()
                    .map(KeptRows.Standing::key)
                    .toList()
                    .equals(come.stream().map(Point::key).toList())) {
                changed.add(each);
                stood.put(each.id(), there);
            }
        }
        Map<Long, Base> inForce = bases(changed);
        List<Changed> written = new ArrayList<>();
        for (Series each : changed) {
            int place = change(each, inForce.get(each.id()), stood.get(each.id()), read.get(each.code()));
            written.add(new Changed(each, place));
        }
        return written;
    }

    private int change(Series of, @Nullable Base base, List<KeptRows.Standing> gone, @Nullable Point come) {
        KeptStand stand = stands.lock(of.id());
        if (stand.stale()) {
            anew(of, base, points.of(List.of(of)).get(of.id()));
            return 1;
        }
        boolean takes = come != null && of.takes(come);
        List<Instant> moments =
                new ArrayList<>(gone.stream().map(KeptRows.Standing::at).toList());
        if (takes) {
            moments.add(come.at());
        }
        List<KeptRow> tail =
                rows.since(of, moments.stream().min(Comparator.naturalOrder()).orElseThrow());
        Set<String> keys = gone.stream().map(KeptRows.Standing::key).collect(Collectors.toSet());
        List<Point> now = new ArrayList<>(tail.stream()
                .map(KeptRow::point)
                .filter(point -> !keys.contains(point.key()))
                .toList());
        if (takes) {
            now.add(come);
            now.sort(KeptRow.ORDER);
        }
        int place = tail.isEmpty() ? stand.places() + 1 : tail.get(0).place();
        if (!tail.isEmpty()) {
            rows.removeFrom(of.id(), place);
        }
        KeptStand before = without(stand, tail);
        write(of, base, before, place, rows.lastBefore(of, place, Continued.REACH), now);
        return place;
    }

    /** Where it stood before the tail; how many alarms there were and since when it drifted say its last rows. */
    private static KeptStand without(KeptStand stand, List<KeptRow> tail) {
        int charted = (int) tail.stream().filter(row -> row.after() != null).count();
        int left = (int) tail.stream().filter(row -> row.shown() == null).count();
        int kept = stand.charted() - charted;
        return new KeptStand(
                stand.seriesId(),
                kept,
                stand.before() - (tail.size() - charted - left),
                stand.left() - left,
                0,
                null,
                upTo(stand.firstOfReadings(), kept),
                upTo(stand.firstOfMeans(), kept),
                upTo(stand.firstOfSums(), kept),
                false);
    }

    private static @Nullable Integer upTo(@Nullable Integer number, int last) {
        return number != null && number <= last ? number : null;
    }

    /** Charts readings that go on after what is kept, and keeps them. */
    private void write(
            Series of, @Nullable Base base, KeptStand before, int place, List<KeptRow> last, List<Point> added) {
        Continued continued = Continued.after(of, base, before, place, last, added);
        rows.add(of.id(), continued.rows());
        stands.keep(continued.stand());
    }

    private Map<Long, Base> bases(List<Series> all) {
        Map<Long, Base> newest = new HashMap<>();
        if (!all.isEmpty()) {
            bases.findBySeriesIdInOrderById(all.stream().map(Series::id).toList())
                    .forEach(row -> newest.put(row.base().seriesId(), row.base()));
        }
        return newest;
    }

    private static List<Series> inOrder(List<Series> all) {
        return all.stream().sorted(Comparator.comparing(Series::id)).toList();
    }
}
