package org.trammel.shop.drift;

import java.time.Clock;
import java.time.Duration;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.inspection.PreSetReadings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Pieces;
import org.trammel.shop.travellers.Travellers;

/** Frames that were read lately on an axis that is watched and stand on no chart, because nobody noted their jig. */
@Component
class WithoutJig {

    static final int DAYS = 90;
    private static final int MOST_NAMED = 12;

    private final PreSetReadings readings;
    private final JigUseRepository uses;
    private final Pieces pieces;
    private final Travellers travellers;
    private final Clock clock;

    WithoutJig(PreSetReadings readings, JigUseRepository uses, Pieces pieces, Travellers travellers, Clock clock) {
        this.readings = readings;
        this.uses = uses;
        this.pieces = pieces;
        this.travellers = travellers;
        this.clock = clock;
    }

    /**
     * They, counted.
     *
     * @param newest the newest of them
     */
    record Found(int count, List<FrameSheet.Head> newest) {}

    /** Those read in the last {@value #DAYS} days on one of these axes. */
    @Transactional(readOnly = true)
    public Found of(Collection<Series> watched) {
        Set<String> codes = watched.stream().map(Series::code).collect(Collectors.toSet());
        Set<Long> read = readings.travellersSince(clock.instant().minus(Duration.ofDays(DAYS)), codes);
        if (read.isEmpty()) {
            return new Found(0, List.of());
        }
        Map<Long, Long> first = pieces.first();
        Set<Long> wanted =
                read.stream().map(id -> first.getOrDefault(id, id)).collect(Collectors.toCollection(HashSet::new));
        Set<Long> all = new HashSet<>(wanted);
        first.forEach((later, root) -> {
            if (wanted.contains(root)) {
                all.add(later);
            }
        });
        uses.findByTravellerIdIn(all)
                .forEach(use -> wanted.remove(first.getOrDefault(use.travellerId(), use.travellerId())));
        TreeSet<Long> missing = new TreeSet<>(wanted);
        return new Found(
                missing.size(),
                missing.descendingSet().stream()
                        .limit(MOST_NAMED)
                        .map(travellers::head)
                        .toList());
    }
}
