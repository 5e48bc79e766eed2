package org.trammel.shop.materials;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which lots of tube frames were cut from. */
@Service
@Transactional(readOnly = true)
public class TubeSets {

    /** Names in a query are translated anew for every number of them. */
    private static final int AT_ONCE = 500;

    private final LotUseRepository uses;

    TubeSets(LotUseRepository uses) {
        this.uses = uses;
    }

    /**
     * A piece of metal by its frame.
     *
     * @param gone its traveller, where it was scrapped and its tubes with it; null for the piece there is
     */
    public record Place(
            String serial, String part, @Nullable Long gone) {}

    /**
     * The codes of all lots of tube in each frame and part, in order and joined by a plus; pieces that were scrapped left
     * out. A frame into which none went has none.
     */
    public Map<Place, String> of(Collection<String> serials) {
        Map<Place, TreeSet<String>> lots = new HashMap<>();
        List<String> all = List.copyOf(new TreeSet<>(serials));
        for (int from = 0; from < all.size(); from += AT_ONCE) {
            uses.tubesIn(new ArrayList<>(all.subList(from, Math.min(all.size(), from + AT_ONCE))))
                    .forEach(tube -> lots.computeIfAbsent(
                                    new Place(tube.serial(), tube.part(), tube.goneWith()), p -> new TreeSet<>())
                            .add(tube.lot()));
        }
        return lots.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, each -> String.join(" + ", each.getValue())));
    }
}
