package org.trammel.shop.settings;

import java.math.BigDecimal;
import java.security.Principal;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Backups;

/** The sheets of the shop's settings, and of what keeps its record. */
@Controller
class SettingPages {

    private final Settings settings;
    private final SettingKeys keys;
    private final StorageFacts storage;
    private final Backups backups;
    private final Clock clock;

    SettingPages(Settings settings, SettingKeys keys, StorageFacts storage, Backups backups, Clock clock) {
        this.settings = settings;
        this.keys = keys;
        this.storage = storage;
        this.backups = backups;
        this.clock = clock;
    }

    /** A setting with what it means. */
    record Line(Setting setting, Definition definition) {

        /** The value as a sheet writes it: a number where it is a figure, else the text. */
        public Object shown() {
            return definition.kind().figure() ? new BigDecimal(setting.value()) : setting.value();
        }
    }

    /**
     * The last back-up.
     *
     * @param at when it was taken; null if none is known
     * @param old whether it is older than the shop allows
     */
    record LastBackup(@Nullable Instant at, String name, boolean old) {}

    @GetMapping("/shop/settings")
    String list(Model model) {
        Map<String, List<Line>> places = new LinkedHashMap<>();
        settings.all().forEach(setting -> {
            Definition definition = settings.definition(setting.key());
            places.computeIfAbsent(definition.place(), place -> new ArrayList<>())
                    .add(new Line(setting, definition));
        });
        model.addAttribute("places", places);
        model.addAttribute("storage", storage.storage());
        model.addAttribute("backup", lastBackup());
        return "settings/list";
    }

    private LastBackup lastBackup() {
        Duration most = Duration.ofHours(settings.whole("backup.warn.hours"));
        return backups.last()
                .map(last -> new LastBackup(
                        last.at(), last.name(), last.at().plus(most).isBefore(clock.instant())))
                .orElse(new LastBackup(null, "", true));
    }

    @GetMapping("/shop/settings/{key}")
    String one(@PathVariable String key, @Nullable Principal who, Model model) {
        Definition definition = settings.definition(key);
        model.addAttribute("definition", definition);
        model.addAttribute("line", new Line(settings.inForce(key), definition));
        model.addAttribute(
                "history",
                settings.history(key).stream()
                        .map(setting -> new Line(setting, definition))
                        .toList());
        model.addAttribute("names", keys.names());
        model.addAttribute("opens", keys.opens(who));
        return "settings/sheet";
    }

    @PostMapping("/shop/settings/{key}")
    String change(
            Act act,
            @PathVariable String key,
            @RequestParam long seen,
            @RequestParam(defaultValue = "") String value,
            @RequestParam(defaultValue = "") String source,
            @RequestParam(defaultValue = "") String reason) {
        settings.change(act, key, value, source, reason, seen);
        return "redirect:/shop/settings/" + key;
    }
}
