package org.trammel.calc.units;

import java.util.List;
import java.util.function.Function;

/**
 * What a computation comes to: a value, or the reasons in plain words why there is none.
 *
 * @param <T> what is computed
 */
public sealed interface Answer<T> {

    /** There is a value. */
    record Determined<T>(T value) implements Answer<T> {}

    /**
     * There is none.
     *
     * @param gaps what stands in the way; at least one
     */
    record NotDeterminable<T>(List<Gap> gaps) implements Answer<T> {

        public NotDeterminable {
            gaps = List.copyOf(gaps);
            if (gaps.isEmpty()) {
                throw new IllegalArgumentException("An answer is missing for a reason");
            }
        }
    }

    /**
     * Something that stands in the way of a value.
     *
     * @param input name of the input that is missing or cannot be, as the input's own type names it
     * @param words one sentence that names the input and the figures
     */
    record Gap(String input, String words) {}

    static <T> Answer<T> of(T value) {
        return new Determined<>(value);
    }

    static <T> Answer<T> none(String input, String words) {
        return new NotDeterminable<>(List.of(new Gap(input, words)));
    }

    /** Goes on with the value, if there is one. */
    default <R> Answer<R> then(Function<? super T, Answer<R>> next) {
        if (this instanceof Determined<T> there) {
            return next.apply(there.value());
        }
        return new NotDeterminable<>(((NotDeterminable<T>) this).gaps());
    }
}
