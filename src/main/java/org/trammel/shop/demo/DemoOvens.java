package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.ovens.NewOven;
import org.trammel.shop.ovens.NewProgramme;
import org.trammel.shop.ovens.NewTest;
import org.trammel.shop.ovens.OvenRegister;
import org.trammel.shop.ovens.Programme;
import org.trammel.shop.ovens.ProgrammeStep;
import org.trammel.shop.ovens.Programmes;
import org.trammel.shop.ovens.Purpose;
import org.trammel.shop.ovens.RunFigure;

/**
 * Registers the three invented ovens with their surveys and tests, and the programmes with the revisions before them. Ages,
 * the bakes of two colours and, of late, solution treatment guard their operations and give their characteristics.
 */
@Component
@Profile("demo")
class DemoOvens {

    private static final String SHEET = "tube maker's sheet and own coupons, invented";
    /** Cures of a frame in two colours; where there is one, it goes by the sheet of the coat. */
    private static final List<String> COLOURS = List.of("150.2", "150.6", "150.9");

    /** Since then a solution treatment goes by its record; what was quenched before went by the sheet. */
    private static final Instant BY_RECORD = DemoStory.at("2026-03-17T08:00");

    private static final List<String> ANY = List.of("AL7005", "AL6061", "STEEL", "TI");

    private final OvenRegister register;
    private final Programmes programmes;
    private final DemoActs acts;
    private final DemoClock clock;

    DemoOvens(OvenRegister register, Programmes programmes, DemoActs acts, DemoClock clock) {
        this.register = register;
        this.programmes = programmes;
        this.acts = acts;
        this.clock = clock;
    }

    /** What there was before the first frame of the story. */
    void register() {
        oven("OV-1", "ageing", EnumSet.of(Purpose.AGEING, Purpose.TOP_UP), "6", 1600, 900, 1100);
        fit("OV-1", "TC-05", ThermocoupleRole.CONTROL);
        fit("OV-1", "TC-07", ThermocoupleRole.LOAD);
        fit("OV-1", "TC-08", ThermocoupleRole.LOAD);
        oven("OV-2", "solution, with the quench tank", EnumSet.of(Purpose.SOLUTION), "6", 1500, 900, 900);
        fit("OV-2", "TC-01", ThermocoupleRole.CONTROL);
        fit("OV-2", "TC-02", ThermocoupleRole.OVER_TEMPERATURE);
        fit("OV-2", "TC-03", ThermocoupleRole.LOAD);
        oven("OV-3", "cure", EnumSet.of(Purpose.CURE, Purpose.OTHER), "8", 1500, 800, 1200);
        fit("OV-3", "TC-21", ThermocoupleRole.CONTROL);
        fit("OV-3", "TC-22", ThermocoupleRole.LOAD);
        programmes();
        survey("OV-3", "2025-12-15", "2026-06-15", "-4.4", "3.2", "140");
        survey("OV-3", "2025-12-15", "2026-06-15", "-5.0", "4.1", "205");
        survey("OV-1", "2026-01-20", "2026-04-20", "-1.8", "2.2", "105");
        survey("OV-1", "2026-01-20", "2026-04-20", "-2.1", "2.8", "180");
        accuracy("OV-1", "2026-01-20", "2026-02-20", "177", Map.of("TC-05", "0", "TC-07", "0", "TC-08", "0"));
        survey("OV-2", "2026-02-10", "2026-05-10", "-3.0", "2.4", "529");
        accuracy("OV-1", "2026-02-20", "2026-03-20", "177", Map.of("TC-05", "0", "TC-07", "0", "TC-08", "0"));
        accuracy("OV-3", "2026-02-25", "2026-05-25", "160", Map.of("TC-21", "-0.6", "TC-22", "-1.1"));
        accuracy("OV-2", "2026-03-02", "2026-04-02", "529", Map.of("TC-01", "0.5", "TC-02", "0.8", "TC-03", "0.8"));
    }

    /** TC-07 is found 7 high; another takes its place and is tested in the afternoon of the demo day. */
    void changeTheThermocouple() {
        register.remove(acts.by("RH"), "OV-1", "TC-07", "read 7 high in its accuracy test of 16 March");
        register.fit(acts.by("RH"), "OV-1", "TC-11", ThermocoupleRole.LOAD);
    }

