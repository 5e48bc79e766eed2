package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** Reads the register of ovens. */
@Service
@Transactional(readOnly = true)
public class Ovens {

    private final OvenRepository rows;
    private final FittedRepository thermocouples;
    private final OvenTestRepository tests;
    private final Settings settings;

    Ovens(OvenRepository rows, FittedRepository thermocouples, OvenTestRepository tests, Settings settings) {
        this.rows = rows;
        this.thermocouples = thermocouples;
        this.tests = tests;
        this.settings = settings;
    }

    /** All of them by number, retired ones included. */
    public List<Oven> all() {
        List<OvenRow> all = rows.findAllByOrderByCode();
        Map<Long, List<Fitted>> fitted = thermocouples.findByRemovedAtIsNullOrderByCode().stream()
                .collect(Collectors.groupingBy(
                        FittedRow::ovenId, Collectors.mapping(FittedRow::fitted, Collectors.toList())));
        Map<Long, List<OvenTest>> tested = all.isEmpty()
                ? Map.of()
                : tests
                        .findByOvenIdInOrderByTestedAtDescIdDesc(
                                all.stream().map(OvenRow::id).toList())
                        .stream()
                        .collect(Collectors.groupingBy(
                                OvenTestRow::ovenId, Collectors.mapping(OvenTestRow::test, Collectors.toList())));
        return all.stream()
                .map(row ->
                        oven(row, fitted.getOrDefault(row.id(), List.of()), tested.getOrDefault(row.id(), List.of())))
                .toList();
    }

    /** @throws Refusal if there is none of that number */
    public Oven byCode(String code) {
        return one(rows.findByCode(label(code)).orElseThrow(() -> none(code)));
    }

    Oven byId(long id) {
        return one(rows.findById(id).orElseThrow(() -> none(String.valueOf(id))));
    }

    private Oven one(OvenRow row) {
        List<Fitted> fitted = everFitted(row.id()).stream()
                .filter(thermocouple -> thermocouple.removedAt() == null)
                .toList();
        return oven(row, fitted, testsOf(row.id()));
    }

    private Oven oven(OvenRow row, List<Fitted> fitted, List<OvenTest> tested) {
        return row.oven(fitted, new OvenLocks(row.state(), row.stateReason(), fitted, tested, settings.today()));
    }

    /** Thermocouples that are or were in the oven. */
    public List<Fitted> everFitted(long ovenId) {
        return thermocouples.findByOvenIdOrderByRemovedAtDescCode(ovenId).stream()
                .map(FittedRow::fitted)
                .toList();
    }

    /** Surveys and accuracy tests, newest first. */
    public List<OvenTest> testsOf(long ovenId) {
        return tests.findByOvenIdOrderByTestedAtDescIdDesc(ovenId).stream()
                .map(OvenTestRow::test)
                .toList();
    }

    /** How much too high a thermocouple reads by its newest test up to an instant, if that was good; else 0. */
    BigDecimal error_K(String thermocouple, Instant at) {
        return newestTest(thermocouple, at)
                .filter(OvenTest::good)
                .map(OvenTest::error_K)
                .orElse(BigDecimal.ZERO);
    }

    private Optional<OvenTest> newestTest(String thermocouple, Instant at) {
        return tests.findByThermocoupleOrderByTestedAtDescIdDesc(thermocouple).stream()
                .map(OvenTestRow::test)
                .filter(test -> !test.testedAt().isAfter(at))
                .findFirst();
    }

    /** The survey that stands. */
    Optional<OvenTest> survey(long ovenId) {
        return testsOf(ovenId).stream()
                .filter(test -> test.kind() == TestKind.SURVEY)
                .findFirst()
                .filter(OvenTest::good);
    }

    static String label(String typed) {
        return typed.strip().toUpperCase(java.util.Locale.ROOT);
    }

    static Refusal none(String code) {
        return Refusal.missing(
                "The oven was not found.", "No oven carries the number " + code + ".", "Choose it from the register.");
    }
}
