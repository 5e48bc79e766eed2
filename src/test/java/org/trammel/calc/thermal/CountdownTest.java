package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Times worked by hand. Outside source for the two kinds: SAE AMS 2770 (working window after quench, stopped in cold
 * storage) and EN 1090-3 practice of naturally ageing 7xxx welds, both from memory; the hours are the shop's settings.
 */
class CountdownTest {

    private static final Instant QUENCHED = Instant.parse("2026-03-18T05:40:00Z");
    private static final Duration FOUR_HOURS = Duration.ofHours(4);
    private static final Duration THREE_DAYS = Duration.ofHours(72);

    @Test
    void aWindowIsOpenUpToItsLastInstantAndClosedAfterIt() {
        DoubtfulStart start = DoubtfulStart.at(QUENCHED);
        Instant closes = Instant.parse("2026-03-18T09:40:00Z");
        assertThat(Countdown.window(start, FOUR_HOURS, List.of(), Instant.parse("2026-03-18T07:30:00Z")))
                .isEqualTo(new Countdown.Open(Duration.ofMinutes(130), closes));
        assertThat(Countdown.window(start, FOUR_HOURS, List.of(), closes))
                .isEqualTo(new Countdown.Open(Duration.ZERO, closes));
        assertThat(Countdown.window(start, FOUR_HOURS, List.of(), closes.plusMillis(1)))
                .isEqualTo(new Countdown.Closed(closes));
    }

    @Test
    void aWaitingTimeIsOverAtItsLastInstant() {
        DoubtfulStart start = DoubtfulStart.at(Instant.parse("2026-03-13T15:40:00Z"));
        Instant ends = Instant.parse("2026-03-16T15:40:00Z");
        assertThat(Countdown.waiting(start, THREE_DAYS, List.of(), ends.minusSeconds(60)))
                .isEqualTo(new Countdown.Waiting(Duration.ofMinutes(1), ends));
        assertThat(Countdown.waiting(start, THREE_DAYS, List.of(), ends)).isEqualTo(new Countdown.Over(ends));
        assertThat(Countdown.waiting(start, THREE_DAYS, List.of(), ends).letsThrough())
                .isTrue();
    }

    @Test
    void aDoubtfulStartClosesAWindowEarlyAndEndsAWaitLate() {
        DoubtfulStart start = DoubtfulStart.told(
                QUENCHED, Duration.ofMinutes(2), Duration.ofMinutes(5), QUENCHED.plus(Duration.ofHours(1)));
        assertThat(start.earliest()).isEqualTo("2026-03-18T05:33:00Z");
        assertThat(start.latest()).isEqualTo("2026-03-18T05:43:00Z");
        Instant now = QUENCHED.plus(Duration.ofHours(2));
        assertThat(Countdown.window(start, FOUR_HOURS, List.of(), now))
                .isEqualTo(new Countdown.Open(Duration.ofMinutes(113), Instant.parse("2026-03-18T09:33:00Z")));
        assertThat(Countdown.waiting(start, FOUR_HOURS, List.of(), now))
                .isEqualTo(new Countdown.Waiting(Duration.ofMinutes(123), Instant.parse("2026-03-18T09:43:00Z")));
    }

    @Test
    void aStartIsNeverLaterThanItWasHeardOf() {
        Instant received = QUENCHED;
        DoubtfulStart start =
                DoubtfulStart.told(QUENCHED.plus(Duration.ofDays(3)), Duration.ZERO, Duration.ofMinutes(1), received);
        assertThat(start.latest()).isEqualTo(received);
        assertThat(start.earliest()).isEqualTo(received);
    }

