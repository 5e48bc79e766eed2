package org.trammel.shop.settings;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/**
 * The settings of the shop. Readers ask a copy in memory that is at most a few seconds old, so that a page costs no
 * statement for them and a change on another instance arrives nevertheless.
 */
@Service
public class Settings {

    private final SettingRepository rows;
    private final SettingsCopy copy;
    private final ObjectProvider<SettingKeys> keys;
    private final Words words;
    private final ActLog log;
    private final Clock clock;

    Settings(
            SettingRepository rows,
            SettingsCopy copy,
            ObjectProvider<SettingKeys> keys,
            Words words,
            ActLog log,
            Clock clock) {
        this.rows = rows;
        this.copy = copy;
        this.keys = keys;
        this.words = words;
        this.log = log;
        this.clock = clock;
    }

    /**
     * The value in force now.
     *
     * @throws Refusal if there is no setting of this key
     */
    public Setting inForce(String key) {
        Setting setting = copy.now().inForce().get(key);
        if (setting == null) {
            throw unknown(key);
        }
        return setting;
    }

    /** All values in force, in the order of the page. */
    public List<Setting> all() {
        return List.copyOf(copy.now().inForce().values());
    }

    /** What a setting is and what its value may be. */
    public Definition definition(String key) {
        Definition definition = copy.now().definitions().get(key);
        if (definition == null) {
            throw unknown(key);
        }
        return definition;
    }

    public BigDecimal number(String key) {
        return new BigDecimal(inForce(key).value());
    }

    public int whole(String key) {
        return number(key).intValueExact();
    }

    public String text(String key) {
        return inForce(key).value();
    }

    /** The zone in which the shop's days begin and end. */
    public ZoneId zone() {
        return ZoneId.of(text("shop.zone"));
    }

    public Locale locale() {
        return Locale.forLanguageTag(text("shop.locale"));
    }

    public Currency currency() {
        return Currency.getInstance(text("shop.currency"));
    }

    /** The shop's day at this moment. */
    public LocalDate today() {
        return dayOf(clock.instant());
    }

    /** The shop's day at a moment. */
    public LocalDate dayOf(Instant moment) {
        return LocalDate.ofInstant(moment, zone());
    }

    /** Every value a setting ever had, newest first. */
    @Transactional(readOnly = true)
    public List<Setting> history(String key) {
        Definition definition = definition(key);
        return rows.findByCodeOrderByIdDesc(key).stream()
                .map(row -> row.setting(definition.unit()))
                .toList();
    }

    /** Puts a new value in force. For the owner and the QA lead. */
    @Transactional
    public Setting change(Act act, String key, String value, String source, String reason) {
        return change(act, key, value, source, reason, null);
    }

    /**
     * Puts a new value in force. For the owner and the QA lead.
     *
     * @param seen id of the value the person had on the page; null to skip the comparison
     */
    @Transactional
    public Setting change(Act act, String key, String value, String source, String reason, @Nullable Long seen) {
        Definition definition = definition(key);
        if (!log.opens(act, "change-setting", "setting:" + key, Chains.SHOP)) {
            return newest(key, definition);
        }
        if (act.by() != Act.SERVICE) {
            keys.getObject().requireOwnerOrQa(act, definition.name() + " was not changed.");
        }
        Setting before = newest(key, definition);
        if (seen != null && seen != before.id()) {
            throw Refusal.stale(
                    definition.name() + " was not changed.",
                    "It was changed meanwhile to " + before.value() + " (" + before.source() + ").",
                    "Look at the value now in force and change it again if it is still wrong.");
        }
        String worth = Worth.of(definition, value);
        String from = Worth.said("source", definition.name(), source);
        String why = Worth.said("reason", definition.name(), reason);
        if (worth.equals(before.value()) && from.equals(before.source())) {
            throw Refusal.input(
                    "value",
                    definition.name() + " was not changed.",
                    "The value " + before.value() + " with this source is in force already.",
                    "Enter another value, or the same value with a better source.");
        }
        SettingRow row = rows.save(new SettingRow(key, worth, from, why, act));
        WordsRef said = words.keep(from + "\n" + why);
        log.event(
                Chains.SHOP,
                "setting-changed",
                Map.of(
                        "key", key,
                        "setting", row.id(),
                        "before", before.id(),
                        "number", definition.kind().figure() ? worth : "",
                        "words", said.id(),
                        "sha256", said.sha256()));
        copy.changed();
        return row.setting(definition.unit());
    }

    private Setting newest(String key, Definition definition) {
        return rows.findByCodeOrderByIdDesc(key).get(0).setting(definition.unit());
    }

    private static Refusal unknown(String key) {
        return Refusal.missing(
                "There is no setting " + key + ".",
                "No definition carries this key.",
                "Choose one from the settings page.");
    }
}
