package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which figures share the unknown error of the gauge that read them; heights below stand for distances as well.
 *
 * <p>Heights in a cluster no wider than the distance over which the error is equal share it. Where heights follow each
 * other so that the ends of a chain lie further apart than its neighbours, "equal nearby" and "independent beyond" cannot
 * both be kept: the chain is then cut into groups of that width in every way that makes no needless cut, and none between
 * heights a tenth of it apart, such as points of one face; what follows must hold for each way. Chains with no way, or
 * with more than can be tried, are cut at every height, the most cautious of all.
 */
final class ErrorGroups {

    private static final int WAYS_AT_MOST = 64;

    /** Heights so many times nearer than those that share an error are never cut apart. */
    private static final BigDecimal SAME = BigDecimal.TEN;

    private ErrorGroups() {}

    /** A figure that a gauge read; only those of one scale share an error. */
    record Figure(BigDecimal value, Scale scale) {}

    /**
     * Groups figures of one scale.
     *
     * @return ways to group, at least one; each a list of groups; each a list of places in the list of figures
     */
    static List<List<List<Integer>>> of(List<BigDecimal> figures, BigDecimal alike) {
        return ofScales(
                figures.stream().map(value -> new Figure(value, Scale.HEIGHT)).toList(), alike);
    }

    /** The same of figures of several scales. */
    static List<List<List<Integer>>> ofScales(List<Figure> figures, BigDecimal alike) {
        List<BigDecimal> values = figures.stream().map(Figure::value).toList();
        List<Integer> order = IntStream.range(0, figures.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> figures.get(i).scale())
                        .thenComparing(values::get))
                .toList();
        List<List<List<Integer>>> ways = List.of(List.of());
        int from = 0;
        while (from < order.size()) {
            Scale scale = figures.get(order.get(from)).scale();
            int to = from + 1;
            while (to < order.size()
                    && figures.get(order.get(to)).scale() == scale
                    && gap(values, order, to - 1, to).compareTo(alike) <= 0) {
                to++;
            }
            List<Integer> cluster = order.subList(from, to);
            List<List<List<Integer>>> more = chain(values, cluster, alike);
            ways = product(ways, ways.size() * more.size() > WAYS_AT_MOST ? List.of(oneByOne(values, cluster)) : more);
            from = to;
        }
        return ways;
    }

    private static BigDecimal gap(List<BigDecimal> heights, List<Integer> order, int from, int to) {
        return heights.get(order.get(to)).subtract(heights.get(order.get(from)));
    }

    private static List<List<List<Integer>>> chain(List<BigDecimal> heights, List<Integer> order, BigDecimal alike) {
        List<List<List<Integer>>> ways = new ArrayList<>();
        cut(heights, order, alike, 0, -1, new ArrayList<>(), ways);
        return ways.isEmpty() || ways.size() > WAYS_AT_MOST ? List.of(oneByOne(heights, order)) : ways;
    }

    /** Cuts groups from place `from` on; the group before began at `before`, or −1. */
    private static void cut(
            List<BigDecimal> heights,
            List<Integer> order,
            BigDecimal alike,
            int from,
            int before,
            List<List<Integer>> soFar,
            List<List<List<Integer>>> ways) {
        if (ways.size() > WAYS_AT_MOST) {
            return;
        }
        if (from == order.size()) {
            ways.add(List.copyOf(soFar));
            return;
        }
        for (int last = from;
                last < order.size() && gap(heights, order, from, last).compareTo(alike) <= 0;
                last++) {
            boolean apart = last + 1 == order.size()
                    || gap(heights, order, last, last + 1).multiply(SAME).compareTo(alike) > 0;
            boolean needed = before < 0 || gap(heights, order, before, last).compareTo(alike) > 0;
            if (apart && needed) {
                soFar.add(List.copyOf(order.subList(from, last + 1)));
                cut(heights, order, alike, last + 1, from, soFar, ways);
                soFar.remove(soFar.size() - 1);
            }
        }
    }

    private static List<List<Integer>> oneByOne(List<BigDecimal> heights, List<Integer> order) {
        List<List<Integer>> groups = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            if (i == 0 || gap(heights, order, i - 1, i).signum() != 0) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(order.get(i));
        }
        return groups;
    }

    private static List<List<List<Integer>>> product(List<List<List<Integer>>> ways, List<List<List<Integer>>> more) {
        List<List<List<Integer>>> all = new ArrayList<>();
        for (List<List<Integer>> way : ways) {
            for (List<List<Integer>> one : more) {
                List<List<Integer>> joined = new ArrayList<>(way);
                joined.addAll(one);
                all.add(joined);
            }
        }
        return all;
    }
}
