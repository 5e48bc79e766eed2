package org.trammel.shop.handwork;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.util.MultiValueMap;
import org.trammel.shop.records.Refusal;

/** How water ran off, as a form sends it: that it holds is said of every part, that it broke of those that are marked. */
public final class WaterForm {

    private WaterForm() {}

    /** Null where nothing is said. */
    public static Handwork.@Nullable WaterSeen seen(MultiValueMap<String, String> fields) {
        List<String> marked = fields.getOrDefault("part", List.of());
        String said = fields.getFirst("water");
        if (said == null || said.isBlank()) {
            return marked.isEmpty() ? null : new Handwork.WaterSeen(null, marked);
        }
        boolean holds = said.equals("HOLDS");
        if (holds && !marked.isEmpty()) {
            throw Refusal.input(
                    "part",
                    "The water film was not recorded.",
                    "It is said to hold on every part, and parts are marked on which it broke.",
                    "Take the marks away, or say that it broke.");
        }
        return new Handwork.WaterSeen(holds, holds ? fields.getOrDefault("every", List.of()) : marked);
    }
}
