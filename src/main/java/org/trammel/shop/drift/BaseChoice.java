package org.trammel.shop.drift;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.Baseline;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;

/**
 * The readings a base is made of.
 *
 * @param starts first of them, or of those charted over a base that is given; null: from the very first
 * @param ends last of them; null over a base that is given
 */
record BaseChoice(
        Answer<Baseline> baseline,
        @Nullable Instant starts,
        @Nullable Instant ends) {

    static BaseChoice of(Series series, List<KeptRow> all, NewBase entry, ZoneId zone, String not) {
        LocalDate from = entry.from();
        Instant starts = from == null ? null : from.atStartOfDay(zone).toInstant();
        if (entry.kind() == Base.Kind.GIVEN) {
            if (entry.centre() == null || entry.sigma() == null) {
                throw Refusal.input(
                        entry.centre() == null ? "centre" : "sigma",
                        not,
                        "A base given by hand has a centre and a standard deviation.",
                        "Enter both, in " + series.chartUnit() + ".");
            }
            return new BaseChoice(
                    Baseline.given(entry.centre().doubleValue(), entry.sigma().doubleValue()), starts, null);
        }
        List<KeptRow> since = all.stream()
                .filter(row -> starts == null || !row.point().at().isBefore(starts))
                .toList();
        List<KeptRow> chosen = entry.kind() == Base.Kind.FIRST
                ? first(since, entry.first(), not)
                : until(since, from, entry.until(), zone, not);
        List<Double> values = chosen.stream().map(KeptRow::value).toList();
        return new BaseChoice(
                Baseline.ofReadings(values),
                chosen.isEmpty() ? null : chosen.get(0).point().at(),
                chosen.isEmpty() ? null : chosen.get(chosen.size() - 1).point().at());
    }

    private static List<KeptRow> first(List<KeptRow> since, @Nullable Integer first, String not) {
        if (first == null || first < 2 || first > since.size()) {
            throw Refusal.input(
                    "first",
                    not,
                    first == null
                            ? "It is not said how many readings it is made of."
                            : "It is to be made of " + first + " readings; " + since.size() + " are there.",
                    "Twenty or more are usual; where there are fewer yet, give centre and standard deviation by hand.");
        }
        return since.subList(0, first);
    }

    private static List<KeptRow> until(
            List<KeptRow> since, @Nullable LocalDate from, @Nullable LocalDate until, ZoneId zone, String not) {
        if (from == null || until == null || until.isBefore(from)) {
            throw Refusal.input(
                    from == null ? "from" : "until",
                    not,
                    "A period has a first day and a last one, in this order.",
                    "Enter both days.");
        }
        Instant end = until.plusDays(1).atStartOfDay(zone).toInstant();
        return since.stream().filter(row -> row.point().at().isBefore(end)).toList();
    }
}
