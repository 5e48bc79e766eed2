package org.trammel.shop.drift;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.trammel.calc.statistics.Attribution;
import org.trammel.calc.statistics.Attribution.Difference;
import org.trammel.calc.statistics.Attribution.Effect;
import org.trammel.calc.units.Answer;

/**
 * What a shift of an axis hangs on.
 *
 * @param factors that were compared
 * @param used readings that name all of them, oldest first
 * @param left how many do not, or cannot be charted
 * @param found what they say, or why nothing
 */
record ShiftTrace(
        Axis axis, boolean scaled, List<Factor> factors, List<Used> used, int left, Answer<Attribution> found) {

    /** A characteristic that is watched on jigs. */
    record Axis(String code, String name, String unit) {}

    /**
     * A reading that is compared.
     *
     * @param shown what is compared of it
     * @param levels what had a hand in it, as whoever looks may know it
     */
    record Used(Point point, double shown, Map<Factor, String> levels) {

        Used {
            levels = new EnumMap<>(levels);
        }
    }

    public String unit() {
        return scaled ? "share of the half tolerance" : axis.unit();
    }

    /** Factors by which a difference is proven. */
    public List<Factor> proven() {
        return which(effect -> effect.differences().stream().anyMatch(Difference::proven));
    }

    /** Factors that cannot be told from another, wholly or in part. */
    List<Factor> mixed() {
        List<Factor> mixed = new ArrayList<>();
        if (found instanceof Answer.Determined<Attribution> there) {
            for (int i = 0; i < factors.size(); i++) {
                Answer<Effect> effect = there.value().effects().get(i);
                boolean apart = effect instanceof Answer.Determined<Effect> one
                        && one.value().open().isEmpty();
                if (!apart && levels(factors.get(i)).size() > 1) {
                    mixed.add(factors.get(i));
                }
            }
        }
        return mixed;
    }

    private List<Factor> which(Predicate<Effect> wanted) {
        List<Factor> which = new ArrayList<>();
        if (found instanceof Answer.Determined<Attribution> there) {
            for (int i = 0; i < factors.size(); i++) {
                if (there.value().effects().get(i) instanceof Answer.Determined<Effect> one
                        && wanted.test(one.value())) {
                    which.add(factors.get(i));
                }
            }
        }
        return which;
    }

    /** Levels of a factor that readings name, each with its readings, in the order they first come. */
    Map<String, List<Used>> levels(Factor factor) {
        Map<String, List<Used>> levels = new LinkedHashMap<>();
        used.forEach(each -> levels.computeIfAbsent(each.levels().get(factor), level -> new ArrayList<>())
                .add(each));
        return levels;
    }

    /** What came of it, in one sentence. */
    public String words() {
        if (!(found instanceof Answer.Determined<Attribution>)) {
            return "Nothing can be said.";
        }
        String mixed = mixed().isEmpty()
                ? ""
                : " Not everything can be told apart: what goes together by " + and(mixed()) + " stands below.";
        List<Factor> proven = proven();
        return (proven.isEmpty() ? "No difference is proven." : "The difference hangs on the " + and(proven) + ".")
                + mixed;
    }

    private static String and(List<Factor> factors) {
        return String.join(" and the ", factors.stream().map(Factor::word).toList());
    }
}
