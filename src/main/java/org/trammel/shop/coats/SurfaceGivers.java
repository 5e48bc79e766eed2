package org.trammel.shop.coats;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.EvidenceGivers;

/** Whoever recorded the surface or the coat of a frame took part in the operation. */
@Component
class SurfaceGivers implements EvidenceGivers {

    private final SurfaceRecords records;
    private final FilmRepository films;
    private final LookRepository looks;
    private final StripRepository strips;
    private final LineRepository lines;

    SurfaceGivers(
            SurfaceRecords records,
            FilmRepository films,
            LookRepository looks,
            StripRepository strips,
            LineRepository lines) {
        this.records = records;
        this.films = films;
        this.looks = looks;
        this.strips = strips;
        this.lines = lines;
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        Set<Long> people = new HashSet<>(records.peopleAt(operationId));
        people.addAll(films.peopleAt(operationId));
        people.addAll(strips.peopleAt(operationId));
        people.addAll(lines.peopleAt(operationId));
        people.addAll(looks.peopleAt(operationId));
        return people;
    }

    @Override
    public Set<Long> workedAt(long operationId) {
        return peopleAt(operationId);
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        return Set.of();
    }
}
