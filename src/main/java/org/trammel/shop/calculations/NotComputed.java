package org.trammel.shop.calculations;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;

/** Why there is no result, as a refusal that names the figure at fault: the first one as its field, all in words. */
final class NotComputed {

    private static final int LONGEST_NAME = 100;

    private NotComputed() {}

    /**
     * The value of an answer.
     *
     * @param field the name that a caller knows an input of the computation by
     */
    static <T> T unless(Answer<T> answer, UnaryOperator<String> field) {
        if (answer instanceof Answer.Determined<T> there) {
            return there.value();
        }
        throw because(((Answer.NotDeterminable<T>) answer).gaps(), field);
    }

    static Refusal because(List<Answer.Gap> gaps, UnaryOperator<String> field) {
        return input(
                field.apply(gaps.get(0).input()),
                gaps.stream().map(Answer.Gap::words).distinct().collect(Collectors.joining(" ")));
    }

    static Refusal input(String field, String why) {
        return Refusal.input(field, "Nothing was computed.", why, "Correct it and send it again.");
    }

    /** A list must not be longer than a workshop needs. */
    static void boundedBy(int most, String field, @Nullable Collection<?> list) {
        if (list != null && list.size() > most) {
            throw input(field, field + " has " + list.size() + " entries, and takes " + most + " at most.");
        }
    }

    /** A name that is told again in sentences. */
    static String named(String name, String field) {
        if (name.isBlank() || name.length() > LONGEST_NAME) {
            throw input(field, field + " is a name of 1 to " + LONGEST_NAME + " characters.");
        }
        return name.strip();
    }

    /** How many alike; one if nothing is said. */
    static int count(@Nullable Integer count, int most, String field) {
        if (count != null && (count < 1 || count > most)) {
            throw input(field, field + " of " + count + " is not from 1 to " + most + ".");
        }
        return count == null ? 1 : count;
    }

    /** A figure that may be left out. */
    static double or(@Nullable BigDecimal figure, double usual) {
        return figure == null ? usual : figure.doubleValue();
    }

    /** A figure that must be there beside another. */
    static double needed(@Nullable BigDecimal figure, String field, String why) {
        if (figure == null) {
            throw input(field, field + " is missing: " + why);
        }
        return figure.doubleValue();
    }
}
