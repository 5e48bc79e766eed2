package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;

/** The verbs on the register of ovens. Anybody at work may block an oven; the QA lead alone lets it be used again. */
@Service
public class OvenRegister {

    private static final BigDecimal LARGEST_K = BigDecimal.valueOf(200);
    private static final BigDecimal LEAST_DEG_C = BigDecimal.valueOf(-80);
    private static final BigDecimal GREATEST_DEG_C = BigDecimal.valueOf(1300);

    private final OvenRepository rows;
    private final FittedRepository thermocouples;
    private final OvenTestRepository tests;
    private final Ovens ovens;
    private final Crew crew;
    private final Settings settings;
    private final RunDoubts doubts;
    private final ActLog log;

    OvenRegister(
            OvenRepository rows,
            FittedRepository thermocouples,
            OvenTestRepository tests,
            Ovens ovens,
            Crew crew,
            Settings settings,
            RunDoubts doubts,
            ActLog log) {
        this.rows = rows;
        this.thermocouples = thermocouples;
        this.tests = tests;
        this.ovens = ovens;
        this.crew = crew;
        this.settings = settings;
        this.doubts = doubts;
        this.log = log;
    }

    /** Registers an oven; it is locked until it is surveyed and its thermocouples are tested. */
    @Transactional
    public Oven register(Act act, String typed, NewOven entry) {
        String deed = "The oven was not registered.";
        String code = TypedText.line("code", "The number", deed, Ovens.label(typed), 20);
        if (!log.opens(act, "register-oven", "oven:" + code, Chains.SHOP)) {
            return ovens.byCode(code);
        }
        crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        if (!code.matches("[A-Z0-9][A-Z0-9-]*")) {
            throw Refusal.input(
                    "code", deed, code + " has signs beside letters, digits and dashes.", "Enter it as on its plate.");
        }
        if (rows.existsByCode(code)) {
            throw Refusal.input(
                    "code",
                    deed,
                    "The number " + code + " is in the register already; numbers are never given twice.",
                    "Enter another number.");
        }
        OvenRow row = rows.saveAndFlush(new OvenRow(code, entry.checked(deed), act.at()));
        log.event(Chains.SHOP, "oven-registered", Map.of("oven", row.id(), "code", code));
        return ovens.byCode(code);
    }

    /** @param version of the oven as it was shown */
    @Transactional
    public Oven edit(Act act, String code, long version, NewOven entry) {
        return on(act, "edit-oven", code, "was not changed.", row -> {
            crew.require(act.by(), row.code() + " was not changed.", Role.QA_LEAD, Role.OWNER);
            if (row.version() != version) {
                throw Refusal.stale(
                        row.code() + " was not changed.",
                        "Somebody else changed it meanwhile.",
                        "Look at it as it is now and change it again if need be.");
            }
            row.edit(entry.checked(row.code() + " was not changed."));
            log.event(Chains.SHOP, "oven-edited", Map.of("oven", row.id()));
        });
    }

    /** Sets an oven aside. Anybody at work may. */
    @Transactional
    public Oven block(Act act, String code, @Nullable String reason) {
        return on(act, "block-oven", code, "was not blocked.", row -> {
            String deed = row.code() + " was not blocked.";
            if (!crew.byId(act.by()).mayWork()) {
                throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here blocks it.");
            }
            row.block(TypedText.words("reason", "The reason", deed, reason, 1000), act.at());
            log.event(Chains.SHOP, "oven-blocked", Map.of("oven", row.id()));
        });
    }

    @Transactional
    public Oven unblock(Act act, String code, @Nullable String reason) {
        return on(act, "unblock-oven", code, "was not let be used again.", row -> {
            String deed = row.code() + " was not let be used again.";
            crew.require(act.by(), deed, Role.QA_LEAD);
            row.unblock(TypedText.words("reason", "What was checked", deed, reason, 1000), act.at());
            log.event(Chains.SHOP, "oven-unblocked", Map.of("oven", row.id()));
        });
    }

    @Transactional
    public Oven retire(Act act, String code, @Nullable String reason) {
        return on(act, "retire-oven", code, "was not retired.", row -> {
            String deed = row.code() + " was not retired.";
            crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
            row.retire(TypedText.words("reason", "The reason", deed, reason, 1000), act.at());
            log.event(Chains.SHOP, "oven-retired", Map.of("oven", row.id()));
        });
    }

