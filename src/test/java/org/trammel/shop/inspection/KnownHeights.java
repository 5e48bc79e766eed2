package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.trammel.calc.units.Answer;
import org.trammel.shop.Fixture;

/** Stands for whoever knows raw heights: answers what a test tells it of a reading, and of no other. */
@Fixture
class KnownHeights implements RawHeights {

    private final Map<Long, Answer<List<TrueSpan>>> known = new ConcurrentHashMap<>();

    private final Set<Long> broken = ConcurrentHashMap.newKeySet();

    void know(long readingId, Answer<TrueSpan> span) {
        known.put(readingId, span.then(one -> Answer.of(List.of(one))));
    }

    /** What asks of that reading fails, until it is known. */
    void breakAt(long readingId) {
        broken.add(readingId);
    }

    void mend(long readingId) {
        broken.remove(readingId);
    }

    @Override
    public Map<Long, Answer<List<TrueSpan>>> spans(Collection<Suspect> readings, GaugeError error) {
        if (readings.stream().map(Suspect::readingId).anyMatch(broken::contains)) {
            throw new IllegalStateException("as a test asked");
        }
        return readings.stream()
                .map(Suspect::readingId)
                .filter(known::containsKey)
                .collect(Collectors.toMap(id -> id, known::get));
    }
}
