package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;

/** Brings a stored list in line with a wanted one, so that only what changed is written. */
final class Rows {

    private Rows() {}

    /**
     * Keeps the rows whose key is wanted, removes the others, adds what is new, in the wanted order.
     *
     * @return each row with what it should become
     */
    static <R, W> Map<R, W> match(
            List<R> rows,
            List<W> wanted,
            Function<R, String> keyOfRow,
            Function<W, String> keyOfWanted,
            Supplier<R> blank) {
        Map<String, R> known = new LinkedHashMap<>();
        rows.forEach(row -> known.put(keyOfRow.apply(row), row));
        Map<R, W> matched = new IdentityHashMap<>();
        List<R> order = new ArrayList<>();
        for (W each : wanted) {
            R row = known.remove(keyOfWanted.apply(each));
            R kept = row == null ? blank.get() : row;
            matched.put(kept, each);
            order.add(kept);
        }
        rows.removeAll(known.values());
        order.stream().filter(row -> !rows.contains(row)).forEach(rows::add);
        rows.sort(Comparator.comparing(order::indexOf));
        return matched;
    }

    /** The same for rows without a key: the first becomes the first wanted and so on. */
    static <R, W> void inOrder(List<R> rows, List<W> wanted, Supplier<R> blank, Becoming<R, W> becomes) {
        while (rows.size() > wanted.size()) {
            rows.remove(rows.size() - 1);
        }
        while (rows.size() < wanted.size()) {
            rows.add(blank.get());
        }
        for (int i = 0; i < wanted.size(); i++) {
            becomes.become(rows.get(i), i, wanted.get(i));
        }
    }

    interface Becoming<R, W> {
        void become(R row, int position, W wanted);
    }
}
