package org.trammel.calc.metrology;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.DecimalSign;

/** The sentence under a verdict. */
final class DecisionWords {

    private final DecisionBasis basis;
    private final DecimalSign sign;

    private DecisionWords(DecisionBasis basis, DecimalSign sign) {
        this.basis = basis;
        this.sign = sign;
    }

    static String of(ConformityDecision decision, DecimalSign sign) {
        DecisionWords words = new DecisionWords(decision.basis(), sign);
        String sentence;
        if (decision instanceof ConformityDecision.GaugeUnfit unfit) {
            sentence = words.unfit(unfit.reason());
        } else if (words.basis.used() == DecisionRule.PLAIN) {
            sentence = words.plain(decision instanceof ConformityDecision.Conforming);
        } else if (decision instanceof ConformityDecision.Conforming) {
            sentence = words.conforming();
        } else if (decision instanceof ConformityDecision.NotConforming) {
            sentence = words.notConforming();
        } else {
            sentence = words.undecided();
        }
        return words.basis.forced()
                ? sentence + " The guarded rule judged, because U takes more than a tenth of the half tolerance."
                : sentence;
    }

    private String plain(boolean conforming) {
        if (basis.limits().oneSided()) {
            return "Plain rule: " + value() + (conforming ? " is " : " is not ") + limits() + ".";
        }
        return "Plain rule: " + value() + (conforming ? " lies within " : " lies outside ") + limits()
                + ", limits included.";
    }

    private String conforming() {
        boolean one = basis.limits().oneSided();
        return value() + (one ? " is " : " lies within ") + bounds(basis.conformingFrom(), basis.conformingTo())
                + (one ? ": the limit " : ": the limits ") + limits() + " drawn in by " + guardBand() + ".";
    }

    private String notConforming() {
        BigDecimal below = basis.notConformingBelow();
        boolean low = below != null && basis.value().compareTo(below) < 0;
        return value() + (low ? " lies below " : " lies above ")
                + write(low ? below : basis.notConformingAbove()) + ": the limit "
                + write(low ? basis.limits().lower() : basis.limits().upper()) + " moved out by " + guardBand() + ".";
    }

    private String undecided() {
        BigDecimal from = basis.conformingFrom();
        boolean low = from != null && basis.value().compareTo(from) < 0;
        return value() + " lies in the uncertainty band from "
                + write(low ? basis.notConformingBelow() : basis.conformingTo()) + " to "
                + write(low ? from : basis.notConformingAbove()) + " about the limit "
                + write(low ? basis.limits().lower() : basis.limits().upper()) + ", " + guardBand()
                + ": a reading with a smaller uncertainty decides.";
    }

    private String unfit(String reason) {
        BigDecimal u = basis.u();
        return "No verdict on " + value() + " against " + limits() + " with this gauge: " + reason
                + (u == null ? "." : ", " + guardBand() + ".") + " Take a gauge with a smaller, known uncertainty.";
    }

    private String guardBand() {
        BigDecimal u = basis.u();
        String product = u == null ? "" : " (" + sign.write(basis.factor()) + " × " + sign.write(u) + ")";
        return "the guard band " + sign.write(basis.guardBand()) + product;
    }

    private String bounds(@Nullable BigDecimal from, @Nullable BigDecimal to) {
        return new Limits(from, to).words(sign);
    }

    private String limits() {
        return basis.limits().words(sign);
    }

    private String value() {
        return sign.write(basis.value());
    }

    private String write(@Nullable BigDecimal number) {
        return number == null ? "" : sign.write(number);
    }
}
