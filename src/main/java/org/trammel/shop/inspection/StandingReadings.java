package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.Traces;

/** Which readings something stands on now; of a pair by two people both. */
@Component
class StandingReadings {

    private final Traces traces;
    private final ReadingRepository readings;

    StandingReadings(Traces traces, ReadingRepository readings) {
        this.traces = traces;
        this.readings = readings;
    }

    /** Ids of those of these readings. */
    Set<Long> of(List<Reading> asked) {
        Set<Long> standing =
                new HashSet<>(traces.inForce(asked.stream().map(Reading::id).toList()));
        List<Reading> older =
                asked.stream().filter(r -> !standing.contains(r.id())).toList();
        Map<Long, Long> pairs =
                traces.readByTwo(older.stream().map(Reading::characteristicId).collect(Collectors.toSet()));
        if (!pairs.isEmpty()) {
            Map<Long, Long> firsts = firsts(pairs);
            older.stream().map(Reading::id).filter(firsts::containsValue).forEach(standing::add);
        }
        return standing;
    }

    /** The reading before the newest that still stands, by characteristic: the first of two people's. */
    private Map<Long, Long> firsts(Map<Long, Long> pairs) {
        Collection<Reading> all = readings.findByCharacteristicIdInOrderById(pairs.keySet());
        Set<Long> replaced =
                all.stream().map(Reading::replacesId).filter(Objects::nonNull).collect(Collectors.toSet());
        Map<Long, Long> firsts = new HashMap<>();
        all.stream()
                .filter(r -> !replaced.contains(r.id()) && r.id() < pairs.get(r.characteristicId()))
                .forEach(r -> firsts.put(r.characteristicId(), r.id()));
        return firsts;
    }
}
