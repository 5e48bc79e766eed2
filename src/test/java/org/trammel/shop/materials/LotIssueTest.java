package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@ShopTest
@RecordApplicationEvents
class LotIssueTest {

    @Autowired
    private Lots lots;

    @Autowired
    private LotRegister register;

    @Autowired
    private Fits fits;

    @Autowired
    private TestCrew crew;

    @Autowired
    private TestClock clock;

    @Autowired
    private Statements statements;

    @Autowired
    private ApplicationEvents events;

    private long qa;
    private Rack rack;

    @BeforeEach
    void hire() {
        qa = crew.hire(Role.QA_LEAD);
        rack = new Rack(register, crew, qa);
    }

    @Test
    void aLotIsFoundFromItsFramesAndAFrameFromItsLots() {
        String serial = Rack.serial();
        String tube = rack.released(Rack.tube("AL6061"));
        String rod = rack.released(Rack.classed(LotKind.FILLER, "ER4643"));
        issue(tube, Rack.frame(serial, "AL6061"), null);
        issue(tube, new Destination(serial, "SA", "AL6061", null, "020", "CS"), null);
        issue(rod, new Destination(serial, "FT", "AL6061", "TIG", "070", "HT/DT"), null);
        assertThat(lots.wentInto(tube))
                .extracting(WentInto::serial, WentInto::part, WentInto::position)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(serial, "", "DT"),
                        org.assertj.core.groups.Tuple.tuple(serial, "SA", "CS"));
        assertThat(lots.madeOf(serial)).extracting(MadeOf::lot).containsExactly(tube, rod, tube);
        assertThat(lots.madeOf(serial + "-FT")).hasSize(3);
    }

    @Test
    void aScrappedPieceStaysOnRecord() {
        String serial = Rack.serial();
        String tube = rack.released(Rack.tube("AL6061"));
        long use = issue(tube, Rack.frame(serial, "AL6061"), null);
        issue(tube, Rack.frame(serial, "AL6061"), null);
        lots.scrap(act(), use, "mitre cut at the wrong end");
        assertThat(lots.wentInto(tube)).extracting(WentInto::scrapped).containsExactly(true, false);
        assertThat(lots.madeOf(serial)).extracting(MadeOf::scrapped).containsExactly(true, false);
        assertThatThrownBy(() -> lots.scrap(act(), use, "again")).isInstanceOf(Refusal.class);
    }

    @Test
    void aLotQuarantinedAfterHalfOfItIsUsedIssuesNoMoreAndKeepsWhatItWentInto() {
        String serial = Rack.serial();
        String tube = rack.released(Rack.counted("6000", "mm"));
        issue(tube, Rack.frame(serial, "AL6061"), "3000");
        register.quarantine(act(), tube, "dented in the rack");
        Refusal refusal = refused(tube, Rack.frame(serial, "AL6061"), "741");
        assertThat(refusal.why()).contains("quarantined", "dented in the rack");
        assertThat(lots.wentInto(tube)).hasSize(1);
    }

    /** Stockholm is UTC+1 until the last Sunday of March (tz database): its midnight is 23:00 UTC. */
    @Test
    void aPowderIsGoodThroughItsLastDayInTheShopsZone() {
        String powder =
                rack.released(Rack.lot(LotKind.POWDER, null, "LOW-BAKE", null, LocalDate.of(2026, 3, 31), null, ""));
        Destination frame = Rack.frame(Rack.serial(), "AL7005");
        // The clocks go forward on 2026-03-29: midnight is 22:00 UTC from then on.
        clock.setTo(Instant.parse("2026-03-31T21:59:59Z"));
        issue(powder, frame, null);
        clock.setTo(Instant.parse("2026-03-31T22:00:00Z"));
        assertThat(refused(powder, frame, null).why()).contains("2026-03-31");
    }

    @ParameterizedTest
    @CsvSource({"AL7005,AL6061", "AL6061,AL7005", "AL6061,STEEL", "STEEL,TI", "TI,AL6061"})
    void aTubeOfAnotherMetalIsRefused(String tube, String frame) {
        String code = rack.released(Rack.tube(tube));
        Refusal refusal = refused(code, Rack.frame(Rack.serial(), frame), null);
        assertThat(refusal.field()).isEqualTo("lot");
        assertThat(refusal.why()).contains(Fits.named(tube), Fits.named(frame));
    }

    @Test
    void aFillerOfOneFamilyGoesOntoNoOtherAndNoLineOfTheTableCanAllowIt() {
        for (MaterialClass filler : fits.classes()) {
            if (filler.kind() != LotKind.FILLER) {
                continue;
            }
            assertThat(filler.family()).as(filler.code()).isNotNull();
            String code = rack.released(Rack.classed(LotKind.FILLER, filler.code()));
            for (String metal : List.of("AL6061", "AL7005", "STEEL", "TI")) {
                if (MetalFamily.of(metal) != filler.family()) {
                    assertThatThrownBy(() -> fits.allow(
                                    act(), filler.code(), metal, "TIG", Fit.AfterWeld.ANY, "somebody said so"))
                            .isInstanceOf(Refusal.class);
                    refused(code, new Destination(Rack.serial(), "", metal, "TIG", "070", "HT/DT"), null);
                }
            }
        }
    }

    /**
     * Which wire fits which metal: 4643 and 4043 for 6061 that is solution treated and aged, the Al-Mg wires for 7005
     * only, as welding handbooks have it (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "ER4643,AL6061,TIG,true",
        "ER4043,AL6061,TIG,true",
        "ER5356,AL6061,TIG,false",
        "ER5356,AL7005,TIG,true",
        "ER5183,AL7005,TIG,true",
        "ER5556,AL7005,TIG,true",
        "ER4643,AL7005,TIG,false",
        "ER80S,STEEL,TIG,true",
        "ER80S,STEEL,BRAZE,false",
        "BRAZE-SILVER,STEEL,BRAZE,true",
        "BRAZE-SILVER,STEEL,TIG,false",
        "BRAZE-SILVER,AL6061,BRAZE,false",
        "TI-3AL-2.5V,TI,TIG,true",
        "ER80S,AL6061,TIG,false",
        "ER70S,AL7005,TIG,false"
    })
    void aFillerGoesWhereTheTableAllowsItAndNowhereElse(String filler, String metal, String process, boolean may) {
        String code = rack.released(Rack.classed(LotKind.FILLER, filler));
        Destination weld = new Destination(Rack.serial(), "", metal, process, "070", "HT/DT");
        if (may) {
            issue(code, weld, null);
        } else {
            assertThat(refused(code, weld, null).instead()).isNotBlank();
        }
    }

    @Test
    void aLineTheQaLeadAddsAllowsAndALineTheQaLeadEndsAllowsNoMore() {
        String code = rack.released(Rack.classed(LotKind.FILLER, "ER5183"));
        Destination weld = new Destination(Rack.serial(), "", "AL6061", "TIG", "070", "HT/DT");
        refused(code, weld, null);
        Fit fit = fits.allow(act(), "ER5183", "AL6061", "TIG", Fit.AfterWeld.SOLUTION_AGE, "own trial 12");
        issue(code, weld, null);
        fits.end(act(), fit.id(), "coupons were soft");
        refused(code, weld, null);
        long owner = crew.hire(Role.OWNER);
        assertThatThrownBy(
                        () -> fits.allow(crew.act(owner), "ER5183", "AL6061", "TIG", Fit.AfterWeld.ANY, "own trial 12"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.PERSON));
    }

    @Test
    void blastMediaKeptForSteelBlastsNoAluminiumAndNoTitanium() {
        String alumina = rack.released(Rack.lot(LotKind.MEDIA, null, "ALUMINA", MetalFamily.STEEL, null, null, ""));
        issue(alumina, Rack.frame(Rack.serial(), "STEEL"), null);
        assertThat(refused(alumina, Rack.frame(Rack.serial(), "AL6061"), null).why())
                .contains("steel", "aluminium");
        refused(alumina, Rack.frame(Rack.serial(), "TI"), null);
        String shot = rack.released(Rack.lot(LotKind.MEDIA, null, "STEEL-SHOT", MetalFamily.ALUMINIUM, null, null, ""));
        refused(shot, Rack.frame(Rack.serial(), "AL6061"), null);
    }

    @Test
    void aPowderThatBakesHotIsRefusedOn7005() {
        String powder = rack.released(Rack.classed(LotKind.POWDER, "HIGH-BAKE"));
        issue(powder, Rack.frame(Rack.serial(), "AL6061"), null);
        assertThat(refused(powder, Rack.frame(Rack.serial(), "AL7005"), null).instead())
                .contains("LOW-BAKE");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "0.0001", "1e11"})
    void aPieceOfNoLengthIsRefused(String quantity) {
        String tube = rack.released(Rack.counted("6000", "mm"));
        assertThat(refused(tube, Rack.frame(Rack.serial(), "AL6061"), quantity).field())
                .isEqualTo("quantity");
        assertThat(lots.byCode(tube).orElseThrow().quantityLeft()).isEqualByComparingTo("6000");
    }

    @Test
    void moreThanIsLeftIsRefusedAndTheLastOfItUsesTheLotUp() {
        String tube = rack.released(Rack.counted("1000", "mm"));
        issue(tube, Rack.frame(Rack.serial(), "AL6061"), "741.2");
        assertThat(refused(tube, Rack.frame(Rack.serial(), "AL6061"), "258.801").why())
                .contains("258.8");
        issue(tube, Rack.frame(Rack.serial(), "AL6061"), "258.8");
        assertThat(lots.byCode(tube).orElseThrow().state()).isEqualTo(LotState.USED_UP);
    }

    @Test
    void aPieceInAnotherUnitIsRefused() {
        String tube = rack.released(Rack.counted("6000", "mm"));
        assertThatThrownBy(() -> lots.issue(
                        act(), tube, Rack.frame(Rack.serial(), "AL6061"), null, new BigDecimal("29.18"), "in"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("quantity"));
    }

    @Test
    void aStepThatAsksForAnotherKindRefusesTheLot() {
        String rod = rack.released(Rack.classed(LotKind.FILLER, "ER4643"));
        assertThatThrownBy(() -> lots.issue(act(), rod, Rack.frame(Rack.serial(), "AL6061"), LotKind.TUBE, null, null))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.why()).contains("tube"));
    }

    @Test
    void aRemnantKeepsItsLotAndGivesNoMoreThanItHolds() {
        String serial = Rack.serial();
        String tube = rack.released(Rack.counted("3000", "mm"));
        String other = rack.released(Rack.counted("3000", "mm"));
        long use = issue(tube, Rack.frame(serial, "AL6061"), "1000");
        assertThatThrownBy(() -> lots.returnRemnant(act(), use, other, new BigDecimal("250")))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.why()).contains("one lot"));
        Remnant remnant = lots.returnRemnant(act(), use, tube, new BigDecimal("250"));
        assertThat(remnant.code()).isEqualTo(tube + "/R1");
        assertThatThrownBy(() -> lots.returnRemnant(act(), use, tube, new BigDecimal("750")))
                .isInstanceOf(Refusal.class);
        String second = Rack.serial();
        refused(remnant.code(), Rack.frame(second, "AL6061"), "250.5");
        issue(remnant.code(), Rack.frame(second, "AL6061"), "200");
        refused(remnant.code(), Rack.frame(second, "AL6061"), "50.5");
        assertThat(lots.madeOf(second)).singleElement().satisfies(made -> {
            assertThat(made.lot()).isEqualTo(tube);
            assertThat(made.remnant()).isEqualTo(1);
        });
        assertThat(lots.byCode(tube).orElseThrow().quantityLeft()).isEqualByComparingTo("2000");
        assertThat(lots.remnants(tube))
                .singleElement()
                .satisfies(left -> assertThat(left.quantityLeft()).isEqualByComparingTo("50"));
        register.block(act(), tube, "maker's letter");
        refused(remnant.code(), Rack.frame(second, "AL6061"), "10");
    }

    @Test
    void anUnknownOrEmptyCodeIsRefused() {
        assertThat(refused("NO-SUCH-LOT", Rack.frame(Rack.serial(), "AL6061"), null)
                        .why())
                .contains("NO-SUCH-LOT");
        assertThat(refused("  ", Rack.frame(Rack.serial(), "AL6061"), null).why())
                .contains("No code");
        assertThat(lots.byCode("<script>")).isEmpty();
        assertThat(lots.wentInto("x'; drop table lot;--")).isEmpty();
    }

    @Test
    void aBlockNamesEveryFrameTheLotWentInto() {
        String first = Rack.serial();
        String second = Rack.serial();
        String rod = rack.released(Rack.classed(LotKind.FILLER, "ER4643"));
        long scrapped = issue(rod, new Destination(first, "FT", "AL6061", "TIG", "070", "HT/DT"), null);
        lots.scrap(act(), scrapped, "burnt through");
        issue(rod, new Destination(second, "", "AL6061", "TIG", "070", "HT/DT"), null);
        register.block(act(), rod, "maker's letter");
        assertThat(events.stream(LotBlocked.class).filter(event -> event.code().equals(rod)))
                .singleElement()
                .satisfies(event -> assertThat(event.wentInto())
                        .extracting(WentInto::serial)
                        .containsExactlyInAnyOrder(first, second));
    }

    @Test
    void whileALotIsBlockedNoFrameSlipsInUnseen() throws Exception {
        String rod = rack.released(Rack.classed(LotKind.FILLER, "ER4643"));
        ExecutorService hands = Executors.newFixedThreadPool(4);
        List<Future<?>> issues = new ArrayList<>();
        try {
            for (int i = 0; i < 12; i++) {
                Destination weld = new Destination(Rack.serial(), "", "AL6061", "TIG", "070", "HT/DT");
                Act act = act();
                issues.add(hands.submit(() -> lots.issue(act, rod, weld, LotKind.FILLER, null, null)));
            }
            register.block(act(), rod, "maker's letter");
            for (Future<?> issue : issues) {
                try {
                    issue.get(20, TimeUnit.SECONDS);
                } catch (java.util.concurrent.ExecutionException refused) {
                    assertThat(refused.getCause()).isInstanceOf(Refusal.class);
                }
            }
        } finally {
            hands.shutdownNow();
        }
        List<WentInto> told = events.stream(LotBlocked.class)
                .filter(event -> event.code().equals(rod))
                .findFirst()
                .orElseThrow()
                .wentInto();
        assertThat(lots.wentInto(rod)).isEqualTo(told);
    }

    @Test
    void theSameActTwiceIsOneUse() {
        String tube = rack.released(Rack.tube("AL6061"));
        Destination frame = Rack.frame(Rack.serial(), "AL6061");
        Act act = act();
        long first = lots.issue(act, tube, frame, null, null, null);
        assertThat(lots.issue(act, tube, frame, null, null, null)).isEqualTo(first);
        assertThat(lots.wentInto(tube)).hasSize(1);
    }

    @Test
    void aPageOfLotsIsOneStatementAndGoesOnWhereTheLastEnded() throws Exception {
        for (int i = 0; i < 5; i++) {
            rack.received(Rack.lot(LotKind.ADHESIVE, null, null, null, null, null, ""));
        }
        List<Lot> first = lots.page(null, LotKind.ADHESIVE, null, 3);
        List<Lot> second = lots.page(first.get(2).id(), LotKind.ADHESIVE, LotState.QUARANTINED, 2);
        assertThat(first).hasSize(3);
        assertThat(second).hasSize(2).doesNotContainAnyElementsOf(first);
        assertThat(statements.during(() -> lots.page(null, null, null, 200))).hasSize(1);
        String serial = Rack.serial();
        assertThat(statements.during(() -> lots.madeOf(serial))).hasSize(1);
    }

    @Test
    void whatExpiresSoonIsToldBeforeItDoes() {
        String soon =
                rack.released(Rack.lot(LotKind.POWDER, null, "LOW-BAKE", null, LocalDate.of(2026, 3, 31), null, ""));
        String late =
                rack.released(Rack.lot(LotKind.POWDER, null, "LOW-BAKE", null, LocalDate.of(2026, 9, 30), null, ""));
        assertThat(lots.expiring(LocalDate.of(2026, 4, 17)))
                .extracting(Lot::code)
                .contains(soon)
                .doesNotContain(late);
    }

    private long issue(String lot, Destination to, @Nullable String quantity) {
        return lots.issue(act(), lot, to, null, quantity == null ? null : new BigDecimal(quantity), null);
    }

    private Refusal refused(String lot, Destination to, @Nullable String quantity) {
        int before = lots.madeOf(to.serial()).size();
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> issue(lot, to, quantity));
        assertThat(refusal.what()).isNotBlank();
        assertThat(refusal.why()).isNotBlank();
        assertThat(refusal.instead()).isNotBlank();
        assertThat(lots.madeOf(to.serial())).hasSize(before);
        return refusal;
    }

    private Act act() {
        return crew.act(qa);
    }
}
