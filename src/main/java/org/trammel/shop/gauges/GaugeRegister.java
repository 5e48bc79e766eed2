package org.trammel.shop.gauges;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** The verbs on the register of gauges. Anybody at work may set a gauge aside; the QA lead alone lets it back. */
@Service
public class GaugeRegister {

    private final GaugeRepository rows;
    private final CalibrationRepository calibrations;
    private final FailureRepository failures;
    private final GaugeKindRepository kinds;
    private final Crew crew;
    private final Calibrating calibrating;
    private final GaugeFacts said;
    private final ActLog log;
    private final List<FailureReach> reaches;

    GaugeRegister(
            GaugeRepository rows,
            CalibrationRepository calibrations,
            FailureRepository failures,
            GaugeKindRepository kinds,
            Crew crew,
            Calibrating calibrating,
            GaugeFacts said,
            ActLog log,
            List<FailureReach> reaches) {
        this.rows = rows;
        this.calibrations = calibrations;
        this.failures = failures;
        this.kinds = kinds;
        this.crew = crew;
        this.calibrating = calibrating;
        this.said = said;
        this.log = log;
        this.reaches = reaches;
    }

    /** Registers a gauge. It may not be used before its first calibration is recorded. */
    @Transactional
    public Gauge register(Act act, String code, NewGauge entry) {
        return register(act, code, entry, List.of());
    }

    /**
     * Registers a measuring set-up made of gauges. It has an uncertainty of its own and is usable while every part is.
     *
     * @param parts codes of the gauges it is made of, two or more
     */
    @Transactional
    public Gauge setUp(Act act, String code, NewGauge entry, List<String> parts) {
        Set<String> distinct = parts.stream()
                .map(Gauges::label)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (distinct.size() < 2) {
            throw Refusal.input(
                    "parts",
                    "The set-up was not registered.",
                    "It is made of " + distinct.size() + " gauge(s).",
                    "Name two or more, or register it as a gauge.");
        }
        return register(act, code, entry, List.copyOf(distinct));
    }

    private Gauge register(Act act, String typed, NewGauge entry, List<String> partCodes) {
        String code = Entry.label(typed);
        if (!log.opens(act, "register-gauge", "gauge:" + code, Chains.SHOP)) {
            return required(code).gauge();
        }
        crew.require(act.by(), "The gauge was not registered.", Role.QA_LEAD, Role.OWNER);
        NewGauge read = Entry.read(entry, knownKinds(entry));
        if (rows.existsByCode(code)) {
            throw Refusal.input(
                    "code",
                    "The gauge was not registered.",
                    "The number " + code + " is in the register already; numbers are never given twice.",
                    "Enter another number.");
        }
        refuseSharedMakerNumber(read.makerNumber(), code);
        GaugeRow row = new GaugeRow(code, read, parts(partCodes), act.at());
        rows.saveAndFlush(row);
        log.event(Chains.SHOP, "gauge-registered", Map.of("gauge", row.id(), "code", code, "parts", partCodes));
        return row.gauge();
    }

    private Set<GaugeRow> parts(List<String> codes) {
        Set<GaugeRow> parts = new HashSet<>(rows.findByCodeIn(codes));
        for (String code : codes) {
            GaugeRow part = parts.stream()
                    .filter(row -> row.code().equals(code))
                    .findFirst()
                    .orElseThrow(() -> Refusal.input(
                            "parts",
                            "The set-up was not registered.",
                            "No gauge carries the number " + code + ".",
                            "Register the gauge first."));
            if (part.setup() || part.state() == GaugeState.RETIRED) {
                throw Refusal.input(
                        "parts",
                        "The set-up was not registered.",
                        code + (part.setup() ? " is a set-up itself." : " is retired."),
                        "Name gauges that are in the register and not retired.");
            }
        }
        return parts;
    }

    /**
     * Changes what is entered of a gauge.
     *
     * @param version of the gauge as it was shown
     */
    @Transactional
    public Gauge edit(Act act, String code, long version, NewGauge entry) {
        if (!opens(act, "edit-gauge", code)) {
            return required(code).gauge();
        }
        GaugeRow row = required(code);
        crew.require(act.by(), row.code() + " was not changed.", Role.QA_LEAD, Role.OWNER);
        if (row.version() != version) {
            throw Refusal.stale(
                    row.code() + " was not changed.",
                    "Somebody else changed it meanwhile.",
                    "Look at it as it is now and change it again if need be.");
        }
        NewGauge read = Entry.read(entry, knownKinds(entry));
        refuseSharedMakerNumber(read.makerNumber(), row.code());
        row.edit(read);
        rows.saveAndFlush(row);
        log.event(Chains.SHOP, "gauge-edited", GaugeFacts.of(row));
        return row.gauge();
    }

    /**
     * Records a calibration that found the gauge right, in words only.
     *
     * @param makerNumber the number on the certificate; must be the gauge's own, which catches two alike gauges that
     *     were swapped; null only where the gauge has none
     */
    @Transactional
    public Gauge calibrated(
            Act act,
            String code,
            LocalDate on,
            LocalDate due,
            String certificate,
            @Nullable String makerNumber,
            String asFound) {
        return calibrated(
                act, code, new NewCalibration(on, due, certificate, makerNumber, asFound, "", List.of(), false, ""));
    }

