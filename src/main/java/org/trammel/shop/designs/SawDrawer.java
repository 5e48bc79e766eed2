package org.trammel.shop.designs;

import java.util.Arrays;
import java.util.Comparator;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.SawRules;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.settings.Settings;

/** The hole saws at hand and how the shop cuts with them, from its settings. */
@Component
class SawDrawer {

    private static final double SHALLOWEST_DEG = 25;
    private static final double THIN_WALL_MM = 3;

    private final Settings settings;

    SawDrawer(Settings settings) {
        this.settings = settings;
    }

    SawRules rules() {
        return new SawRules(
                Arrays.stream(settings.text("saw.sizes").split(";"))
                        .map(TypedNumber::of)
                        .filter(TypedNumber.Read.class::isInstance)
                        .map(read -> ((TypedNumber.Read) read).value().doubleValue())
                        .sorted(Comparator.naturalOrder())
                        .toList(),
                settings.number("saw.oversize").doubleValue(),
                Math.toRadians(SHALLOWEST_DEG),
                THIN_WALL_MM,
                settings.number("saw.trim").doubleValue(),
                settings.number("saw.butt_at_weld").doubleValue());
    }
}
