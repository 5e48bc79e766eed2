package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.trammel.calc.units.Answer;

/** Collects what is wrong with the inputs of a computation, all of it, so that nobody mends one number at a time. */
final class Objections {

    /** Longer than any bicycle: beyond it a number was mistyped, and squares of it might not be finite. */
    static final double LONGEST_MM = 10_000;

    private final List<Answer.Gap> gaps = new ArrayList<>();

    /** A length that must be above 0. */
    Objections length(String input, String name, double length_mm) {
        if (!(length_mm > 0 && length_mm <= LONGEST_MM)) {
            add(input, "The " + name + " of " + shown(length_mm) + " is not above 0 and at most 10 m.");
        }
        return this;
    }

    /** A length that may be 0. */
    Objections lengthOrNone(String input, String name, double length_mm) {
        if (!(length_mm >= 0 && length_mm <= LONGEST_MM)) {
            add(input, "The " + name + " of " + shown(length_mm) + " is not 0 or more and at most 10 m.");
        }
        return this;
    }

    /** A distance that may go to either side. */
    Objections distance(String input, String name, double distance_mm) {
        if (!(Math.abs(distance_mm) <= LONGEST_MM)) {
            add(input, "The " + name + " of " + shown(distance_mm) + " is not within 10 m to either side.");
        }
        return this;
    }

    Objections unless(boolean right, String input, Supplier<String> words) {
        if (!right) {
            add(input, words.get());
        }
        return this;
    }

    Objections add(String input, String words) {
        gaps.add(new Answer.Gap(input, words));
        return this;
    }

    boolean none() {
        return gaps.isEmpty();
    }

    /** The value if there is no objection. */
    <T> Answer<T> orElse(Supplier<Answer<T>> value) {
        return gaps.isEmpty() ? value.get() : new Answer.NotDeterminable<>(gaps);
    }

    /** A length as typed, to a thousandth. */
    static String shown(double length_mm) {
        if (!Double.isFinite(length_mm)) {
            return "no number";
        }
        if (Math.abs(length_mm) > 1e6) {
            return "more than 1 km";
        }
        return Written.figure(length_mm, 3) + " mm";
    }

    static String shownDegrees(double angle_rad) {
        return Math.abs(angle_rad) > 1e3 && Double.isFinite(angle_rad) ? "many turns" : Written.degrees(angle_rad);
    }
}
