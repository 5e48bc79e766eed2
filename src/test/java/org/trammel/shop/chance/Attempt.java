package org.trammel.shop.chance;

import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/**
 * One call of a public verb.
 *
 * @param act null where only time passes
 * @param ships true if it would send the frame out
 */
record Attempt(@Nullable Act act, String words, boolean ships, Runnable call) {

    static Attempt of(Act act, String words, Runnable call) {
        return new Attempt(act, words + " by " + act.by(), false, call);
    }
}
