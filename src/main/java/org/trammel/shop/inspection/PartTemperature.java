package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.AtTwenty;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;

/**
 * What the temperature of a part does to a size that was read on it. A size is what it is at 20 °C (ISO 1): where the
 * temperature of the part was taken, the size is corrected before it is judged; where it was not, and the tolerance is so
 * narrow that it matters, the span in which the shop lets a part be counts as doubt.
 */
@Component
class PartTemperature {

    private static final String UNIT = "mm";

    /** Metals whose expansion is a setting. */
    private static final Set<String> METALS = Set.of("AL6061", "AL7005", "STEEL", "TI");

    private static final BigDecimal REFERENCE_DEG_C = BigDecimal.valueOf(20);
    private static final BigDecimal MILLIONTH = BigDecimal.ONE.movePointLeft(6);

    /** Half-width of an even spread against its standard deviation, the square root of three (JCGM 100:2008, 4.3.7). */
    private static final BigDecimal ROOT_OF_THREE = new BigDecimal("1.7320508");

    /** A tenth of the tolerance is what a gauge may take; temperature is counted from there on. */
    private static final BigDecimal TENTH = new BigDecimal("0.1");

    private final Settings settings;

    PartTemperature(Settings settings) {
        this.settings = settings;
    }

    /**
     * What is judged.
     *
     * @param raw the values at 20 °C
     * @param corrected whether they are others than those that were read
     */
    record Judged(List<BigDecimal> raw, Means means, boolean corrected) {}

    Judged of(Evidence.Wanted wanted, List<BigDecimal> raw, @Nullable BigDecimal degC, Means means) {
        BigDecimal size = wanted.nominal();
        String metal = "expansion." + wanted.metal();
        boolean isSize = UNIT.equals(wanted.unit()) && size != null && size.signum() > 0 && !wanted.readBack();
        if (!isSize || means.u() == null || !METALS.contains(wanted.metal())) {
            return new Judged(raw, means, false);
        }
        AtTwenty.Expanding gauge = new AtTwenty.Expanding(
                settings.number("gauge.temperature"),
                settings.number("gauge.temperature.u"),
                millionths("gauge.expansion"),
                millionths("expansion.u"));
        if (degC == null) {
            BigDecimal span = settings.number("part.temperature.span");
            if (!matters(wanted, size.multiply(millionths(metal)).multiply(span))) {
                return new Judged(raw, means, false);
            }
            AtTwenty doubt = AtTwenty.of(
                    new AtTwenty.Expanding(
                            REFERENCE_DEG_C,
                            span.divide(ROOT_OF_THREE, 6, RoundingMode.UP),
                            millionths(metal),
                            millionths("expansion.u")),
                    gauge);
            return new Judged(raw, means.computing(wanted.unit(), doubt.u(means.u(), size)), false);
        }
        requireNear(wanted, degC);
        AtTwenty at = AtTwenty.of(
                new AtTwenty.Expanding(
                        degC, settings.number("part.temperature.u"), millionths(metal), millionths("expansion.u")),
                gauge);
        return new Judged(
                raw.stream().map(at::length).toList(), means.computing(wanted.unit(), at.u(means.u(), size)), true);
    }

    /** Whether so much, either way, takes more than a tenth of what the limits leave. */
    private static boolean matters(Evidence.Wanted wanted, BigDecimal eitherWay) {
        return wanted.lowerLimit() != null
                && wanted.upperLimit() != null
                && eitherWay.compareTo(wanted.upperLimit()
                                .subtract(wanted.lowerLimit())
                                .multiply(TENTH))
                        > 0;
    }

    private void requireNear(Evidence.Wanted wanted, BigDecimal degC) {
        BigDecimal most = settings.number("part.temperature.most");
        if (degC.subtract(REFERENCE_DEG_C).abs().compareTo(most) > 0) {
            throw Refusal.input(
                    "temperature",
                    wanted.code() + ", " + wanted.name() + ", is not read.",
                    "The part is at " + degC.stripTrailingZeros().toPlainString()
                            + " °C; a size is corrected to 20 °C over "
                            + most.stripTrailingZeros().toPlainString() + " K at most.",
                    "Let the part come nearer to 20 °C, then read it again; or correct the temperature, in °C.");
        }
    }

    private BigDecimal millionths(String setting) {
        return settings.number(setting).multiply(MILLIONTH);
    }
}
