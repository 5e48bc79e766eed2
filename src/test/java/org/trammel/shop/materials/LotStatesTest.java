package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@ShopTest
class LotStatesTest {

    @Autowired
    private Lots lots;

    @Autowired
    private LotRegister register;

    @Autowired
    private TestCrew crew;

    private long qa;
    private Rack rack;

    @BeforeEach
    void hire() {
        qa = crew.hire(Role.QA_LEAD);
        rack = new Rack(register, crew, qa);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/materials/states.csv", delimiter = ';')
    void aVerbIsRefusedInEveryStateItHasNoBusinessIn(LotState found, String verb, String after) {
        String code = in(found);
        Lot before = lots.byCode(code).orElseThrow();
        if (after.equals("refused")) {
            Refusal refusal = catchThrowableOfType(Refusal.class, () -> does(verb, code, qa));
            assertThat(refusal.kind()).isEqualTo(Refusal.Kind.STATE);
            assertThat(refusal.why()).contains(found.word());
            assertThat(refusal.instead()).isNotBlank();
            assertThat(lots.byCode(code)).contains(before);
        } else {
            does(verb, code, qa);
            assertThat(lots.byCode(code).orElseThrow().state()).isEqualTo(LotState.valueOf(after));
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/materials/rights.csv", delimiter = ';')
    void aVerbIsForThoseWhoMay(String verb, String may, String mayNot) {
        LotState needed = switch (verb) {
            case "receive", "correct", "certify", "release" -> LotState.QUARANTINED;
            default -> LotState.RELEASED;
        };
        roles(mayNot).forEach(role -> {
            String code = in(needed);
            long person = crew.hire(role);
            assertThatThrownBy(() -> does(verb, code, person))
                    .isInstanceOfSatisfying(
                            Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.PERSON));
        });
        roles(may).forEach(role -> does(verb, in(needed), crew.hire(role)));
    }

    private static Stream<Role> roles(String names) {
        return Arrays.stream(names.split(",")).map(Role::valueOf);
    }

    @Test
    void aLotWithoutACertificateIsNotReleased() {
        String code = rack.received(Rack.tube("AL7005"));
        assertThatThrownBy(() -> register.release(act(), code))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.why()).contains("no certificate"));
        assertThat(lots.byCode(code).orElseThrow().state()).isEqualTo(LotState.QUARANTINED);
    }

    @Test
    void aTubeWithoutAHeatNumberIsNotReleased() {
        NewLot tube = Rack.tube("STEEL");
        String code = rack.certified(new NewLot(
                tube.code(),
                tube.kind(),
                tube.what(),
                tube.metal(),
                null,
                "",
                "",
                null,
                "",
                tube.receivedOn(),
                null,
                null,
                ""));
        assertThatThrownBy(() -> register.release(act(), code))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.why()).contains("heat"));
    }

    @Test
    void aLotThatWasUsedUpAndBlockedIsUsedUpAgainWhenItIsCleared() {
        String code = in(LotState.USED_UP);
        register.block(act(), code, "maker's letter");
        assertThat(register.release(act(), code).state()).isEqualTo(LotState.USED_UP);
    }

    @Test
    void aCodeIsNeverGivenTwice() {
        NewLot lot = Rack.tube("AL6061");
        rack.received(lot);
        assertThatThrownBy(() -> rack.received(lot))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("code"));
    }

    @Test
    void theSameActTwiceIsOneLot() {
        Act act = act();
        NewLot lot = Rack.tube("AL6061");
        assertThat(register.receive(act, lot)).isEqualTo(register.receive(act, lot));
    }

    @Test
    void aCorrectionOfALotSomebodyElseCorrectedMeanwhileIsStale() {
        NewLot lot = Rack.tube("AL6061");
        String code = rack.received(lot);
        long seen = lots.byCode(code).orElseThrow().version();
        register.correct(act(), code, seen, Rack.counted("12000", "mm"));
        assertThatThrownBy(() -> register.correct(act(), code, seen, lot))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.STALE));
        assertThat(lots.byCode(code).orElseThrow().unit()).isEqualTo("mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"FILLER", "MEDIA", "POWDER", "GAS", "FLUX"})
    void whatTheTableOfFitsDecidesOverNeedsItsClass(LotKind kind) {
        assertThatThrownBy(() -> rack.received(Rack.lot(kind, null, null, MetalFamily.STEEL, null, null, "")))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("materialClass"));
        assertThatThrownBy(() -> rack.received(Rack.lot(
                        kind, null, kind == LotKind.FILLER ? "ARGON" : "ER4643", MetalFamily.STEEL, null, null, "")))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void blastMediaSaysForWhichMetalItIsKept() {
        assertThatThrownBy(() -> rack.received(Rack.lot(LotKind.MEDIA, null, "ALUMINA", null, null, null, "")))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("reservedFor"));
    }

    private String in(LotState state) {
        String code = rack.certified(Rack.tube("AL6061"));
        if (state != LotState.QUARANTINED) {
            register.release(act(), code);
        }
        if (state == LotState.BLOCKED) {
            register.block(act(), code, "maker's letter");
        }
        if (state == LotState.USED_UP) {
            register.useUp(act(), code, "rack empty");
        }
        return code;
    }

    private void does(String verb, String code, long person) {
        Act act = crew.act(person);
        switch (verb) {
            case "receive" -> register.receive(act, Rack.tube("AL6061"));
            case "correct" ->
                register.correct(act, code, lots.byCode(code).orElseThrow().version(), Rack.tube("AL6061"));
            case "certify" -> register.certify(act, code, "3.1", "C-2", null);
            case "release" -> register.release(act, code);
            case "quarantine" -> register.quarantine(act, code, "wrong colour stripe");
            case "block" -> register.block(act, code, "maker's letter");
            case "useUp" -> register.useUp(act, code, "rack empty");
            case "issue" -> lots.issue(act, code, Rack.frame(Rack.serial(), "AL6061"), LotKind.TUBE, null, null);
            default -> throw new IllegalArgumentException(verb);
        }
    }

    private Act act() {
        return crew.act(qa);
    }
}
