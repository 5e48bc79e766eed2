package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.thermal.CureWindow;
import org.trammel.calc.units.Answer;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;

/** What the maker's sheet of a powder says, as it is entered with its lot. */
@ShopTest
class PowderSheetTest {

    @Autowired
    private LotRegister register;

    @Autowired
    private PowderSheets sheets;

    @Autowired
    private TestCrew crew;

    private long qa;
    private long worker;
    private String lot;

    @BeforeEach
    void receive() {
        qa = crew.hire(Role.QA_LEAD);
        worker = crew.hire(Role.STATION_WORKER);
        lot = new Rack(register, crew, qa).certified(Rack.classed(LotKind.POWDER, "LOW-BAKE"));
    }

    static NewPowderSheet sheet(@Nullable String colour, @Nullable String energy, String... pairs) {
        return new NewPowderSheet(
                colour,
                Arrays.stream(pairs)
                        .map(pair -> pair.split("@"))
                        .map(pair -> new NewPowderSheet.Pair(new BigDecimal(pair[0]), new BigDecimal(pair[1])))
                        .toList(),
                energy == null ? null : new BigDecimal(energy),
                null,
                null,
                "sheet of a test");
    }

    /** Half the minutes 20 K higher: E = R ln 2 / (1/453.15 K − 1/473.15 K) = 61.8 kJ/mol, Arrhenius' law, by hand. */
    @Test
    void twoPairsGiveTheWindowThatItsRunIsComparedWith() {
        PowderSheet kept = sheets.enter(crew.act(worker), lot, sheet("sand", null, "20@180", "10@200"));
        assertThat(kept.colour()).isEqualTo("sand");
        assertThat(kept.cure()).isEqualTo("20 min at 180 °C or 10 min at 200 °C");
        CureWindow window =
                ((Answer.Determined<CureWindow>) sheets.of(lot).orElseThrow().window()).value();
        assertThat(window.energy_kJPerMol()).isCloseTo(61.8, within(0.05));
        assertThat(window.minutesAt(190)).isCloseTo(Math.sqrt(200), within(0.15));
        assertThat(window.least_share()).isEqualTo(1);
        assertThat(window.most_share()).isEqualTo(1.5);
    }

    @Test
    void theNewestStandsAndAfterTheReleaseTheQaLeadAloneEntersIt() {
        sheets.enter(crew.act(worker), lot, sheet("sand", null, "20@180", "10@200"));
        register.release(crew.act(qa), lot);
        refused(() -> sheets.enter(crew.act(worker), lot, sheet("green", "61.8", "20@160")), "QA lead");
        sheets.enter(crew.act(qa), lot, sheet("green", "61.8", "20@160"));
        assertThat(sheets.of(lot).orElseThrow().colour()).isEqualTo("green");
        assertThat(sheets.history(lot).stream().map(PowderSheet::colour)).containsExactly("sand", "green");
    }

    @Test
    void whatDoesNotHoldTogetherIsRefused() {
        refused(() -> sheets.enter(crew.act(worker), lot, sheet("sand", null, "20@160")), "second pair");
        refused(() -> sheets.enter(crew.act(worker), lot, sheet("sand", null, "10@160", "20@180")), "no faster");
        refused(() -> sheets.enter(crew.act(worker), lot, sheet("sand", "61.8", "20@160", "10@180")), "themselves");
        refused(() -> sheets.enter(crew.act(worker), lot, sheet(" ", "61.8", "20@160")), "colour");
        refused(() -> sheets.enter(crew.act(worker), lot, sheet("sand", "61.8", "20.125@160")), "decimals");
        refused(
                () -> sheets.enter(
                        crew.act(worker),
                        lot,
                        new NewPowderSheet(
                                "sand",
                                List.of(new NewPowderSheet.Pair(BigDecimal.TEN, null)),
                                null,
                                null,
                                null,
                                "sheet")),
                "whole only");
        refused(
                () -> sheets.enter(
                        crew.act(worker),
                        lot,
                        new NewPowderSheet(
                                "sand", List.of(), null, BigDecimal.valueOf(100), BigDecimal.valueOf(90), "sheet")),
                "not above");
        String tube = new Rack(register, crew, qa).certified(Rack.tube("AL6061"));
        refused(() -> sheets.enter(crew.act(worker), tube, sheet("sand", "61.8", "20@160")), "is tube");
        assertThat(sheets.of(lot)).isEmpty();
    }

    private static void refused(ThrowingCallable deed, String says) {
        Refusal refusal = catchThrowableOfType(Refusal.class, deed);
        assertThat(refusal.what() + " " + refusal.why() + " " + refusal.instead())
                .contains(says);
    }
}
