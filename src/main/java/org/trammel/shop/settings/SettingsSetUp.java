package org.trammel.shop.settings;

import java.util.List;
import org.springframework.stereotype.Component;

/** Name, zone and currency must be the shop's own; the other defaults may wait. */
@Component
class SettingsSetUp implements SetUpPart {

    private static final List<String> OWN = List.of("shop.name", "shop.zone", "shop.locale", "shop.currency");

    private final Settings settings;

    SettingsSetUp(Settings settings) {
        this.settings = settings;
    }

    @Override
    public int place() {
        return 50;
    }

    @Override
    public State state() {
        long owned =
                settings.all().stream().filter(setting -> setting.by() != 0).count();
        boolean named = settings.inForce("shop.name").by() != 0;
        boolean allOwn = OWN.stream().allMatch(key -> settings.inForce(key).by() != 0);
        return new State(
                "Settings",
                owned,
                named,
                !named
                        ? "Give the shop its name; each value carries its source."
                        : allOwn
                                ? "Give each default a source of your own when you have one."
                                : "Check zone, language and currency.",
                "/shop/settings");
    }
}