    /** The test of the day before is worked out and entered: every run since the last good one is told again. */
    void enterTheFailedTest() {
        test("OV-1", "TC-07", "2026-03-16", "15:45", null, "7", "177");
    }

    /** Since then every cure names the operations of a coat, in one colour and in two; what was coated before went by its sheet. */
    void nameTheCoats() {
        approve("P-CURE-160", 1, Purpose.CURE, cure("low-bake powder", ANY, "160"));
        approve("P-CURE-190", 1, Purpose.CURE, cure("powder", List.of("AL6061", "STEEL", "TI"), "190"));
        approve("P-CURE-200", 1, Purpose.CURE, cure("hard powder; aluminium as its heat allows", ANY, "200"));
    }

    private static Sheet cure(String what, List<String> metals, String degC) {
        List<String> coats = Stream.concat(Stream.of("150"), COLOURS.stream()).toList();
        return new Sheet(
                what,
                metals,
                coats,
                List.of(step(degC, "5", "10", "0.3333")),
                null,
                null,
                null,
                null,
                "powder sheet, invented",
                Map.of(
                        RunFigure.SOAK, coats.stream().map(code -> code + "-4").toList(),
                        RunFigure.IN_BAND,
                                coats.stream().map(code -> code + "-5").toList()));
    }

    private void oven(
            String code, String what, Set<Purpose> purposes, String uniformity, int length, int width, int height) {
        register.register(
                acts.by("TR"),
                code,
                new NewOven(
                        what,
                        purposes,
                        new BigDecimal(uniformity),
                        BigDecimal.valueOf(length),
                        BigDecimal.valueOf(width),
                        BigDecimal.valueOf(height),
                        new BigDecimal("45")));
    }

    private void fit(String oven, String thermocouple, ThermocoupleRole role) {
        register.fit(acts.by("RH"), oven, thermocouple, role);
    }

    private void survey(String oven, String on, String due, String lowest, String highest, String degC) {
        clock.setTo(DemoStory.at(on + "T12:30"));
        register.tested(
                acts.by("TR"),
                oven,
                NewTest.survey(
                        DemoStory.at(on + "T12:00"),
                        LocalDate.parse(due),
                        new BigDecimal(lowest),
                        new BigDecimal(highest),
                        new BigDecimal(degC),
                        "survey report of " + on + ", invented"));
    }

    private void accuracy(String oven, String on, String due, String degC, Map<String, String> errors) {
        clock.setTo(DemoStory.at(on + "T12:30"));
        errors.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(one -> test(oven, one.getKey(), on, "12:00", due, one.getValue(), degC));
    }

    private void test(
            String oven, String thermocouple, String on, String at, @Nullable String due, String error, String degC) {
        register.tested(
                acts.by("TR"),
                oven,
                NewTest.accuracy(
                        thermocouple,
                        DemoStory.at(on + "T" + at),
                        due == null ? null : LocalDate.parse(due),
                        new BigDecimal(error),
                        new BigDecimal("1.7"),
                        new BigDecimal(degC),
                        "accuracy test of " + on + ", invented"));
    }

