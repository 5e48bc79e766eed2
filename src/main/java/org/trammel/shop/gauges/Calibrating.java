package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;

/** What follows from a calibration and from a failure. A calibration that finds the gauge wrong is a failure too. */
@Component
class Calibrating {

    private final GaugeRepository rows;
    private final CalibrationRepository calibrations;
    private final FailureRepository failures;
    private final Settings settings;
    private final GaugeFacts said;
    private final ActLog log;
    private final ApplicationEventPublisher events;

    Calibrating(
            GaugeRepository rows,
            CalibrationRepository calibrations,
            FailureRepository failures,
            Settings settings,
            GaugeFacts said,
            ActLog log,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.calibrations = calibrations;
        this.failures = failures;
        this.settings = settings;
        this.said = said;
        this.log = log;
        this.events = events;
    }

    /** Takes a calibration into the history; its figures decide whether the gauge was right as it came. */
    void record(Act act, GaugeRow row, NewCalibration typed) {
        String not = "The calibration of " + row.code() + " was not recorded.";
        row.requireMayBeCalibrated();
        NewCalibration entry = CalibrationEntry.read(row, typed, not);
        refuseFuture("calibratedOn", not, entry.calibratedOn());
        boolean over = Calibration.over(entry.points());
        boolean stands = !over || entry.putRight();
        requireDue(entry, stands, not);
        refuseSwapped(row, entry.makerNumber(), not);
        if (calibrations.existsByGaugeIdAndCalibratedOn(row.id(), entry.calibratedOn())) {
            throw Refusal.input(
                    "calibratedOn",
                    not,
                    "One of " + entry.calibratedOn() + " is recorded already.",
                    "Look at its history first.");
        }
        if (over) {
            refuseOlder(row, entry.calibratedOn(), not);
            foundOver(act, row, entry);
        }
        CalibrationRow kept = calibrations.save(new CalibrationRow(row.id(), entry, stands, act));
        if (stands) {
            row.calibrated(entry.calibratedOn(), kept.due(), entry.certificate(), sinceItFailed(row, entry), act.at());
        }
        rows.saveAndFlush(row);
        rows.setupsWith(row.id()).forEach(GaugeRow::takeDatesOfParts);
        Map<String, Object> facts = GaugeFacts.of(row);
        facts.put("on", entry.calibratedOn().toString());
        facts.put("due", stands ? kept.due().toString() : "");
        facts.put("found", kept.calibration().found().name());
        log.event(Chains.SHOP, "gauge-calibrated", facts);
    }

    private boolean sinceItFailed(GaugeRow row, NewCalibration entry) {
        return failures.findByGaugeIdOrderByIdDesc(row.id()).stream()
                .findFirst()
                .map(FailureRow::failure)
                .map(failure -> !entry.calibratedOn().isBefore(failure.foundOn()))
                .orElse(true);
    }

    private static void requireDue(NewCalibration entry, boolean stands, String not) {
        LocalDate due = entry.dueOn();
        if (!stands) {
            return;
        }
        if (due == null) {
            throw Refusal.input(
                    "dueOn",
                    not,
                    "It has no day on which it is due.",
                    "Enter the last day the gauge may be used by it.");
        }
        if (due.isBefore(entry.calibratedOn())) {
            throw Refusal.input(
                    "dueOn", not, "It would be due on " + due + ", before the day itself.", "Enter a later due date.");
        }
    }

    /** Between two that stand the gauge was wrong and right again: that is more than one calibration says. */
    private static void refuseOlder(GaugeRow row, LocalDate on, String not) {
        LocalDate newest = row.calibratedOn();
        if (newest != null && on.isBefore(newest)) {
            throw Refusal.input(
                    "calibratedOn",
                    not,
                    "It found the gauge wrong and is older than the one of " + newest + " by which the gauge is used.",
                    "Record it as a failure found on that day, and the newer calibration after it.");
        }
    }

    private void foundOver(Act act, GaugeRow row, NewCalibration entry) {
        List<CalibrationPoint> points = entry.points();
        CalibrationPoint worst = points.stream()
                .filter(CalibrationPoint::over)
                .reduce((one, other) ->
                        other.error().abs().compareTo(one.error().abs()) > 0 ? other : one)
                .orElseThrow();
        Found found = new Found(Calibration.least(points), Calibration.greatest(points));
        if (row.state() == GaugeState.FAILED && known(row, found)) {
            return;
        }
        String note = "calibration " + entry.certificate() + " found " + figure(worst.error()) + " "
                + entry.unit() + " at " + figure(worst.at()) + " where " + figure(worst.permissible())
                + " is permissible" + (entry.asFound().isEmpty() ? "" : "; " + entry.asFound());
        fail(
                act,
                row,
                new Failure(entry.calibratedOn(), worst.error(), entry.unit(), worst.at(), shortened(note)),
                found);
    }

