package org.trammel.shop.people;

import org.jspecify.annotations.Nullable;

/**
 * What somebody is called.
 *
 * @param first the first name known of them; null where none is kept
 */
record CalledPerson(
        long id, String initials, String name, @Nullable String first) {

    /** The name of today, with the one that older records were made under. */
    String told() {
        return first == null || first.equals(name) ? name : name + " (before: " + first + ")";
    }
}