    @Test
    void aClockStandsWhileItIsPausedAndRunsOnAfterwards() {
        DoubtfulStart start = DoubtfulStart.at(QUENCHED);
        Instant cold = QUENCHED.plus(Duration.ofHours(1));
        Instant later = QUENCHED.plus(Duration.ofHours(30));
        assertThat(Countdown.window(start, FOUR_HOURS, List.of(new Pause(cold, null)), later))
                .isEqualTo(new Countdown.OpenPaused(Duration.ofHours(3)));
        Instant out = QUENCHED.plus(Duration.ofHours(31));
        assertThat(Countdown.window(start, FOUR_HOURS, List.of(new Pause(cold, out)), out.plus(Duration.ofHours(1))))
                .isEqualTo(new Countdown.Open(Duration.ofHours(2), out.plus(Duration.ofHours(3))));
        assertThat(Countdown.waiting(start, THREE_DAYS, List.of(new Pause(cold, null)), later))
                .isEqualTo(new Countdown.WaitingPaused(Duration.ofHours(71)));
    }

    @Test
    void aPauseAfterTheWindowClosedOpensNothing() {
        Instant closed = QUENCHED.plus(FOUR_HOURS);
        Pause tooLate = new Pause(closed.plusSeconds(1), null);
        assertThat(Countdown.window(DoubtfulStart.at(QUENCHED), FOUR_HOURS, List.of(tooLate), closed.plusSeconds(3600)))
                .isEqualTo(new Countdown.Closed(closed));
    }

    @Test
    void overlappingPausesCountOnce() {
        List<Pause> pauses = List.of(
                new Pause(QUENCHED.plusSeconds(3600), QUENCHED.plusSeconds(7200)),
                new Pause(QUENCHED.plusSeconds(5400), QUENCHED.plusSeconds(9000)),
                new Pause(QUENCHED.plusSeconds(4000), QUENCHED.plusSeconds(5000)));
        Instant now = QUENCHED.plusSeconds(9000);
        assertThat(Countdown.window(DoubtfulStart.at(QUENCHED), FOUR_HOURS, pauses, now))
                .isEqualTo(new Countdown.Open(Duration.ofHours(3), now.plus(Duration.ofHours(3))));
    }

    @Test
    void aStartAheadOfNowIsNotAStart() {
        assertThat(Countdown.window(DoubtfulStart.at(QUENCHED), FOUR_HOURS, List.of(), QUENCHED.minusSeconds(1)))
                .isEqualTo(new Countdown.NotStarted(QUENCHED));
        assertThat(new Countdown.NotStarted(QUENCHED).letsThrough()).isFalse();
    }

    /** On 29 March 2026 the clocks of Stockholm go from 02:00 to 03:00 (Directive 2000/84/EC). */
    @Test
    void summerTimeTakesNoHourFromAWindow() {
        ZoneId zone = ZoneId.of("Europe/Stockholm");
        Instant start = ZonedDateTime.of(2026, 3, 29, 1, 30, 0, 0, zone).toInstant();
        Instant shown = ZonedDateTime.of(2026, 3, 29, 6, 30, 0, 0, zone).toInstant();
        assertThat(Countdown.window(DoubtfulStart.at(start), FOUR_HOURS, List.of(), shown))
                .isEqualTo(new Countdown.Open(Duration.ZERO, shown));
    }

    /** Against a count of the minutes one by one, which is slow and plain. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21})
    void pausesAreTheMinutesThatDoNotCount(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            List<Pause> pauses = random.ints(random.nextInt(5), 0, 400)
                    .mapToObj(from -> new Pause(minute(from), minute(from + random.nextInt(120))))
                    .toList();
            int now = random.nextInt(700);
            int left = 240;
            for (int m = 0; m < now && left >= 0; m++) {
                Instant at = minute(m);
                boolean stands = pauses.stream().anyMatch(p -> !p.from().isAfter(at) && at.isBefore(p.until()));
                left -= stands ? 0 : 1;
            }
            Countdown state = Countdown.window(DoubtfulStart.at(QUENCHED), FOUR_HOURS, pauses, minute(now));
            if (state instanceof Countdown.Open open) {
                assertThat(open.left()).isEqualTo(Duration.ofMinutes(left));
            } else if (state instanceof Countdown.OpenPaused paused) {
                assertThat(paused.left()).isEqualTo(Duration.ofMinutes(left));
            } else {
                assertThat(left).isLessThanOrEqualTo(0);
            }
        }
    }

    private static Instant minute(int minute) {
        return QUENCHED.plus(Duration.ofMinutes(minute));
    }
}
