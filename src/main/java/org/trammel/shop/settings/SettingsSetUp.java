package org.trammel.shop.settings;

import org.springframework.stereotype.Component;

/** Settings that still say that they are the program's and not the shop's. */
@Component
class SettingsSetUp implements SetUpPart {

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
        long own = settings.all().stream()
                .filter(setting -> !setting.source().startsWith("shop default"))
                .count();
        boolean named = !settings.inForce("shop.name").source().startsWith("shop default");
        return new State(
                "Settings with a source of the shop's own",
                own,
                named,
                named
                        ? "Go through the rest and give each its source."
                        : "Enter the shop's name, zone and currency first, then go through the rest.",
                "/shop/settings");
    }
}
