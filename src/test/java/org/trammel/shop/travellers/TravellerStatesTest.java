package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.trammel.shop.records.Refusal;

class TravellerStatesTest {

    private static final Instant NOW = Instant.parse("2026-03-18T07:30:00Z");

    @ParameterizedTest(name = "{0}: {1} → {2}")
    @CsvFileSource(resources = "/states/traveller.csv", numLinesToSkip = 1)
    void goesWhereTheTableSaysOrRefusesNamingItsState(TravellerState state, String verb, String after) {
        Traveller traveller = in(state);
        if (after.equals("refused")) {
            assertThatThrownBy(() -> carryOut(traveller, verb))
                    .isInstanceOfSatisfying(
                            Refusal.class, refused -> assertThat(refused.why()).contains(state.word()));
            assertThat(traveller.state()).isEqualTo(state);
        } else {
            carryOut(traveller, verb);
            assertThat(traveller.state()).isEqualTo(TravellerState.valueOf(after));
        }
    }

    private static Traveller in(TravellerState state) {
        Traveller traveller = new Traveller(
                new Traveller.Origin("AV26101H", "", null, 1L, "O-101", 1L, "A", "hardtail"),
                new Traveller.Frozen(1, "AL6061", "HARDTAIL"),
                NOW);
        switch (state) {
            case RELEASED -> {
                // as released
            }
            case IN_WORK -> traveller.begin();
            case FINISHED -> traveller.finish(NOW);
            case SHIPPED -> {
                traveller.finish(NOW);
                traveller.ship(NOW);
            }
            case SCRAPPED -> traveller.scrap("NC-0001");
            case WITHDRAWN -> traveller.withdraw("a newer revision takes its place");
        }
        return traveller;
    }

    private static void carryOut(Traveller traveller, String verb) {
        switch (verb) {
            case "work" -> traveller.requireOpen("worked on");
            case "finish" -> traveller.finish(NOW);
            case "ship" -> traveller.ship(NOW);
            case "scrap" -> traveller.scrap("NC-0002");
            case "withdraw" -> traveller.withdraw("a newer revision takes its place");
            default -> throw new IllegalArgumentException(verb);
        }
    }
}
