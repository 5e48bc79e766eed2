package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.ConformityDecision;
import org.trammel.calc.metrology.DecisionRule;
import org.trammel.calc.metrology.ExpectedSpan;
import org.trammel.calc.metrology.Limits;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Setting;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;

/** Gives the verdict on a reduced value by the rule, the limits and the gauge it was read with. */
@Component
class Judge {

    /** Step to which a guard band is rounded up; the readings it is set against keep six decimals. */
    private static final BigDecimal KEPT = new BigDecimal("0.001");

    private final Settings settings;

    Judge(Settings settings) {
        this.settings = settings;
    }

    Reading.Judged of(Evidence.Wanted wanted, BigDecimal value, Reading.With with) {
        if (wanted.lowerLimit() == null && wanted.upperLimit() == null) {
            return new Reading.Judged(Verdict.NOTED, null, null);
        }
        Setting factor = settings.inForce("guard.factor");
        ConformityDecision decision = ConformityDecision.of(
                value,
                new Limits(wanted.lowerLimit(), wanted.upperLimit()),
                wanted.nominal(),
                DecisionRule.valueOf(wanted.rule().name()),
                with.u(),
                new BigDecimal(factor.value()),
                KEPT);
        if (decision instanceof ConformityDecision.GaugeUnfit unfit) {
            throw Refusal.state(
                    "Gauge unfit: there is no verdict on " + wanted.code() + ", " + wanted.name() + ".",
                    with.code() + " cannot decide on these limits: " + unfit.reason() + ".",
                    "Measure with a gauge of less uncertainty.");
        }
        Verdict verdict = decision instanceof ConformityDecision.Conforming
                ? Verdict.CONFORMING
                : decision instanceof ConformityDecision.Undecided ? Verdict.UNDECIDED : Verdict.NOT_CONFORMING;
        if (!wanted.deciding() && verdict != Verdict.CONFORMING) {
            boolean passesOn = verdict == Verdict.UNDECIDED || withinTriage(wanted, value);
            verdict = passesOn ? Verdict.NOTED : Verdict.NOT_CONFORMING;
        }
        return new Reading.Judged(verdict, decision.basis(), factor.id());
    }

    /** Whether a value of that uncertainty, whatever it is, can be judged: the guard band leaves something of the limits. */
    boolean decides(
            @Nullable BigDecimal lower,
            @Nullable BigDecimal upper,
            @Nullable BigDecimal nominal,
            DecisionRule rule,
            @Nullable BigDecimal u) {
        return lower == null && upper == null
                || !(ConformityDecision.of(
                                lower == null ? Objects.requireNonNull(upper) : lower,
                                new Limits(lower, upper),
                                nominal,
                                rule,
                                u,
                                settings.number("guard.factor"),
                                KEPT)
                        instanceof ConformityDecision.GaugeUnfit);
    }

    /** Where it is not decided, a value passes on to its deciding operation while it lies within the triage limit. */
    private boolean withinTriage(Evidence.Wanted wanted, BigDecimal value) {
        BigDecimal times =
                wanted.triageTolerances() == null ? settings.number("triage.tolerances") : wanted.triageTolerances();
        if (wanted.lowerLimit() != null && wanted.upperLimit() != null) {
            return ExpectedSpan.of(wanted.nominal(), new Limits(wanted.lowerLimit(), wanted.upperLimit()))
                    .reaches(value, times);
        }
        return within(value, wanted.nominal(), wanted.lowerLimit(), times, true)
                && within(value, wanted.nominal(), wanted.upperLimit(), times, false);
    }

    private static boolean within(
            BigDecimal value,
            @Nullable BigDecimal nominal,
            @Nullable BigDecimal limit,
            BigDecimal times,
            boolean lower) {
        if (limit == null) {
            return true;
        }
        BigDecimal from = nominal == null ? BigDecimal.ZERO : nominal;
        BigDecimal wide = from.add(limit.subtract(from).multiply(times));
        return lower ? value.compareTo(wide.min(limit)) >= 0 : value.compareTo(wide.max(limit)) <= 0;
    }
}
