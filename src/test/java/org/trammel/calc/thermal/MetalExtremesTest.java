package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.trammel.calc.units.Answer;

/** The coldest and hottest readings of a load; figures picked by hand from a table of five rows. */
class MetalExtremesTest {

    private static final Instant BEGAN = Instant.parse("2026-03-10T18:00:00Z");
    private static final String LOG = """
            time;A °C;B °C;wall °C
            2026-03-10 18:00:00;20;21;90
            2026-03-10 18:10:00;525;531;560
            2026-03-10 18:20:00;529;534;561
            2026-03-10 18:30:00;521;533;562
            2026-03-10 18:40:00;100;140;300
            """;

    @Test
    void onlyWhatTheLoadReadsCounts() throws IOException {
        MetalExtremes all = MetalExtremes.of(trace(0));
        assertThat(all.lowest_degC()).isEqualTo(20);
        assertThat(all.highest_degC()).isEqualTo(534);
    }

    @Test
    void aPartIsToldByTheReadingsInItItsEndsIncluded() throws IOException {
        assertThat(MetalExtremes.of(trace(0), part(10, 30))).hasValueSatisfying(soak -> {
            assertThat(soak.lowest_degC()).isEqualTo(521);
            assertThat(soak.highest_degC()).isEqualTo(534);
        });
        assertThat(MetalExtremes.of(trace(0), part(11, 19))).isEmpty();
    }

    @Test
    void aThermocoupleThatReadsHighIsCorrected() throws IOException {
        assertThat(MetalExtremes.of(trace(7)).highest_degC()).isEqualTo(527);
    }

    private static LoadTrace.Stretch part(int fromMinute, int untilMinute) {
        return new LoadTrace.Stretch(
                BEGAN.plus(Duration.ofMinutes(fromMinute)), BEGAN.plus(Duration.ofMinutes(untilMinute)));
    }

    private static LoadTrace trace(double error_K) throws IOException {
        Samples samples = ((Answer.Determined<ReadLog>)
                        LoggerFile.read(new StringReader(LOG), LogChoices.in(ZoneId.of("UTC"))))
                .value()
                .samples();
        List<Thermocouple> wired = List.of(
                Thermocouple.of("A", ThermocoupleRole.LOAD).alsoHighBy(error_K),
                Thermocouple.of("B", ThermocoupleRole.LOAD).alsoHighBy(error_K),
                Thermocouple.of("wall", ThermocoupleRole.CONTROL));
        return ((Answer.Determined<LoadTrace>) LoadTrace.of(samples, wired, Duration.ofMinutes(15))).value();
    }
}
