package org.trammel.shop.materials;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One line of the table of what may meet which metal.
 *
 * @param process TIG or BRAZE; null if for any
 * @param source where the line comes from
 * @param by id of the person who allowed it; 0 for what the program came with
 */
public record Fit(
        long id,
        String materialClass,
        String metal,
        @Nullable String process,
        AfterWeld afterWeld,
        String source,
        long by,
        Instant since) {

    /** What becomes of the weld afterwards. */
    public enum AfterWeld {
        ANY("any"),
        SOLUTION_AGE("solution and ageing"),
        AGE("ageing"),
        NONE("used as welded");

        private final String word;

        AfterWeld(String word) {
            this.word = word;
        }

        /** In the shop's words. */
        public String word() {
            return word;
        }

        /** What a shop does with a metal unless a design says otherwise. */
        static AfterWeld usual(String metal) {
            return switch (metal) {
                case "AL6061" -> SOLUTION_AGE;
                case "AL7005" -> AGE;
                default -> NONE;
            };
        }
    }
}