    private void programmes() {
        approve("P-SOL-6061", 2, Purpose.SOLUTION, solution(List.of(), Map.of()));
        approve(
                "P-AGE-6061",
                4,
                Purpose.AGEING,
                new Sheet(
                        "to T6",
                        List.of("AL6061"),
                        List.of("110a"),
                        List.of(step("177", "5", "5", "8")),
                        null,
                        null,
                        null,
                        "72",
                        SHEET,
                        Map.of(
                                RunFigure.IN_BAND, List.of("110-1"),
                                RunFigure.EQUIVALENT, List.of("110-2"),
                                RunFigure.HIGHEST, List.of("110-3"))));
        approve(
                "P-AGE-7005",
                2,
                Purpose.AGEING,
                new Sheet(
                        "two steps",
                        List.of("AL7005"),
                        List.of("110a"),
                        List.of(step("107", "5", "5", "8"), rise(step("149", "5", "5", "16"))),
                        null,
                        "72",
                        null,
                        null,
                        SHEET,
                        Map.of(
                                RunFigure.IN_BAND, List.of("110-1a", "110-1b"),
                                RunFigure.EQUIVALENT, List.of("110-2"),
                                RunFigure.HIGHEST, List.of("110-3"))));
        approve(
                "P-CURE-160",
                1,
                Purpose.CURE,
                new Sheet(
                        "low-bake powder",
                        ANY,
                        COLOURS,
                        List.of(step("160", "5", "10", "0.3333")),
                        null,
                        null,
                        null,
                        null,
                        "powder sheet, invented",
                        Map.of(RunFigure.SOAK, coloured("-4"), RunFigure.IN_BAND, coloured("-5"))));
        approve(
                "P-CURE-190",
                1,
                Purpose.CURE,
                new Sheet(
                        "powder",
                        List.of("AL6061", "STEEL", "TI"),
                        List.of(),
                        List.of(step("190", "5", "10", "0.3333")),
                        null,
                        null,
                        null,
                        null,
                        "powder sheet, invented"));
        approve(
                "P-CURE-200",
                1,
                Purpose.CURE,
                new Sheet(
                        "hard powder; aluminium as its heat allows",
                        ANY,
                        List.of(),
                        List.of(step("200", "5", "10", "0.3333")),
                        null,
                        null,
                        null,
                        null,
                        "powder sheet, invented"));
        clock.setTo(BY_RECORD);
        approve(
                "P-SOL-6061",
                1,
                Purpose.SOLUTION,
                solution(
                        List.of("090a"),
                        Map.of(
                                RunFigure.SOAK, List.of("090-1"),
                                RunFigure.QUENCH, List.of("090-2"),
                                RunFigure.IN_BAND, List.of("090-5"))));
    }

    private static Sheet solution(List<String> guards, Map<RunFigure, List<String>> gives) {
        return new Sheet(
                "to W, water",
                List.of("AL6061"),
                guards,
                List.of(step("529", "6", "6", "0.75")),
                "582",
                null,
                "10",
                null,
                "procedure HP-02 of the shop, invented; the standard's edition is to be filled in",
                gives);
    }

    private static List<String> coloured(String end) {
        return COLOURS.stream().map(code -> code + end).toList();
    }

    /** What a programme says beside its steps; the figures in the order of its form. */
    private record Sheet(
            String what,
            List<String> metals,
            List<String> guards,
            List<ProgrammeStep> steps,
            @Nullable String never,
            @Nullable String naturalAgeing,
            @Nullable String quenchDelay,
            @Nullable String quenchToAge,
            String source,
            Map<RunFigure, List<String>> gives) {

        Sheet(
                String what,
                List<String> metals,
                List<String> guards,
                List<ProgrammeStep> steps,
                @Nullable String never,
                @Nullable String naturalAgeing,
                @Nullable String quenchDelay,
                @Nullable String quenchToAge,
                String source) {
            this(what, metals, guards, steps, never, naturalAgeing, quenchDelay, quenchToAge, source, Map.of());
        }

        NewProgramme content() {
            return new NewProgramme(
                    what,
                    metals,
                    guards,
                    steps,
                    figure(never),
                    null,
                    null,
                    null,
                    figure(naturalAgeing),
                    figure(quenchDelay),
                    figure(quenchToAge),
                    false,
                    source,
                    gives);
        }

        private static @Nullable BigDecimal figure(@Nullable String text) {
            return text == null ? null : new BigDecimal(text);
        }
    }

    private void approve(String code, int revisions, Purpose purpose, Sheet sheet) {
        for (int i = 0; i < revisions; i++) {
            Programme drawn = programmes.draw(acts.by("RH"), code, purpose, sheet.content());
            programmes.approve(acts.by("TR"), drawn.revisionId(), drawn.version());
        }
    }

    private static ProgrammeStep step(String degC, String below, String above, String hours) {
        return new ProgrammeStep(
                new BigDecimal(degC),
                new BigDecimal(below),
                new BigDecimal(above),
                new BigDecimal(hours),
                null,
                false,
                null,
                null,
                null);
    }

    private static ProgrammeStep rise(ProgrammeStep step) {
        return new ProgrammeStep(
                step.set_degC(),
                step.below_K(),
                step.above_K(),
                step.soak_h(),
                null,
                false,
                null,
                null,
                new BigDecimal("25"));
    }
}
