package org.trammel.shop.web;

import java.time.Duration;
import java.time.ZoneId;
import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** The shop as its settings have it. */
@Component
class SettledHouse implements House {

    private static final Duration NAMES_LAST = Duration.ofSeconds(10);

    /** A code without a station is not looked for again and again. */
    private static final Duration MISSES_LAST = Duration.ofSeconds(2);

    private final Settings settings;
    private final Stations stations;
    private final boolean demo;
    private volatile Names names = new Names(Map.of(), 0);

    SettledHouse(Settings settings, Stations stations, Environment environment) {
        this.settings = settings;
        this.stations = stations;
        this.demo = environment.acceptsProfiles(Profiles.of("demo"));
    }

    @Override
    public String name() {
        return settings.text("shop.name");
    }

    @Override
    public boolean demo() {
        return demo;
    }

    @Override
    public ZoneId zone() {
        return settings.zone();
    }

    @Override
    public Locale locale() {
        return settings.locale();
    }

    @Override
    public Currency currency() {
        return settings.currency();
    }

    @Override
    public String station(String code) {
        Names known = names;
        long age = System.nanoTime() - known.readAt();
        boolean unknown = !known.byCode().containsKey(code) && age > MISSES_LAST.toNanos();
        if (known.byCode().isEmpty() && known.readAt() == 0 || unknown || age > NAMES_LAST.toNanos()) {
            known = new Names(
                    stations.all().stream().collect(Collectors.toMap(Station::code, Station::name)), System.nanoTime());
            names = known;
        }
        return known.byCode().getOrDefault(code, code);
    }

    /** Names as they were read; they stand on every tablet's page and hardly ever change. */
    private record Names(Map<String, String> byCode, long readAt) {}
}
