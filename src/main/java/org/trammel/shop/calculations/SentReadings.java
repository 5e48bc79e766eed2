package org.trammel.shop.calculations;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Readings as they are sent, as many as a workshop takes. */
final class SentReadings {

    private static final int MOST_READINGS = 2_000;
    private static final int MOST_GROUPS = 500;
    private static final int LARGEST_GROUP = 25;

    private SentReadings() {}

    static List<Double> singles(List<BigDecimal> readings, String field) {
        return bounded(readings, MOST_READINGS, field);
    }

    static List<Double> bounded(List<BigDecimal> readings, int most, String field) {
        NotComputed.boundedBy(most, field, readings);
        return readings.stream().map(BigDecimal::doubleValue).toList();
    }

    static List<List<Double>> groups(List<List<BigDecimal>> groups, String field) {
        NotComputed.boundedBy(MOST_GROUPS, field, groups);
        List<List<Double>> read = new ArrayList<>();
        for (List<BigDecimal> group : groups) {
            read.add(bounded(group, LARGEST_GROUP, field + "[" + read.size() + "]"));
        }
        return read;
    }
}
