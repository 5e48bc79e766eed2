package org.trammel.calc.thermal;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * How far a clock has run.
 *
 * @param left length that is left now; negative once it is used up
 * @param ends when it was or will be used up, if it runs on from now
 * @param standing whether it stands in a pause now
 */
record RunSoFar(Duration left, Instant ends, boolean standing) {

    static RunSoFar of(Instant from, Duration length, List<Pause> pauses, Instant now) {
        Instant running = from;
        Duration left = length;
        for (Pause pause :
                pauses.stream().sorted(Comparator.comparing(Pause::from)).toList()) {
            Instant until = pause.until();
            boolean standing = until == null || until.isAfter(now);
            if (pause.from().isAfter(now) || until != null && !until.isAfter(running)) {
                continue;
            }
            if (pause.from().isAfter(running)) {
                Duration used = Duration.between(running, pause.from());
                if (used.compareTo(left) >= 0) {
                    break;
                }
                left = left.minus(used);
            }
            if (standing) {
                return new RunSoFar(left, now.plus(left), true);
            }
            running = until;
        }
        Instant ends = running.plus(left);
        return new RunSoFar(Duration.between(now, ends), ends, false);
    }
}
