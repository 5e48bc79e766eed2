package org.trammel.shop.web;

import java.time.ZoneId;
import java.util.Currency;
import java.util.Locale;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Component;

/** The shop as a page needs it: its name, its zone, how it writes figures. */
@Component
class House {

    private final ZoneId zone;
    private final boolean demo;

    House(@Value("${trammel.zone}") String zone, Environment environment) {
        this.zone = ZoneId.of(zone);
        this.demo = environment.acceptsProfiles(Profiles.of("demo"));
    }

    String name() {
        return demo ? "Aldervik Frameworks" : "Workshop";
    }

    /** Whether invented data is loaded: then every sheet says so. */
    boolean demo() {
        return demo;
    }

    ZoneId zone() {
        return zone;
    }

    Locale locale() {
        return Locale.forLanguageTag("en-SE");
    }

    Currency currency() {
        return Currency.getInstance("EUR");
    }
}
