package org.trammel.shop.handwork;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.Proof;

/**
 * What the sheet of a frame asks for where a step rests on more than its tick.
 *
 * @param kinds tools of each kind that is still to be taken
 * @param parts of the frame, as its cut list calls them; empty where the step does not ask for them
 * @param air with what air and metal may be read; null where the step does not ask for them
 */
public record ProofSheet(
        long operationId,
        Proof proof,
        List<Kind> kinds,
        @Nullable AirAsked air,
        List<String> parts) {

    /**
     * One kind of tool, or several that do the same.
     *
     * @param word such as "brush or file"
     * @param tools what is kept for the metal, what was taken last at this station first
     */
    public record Kind(String word, List<Choice> tools) {}

    public record Choice(String code, String what) {}

    /**
     * @param airGauge used last; empty if none was
     * @param metalGauge the same
     */
    public record AirAsked(
            Map<String, String> airGauges, Map<String, String> metalGauges, String airGauge, String metalGauge) {}

    public boolean is(String name) {
        return proof.name().equals(name);
    }
}
