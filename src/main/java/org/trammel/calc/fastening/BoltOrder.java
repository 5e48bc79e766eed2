package org.trammel.calc.fastening;

import java.util.ArrayList;
import java.util.List;

/**
 * The order in which bolts that hold one part are tightened.
 *
 * <p>In a cross: each next bolt lies as far from the ones before as it can. Bolts are numbered round the part. In fours,
 * 1 3 2 4; for eight, 1 5 3 7 2 6 4 8. Source: star pattern of ASME PCC-1, from memory; for six and other even numbers
 * opposite pairs in turn, for odd ones every second bolt, both common practice.
 */
public final class BoltOrder {

    private BoltOrder() {}

    /** Numbers of the bolts from 1, in the order in which they are tightened. */
    public static List<Integer> cross(int bolts) {
        List<Integer> order = new ArrayList<>();
        if (bolts % 4 == 0) {
            int quarter = bolts / 4;
            for (int i = 1; i <= quarter; i++) {
                order.addAll(List.of(i, i + 2 * quarter, i + quarter, i + 3 * quarter));
            }
        } else if (bolts % 2 == 0) {
            int half = bolts / 2;
            for (int i = 1; i <= half; i++) {
                order.addAll(List.of(i, i + half));
            }
        } else {
            for (int i = 0; i < bolts; i++) {
                order.add(i * 2 % bolts + 1);
            }
        }
        return order;
    }

    /** One after the other. */
    public static List<Integer> inTurn(int bolts) {
        List<Integer> order = new ArrayList<>();
        for (int i = 1; i <= bolts; i++) {
            order.add(i);
        }
        return order;
    }
}
