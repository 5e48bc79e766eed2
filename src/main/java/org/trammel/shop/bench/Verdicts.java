package org.trammel.shop.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.ConformityDecision;
import org.trammel.calc.metrology.DecisionRule;
import org.trammel.calc.metrology.Limits;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Verdict;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.ScaleView;

/** Says the verdict of a reading that was judged: the value, its side, the sentence why. Judges nothing itself. */
@Component
class Verdicts {

    /** Step in which guard bands are kept. */
    static final BigDecimal KEPT = new BigDecimal("0.001");

    private final Settings settings;
    private final Formats formats;

    Verdicts(Settings settings, Formats formats) {
        this.settings = settings;
        this.formats = formats;
    }

    /** Kind of the verdict's mark. */
    static String mark(Verdict verdict) {
        return switch (verdict) {
            case CONFORMING -> "conforming";
            case NOT_CONFORMING -> "not-conforming";
            case UNDECIDED -> "undecided";
            case NOTED -> "done";
        };
    }

    /** The value with the places it has and at least those the drawing shows; the side says its sign. */
    String value(ReadingLine reading, FrameSheet.CharacteristicLine c) {
        BigDecimal shown = c.sided() ? reading.value().abs() : reading.value();
        int places =
                Math.max(c.decimals(), Math.max(0, shown.stripTrailingZeros().scale()));
        return formats.number(shown, Math.min(places, 4));
    }

    String side(BigDecimal value, FrameSheet.CharacteristicLine c) {
        return !c.sided() || value.signum() == 0 ? "" : value.signum() > 0 ? "to drive" : "to non-drive";
    }

    String sentence(ReadingLine reading, FrameSheet.CharacteristicLine c) {
        if (CharacteristicSheet.isAnswered(reading.unit())) {
            return reading.verdict() == Verdict.CONFORMING ? "Every answer is yes." : "An answer is no.";
        }
        if (reading.lowerLimit() == null && reading.upperLimit() == null) {
            return "Noted; there are no limits here.";
        }
        // A side is a word here, so a value to the non-drive side is told by its size, against the limits of that side.
        boolean mirrored = c.sided() && reading.value().signum() < 0;
        ConformityDecision decision = ConformityDecision.of(
                plain(mirrored ? reading.value().negate() : reading.value()),
                mirrored
                        ? new Limits(negated(reading.upperLimit()), negated(reading.lowerLimit()))
                        : new Limits(plainOrNone(reading.lowerLimit()), plainOrNone(reading.upperLimit())),
                mirrored ? negated(nominal(reading)) : nominal(reading),
                DecisionRule.valueOf(reading.ruleAsked().name()),
                plainOrNone(reading.u()),
                plain(reading.factor() == null ? settings.number("guard.factor") : reading.factor()),
                KEPT);
        if (decision.word().equals(reading.verdict().word())) {
            return decision.words(sign());
        }
        return reading.verdict() == Verdict.NOTED
                ? "Noted: it is decided at a later operation, and lies within what may pass on to it."
                : "Too far off to pass on to the operation that decides it.";
    }

    /** None where the plain rule judged one limit although u was too large for it, as it did once. */
    private static @Nullable BigDecimal nominal(ReadingLine reading) {
        BigDecimal nominal = reading.nominal();
        boolean oneSided = reading.lowerLimit() == null || reading.upperLimit() == null;
        return nominal == null || oneSided && reading.ruleUsed() == Rule.PLAIN ? null : plain(nominal);
    }

    private static BigDecimal plain(BigDecimal figure) {
        BigDecimal plain = figure.stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }

    private static @Nullable BigDecimal plainOrNone(@Nullable BigDecimal figure) {
        return figure == null ? null : plain(figure);
    }

    private static @Nullable BigDecimal negated(@Nullable BigDecimal figure) {
        return figure == null ? null : plain(figure.negate());
    }

    /** Gauge, uncertainty and guard band; then the values as they were read. */
    List<String> lines(ReadingLine reading, FrameSheet.CharacteristicLine c) {
        List<String> lines = new ArrayList<>();
        if (reading.record() != null) {
            lines.add("Given by " + reading.record() + ".");
        }
        lines.add(
                reading.u() == null
                        ? reading.gauge()
                                + (reading.record() == null
                                        ? ", an aid without uncertainty: plain rule."
                                        : ", plain rule.")
                        : reading.gauge() + ", u " + joined(reading.u(), reading.unit())
                                + (reading.guardBand().signum() == 0
                                        ? ", plain rule."
                                        : ", guard band " + joined(reading.guardBand(), reading.unit()) + "."));
        if (reading.toTwenty() != null) {
            lines.add("Part at " + formats.with(Objects.requireNonNull(reading.temperatureDegC()), 1, "°C")
                    + ": corrected to 20 °C by " + formats.signed(reading.toTwenty(), 4) + " " + reading.unit()
                    + " (ISO 1).");
        }
        if (CharacteristicSheet.isAnswered(reading.unit())) {
            for (int i = 0; i < reading.raw().size(); i++) {
                lines.add(c.points().get(i) + ": " + (reading.raw().get(i).signum() == 0 ? "no" : "yes") + ".");
            }
            return lines;
        }
        if (reading.raw().size() > 1) {
            String raw = reading.raw().stream().map(formats::number).collect(Collectors.joining("; "));
            lines.add(reduction(c.reduction()) + " " + raw + ".");
        }
        return lines;
    }

    private static String reduction(Reduction reduction) {
        return switch (reduction) {
            case SINGLE -> "Read";
            case MEAN -> "Mean of";
            case WORST -> "Worst of";
            case SPAN -> "Greatest less least of";
            case GREATEST -> "Greatest of";
            case LEAST -> "Least of";
            case ALL_BUT_FIFTH -> "Reached by all but a fifth of";
            case ALL_BUT_UNDER_FIFTH -> "Reached by all but fewer than a fifth of";
            case COAXIAL -> "Diameter, twice the distance, of";
        };
    }

    private String joined(BigDecimal figure, String unit) {
        BigDecimal plain = figure.stripTrailingZeros();
        return formats.with(plain, Math.max(0, plain.scale()), unit);
    }

    ScaleView scale(ReadingLine reading, FrameSheet.CharacteristicLine c) {
        ScaleView view = ScaleView.limits(
                        reading.lowerLimit(),
                        reading.upperLimit(),
                        reading.nominal(),
                        reading.unit(),
                        Words.decimals(reading.nominal(), reading.lowerLimit(), reading.upperLimit(), c.decimals()))
                .guarded(reading.guardBand())
                .reading(reading.value(), reading.verdict() == Verdict.NOTED ? null : mark(reading.verdict()));
        return c.sided() ? view.bySides() : view;
    }

    private DecimalSign sign() {
        return DecimalSign.of(settings.locale());
    }
}
