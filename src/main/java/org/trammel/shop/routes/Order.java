package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.List;

/** What kept its order between two orders of the same things. */
final class Order {

    private Order() {}

    /** The longest part of both lists that stands in the same order in both (longest common subsequence). */
    static List<String> kept(List<String> before, List<String> after) {
        int[][] length = new int[before.size() + 1][after.size() + 1];
        for (int i = before.size() - 1; i >= 0; i--) {
            for (int j = after.size() - 1; j >= 0; j--) {
                length[i][j] = before.get(i).equals(after.get(j))
                        ? length[i + 1][j + 1] + 1
                        : Math.max(length[i + 1][j], length[i][j + 1]);
            }
        }
        List<String> kept = new ArrayList<>();
        for (int i = 0, j = 0; i < before.size() && j < after.size(); ) {
            if (before.get(i).equals(after.get(j))) {
                kept.add(before.get(i));
                i++;
                j++;
            } else if (length[i + 1][j] >= length[i][j + 1]) {
                i++;
            } else {
                j++;
            }
        }
        return kept;
    }
}
