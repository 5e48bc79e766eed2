package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Which readings of a re-judgement were in doubt, who took them, and which of them still wait. */
@Component
class InDoubt {

    private final RejudgedReadingRepository judged;
    private final ReadingRepository readings;
    private final StandingReadings standing;

    InDoubt(RejudgedReadingRepository judged, ReadingRepository readings, StandingReadings standing) {
        this.judged = judged;
        this.readings = readings;
        this.standing = standing;
    }

    /** Readings of a frame that were in doubt when they were judged again. */
    List<Reading> of(long rejudgement, String serial) {
        return taken(judged.findByRejudgementIdAndSerialOrderByPlaceAscReadingIdAsc(rejudgement, serial));
    }

    /** Ids of those of these readings that nothing was read in the place of. */
    Set<Long> left(Collection<RejudgedReading> page) {
        return left(taken(page));
    }

    Set<Long> left(List<Reading> doubtful) {
        return doubtful.isEmpty() ? Set.of() : standing.of(doubtful);
    }

    /** Everybody who took one of them. */
    static Set<Long> readers(List<Reading> doubtful) {
        return doubtful.stream().map(Reading::personId).collect(Collectors.toSet());
    }

    private List<Reading> taken(Collection<RejudgedReading> of) {
        List<Long> ids = of.stream()
                .filter(RejudgedReading::inDoubt)
                .map(RejudgedReading::readingId)
                .toList();
        return ids.isEmpty() ? List.of() : readings.findAllById(ids);
    }
}
