package org.trammel.shop.drift;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.inspection.PreSetReadings;
import org.trammel.shop.materials.TubeSets;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.travellers.Pieces;

/**
 * Gathers what was read of characteristics, with the jig, the welder and the tubes of each frame, and hands every series
 * its own. A frame that goes on under a newer revision stays the piece that was set up and welded.
 */
@Component
class SeriesPoints {

    /** How the codes of qualifications begin whose holders weld. */
    private static final List<String> WELDS = List.of("WELD", "BRAZE");

    private final SeriesRepository series;
    private final HistoryRepository histories;
    private final StrikeRepository strikes;
    private final EarlierWelders welders;
    private final JigUseRepository uses;
    private final PreSetReadings readings;
    private final Pieces pieces;
    private final TubeSets tubes;
    private final Crew crew;

    SeriesPoints(
            SeriesRepository series,
            HistoryRepository histories,
            StrikeRepository strikes,
            EarlierWelders welders,
            JigUseRepository uses,
            PreSetReadings readings,
            Pieces pieces,
            TubeSets tubes,
            Crew crew) {
        this.series = series;
        this.histories = histories;
        this.strikes = strikes;
        this.welders = welders;
        this.uses = uses;
        this.readings = readings;
        this.pieces = pieces;
        this.tubes = tubes;
        this.crew = crew;
    }

    /** The readings of each series by the time they were taken; a few statements whatever there is. */
    Map<Long, List<Point>> of(Collection<Series> all) {
        Map<Long, List<Point>> points = new HashMap<>();
        all.forEach(each -> points.put(each.id(), new ArrayList<>()));
        Set<Factor> factors = EnumSet.of(Factor.JIG);
        all.forEach(each -> factors.add(each.by()));
        Map<String, List<Point>> read = read(all.stream().map(Series::code).collect(Collectors.toSet()), factors);
        Map<String, Map<String, List<Series>>> wanted = new HashMap<>();
        all.forEach(each -> wanted.computeIfAbsent(each.code(), code -> new HashMap<>())
                .computeIfAbsent(each.of(), of -> new ArrayList<>())
                .add(each));
        read.forEach((code, ofCode) -> {
            Map<String, List<Series>> takers = wanted.getOrDefault(code, Map.of());
            for (Point point : ofCode) {
                for (Factor factor : factors) {
                    String level = point.level(factor);
                    if (level != null) {
                        takers.getOrDefault(level, List.of()).stream()
                                .filter(each -> each.by() == factor && each.takes(point))
                                .forEach(each -> points.get(each.id()).add(point));
                    }
                }
            }
        });
        return points;
    }

    /**
     * Every reading of some characteristics, oldest first.
     *
     * @param factors which of those that had a hand in it are looked up; the jig always is
     */
    Map<String, List<Point>> read(Set<String> codes, Set<Factor> factors) {
        Map<String, List<Point>> read = new HashMap<>();
        if (codes.isEmpty()) {
            return read;
        }
        earlier(codes, factors).forEach((code, points) -> read.put(code, new ArrayList<>(points)));
        Map<Long, Long> first = pieces.first();
        List<PreSetReadings.Line> lines = readings.of(codes, first);
        Map<Long, JigUseRow> jigs = new HashMap<>();
        uses.findAllByOrderById()
                .forEach(use -> jigs.put(first.getOrDefault(use.travellerId(), use.travellerId()), use));
        Made made = made(lines, jigs, first, factors);
        for (PreSetReadings.Line line : lines) {
            long piece = first.getOrDefault(line.travellerId(), line.travellerId());
            JigUseRow use = jigs.get(piece);
            if (use != null) {
                read.computeIfAbsent(line.code(), code -> new ArrayList<>()).add(point(use, line, piece, made));
            }
        }
        read.values().forEach(points -> points.sort(KeptRow.ORDER));
        return read;
    }

