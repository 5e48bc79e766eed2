package org.trammel.shop.inspection;

import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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
     * For each traveller and code the newest reading that no correction took the place of, among those taken before the
     * first cold-set of the frame; two statements whatever their number.
     *
     * @param codes of characteristics, such as 080-3
     * @return oldest first
     */
    @Transactional(readOnly = true)
    public List<ReadingLine> of(Collection<String> codes) {
        if (codes.isEmpty()) {
            return List.of();
        }
        Map<Long, Instant> pushed = coldSets.firsts().stream()
                .collect(Collectors.toMap(ColdSetRepository.First::travellerId, ColdSetRepository.First::at));
        Map<String, ReadingLine> newest = new LinkedHashMap<>();
        for (ReadingLine line : Readings.lines(readings.findByCharacteristicCodeInOrderById(codes))) {
            Instant first = pushed.get(line.travellerId());
            if (!line.replaced() && (first == null || line.at().isBefore(first))) {
                String key = line.travellerId() + " " + line.code();
                newest.remove(key);
                newest.put(key, line);
            }
        }
        return List.copyOf(newest.values());
    }
}
