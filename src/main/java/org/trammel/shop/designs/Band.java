package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.records.Refusal;

/**
 * What a number can be at all, and what it usually is. Outside the first it is refused, outside the second it is asked
 * about. Both say what may have been meant: a decimal sign forgotten, or inches typed for millimetres or centimetres.
 *
 * @param label what is measured
 * @param unit unit of all four
 * @param least least possible, itself allowed
 * @param most greatest possible, itself allowed
 */
public record Band(
        String label, String unit, BigDecimal least, BigDecimal most, BigDecimal usualFrom, BigDecimal usualTo) {

    private static final int DECIMALS = 4;

    /**
     * Lets a number through, or refuses or asks.
     *
     * @param field name of the input field
     * @param deed what is not done otherwise, as a sentence
     * @param confirmed the number was asked about and meant
     */
    public void check(String field, String deed, BigDecimal value, boolean confirmed) {
        Unusual unusual = new Unusual();
        check(field, deed, value, unusual);
        unusual.ask(deed, confirmed);
    }

    /**
     * Lets a number through or refuses it; one that is unusual is noted, to be asked about with others.
     *
     * @param field name of the input field
     * @param deed what is not done otherwise, as a sentence
     */
    public void check(String field, String deed, BigDecimal value, Unusual unusual) {
        if (Nominal.plain(value).scale() > DECIMALS) {
            throw Refusal.input(
                    field,
                    deed,
                    label + " has more than " + DECIMALS + " decimals: " + write(value) + ".",
                    "Round it to what can be made and measured.");
        }
        if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    label + " " + with(value) + " cannot be: it lies between " + write(least) + " and " + with(most)
                            + ".",
                    meant(value)
                            .map(other -> "If " + other + " was meant, type that.")
                            .orElse("Look at its unit and its decimal sign, and type it again."));
        }
        saidIfUnusual(value)
                .ifPresent(said -> unusual.add(
                        field,
                        said,
                        meant(value)
                                .map(other -> "If " + other + " was meant, type that; else confirm.")
                                .orElse("Confirm it if it is meant.")));
    }

    /** That a number lies outside what is usual, as a sentence; empty if it does not. */
    Optional<String> saidIfUnusual(BigDecimal value) {
        return usual(value)
                ? Optional.empty()
                : Optional.of(label + " " + with(value) + " is unusual: most lie between " + write(usualFrom) + " and "
                        + with(usualTo) + ".");
    }

    /** The same for a number that may be left out, without asking about an unusual one. */
    void checkIfGiven(String field, String deed, @Nullable BigDecimal value) {
        if (value != null) {
            check(field, deed, value, true);
        }
    }

    /** The likeliest slip that would lie among the usual values. */
    private Optional<String> meant(BigDecimal value) {
        Optional<BigDecimal> shifted = Stream.of(-1, 1, -2, 2)
                .map(value::scaleByPowerOfTen)
                .filter(this::usual)
                .findFirst();
        if (shifted.isPresent()) {
            return shifted.map(this::with);
        }
        BigDecimal perInch = unit.equals("cm") ? new BigDecimal("2.54") : new BigDecimal("25.4");
        BigDecimal fromInches = value.multiply(perInch).setScale(1, RoundingMode.HALF_EVEN);
        if ((unit.equals("mm") || unit.equals("cm")) && usual(fromInches)) {
            return Optional.of(with(fromInches) + " (" + write(value) + " inches)");
        }
        if (unit.equals("kg")) {
            BigDecimal fromPounds = value.multiply(new BigDecimal("0.4536")).setScale(1, RoundingMode.HALF_EVEN);
            if (usual(fromPounds)) {
                return Optional.of(write(fromPounds) + " kg (" + write(value) + " pounds)");
            }
        }
        return Optional.empty();
    }

    private String with(BigDecimal value) {
        return write(value) + (unit.equals("°") ? "" : " ") + unit;
    }

    private boolean usual(BigDecimal value) {
        return value.compareTo(usualFrom) >= 0 && value.compareTo(usualTo) <= 0;
    }

    private static String write(BigDecimal value) {
        return DecimalSign.COMMA.write(Nominal.plain(value));
    }
}
