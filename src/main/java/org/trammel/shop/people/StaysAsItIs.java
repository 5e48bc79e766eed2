package org.trammel.shop.people;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * That a frame stays as it is, as it was put forward last.
 *
 * @param number which of those ever put forward
 * @param changesWhatWasOrdered whether dimension, looks or weight may differ from what was ordered
 * @param customer who of the customer agreed, when and how
 */
public record StaysAsItIs(
        int number,
        String words,
        boolean changesWhatWasOrdered,
        @Nullable String customer,
        List<Agreed> agreed) {

    public StaysAsItIs {
        agreed = List.copyOf(agreed);
    }

    /** Somebody agreed in a role. */
    public record Agreed(String name, Role as, Instant at) {}

    /** Roles that must still agree. */
    public List<Role> missing() {
        List<Role> given = agreed.stream().map(Agreed::as).toList();
        return Deciders.OF_WHAT_STAYS_AS_IT_IS.stream()
                .filter(role -> !given.contains(role))
                .toList();
    }
}
