package org.trammel.calc.scheduling;

/**
 * What two lengths of tube have in common when one can be cut from the other.
 *
 * @param section outside and wall, as the shop writes them
 * @param alloy and temper
 */
public record TubeKind(String section, String alloy) {

    @Override
    public String toString() {
        return section + " " + alloy;
    }
}
