package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Why two levels of a factor cannot be told apart, and one frame that would separate them: one made like another, with
 * nothing but this factor exchanged.
 *
 * @param factors their names
 * @param levels for each reading its level of each factor
 * @param without for each factor what the readings separate if it is left out
 */
record Confounding(List<String> factors, List<List<String>> levels, List<Causes> without) {

    static Confounding of(List<String> factors, List<List<String>> levels) {
        List<Causes> without = new ArrayList<>();
        for (int f = 0; f < factors.size(); f++) {
            int left = f;
            without.add(new Causes(levels.stream().map(row -> rest(row, left)).toList()));
        }
        return new Confounding(factors, levels, without);
    }

    private static List<String> rest(List<String> row, int place) {
        List<String> rest = new ArrayList<>(row);
        rest.remove(place);
        return rest;
    }

    /** Two sentences about a pair that the readings do not separate. */
    String words(int factor, String one, String other) {
        String of = factors.get(factor);
        String pair = "What " + of + " " + one + " and " + of + " " + other + " add cannot be told from the ";
        int partner = partner(factor, one, other);
        int like = like(factor, other);
        if (partner < 0) {
            return pair + "other causes together. One frame made like that of reading " + (like + 1) + ", but with "
                    + of + " " + one + ", would separate them.";
        }
        String mixed = factors.get(partner);
        return pair + mixed + ": " + one + " went with " + mixed + " " + with(factor, one, partner) + ", " + other
                + " with " + mixed + " " + with(factor, other, partner) + ". One frame made like that of reading "
                + (like + 1) + ", with " + mixed + " " + levels.get(like).get(partner) + ", but with " + of + " " + one
                + ", would separate them.";
    }

    /** The factor without which the pair could be told apart; below 0 if no single one. */
    private int partner(int factor, String one, String other) {
        for (int g = 0; g < factors.size(); g++) {
            if (g != factor && without.get(g).separates(g < factor ? factor - 1 : factor, one, other)) {
                return g;
            }
        }
        return -1;
    }

    private int like(int factor, String level) {
        for (int i = 0; i < levels.size(); i++) {
            if (levels.get(i).get(factor).equals(level)) {
                return i;
            }
        }
        throw new IllegalArgumentException("No reading has " + level);
    }

    private String with(int factor, String level, int partner) {
        TreeSet<String> seen = new TreeSet<>();
        levels.stream().filter(row -> row.get(factor).equals(level)).forEach(row -> seen.add(row.get(partner)));
        return String.join(", ", seen);
    }
}
