package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.trammel.calc.units.Answer;

/** The time between two taps; every figure is a difference reckoned by hand. */
class QuenchDelayTest {

    private static final Instant NOON = Instant.parse("2026-03-18T12:00:00Z");

    @Test
    void oneDeviceTellsTheTimeByItsOwnClockAndTheServerByItsArrivals() {
        assertSpan(of(tap(1L, 90_000, 0), tap(1L, 98_200, 8_050)), "8.05", "8.2");
    }

    @Test
    void aDeviceThatTellsNoTimeIsBelievedByItsArrivals() {
        assertSpan(of(tap(1L, null, 0), tap(1L, null, 7_500)), "7.5", "7.5");
    }

    /** Out between 11:59:59.6 and 12:00:00, in between 12:00:08 and 12:00:08.5. */
    @Test
    void twoDevicesTellItWithinBothTheirDoubts() {
        assertSpan(of(tap(1L, -400, 0), tap(2L, 8_000, 8_500)), "8", "8.9");
    }

    @Test
    void aClockThatIsFarOffIsNotBelievedAcrossDevices() {
        assertSpan(of(tap(1L, -3_600_000, 0), tap(2L, 3_600_000, 8_500)), "8.5", "8.5");
    }

    @Test
    void theWaterDoesNotComeBeforeTheDoor() {
        assertThat(of(tap(1L, null, 5_000), tap(1L, null, 0))).isInstanceOf(Answer.NotDeterminable.class);
    }

    private static Answer<QuenchDelay> of(QuenchDelay.Tap out, QuenchDelay.Tap in) {
        return QuenchDelay.of(out, in);
    }

    private static QuenchDelay.Tap tap(long device, @Nullable Integer shown_ms, int arrived_ms) {
        return new QuenchDelay.Tap(
                device, shown_ms == null ? null : NOON.plusMillis(shown_ms), NOON.plusMillis(arrived_ms));
    }

    private static void assertSpan(Answer<QuenchDelay> answer, String least, String most) {
        assertThat(answer).isInstanceOfSatisfying(Answer.Determined.class, there -> {
            QuenchDelay delay = (QuenchDelay) there.value();
            assertThat(delay.least_s()).isEqualByComparingTo(new BigDecimal(least));
            assertThat(delay.most_s()).isEqualByComparingTo(new BigDecimal(most));
        });
    }
}
