package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.trammel.calc.statistics.Attribution;
import org.trammel.shop.web.OnlyTheseNames;

/** Readings, and what may have had a hand in them. */
@OnlyTheseNames
record EffectsRequest(
        @Schema(description = "names of what may have a hand in it, such as jig, each once; 6 at most")
        List<String> factors,

        @Schema(description = "500 at most") List<Made> readings) {

    private static final int MOST_FACTORS = 6;
    private static final int MOST_READINGS = 500;
    private static final int MOST_LEVELS = 20;

    @OnlyTheseNames
    @Schema(name = "ReadingWithLevels")
    record Made(
            @Schema(description = "in one unit for all, any")
            BigDecimal value,

            @Schema(
                    description =
                            "for each factor which one it was, such as \"jig\": \"J2\"; 20 different ones of a factor"
                                    + " at most")
            Map<String, String> levels) {}

    List<String> named() {
        NotComputed.boundedBy(MOST_FACTORS, "factors", factors);
        if (factors.isEmpty()) {
            throw NotComputed.input("factors", "Nothing is named that the readings could hang on.");
        }
        Set<String> seen = new HashSet<>();
        for (int f = 0; f < factors.size(); f++) {
            NotComputed.named(factors.get(f), "factors[" + f + "]");
            if (!seen.add(factors.get(f))) {
                throw NotComputed.input("factors[" + f + "]", "The factor " + factors.get(f) + " is named twice.");
            }
        }
        return factors;
    }

    List<Attribution.Reading> made() {
        NotComputed.boundedBy(MOST_READINGS, "readings", readings);
        List<Attribution.Reading> made = new ArrayList<>();
        Map<String, Set<String>> seen = new LinkedHashMap<>();
        for (int i = 0; i < readings.size(); i++) {
            Map<String, String> levels = levels(i);
            for (Map.Entry<String, String> each : levels.entrySet()) {
                Set<String> ofFactor = seen.computeIfAbsent(each.getKey(), factor -> new HashSet<>());
                ofFactor.add(each.getValue());
                NotComputed.boundedBy(MOST_LEVELS, "readings[" + i + "].levels[" + each.getKey() + "]", ofFactor);
            }
            made.add(new Attribution.Reading(readings.get(i).value().doubleValue(), levels));
        }
        return made;
    }

    private Map<String, String> levels(int i) {
        String at = "readings[" + i + "].levels";
        Map<String, String> sent = readings.get(i).levels();
        NotComputed.boundedBy(MOST_FACTORS, at, sent.keySet());
        Map<String, String> levels = new LinkedHashMap<>();
        for (String factor : factors) {
            String level = sent.get(factor);
            if (level == null) {
                throw NotComputed.input(at, "Reading " + (i + 1) + " does not name its " + factor + ".");
            }
            levels.put(factor, NotComputed.named(level, at + "[" + factor + "]"));
        }
        if (sent.size() > levels.size()) {
            throw NotComputed.input(at, "Reading " + (i + 1) + " names more than the factors that are looked for.");
        }
        return levels;
    }
}