    private static String shortened(String note) {
        return note.length() <= TypedText.LONGEST ? note : note.substring(0, TypedText.LONGEST - 1) + "…";
    }

    private String figure(BigDecimal number) {
        return Figures.of(number, settings.locale());
    }

    /** Whether what was found lies within what the failure on record says already. */
    private boolean known(GaugeRow row, @Nullable Found found) {
        return found != null
                && failures.findByGaugeIdOrderByIdDesc(row.id()).stream()
                        .findFirst()
                        .map(FailureRow::failure)
                        .map(Failure::error)
                        .filter(error -> found.least().compareTo(error.min(BigDecimal.ZERO)) >= 0
                                && found.greatest().compareTo(error.max(BigDecimal.ZERO)) <= 0)
                        .isPresent();
    }

    /** Of a gauge that is failed nothing is recorded twice, as it is in no state to fail; one that is retired stays so. */
    void refuseKnown(GaugeRow row, Failure failure, String not) {
        failures.findByGaugeIdOrderByIdDesc(row.id()).stream()
                .findFirst()
                .map(FailureRow::failure)
                .filter(before -> before.error() == null
                        ? failure.error() == null
                        : failure.error() != null
                                && before.unit().equals(failure.unit())
                                && known(row, Found.of(failure.error())))
                .filter(before -> row.state() == GaugeState.RETIRED)
                .ifPresent(before -> {
                    throw Refusal.state(
                            not,
                            "It is on record that it was found wrong on " + before.foundOn()
                                    + (before.error() == null
                                            ? ", without a figure."
                                            : " by " + figure(before.error()) + " " + before.unit() + "."),
                            "Look at the re-judgement of it; record it again only where the error is greater.");
                });
    }

    /** Errors that were found, 0 among them. */
    record Found(BigDecimal least, BigDecimal greatest) {

        static @Nullable Found of(@Nullable BigDecimal error) {
            return error == null ? null : new Found(error.min(BigDecimal.ZERO), error.max(BigDecimal.ZERO));
        }
    }

    /** Records that a gauge was found wrong, and tells whoever judges again what was read with it. */
    void fail(Act act, GaugeRow row, Failure failure, @Nullable Found span) {
        LocalDate lastGood = calibrations
                .findFirstByGaugeIdAndStandsTrueAndCalibratedOnLessThanEqualOrderByCalibratedOnDesc(
                        row.id(), failure.foundOn())
                .map(CalibrationRow::calibratedOn)
                .orElse(null);
        FailureRow found = failures.save(new FailureRow(row.id(), lastGood, failure, act));
        if (row.state() != GaugeState.FAILED) {
            row.fail(failure.note(), act.at());
        }
        rows.saveAndFlush(row);
        Set<Long> means = new HashSet<>();
        means.add(row.id());
        rows.setupsWith(row.id()).forEach(setup -> means.add(setup.id()));
        Map<String, Object> facts = GaugeFacts.of(row);
        facts.put("failure", found.id());
        facts.put("foundOn", failure.foundOn().toString());
        facts.put("lastGoodOn", lastGood == null ? "" : lastGood.toString());
        facts.put("error", failure.error() == null ? "" : failure.error().toPlainString() + " " + failure.unit());
        log.event(Chains.SHOP, "gauge-failed", said.with(facts, failure.note()));
        events.publishEvent(new GaugeFailed(
                act,
                row.id(),
                row.code(),
                means,
                lastGood,
                failure.foundOn(),
                failure.error(),
                failure.unit(),
                failure.errorAt(),
                span == null ? null : span.least(),
                span == null ? null : span.greatest()));
    }

    private static void refuseSwapped(GaugeRow row, @Nullable String typed, String not) {
        String own = row.makerNumber();
        String given = typed == null ? "" : typed.strip();
        if (own != null && !own.equalsIgnoreCase(given)) {
            throw Refusal.input(
                    "makerNumber",
                    not,
                    given.isEmpty()
                            ? "The maker's number on the certificate is missing; " + row.code() + " is " + own + "."
                            : "The certificate is for " + given + ", " + row.code() + " is " + own + ".",
                    "Compare label and gauge: two alike gauges may be swapped. Block both until it is clear.");
        }
    }

    void refuseFuture(String field, String not, LocalDate day) {
        if (day.isAfter(settings.today())) {
            throw Refusal.input(
                    field,
                    not,
                    day + " has not come yet; it is " + settings.today() + ".",
                    "Enter the day it was done on.");
        }
    }
}