    /**
     * What was read of one piece, by code of the characteristic; none where its jig was not noted. As many statements as
     * that takes, however many pieces there are.
     *
     * @param travellers of the piece, the newest first
     */
    Map<String, Point> ofPiece(List<Long> travellers, Set<String> codes, Set<Factor> factors) {
        JigUseRow use = uses.findFirstByTravellerIdInOrderByIdDesc(travellers).orElse(null);
        if (use == null) {
            return Map.of();
        }
        long piece = travellers.get(travellers.size() - 1);
        Map<Long, Long> first = travellers.stream().collect(Collectors.toMap(id -> id, id -> piece));
        List<PreSetReadings.Line> lines = readings.of(codes, travellers);
        Made made = made(lines, Map.of(piece, use), first, factors);
        return lines.stream()
                .collect(Collectors.toMap(PreSetReadings.Line::code, line -> point(use, line, piece, made)));
    }

    private Map<String, List<Point>> earlier(Set<String> codes, Set<Factor> factors) {
        Map<Long, Series> jigs = series.findByCharacteristicCodeInOrderById(codes).stream()
                .map(SeriesRow::series)
                .filter(each -> each.by() == Factor.JIG)
                .collect(Collectors.toMap(Series::id, each -> each));
        Map<String, List<Point>> earlier = new HashMap<>();
        if (jigs.isEmpty()) {
            return earlier;
        }
        Set<Long> struck =
                strikes.findAllByOrderById().stream().map(StrikeRow::historyId).collect(Collectors.toSet());
        Map<Long, String> welded = factors.contains(Factor.WELDER) ? welders.of(jigs.keySet()) : Map.of();
        for (HistoryRow row : histories.findBySeriesIdInOrderByReadAtAscIdAsc(jigs.keySet())) {
            Series of = jigs.get(row.seriesId());
            if (!struck.contains(row.id())) {
                earlier.computeIfAbsent(of.code(), code -> new ArrayList<>()).add(row.point(of, welded.get(row.id())));
            }
        }
        return earlier;
    }

    /** Who welded the pieces and what of. */
    private record Made(Map<Long, Set<Long>> welders, Map<Long, String> initials, Map<TubeSets.Place, String> tubes) {

        /** Of a part that was scrapped its own, not those of the part that was made in its place. */
        private @Nullable String tubes(JigUseRow use, long traveller) {
            String own = tubes.get(new TubeSets.Place(use.serial(), use.part(), traveller));
            return own != null ? own : tubes.get(new TubeSets.Place(use.serial(), use.part(), null));
        }

        private String welder(long piece) {
            return welders.getOrDefault(piece, Set.of()).stream()
                    .map(initials::get)
                    .collect(Collectors.toCollection(TreeSet::new))
                    .stream()
                    .collect(Collectors.joining(" + "));
        }
    }

    private Made made(
            List<PreSetReadings.Line> lines, Map<Long, JigUseRow> jigs, Map<Long, Long> first, Set<Factor> factors) {
        Set<Long> travellers = new HashSet<>();
        Set<String> serials = new HashSet<>();
        for (PreSetReadings.Line line : lines) {
            JigUseRow use = jigs.get(first.getOrDefault(line.travellerId(), line.travellerId()));
            if (use != null) {
                travellers.add(line.travellerId());
                serials.add(use.serial());
            }
        }
        boolean welders = factors.contains(Factor.WELDER);
        return new Made(
                welders ? pieces.tickedWhere(travellers, WELDS, first) : Map.of(),
                welders ? crew.all().stream().collect(Collectors.toMap(Person::id, Person::initials)) : Map.of(),
                factors.contains(Factor.TUBE_SET) ? tubes.of(serials) : Map.of());
    }

    private static Point point(JigUseRow use, PreSetReadings.Line line, long piece, Made made) {
        String welder = made.welder(piece);
        return new Point(
                Point.READING + line.readingId(),
                piece,
                use.serial(),
                use.part(),
                false,
                line.value(),
                line.unit(),
                line.nominal(),
                line.lowerLimit(),
                line.upperLimit(),
                line.at(),
                use.jigCode(),
                welder.isEmpty() ? null : welder,
                made.tubes(use, line.travellerId()),
                "");
    }
}
