package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What frames read before anybody pushed them: what the jig and the heat left, which a corrected value no longer tells.
 */
@Service
public class PreSetReadings {

    private final ReadingRepository readings;
    private final ColdSetRepository coldSets;

    PreSetReadings(ReadingRepository readings, ColdSetRepository coldSets) {
        this.readings = readings;
        this.coldSets = coldSets;
    }

    /**
     * A reading of a frame before it was pushed.
     *
     * @param value in the unit, as are nominal and limits
     */
    public record Line(
            long readingId,
            long travellerId,
            String code,
            BigDecimal value,
            String unit,
            @Nullable BigDecimal nominal,
            @Nullable BigDecimal lowerLimit,
            @Nullable BigDecimal upperLimit,
            Instant at) {}

    /** Operations at which a frame was pushed since a moment: it did not pass there as it came. */
    @Transactional(readOnly = true)
    public Set<Long> pushedAt(Instant moment) {
        return coldSets.operationsSince(moment);
    }

    /** Travellers of which something was read under one of these codes since a moment. */
    @Transactional(readOnly = true)
    public Set<Long> travellersSince(Instant moment, Collection<String> codes) {
        return codes.isEmpty() ? Set.of() : readings.travellersSince(moment, codes);
    }

    private record Place(long piece, String code) {}

    /**
     * For each piece and code the newest reading that no correction took the place of, among those taken before the first
     * cold-set of the piece; two statements whatever their number.
     *
     * @param codes of characteristics, such as 080-3
     * @param first for each traveller that took the place of another the first of its piece
     * @return oldest first
     */
    @Transactional(readOnly = true)
    public List<Line> of(Collection<String> codes, Map<Long, Long> first) {
        if (codes.isEmpty()) {
            return List.of();
        }
        return before(coldSets.firsts(), readings.notReplaced(codes), first);
    }

    /**
     * The same of one piece, by the travellers of it; two statements however many other pieces there are.
     *
     * @return at most one for each code
     */
    @Transactional(readOnly = true)
    public List<Line> of(Collection<String> codes, List<Long> travellers) {
        if (codes.isEmpty() || travellers.isEmpty()) {
            return List.of();
        }
        Map<Long, Long> first = new HashMap<>();
        travellers.forEach(id -> first.put(id, travellers.get(0)));
        return before(coldSets.firstsOf(travellers), readings.notReplacedOf(codes, travellers), first);
    }

    private static List<Line> before(List<ColdSetRepository.First> pushes, List<Line> lines, Map<Long, Long> first) {
        Map<Long, Instant> pushed = new HashMap<>();
        pushes.forEach(set -> pushed.merge(
                first.getOrDefault(set.travellerId(), set.travellerId()),
                set.at(),
                (one, other) -> one.isBefore(other) ? one : other));
        Map<Place, Line> newest = new LinkedHashMap<>();
        for (Line line : lines) {
            long piece = first.getOrDefault(line.travellerId(), line.travellerId());
            Instant at = pushed.get(piece);
            if (at == null || line.at().isBefore(at)) {
                Place place = new Place(piece, line.code());
                newest.remove(place);
                newest.put(place, line);
            }
        }
        return List.copyOf(newest.values());
    }
}