    /** Fits a thermocouple; it is in one oven at a time and has one role there. */
    @Transactional
    public Oven fit(Act act, String code, @Nullable String thermocouple, @Nullable ThermocoupleRole role) {
        return on(act, "fit-thermocouple", code, "got no thermocouple.", row -> {
            String deed = "The thermocouple was not fitted.";
            crew.require(act.by(), deed, Role.QA_LEAD, Role.HEAT_TREATER);
            row.refuseRetired("given a thermocouple");
            String own = TypedText.line(
                    "thermocouple",
                    "The number of the thermocouple",
                    deed,
                    thermocouple == null ? "" : Ovens.label(thermocouple),
                    20);
            if (role == null) {
                throw Refusal.input("role", deed, "Its role is missing.", "Say what it does in this oven.");
            }
            thermocouples.findByCodeAndRemovedAtIsNull(own).ifPresent(there -> {
                throw Refusal.input(
                        "thermocouple",
                        deed,
                        own + " is fitted in "
                                + rows.findById(there.ovenId()).orElseThrow().code() + " as "
                                + Fitted.word(there.role()) + ".",
                        "Take it out there first.");
            });
            FittedRow fitted = thermocouples.saveAndFlush(new FittedRow(row.id(), own, role, act));
            log.event(
                    Chains.SHOP,
                    "thermocouple-fitted",
                    Map.of("oven", row.id(), "thermocouple", own, "role", role.name(), "fitted", fitted.id()));
        });
    }

    @Transactional
    public Oven remove(Act act, String code, String thermocouple, @Nullable String reason) {
        return on(act, "remove-thermocouple", code, "keeps its thermocouples.", row -> {
            String deed = "The thermocouple was not taken out.";
            crew.require(act.by(), deed, Role.QA_LEAD, Role.HEAT_TREATER);
            FittedRow fitted = thermocouples
                    .findByCodeAndRemovedAtIsNull(Ovens.label(thermocouple))
                    .filter(there -> there.ovenId() == row.id())
                    .orElseThrow(() -> Refusal.state(
                            deed,
                            Ovens.label(thermocouple) + " is not in " + row.code() + ".",
                            "Look at its sheet as it is now."));
            fitted.remove(TypedText.words("reason", "The reason", deed, reason, 1000), act);
            thermocouples.saveAndFlush(fitted);
            log.event(Chains.SHOP, "thermocouple-removed", Map.of("oven", row.id(), "thermocouple", fitted.code()));
        });
    }

    /**
     * Records a survey or an accuracy test. A survey is good within the oven's uniformity, an accuracy test within the
     * limit that is entered with it; what is not good locks the oven at once.
     */
    @Transactional
    public Oven tested(Act act, String code, NewTest entry) {
        return on(act, "test-oven", code, "has no new test.", chains(act, entry), row -> {
            String deed = "The " + entry.kind().word() + " was not recorded.";
            crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
            row.refuseRetired("tested");
            if (entry.testedAt().isAfter(act.at())) {
                throw Refusal.input(
                        "testedOn", deed, "That has not come yet.", "Enter the day and time at which it was done.");
            }
            NewTest read = entry.kind() == TestKind.SURVEY ? survey(entry, deed) : accuracy(row, entry, deed);
            boolean good = good(row, read);
            LocalDate due = read.dueOn();
            if (good && (due == null || due.isBefore(settings.dayOf(read.testedAt())))) {
                throw Refusal.input(
                        "dueOn",
                        deed,
                        due == null
                                ? "The day on which the next one is due is missing."
                                : "It is due on " + due + ", before it was done.",
                        "Enter the last day on which this one stands.");
            }
            OvenTestRow test = tests.save(new OvenTestRow(row.id(), read, good, act));
            log.event(
                    Chains.SHOP,
                    good ? "oven-test-good" : "oven-test-failed",
                    Map.of(
                            "oven",
                            row.id(),
                            "test",
                            test.test().id(),
                            "kind",
                            read.kind().name()));
            if (!good && read.kind() == TestKind.ACCURACY) {
                doubts.failed(act, row.id(), test.test());
            }
        });
    }

