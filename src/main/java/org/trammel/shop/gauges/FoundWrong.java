package org.trammel.shop.gauges;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/**
 * Figures that were kept before they are judged, read with a gauge that was found wrong meanwhile. That it was put right
 * since says nothing of what it read before.
 */
@Service
public class FoundWrong {

    private final GaugeRepository rows;
    private final FailureRepository failures;
    private final Settings settings;

    FoundWrong(GaugeRepository rows, FailureRepository failures, Settings settings) {
        this.rows = rows;
        this.failures = failures;
        this.settings = settings;
    }

    /**
     * Ask with the gauges kept as they are, so that none fails unseen.
     *
     * @param readAt when each gauge or set-up read what is to be judged, by the number on its label
     * @throws Refusal if one of them, or a part of it, was found wrong since, and may have been wrong then
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void requireRight(Map<String, ? extends Collection<Instant>> readAt) {
        new TreeMap<>(readAt)
                .forEach((code, moments) -> rows.withRanges(Gauges.label(code))
                        .ifPresent(row -> row.made().forEach(part -> requireRight(row, part, moments))));
    }

    private void requireRight(GaugeRow row, GaugeRow part, Collection<Instant> moments) {
        List<FailureRow> found = failures.findByGaugeIdOrderByIdDesc(part.id());
        moments.stream()
                .sorted()
                .forEach(read -> found.stream()
                        .filter(failure -> failure.reaches(read, settings.zone()))
                        .findFirst()
                        .ifPresent(failure -> {
                            throw refusal(row, part, failure, read);
                        }));
    }

    private Refusal refusal(GaugeRow row, GaugeRow part, FailureRow failure, Instant read) {
        return Refusal.state(
                "What " + row.code() + " read is not judged.",
                (row == part ? row.code() : "Its part " + part.code()) + " was found wrong on "
                        + failure.failure().foundOn() + ", and may have been so on " + settings.dayOf(read)
                        + ", when it read this. Putting it right does not mend what it read before.",
                "Read those figures again, each as a correction with the reason.");
    }
}