    /**
     * Records a calibration. Where an error as found is greater than it may be, the gauge failed: that is recorded in
     * the same transaction, and what was read with it since it was last right is judged again. If it was put right it
     * waits for the QA lead to let it be used again, else for another calibration.
     */
    @Transactional
    public Gauge calibrated(Act act, String code, NewCalibration entry) {
        rows.toChange(Gauges.label(code));
        if (!opensToFail(act, "calibrate-gauge", code)) {
            return required(code).gauge();
        }
        GaugeRow row = required(code);
        crew.require(act.by(), "The calibration of " + row.code() + " was not recorded.", Role.QA_LEAD, Role.OWNER);
        calibrating.record(act, row, entry);
        return row.gauge();
    }

    /** Sets a gauge aside. Anybody at work may. */
    @Transactional
    public Gauge block(Act act, String code, String reason) {
        if (!opens(act, "block-gauge", code)) {
            return required(code).gauge();
        }
        GaugeRow row = required(code);
        String not = row.code() + " was not blocked.";
        requireAtWork(act, not);
        String why = TypedText.words("reason", "Reason", not, reason);
        row.block(why, act.at());
        rows.saveAndFlush(row);
        log.event(Chains.SHOP, "gauge-blocked", said.with(GaugeFacts.of(row), why));
        return row.gauge();
    }

    /** Lets a blocked gauge be used again. */
    @Transactional
    public Gauge unblock(Act act, String code, String reason) {
        if (!opens(act, "unblock-gauge", code)) {
            return required(code).gauge();
        }
        GaugeRow row = required(code);
        String not = row.code() + " was not unblocked.";
        crew.require(act.by(), not, Role.QA_LEAD);
        String why = TypedText.words("reason", "Reason", not, reason);
        row.unblock(why, act.at());
        rows.saveAndFlush(row);
        log.event(Chains.SHOP, "gauge-unblocked", said.with(GaugeFacts.of(row), why));
        return row.gauge();
    }

    /**
     * Records that a gauge was found wrong; no reading is taken with it any more. One that is retired may be found wrong
     * too, such as by the laboratory it was sent to last.
     */
    @Transactional
    public Gauge fail(Act act, String code, Failure failure) {
        rows.toChange(Gauges.label(code));
        if (!opensToFail(act, "fail-gauge", code)) {
            return required(code).gauge();
        }
        GaugeRow row = required(code);
        String not = "The failure of " + row.code() + " was not recorded.";
        crew.require(act.by(), not, Role.QA_LEAD, Role.OWNER);
        calibrating.refuseFuture("foundOn", not, failure.foundOn());
        Failure read = FailureEntry.read(row, failure, not);
        row.requireMayFail();
        calibrating.refuseKnown(row, read, not);
        calibrating.fail(act, row, read, Calibrating.Found.of(read.error()));
        return row.gauge();
    }

    /** Takes a gauge out of the register for good; its number is never given again. */
    @Transactional
    public Gauge retire(Act act, String code, String reason) {
        if (!opens(act, "retire-gauge", code)) {
            return required(code).gauge();
        }
        GaugeRow row = required(code);
        String not = row.code() + " was not retired.";
        crew.require(act.by(), not, Role.QA_LEAD, Role.OWNER);
        String why = TypedText.words("reason", "Reason", not, reason);
        row.retire(why, act.at());
        rows.saveAndFlush(row);
        log.event(Chains.SHOP, "gauge-retired", said.with(GaugeFacts.of(row), why));
        return row.gauge();
    }

    private boolean opens(Act act, String kind, String code) {
        return log.opens(act, kind, "gauge:" + Gauges.label(code), Chains.SHOP);
    }

    /** What may fail the gauge is written into the frames that it measured too: a chain for each, locked in their order. */
    private boolean opensToFail(Act act, String kind, String code) {
        String label = Gauges.label(code);
        return log.opens(
                act,
                kind,
                "gauge:" + label,
                Stream.concat(Stream.of(Chains.SHOP), reaches.stream().flatMap(one -> one.chains(label).stream()))
                        .toArray(String[]::new));
    }

    private GaugeRow required(String code) {
        return rows.withRanges(Gauges.label(code))
                .orElseThrow(() -> Refusal.missing(
                        "The gauge was not found.",
                        "No gauge carries the number " + code.strip() + ".",
                        "Choose it from the register."));
    }

    private Set<String> knownKinds(NewGauge entry) {
        List<String> asked = entry.ranges().stream().map(GaugeRange::kind).toList();
        return kinds.findByCodeIn(asked).stream().map(row -> row.kind().code()).collect(Collectors.toSet());
    }

    private void refuseSharedMakerNumber(@Nullable String number, String code) {
        if (number != null) {
            rows.findByMakerNumber(number)
                    .filter(other -> !other.code().equals(code))
                    .ifPresent(other -> {
                        throw Refusal.input(
                                "makerNumber",
                                "The gauge was not entered.",
                                "The maker's number " + number + " belongs to " + other.code() + ".",
                                "Compare the labels: one of the two may be swapped.");
                    });
        }
    }

    private void requireAtWork(Act act, String not) {
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(
                    not, "Only people at work in the shop change the register.", "Let somebody of the crew do it.");
        }
    }

    /** Calibrations of a gauge, newest first. */
    @Transactional(readOnly = true)
    public List<Calibration> calibrationsOf(long gaugeId) {
        return calibrations.withPoints(gaugeId).stream()
                .map(CalibrationRow::calibration)
                .toList();
    }

    /** Failures of a gauge, newest first. */
    @Transactional(readOnly = true)
    public List<Failure> failuresOf(long gaugeId) {
        return failures.findByGaugeIdOrderByIdDesc(gaugeId).stream()
                .map(FailureRow::failure)
                .toList();
    }
}
