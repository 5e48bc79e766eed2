package org.trammel.shop.floor;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;

/** Writes characteristics that a record may give, for tests. */
public record Asked(
        String code,
        String unit,
        @Nullable String least,
        @Nullable String most,
        String gaugeKind,
        int points,
        Reduction reduction,
        Rule rule,
        boolean secondPerson) {

    public static Asked of(String code, String unit, @Nullable String least, @Nullable String most, String gaugeKind) {
        return new Asked(code, unit, least, most, gaugeKind, 1, Reduction.SINGLE, Rule.PLAIN, false);
    }

    public Asked reduced(int from, Reduction by) {
        return new Asked(code, unit, least, most, gaugeKind, from, by, rule, secondPerson);
    }

    public Asked guarded() {
        return new Asked(code, unit, least, most, gaugeKind, points, reduction, Rule.GUARDED, secondPerson);
    }

    public Asked byTwo() {
        return new Asked(code, unit, least, most, gaugeKind, points, reduction, rule, true);
    }

    public CharacteristicSheet sheet() {
        return new CharacteristicSheet(
                code,
                "characteristic " + code,
                unit,
                2,
                false,
                null,
                least == null ? null : new BigDecimal(least),
                most == null ? null : new BigDecimal(most),
                gaugeKind,
                points == 1
                        ? List.of("once")
                        : IntStream.rangeClosed(1, points)
                                .mapToObj(i -> "place " + i)
                                .toList(),
                reduction,
                rule,
                List.of(Signer.QA, Signer.WORKER),
                false,
                false,
                secondPerson,
                true,
                null,
                0,
                null,
                null,
                "test");
    }
}
