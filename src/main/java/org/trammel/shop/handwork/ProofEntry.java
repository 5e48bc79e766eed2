package org.trammel.shop.handwork;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.dew.MetalAir;

/**
 * What somebody recorded of the proof of a step, together with its tick. What the step does not ask for is not looked at.
 *
 * @param tools codes of what touched the metal
 * @param air air and metal as they were read; null if they were not
 * @param water how water ran off; null if nobody says
 * @param serial as read from the metal
 */
public record ProofEntry(
        List<String> tools,
        @Nullable MetalAir air,
        Handwork.@Nullable WaterSeen water,
        @Nullable String serial) {

    boolean nothing() {
        return tools.isEmpty() && air == null && water == null && (serial == null || serial.isBlank());
    }
}
