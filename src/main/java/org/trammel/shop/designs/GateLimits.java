package org.trammel.shop.designs;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.Setting;
import org.trammel.shop.settings.Settings;

/** The limits of the design gate, from the shop's settings. */
@Component
class GateLimits {

    private final Settings settings;

    GateLimits(Settings settings) {
        this.settings = settings;
    }

    Setting of(String name) {
        return settings.inForce("gate." + name);
    }

    double number(String name) {
        return Double.parseDouble(of(name).value());
    }

    /** Between which the trail of a category of use lies. */
    record TrailBand(Setting least, Setting most) {}

    /** The band of a category; empty where the shop keeps none. */
    Optional<TrailBand> trail(String category) {
        String name = "gate.trail." + category.toLowerCase(Locale.ROOT);
        return kept(name + ".least").flatMap(least -> kept(name + ".most").map(most -> new TrailBand(least, most)));
    }

    private Optional<Setting> kept(String key) {
        return settings.all().stream().filter(one -> one.key().equals(key)).findFirst();
    }

    /** The list that names the side of a country's front brake lever; null where neither or both do. */
    @Nullable
    Setting leverSide(String country) {
        boolean left = names("levers.left", country);
        return left == names("levers.right", country) ? null : of(left ? "levers.left" : "levers.right");
    }

    private boolean names(String list, String country) {
        return Arrays.stream(of(list).value().split(";"))
                .anyMatch(one -> one.strip().toUpperCase(Locale.ROOT).equals(country));
    }
}
