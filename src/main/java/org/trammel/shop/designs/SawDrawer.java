package org.trammel.shop.designs;

import java.util.Arrays;
import java.util.Comparator;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.SawRules;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.settings.Setting;
import org.trammel.shop.settings.Settings;

/** The hole saws at hand and how the shop cuts with them, from its settings. */
@Component
class SawDrawer {

    private static final String TRIM = "saw.trim";
    private static final double SHALLOWEST_DEG = 25;
    private static final double THIN_WALL_MM = 3;

    private final Settings settings;
    private final DesignRevisionRepository revisions;

    SawDrawer(Settings settings, DesignRevisionRepository revisions) {
        this.settings = settings;
        this.revisions = revisions;
    }

    SawRules rules() {
        return rules(settings.inForce(TRIM));
    }

    /**
     * As a revision is cut: with the trim that was in force when it was released, by which its nominals were frozen and what is
     * cut is judged. A draft has that of now.
     */
    SawRules rules(long revisionId) {
        Setting now = settings.inForce(TRIM);
        // What the program came with was never another.
        return now.by() == 0
                ? rules(now)
                : rules(revisions
                        .releasedAt(revisionId)
                        .filter(released -> released.isBefore(now.since()))
                        .flatMap(released -> settings.history(TRIM).stream()
                                .filter(one -> !one.since().isAfter(released))
                                .findFirst())
                        .orElse(now));
    }

    private SawRules rules(Setting trim) {
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
                Double.parseDouble(trim.value()),
                settings.number("saw.butt_at_weld").doubleValue());
    }
}
