package org.trammel.shop.records;

import java.time.Instant;

/** What somebody wrote, or that it was erased. */
public sealed interface KeptWords {

    /** The words as they were written. */
    record Said(String words) implements KeptWords {}

    /** The words were erased; that they were is kept. */
    record Erased(Instant at) implements KeptWords {}

    /** For a page that shows words and nothing else. */
    default String shown() {
        return this instanceof Said said ? said.words() : "(erased)";
    }
}
