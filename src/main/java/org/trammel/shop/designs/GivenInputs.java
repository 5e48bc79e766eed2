package org.trammel.shop.designs;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.trammel.calc.units.Answer;

/** The inputs of a revision as a computation takes them: a number, or the sentence that it is missing. */
record GivenInputs(Map<String, String> typed) {

    boolean has(GeometryInput input) {
        return typed.containsKey(input.code());
    }

    /** Present if every one of these is given; else one reason for each that is not. */
    Answer<GivenInputs> all(GeometryInput... needed) {
        List<Answer.Gap> missing = Arrays.stream(needed)
                .filter(input -> !has(input))
                .map(input -> new Answer.Gap(input.code(), input.label() + " is not given."))
                .toList();
        return missing.isEmpty() ? Answer.of(this) : new Answer.NotDeterminable<>(missing);
    }

    /** A number that {@link #all} has found. */
    double number(GeometryInput input) {
        return Double.parseDouble(Objects.requireNonNull(typed.get(input.code()), input.code()));
    }

    /** Whether something cannot be computed because an input was not given, and not because of those given. */
    boolean isMissing(Answer.Gap gap) {
        return Arrays.stream(GeometryInput.values())
                .anyMatch(input -> input.code().equals(gap.input()) && !has(input));
    }

    double number(GeometryInput input, double otherwise) {
        return has(input) ? number(input) : otherwise;
    }
}
