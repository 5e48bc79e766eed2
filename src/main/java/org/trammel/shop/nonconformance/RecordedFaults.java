package org.trammel.shop.nonconformance;

import java.util.Optional;

/**
 * Tells of a nonconformance about what is recorded of an operation what a decision may not say of it. A module that opens
 * such ones provides it; each answers empty for the nonconformances of the others.
 */
public interface RecordedFaults {

    /** Why no concession lets it stay as it is, as a sentence; empty where one may. */
    Optional<String> neverStays(String serial, String number);

    /** What newer record is missing before a word may say that it conforms after all, as a sentence; empty if none is. */
    Optional<String> notCleared(String serial, String number);
}