    /** An accuracy test that is not good holds frames, whose chains are locked with the first. */
    private String[] chains(Act act, NewTest entry) {
        Set<String> chains = new HashSet<>();
        chains.add(Chains.SHOP);
        if (entry.kind() == TestKind.ACCURACY && entry.thermocouple() != null) {
            chains.addAll(doubts.chains(Ovens.label(entry.thermocouple()), act.at()));
        }
        return chains.toArray(String[]::new);
    }

    private NewTest survey(NewTest entry, String deed) {
        BigDecimal lowest = within("lowest", "The coldest place", deed, entry.lowest_K());
        BigDecimal highest = within("highest", "The hottest place", deed, entry.highest_K());
        if (lowest.signum() > 0 || highest.signum() < 0) {
            throw Refusal.input(
                    lowest.signum() > 0 ? "lowest" : "highest",
                    deed,
                    "The coldest place lies " + lowest.toPlainString() + " K and the hottest " + highest.toPlainString()
                            + " K from the set temperature.",
                    "Enter the coldest as 0 or below it and the hottest as 0 or above it.");
        }
        return NewTest.survey(entry.testedAt(), entry.dueOn(), lowest, highest, degC(entry, deed), report(entry, deed));
    }

    private NewTest accuracy(OvenRow row, NewTest entry, String deed) {
        String own = Ovens.label(entry.thermocouple() == null ? "" : entry.thermocouple());
        if (thermocouples.findByOvenIdOrderByRemovedAtDescCode(row.id()).stream()
                .noneMatch(there -> there.code().equals(own))) {
            throw Refusal.input(
                    "thermocouple",
                    deed,
                    (own.isEmpty() ? "No thermocouple is named" : own + " was never in " + row.code()) + ".",
                    "Choose one that is or was in this oven.");
        }
        BigDecimal limit = within("limit", "The greatest error that is good", deed, entry.limit_K());
        if (limit.signum() <= 0) {
            throw Refusal.input("limit", deed, "The greatest error is not above 0 K.", "Enter it without a sign.");
        }
        return NewTest.accuracy(
                own,
                entry.testedAt(),
                entry.dueOn(),
                within("error", "The error", deed, entry.error_K()),
                limit,
                degC(entry, deed),
                report(entry, deed));
    }

    private static boolean good(OvenRow row, NewTest read) {
        if (read.kind() == TestKind.ACCURACY) {
            return Objects.requireNonNull(read.error_K()).abs().compareTo(Objects.requireNonNull(read.limit_K())) <= 0;
        }
        return Objects.requireNonNull(read.lowest_K()).negate().compareTo(row.uniformity_K()) <= 0
                && Objects.requireNonNull(read.highest_K()).compareTo(row.uniformity_K()) <= 0;
    }

    private static BigDecimal within(String field, String what, String deed, @Nullable BigDecimal value) {
        if (value == null) {
            throw Refusal.input(field, deed, what + " is missing.", "Enter it in K.");
        }
        if (value.abs().compareTo(LARGEST_K) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    what + ", " + value.toPlainString() + " K, is further off than " + LARGEST_K + " K.",
                    "Enter the difference, not the temperature.");
        }
        return value;
    }

    private static BigDecimal degC(NewTest entry, String deed) {
        BigDecimal value = entry.at_degC();
        if (value == null || value.compareTo(LEAST_DEG_C) < 0 || value.compareTo(GREATEST_DEG_C) > 0) {
            throw Refusal.input(
                    "atDegC",
                    deed,
                    value == null
                            ? "The temperature it was done at is missing."
                            : value.toPlainString() + " °C is not from " + LEAST_DEG_C + " to " + GREATEST_DEG_C
                                    + " °C.",
                    "Enter the temperature at which it was done.");
        }
        return value;
    }

    private static String report(NewTest entry, String deed) {
        return TypedText.line("report", "The report", deed, entry.report(), 200);
    }

    private Oven on(Act act, String kind, String code, String not, Consumer<OvenRow> deed) {
        return on(act, kind, code, not, new String[] {Chains.SHOP}, deed);
    }

    private Oven on(Act act, String kind, String code, String not, String[] chains, Consumer<OvenRow> deed) {
        String label = Ovens.label(code);
        if (log.opens(act, kind, "oven:" + label, chains)) {
            OvenRow row =
                    rows.findByCode(label).orElseThrow(() -> Ovens.none(code).saying(label + " " + not));
            deed.accept(row);
            rows.saveAndFlush(row);
        }
        return ovens.byCode(label);
    }
}
