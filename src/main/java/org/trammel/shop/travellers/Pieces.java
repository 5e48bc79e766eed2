package org.trammel.shop.travellers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Travellers about one piece of metal: a newer revision puts another in the place of the first, the piece stays. */
@Service
@Transactional(readOnly = true)
public class Pieces {

    /** Names in a query are translated anew for every number of them. */
    private static final int AT_ONCE = 500;

    private final PieceQueries queries;

    Pieces(PieceQueries queries) {
        this.queries = queries;
    }

    /**
     * For each traveller that took the place of another the first one of its piece; one statement. A part that was made
     * anew is another piece than the one scrapped.
     */
    public Map<Long, Long> first() {
        Map<Long, Long> first = new HashMap<>();
        PieceQueries.Line before = null;
        for (PieceQueries.Line line : queries.revised()) {
            if (before != null && before.samePlace(line) && before.state() == TravellerState.WITHDRAWN) {
                first.put(line.id(), first.getOrDefault(before.id(), before.id()));
            }
            before = line;
        }
        return first;
    }

    /** The traveller and those whose place it took, the newest first. */
    public List<Long> same(long travellerId) {
        List<Long> same = new ArrayList<>();
        PieceQueries.Line after = null;
        for (PieceQueries.Line line : queries.before(travellerId)) {
            if (after != null && line.state() != TravellerState.WITHDRAWN) {
                break;
            }
            same.add(line.id());
            after = line;
        }
        return same;
    }

    /**
     * Who ticked at operations that ask for a qualification of one of these kinds, by the first traveller of the piece.
     *
     * @param kinds how the codes of qualifications begin, such as WELD
     * @param first as {@link #first} gives it
     */
    public Map<Long, Set<Long>> tickedWhere(
            Collection<Long> travellerIds, Collection<String> kinds, Map<Long, Long> first) {
        Set<Long> wanted = new HashSet<>();
        travellerIds.forEach(id -> wanted.add(first.getOrDefault(id, id)));
        Set<Long> all = new HashSet<>(wanted);
        first.forEach((later, root) -> {
            if (wanted.contains(root)) {
                all.add(later);
            }
        });
        Map<Long, Set<Long>> people = new HashMap<>();
        List<Long> ids = new ArrayList<>(all);
        for (int from = 0; from < ids.size(); from += AT_ONCE) {
            queries.tickedAt(ids.subList(from, Math.min(ids.size(), from + AT_ONCE))).stream()
                    .filter(line -> kinds.stream().anyMatch(line.qualification()::startsWith))
                    .forEach(line -> people.computeIfAbsent(
                                    first.getOrDefault(line.travellerId(), line.travellerId()), id -> new HashSet<>())
                            .add(line.personId()));
        }
        return people;
    }
}
