package org.trammel.calc.metrology;

import org.jspecify.annotations.Nullable;

/**
 * One cause of doubt about a reading, as a standard uncertainty in the reading's unit.
 *
 * <p>Causes of one kind and one name are one and the same error: readings that name it are off together, in proportion
 * to their amounts, and what is common to them falls out of their differences. A cause without a name is the reading's
 * own and independent of everything else. That is how correlated readings are written in JCGM 100:2008, F.1.2.3: each
 * as a function of causes that are themselves independent.
 *
 * @param kind line of the budget it belongs to
 * @param u standard uncertainty, in the unit of the reading; negative if the shared cause moves this reading the other
 *     way
 * @param sharedAs name of the cause where other readings have it too, such as the gauge's id or the clamping; null if it
 *     is this reading's own
 */
public record Contribution(
        ErrorKind kind, double u, @Nullable String sharedAs) {

    /** A cause that no other reading has. */
    public static Contribution own(ErrorKind kind, double u) {
        return new Contribution(kind, u, null);
    }

    /** A cause that every reading has which names it. */
    public static Contribution shared(ErrorKind kind, double u, String sharedAs) {
        return new Contribution(kind, u, sharedAs);
    }

    /**
     * Doubt about a length from the doubt about the temperature, the same for all that lie in one room.
     *
     * <pre>u = α L u(t)</pre>
     *
     * <p>Source: JCGM 100:2008, H.1.3 (the terms of expansion). Valid while α u(t) is far below 1.
     *
     * @param length_mm L, signed
     * @param expansion_perK α of the part less that of the gauge's scale, 1/K; aluminium 23.6e-6, steel 11.5e-6
     * @param temperature_K u(t), standard uncertainty of the part's temperature
     * @param room name of what shares the temperature
     */
    public static Contribution temperature(double length_mm, double expansion_perK, double temperature_K, String room) {
        return shared(ErrorKind.TEMPERATURE, expansion_perK * length_mm * temperature_K, room);
    }
}
