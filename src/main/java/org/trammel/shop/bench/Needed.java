package org.trammel.shop.bench;

import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** What a program must send. */
final class Needed {

    private Needed() {}

    /**
     * The value of a property.
     *
     * @param what is not done otherwise, as a sentence
     * @throws Refusal if it was left out
     */
    static <T> T in(String property, String what, @Nullable T value) {
        if (value == null) {
            throw Refusal.input(property, what, property + " is missing.", "Send it with the others.");
        }
        return value;
    }
}
