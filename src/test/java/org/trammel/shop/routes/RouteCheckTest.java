package org.trammel.shop.routes;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class RouteCheckTest {

    private static final Function<String, Sheets.Builder> OP = Sheets::operation;

    @Test
    void aSoundRouteHasNoFinding() {
        assertThat(RouteCheck.of(
                        Sheets.route(
                                List.of(
                                        OP.apply("020")
                                                .step(Sheets.starting("Bag", "CLEAN"))
                                                .sheet(),
                                        OP.apply("060")
                                                .hold(Signer.WORKER, Signer.SECOND)
                                                .sheet(),
                                        welding("070").sheet(),
                                        OP.apply("080")
                                                .hold(Signer.QA)
                                                .characteristic(Sheets.characteristic("080-1"))
                                                .sheet()),
                                List.of(Sheets.clock("CLEAN", "020", "070"))),
                        Sheets.SHOP))
                .isEmpty();
    }

    private static Sheets.Builder welding(String code) {
        return OP.apply(code).irreversible().step(new StepSheet("Scan", "", false, false, "FILLER", null, null));
    }

    private static RouteSheet held(OperationSheet... first) {
        return Sheets.route(Stream.concat(
                        Stream.of(first),
                        Stream.of(OP.apply("190").hold(Signer.QA).sheet()))
                .toArray(OperationSheet[]::new));
    }

    private static RouteSheet with(CharacteristicSheet c) {
        return held(OP.apply("020").sheet(), OP.apply("080").characteristic(c).sheet());
    }

    private static RouteSheet with(ClockSheet... clocks) {
        return Sheets.route(
                List.of(
                        OP.apply("020").sheet(),
                        OP.apply("060").sheet(),
                        OP.apply("190").hold(Signer.QA).sheet()),
                List.of(clocks));
    }

    static Stream<Arguments> spoiled() {
        CharacteristicSheet c = Sheets.characteristic("080-1");
        return Stream.of(
                Arguments.of("no operation", Sheets.route(), "", "no operation"),
                Arguments.of("no hold", Sheets.route(OP.apply("020").sheet()), "", "no hold point"),
                Arguments.of(
                        "code twice",
                        held(OP.apply("020").sheet(), OP.apply("020").sheet()),
                        "020",
                        "Two operations have this code"),
                Arguments.of(
                        "characteristic twice",
                        held(
                                OP.apply("020").characteristic(c).sheet(),
                                OP.apply("030").characteristic(c).sheet()),
                        "080-1",
                        "Two characteristics"),
                Arguments.of("empty", held(OP.apply("020").bare().sheet()), "020", "no step and no characteristic"),
                Arguments.of("station", held(OP.apply("020").at("77").sheet()), "020", "no station 77"),
                Arguments.of("no station", held(OP.apply("020").at("").sheet()), "020", "No station is named"),
                Arguments.of(
                        "long caution",
                        held(OP.apply("020")
                                .caution("one two three four five six seven eight nine ten eleven twelve thirteen")
                                .sheet()),
                        "020",
                        "13 words"),
                Arguments.of("nobody signs", held(OP.apply("020").hold().sheet()), "020", "nobody who signs"),
                Arguments.of(
                        "doer alone", held(OP.apply("020").hold(Signer.WORKER).sheet()), "020", "nobody else"),
                Arguments.of(
                        "signers without gate",
                        held(OP.apply("020").signers(Signer.QA).sheet()),
                        "020",
                        "there is no gate"),
                Arguments.of(
                        "irreversible last",
                        Sheets.route(
                                OP.apply("020").hold(Signer.QA).sheet(),
                                OP.apply("030").irreversible().sheet()),
                        "030",
                        "no hold point follows"),
                Arguments.of(
                        "joined before any gate",
                        held(welding("070").sheet()),
                        "070",
                        "no hold point stands before it"),
                Arguments.of("joins nothing", held(OP.apply("170").joins().sheet()), "170", "names none"),
                Arguments.of("no limit", with(edited(c, null, null, c.rule(), "CALLIPER")), "080-1", "It has no limit"),
                Arguments.of(
                        "limits crossed",
                        with(edited(c, new BigDecimal("1"), new BigDecimal("0.5"), c.rule(), "CALLIPER")),
                        "080-1",
                        "is not below"),
                Arguments.of(
                        "guarded by an aid",
                        with(edited(c, c.lowerDeviation(), c.upperDeviation(), Rule.GUARDED, "FEELER")),
                        "080-1",
                        "needs an uncertainty"),
                Arguments.of("points", with(reduced(c, Reduction.SINGLE, "a", "b")), "080-1", "2 sample points"),
                Arguments.of("span", with(reduced(c, Reduction.SPAN, "a")), "080-1", "A span needs two"),
                Arguments.of(
                        "a fifth set aside and an upper limit",
                        with(reduced(c, Reduction.ALL_BUT_FIFTH, "a", "b", "c", "d", "e")),
                        "080-1",
                        "says nothing about an upper limit"),
                Arguments.of("signs nobody", with(signed(c, List.of(), false, false)), "080-1", "Nobody signs"),
                Arguments.of(
                        "two people, one signs",
                        with(signed(c, List.of(Signer.WORKER), true, false)),
                        "080-1",
                        "no second person signs"),
                Arguments.of("blind without nominal", with(blind(c)), "080-1", "no nominal to compare"),
                Arguments.of("cold-set clock", with(coldSet(c, "NOT-THERE", true)), "080-1", "does not have"),
                Arguments.of("cold-set not deciding", with(coldSet(c, "X", false)), "080-1", "does not decide"),
                Arguments.of("clock twice", with(clock("X"), clock("X")), "X", "Two clocks"),
                Arguments.of("unknown start", with(Sheets.clock("X", "777", "060")), "X", "started by operation 777"),
                Arguments.of("unknown gate", with(Sheets.clock("X", "020", "777")), "X", "names operation 777"),
                Arguments.of("gate before start", with(Sheets.clock("X", "060", "020")), "X", "does not come after"),
                Arguments.of("no gate", with(Sheets.clock("X", "020")), "X", "closes and opens nothing"),
                Arguments.of(
                        "wait without gate",
                        with(new ClockSheet("X", "X", ClockKind.WAIT, 60, "020", List.of(), "own")),
                        "X",
                        "closes and opens nothing"),
                Arguments.of(
                        "step starts no clock",
                        held(OP.apply("020")
                                .step(Sheets.starting("Bag", "CLEAN"))
                                .sheet()),
                        "020",
                        "which the route does not have"),
                Arguments.of(
                        "step starts another's clock",
                        Sheets.route(
                                List.of(
                                        OP.apply("020")
                                                .step(Sheets.starting("Bag", "X"))
                                                .sheet(),
                                        OP.apply("030").sheet(),
                                        OP.apply("190").hold(Signer.QA).sheet()),
                                List.of(Sheets.clock("X", "030", "190"))),
                        "020",
                        "names another operation as its start"),
                Arguments.of(
                        "cold-set before its window",
                        Sheets.route(
                                List.of(
                                        OP.apply("080")
                                                .characteristic(coldSet(c, "X", true))
                                                .sheet(),
                                        OP.apply("090").sheet(),
                                        OP.apply("190").hold(Signer.QA).sheet()),
                                List.of(Sheets.clock("X", "090"))),
                        "080-1",
                        "not before operation 080"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spoiled")
    void aSpoiledRouteIsFound(String name, RouteSheet route, String place, String why) {
        assertThat(RouteCheck.of(route, Sheets.SHOP)).anySatisfy(finding -> {
            assertThat(finding.place()).isEqualTo(place);
            assertThat(finding.why()).contains(why);
            assertThat(finding.instead()).isNotBlank();
        });
    }

    private static ClockSheet clock(String code) {
        return Sheets.clock(code, "020", "060");
    }

    private static CharacteristicSheet edited(
            CharacteristicSheet c, BigDecimal lower, BigDecimal upper, Rule rule, String gauge) {
        return make(c, c.nominal(), lower, upper, gauge, c.points(), c.reduction(), rule, c.signers(), false, false);
    }

    private static CharacteristicSheet reduced(CharacteristicSheet c, Reduction reduction, String... points) {
        return make(
                c,
                c.nominal(),
                c.lowerDeviation(),
                c.upperDeviation(),
                c.gaugeKind(),
                List.of(points),
                reduction,
                c.rule(),
                c.signers(),
                false,
                false);
    }

    private static CharacteristicSheet signed(CharacteristicSheet c, List<Signer> signers, boolean two, boolean blind) {
        return make(
                c,
                c.nominal(),
                c.lowerDeviation(),
                c.upperDeviation(),
                c.gaugeKind(),
                c.points(),
                c.reduction(),
                c.rule(),
                signers,
                two,
                blind);
    }

    private static CharacteristicSheet blind(CharacteristicSheet c) {
        return make(
                c,
                null,
                c.lowerDeviation(),
                c.upperDeviation(),
                c.gaugeKind(),
                c.points(),
                c.reduction(),
                c.rule(),
                c.signers(),
                false,
                true);
    }

    private static CharacteristicSheet make(
            CharacteristicSheet c,
            BigDecimal nominal,
            BigDecimal lower,
            BigDecimal upper,
            String gauge,
            List<String> points,
            Reduction reduction,
            Rule rule,
            List<Signer> signers,
            boolean two,
            boolean blind) {
        return new CharacteristicSheet(
                c.code(),
                c.name(),
                c.unit(),
                c.decimals(),
                false,
                nominal,
                lower,
                upper,
                gauge,
                points,
                reduction,
                rule,
                signers,
                false,
                blind,
                two,
                true,
                null,
                0,
                null,
                null,
                c.source());
    }

    private static CharacteristicSheet coldSet(CharacteristicSheet c, String clock, boolean deciding) {
        return new CharacteristicSheet(
                c.code(),
                c.name(),
                c.unit(),
                c.decimals(),
                false,
                c.nominal(),
                c.lowerDeviation(),
                c.upperDeviation(),
                c.gaugeKind(),
                c.points(),
                c.reduction(),
                c.rule(),
                c.signers(),
                false,
                false,
                false,
                deciding,
                clock,
                2,
                null,
                BigDecimal.ONE,
                c.source());
    }
}
