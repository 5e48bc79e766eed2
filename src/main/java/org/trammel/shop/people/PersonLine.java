package org.trammel.shop.people;

import org.jspecify.annotations.Nullable;

/**
 * A person and one of their roles.
 *
 * @param role null if they hold none
 */
record PersonLine(
        long id,
        String initials,
        String name,
        boolean left,
        @Nullable String role) {

    /** From the columns of {@link PersonRepository#WITH_ROLES}; read plainly, for whole crews are read this way. */
    static PersonLine of(Object[] columns) {
        return new PersonLine(
                ((Number) columns[0]).longValue(),
                (String) columns[1],
                (String) columns[2],
                columns[3] != null,
                (String) columns[4]);
    }
}
