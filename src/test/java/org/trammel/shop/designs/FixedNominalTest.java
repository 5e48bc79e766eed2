package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;

class FixedNominalTest {

    private static final RouteSheet ROUTE = SmallRoute.of(SmallRoute.op("080")
                    .characteristic(of("020-1", "mm", "CALLIPER", true, null, "-0.1", "0.1", false))
                    .characteristic(of("080-1", "°", "TWIST", false, "0", "-0.3", "0.3", true))
                    .characteristic(of("080-4", "mm", "LONG-CALLIPER", true, null, "0", "0.5", false))
                    .characteristic(of("080-6", "mm", "LONG-CALLIPER", true, null, "-0.5", "0.5", true))
                    .characteristic(of("080-12", "mm", "HEIGHT", true, null, "-1", "1", false))
                    .characteristic(of("130-4", "mm", "BORE", true, null, "0", "0.1", false))
                    .characteristic(of("150-2", "MΩ", "OHM", false, null, null, "1", false))
                    .sheet())
            .sheet();

    @ParameterizedTest(name = "{0} = {1} is refused")
    @CsvSource({"080-1, 5, 'its nominal is 0°'", "080-1, -0.1, 'its nominal is 0°'", "150-2, 3, 'limits and no nominal'"
    })
    void aNominalThatTheRouteFixesIsNotGivenByTheDesign(String code, BigDecimal nominal, String why) {
        Refusal refused = refusal(code, Nominal.of(nominal));
        assertThat(refused.kind()).isEqualTo(Refusal.Kind.INPUT);
        assertThat(refused.field()).isEqualTo("nominal." + code);
        assertThat(refused.why()).contains("The route fixes " + code, why);
        assertThat(refused.instead()).contains("Limits of its own");
        assertThat(refusal(code, own(nominal, "-9", "9")).why()).contains("The route fixes");
    }

    @ParameterizedTest(name = "{0} = {1} is refused")
    @CsvSource({"020-1, 0", "020-1, -38", "080-4, -135", "080-4, 0", "130-4, 0"})
    void aSizeOfNothingOrLessIsRefused(String code, BigDecimal nominal) {
        assertThat(refusal(code, Nominal.of(nominal)).why()).contains("is a size");
    }

    @ParameterizedTest(name = "{0} = {1} is taken")
    @CsvSource({"020-1, 38", "080-6, -0.4", "080-12, -70", "080-12, 0", "080-1, 0"})
    void whatMayLieOnEitherSideOfZeroIsTaken(String code, BigDecimal nominal) {
        assertThatCode(() -> check(code, Nominal.of(nominal))).doesNotThrowAnyException();
    }

    @Test
    void limitsOfItsOwnAreAllowedAndSeenApartFromTheRoutes() {
        Nominal own = own(BigDecimal.ZERO, "-0.1", "0.1");
        assertThatCode(() -> check("080-1", own)).doesNotThrowAnyException();
        CharacteristicLine line = line("080-1", own);
        assertThat(line.apart()).isTrue();
        assertThat(line.highest()).isEqualByComparingTo("0.1");
        assertThat(line.routeHighest()).isEqualByComparingTo("0.3");
        assertThat(line("080-4", Nominal.of(BigDecimal.TEN)).apart()).isFalse();
        assertThat(line("150-2", own(BigDecimal.ZERO, null, "0.5")).nominal()).isNull();
    }

    @Test
    void aNominalGivenForAnotherRouteOrLongAgoIsSeenAndRefusedAtTheGate() {
        Map<String, Nominal> given = Map.of("080-1", Nominal.of(BigDecimal.valueOf(5)));
        CharacteristicList list = CharacteristicList.of(ROUTE, given);
        assertThat(list.line("080-1").orElseThrow().apart()).isTrue();
        Refusal refused = catchThrowableOfType(Refusal.class, () -> list.refuseIfMoved("Nothing was signed."));
        assertThat(refused.why()).contains("The route fixes 080-1", "The design gives 5°");
        assertThatCode(() -> CharacteristicList.of(ROUTE, Map.of()).refuseIfMoved("Nothing was signed."))
                .doesNotThrowAnyException();
    }

    private static CharacteristicLine line(String code, Nominal given) {
        return CharacteristicList.of(ROUTE, Map.of(code, given)).line(code).orElseThrow();
    }

    private static Refusal refusal(String code, Nominal nominal) {
        return catchThrowableOfType(Refusal.class, () -> check(code, nominal));
    }

    private static void check(String code, Nominal nominal) {
        NominalCheck.check(
                CharacteristicList.of(ROUTE, Map.of()), "No nominal was changed.", code, nominal, null, new Unusual());
    }

    private static Nominal own(BigDecimal nominal, @Nullable String lower, @Nullable String upper) {
        return new Nominal(nominal, number(lower), number(upper), true);
    }

    private static @Nullable BigDecimal number(@Nullable String number) {
        return number == null ? null : new BigDecimal(number);
    }

    private static CharacteristicSheet of(
            String code,
            String unit,
            String gauge,
            boolean fromDesign,
            @Nullable String nominal,
            @Nullable String lower,
            @Nullable String upper,
            boolean sided) {
        return new CharacteristicSheet(
                code,
                "characteristic " + code,
                unit,
                2,
                fromDesign,
                number(nominal),
                number(lower),
                number(upper),
                gauge,
                List.of("once"),
                Reduction.SINGLE,
                Rule.PLAIN,
                List.of(Signer.WORKER),
                sided,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "test");
    }
}
