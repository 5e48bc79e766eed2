package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.springframework.test.util.ReflectionTestUtils;
import org.trammel.shop.records.Refusal;

class NonconformanceStatesTest {

    private static final Instant NOW = Instant.parse("2026-03-18T07:30:00Z");

    private Nonconformance it;

    @BeforeEach
    void opened() {
        it = new Nonconformance(new Nonconformance.Found("AV26101H", "", 1, 2, "100", 3L, "100-1", 4L), "070", 5, NOW);
        ReflectionTestUtils.setField(it, "id", 12L);
    }

    @ParameterizedTest(name = "{0}: {1} → {2}")
    @CsvFileSource(resources = "/states/nonconformance.csv", numLinesToSkip = 1)
    void goesWhereTheTableSaysOrRefusesNamingItsState(NonconformanceState state, String verb, String after) {
        bringTo(state);
        if (after.equals("refused")) {
            assertThatThrownBy(() -> carryOut(verb))
                    .isInstanceOfSatisfying(
                            Refusal.class, refused -> assertThat(refused.why()).contains(state.word()));
            assertThat(it.state()).isEqualTo(state);
        } else {
            carryOut(verb);
            assertThat(it.state()).isEqualTo(NonconformanceState.valueOf(after));
        }
    }

    private void bringTo(NonconformanceState state) {
        if (state.compareTo(NonconformanceState.PROPOSED) >= 0) {
            carryOut("propose");
        }
        if (state.compareTo(NonconformanceState.DECIDED) >= 0) {
            carryOut("decide");
        }
        if (state == NonconformanceState.CLOSED) {
            carryOut("close");
        }
    }

    private void carryOut(String verb) {
        switch (verb) {
            case "blame" -> it.blame("060");
            case "propose" ->
                it.propose(new Proposal(
                        Decision.REWORK, "set it again", "100", null, null, false, null, false, null, null, Set.of()));
            case "decide" -> it.decided(NOW);
            case "close" -> it.close(7, NOW);
            default -> throw new IllegalArgumentException(verb);
        }
    }
}
