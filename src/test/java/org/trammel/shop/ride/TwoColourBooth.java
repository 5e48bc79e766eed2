package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.trammel.calc.thermal.Judged;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.Fixture;
import org.trammel.shop.TestClock;
import org.trammel.shop.coats.Finishes;
import org.trammel.shop.coats.MaskLines;
import org.trammel.shop.coats.NewFinish;
import org.trammel.shop.coats.SecondColour;
import org.trammel.shop.coats.Surfaces;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.LotSections;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.materials.NewPowderSheet;
import org.trammel.shop.materials.PowderSheets;
import org.trammel.shop.materials.Section;
import org.trammel.shop.ovens.Loads;
import org.trammel.shop.ovens.LogImport;
import org.trammel.shop.ovens.NewOven;
import org.trammel.shop.ovens.NewProgramme;
import org.trammel.shop.ovens.NewTest;
import org.trammel.shop.ovens.OvenRegister;
import org.trammel.shop.ovens.OvenRuns;
import org.trammel.shop.ovens.Programme;
import org.trammel.shop.ovens.ProgrammeStep;
import org.trammel.shop.ovens.Programmes;
import org.trammel.shop.ovens.Purpose;
import org.trammel.shop.ovens.Run;
import org.trammel.shop.ovens.RunRelease;
import org.trammel.shop.ovens.RunSigner;
import org.trammel.shop.ovens.Runs;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;

/** Booth and oven of a shop that coats in two colours: finish, powders and their sheets, and what is done there by hand. */
@Fixture
class TwoColourBooth {

    static final Map<String, String> COLOURS =
            Map.of("150.1", "PW-SAND-01", "150.4", "PW-GREEN-02", "150.8", "PW-CLEAR-01");
    static final Map<String, String> CURES = Map.of("150.2", "CU-1", "150.6", "CU-2", "150.9", "CU-3");
    static final String TUBES = "TL-7005-01";

    private static final String LINE = "down tube, from the shell";
    private static final LocalDate LATER = LocalDate.parse("2027-12-31");

    private final Workshop shop;
    private final Finishes finishes;
    private final Surfaces surfaces;
    private final MaskLines lines;
    private final LotRegister lots;
    private final LotSections sections;
    private final PowderSheets sheets;
    private final OvenRegister ovens;
    private final Programmes programmes;
    private final Loads loads;
    private final OvenRuns ovenRuns;
    private final LogImport records;
    private final RunRelease release;
    private final Runs runs;
    private final TestClock clock;

    TwoColourBooth(
            Workshop shop,
            Finishes finishes,
            Surfaces surfaces,
            MaskLines lines,
            LotRegister lots,
            LotSections sections,
            PowderSheets sheets,
            OvenRegister ovens,
            Programmes programmes,
            Loads loads,
            OvenRuns ovenRuns,
            LogImport records,
            RunRelease release,
            Runs runs,
            TestClock clock) {
        this.shop = shop;
        this.finishes = finishes;
        this.surfaces = surfaces;
        this.lines = lines;
        this.lots = lots;
        this.sections = sections;
        this.sheets = sheets;
        this.ovens = ovens;
        this.programmes = programmes;
        this.loads = loads;
        this.ovenRuns = ovenRuns;
        this.records = records;
        this.release = release;
        this.runs = runs;
        this.clock = clock;
    }

    void setUp() {
        coats();
        oven();
    }

    private void coats() {
        finishes.putInForce(
                act(shop.qa),
                "F-TWO",
                new NewFinish(
                                "two colours and clear",
                                List.of("AL7005"),
                                List.of(),
                                List.of("150.1", "150.4", "150.8"),
                                List.of(),
                                BigDecimal.ONE,
                                BigDecimal.ONE,
                                "written for a test")
                        .with(new SecondColour(List.of("150.3"), List.of("150.5"), List.of(LINE), 120)));
        powder("PW-SAND-01", "sand");
        powder("PW-GREEN-02", "green");
        powder("PW-CLEAR-01", "clear");
        lot(TUBES, LotKind.TUBE, "AL7005", null);
        lot("FL-5356-01", LotKind.FILLER, null, "ER5356");
    }

    private void powder(String code, String colour) {
        lot(code, LotKind.POWDER, null, "LOW-BAKE");
        sheets.enter(
                act(shop.qa),
                code,
                new NewPowderSheet(
                        colour,
                        List.of(
                                new NewPowderSheet.Pair(new BigDecimal("20"), new BigDecimal("160")),
                                new NewPowderSheet.Pair(new BigDecimal("10"), new BigDecimal("180"))),
                        null,
                        null,
                        null,
                        "sheet of a test"));
    }

    private void lot(String code, LotKind kind, String metal, String materialClass) {
        lots.receive(
                act(shop.cutter),
                new NewLot(
                        code,
                        kind,
                        "an invented lot",
                        metal,
                        materialClass,
                        kind == LotKind.TUBE ? "T6" : "",
                        "heat " + code,
                        null,
                        "invented",
                        LocalDate.of(2025, 12, 2),
                        null,
                        null,
                        ""));
        if (kind == LotKind.TUBE) {
            sections.state(
                    act(shop.cutter),
                    code,
                    List.of(new Section(new BigDecimal("42"), new BigDecimal("1.4"), null, null)));
        }
        lots.certify(act(shop.qa), code, "3.1", "certificate of " + code, null);
        lots.release(act(shop.qa), code);
    }

    private void oven() {
        BigDecimal size = new BigDecimal("2000");
        ovens.register(
                act(shop.qa),
                "OV-3",
                new NewOven("cures", Set.of(Purpose.CURE), BigDecimal.TEN, size, size, size, BigDecimal.TEN));
        ovens.fit(act(shop.qa), "OV-3", "TC-21", ThermocoupleRole.CONTROL);
        ovens.fit(act(shop.qa), "OV-3", "TC-22", ThermocoupleRole.LOAD);
        Instant before = clock.instant().minus(Duration.ofDays(5));
        for (String degC : List.of("140", "210")) {
            ovens.tested(
                    act(shop.qa),
                    "OV-3",
                    NewTest.survey(
                            before, LATER, new BigDecimal("-3"), new BigDecimal("3"), new BigDecimal(degC), "R-1"));
        }
        for (String code : List.of("TC-21", "TC-22")) {
            ovens.tested(
                    act(shop.qa),
                    "OV-3",
                    NewTest.accuracy(
                            code, before, LATER, BigDecimal.ZERO, new BigDecimal("2"), new BigDecimal("160"), "R-2"));
        }
        programme("P-CURE-160", "low-bake powder", "160");
        programme("P-CURE-200", "powder of another shop's frames", "200");
    }

    private void programme(String code, String what, String degC) {
        Programme drawn = programmes.draw(
                act(shop.qa),
                code,
                Purpose.CURE,
                new NewProgramme(
                        what,
                        List.of("AL7005"),
                        List.copyOf(CURES.keySet()),
                        List.of(ProgrammeStep.of(new BigDecimal(degC), new BigDecimal("5"), new BigDecimal("0.3333"))),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        false,
                        "written for a test"));
        programmes.approve(act(shop.qa), drawn.revisionId(), drawn.version());
    }

    void film(FrameSheet.OperationSheetOfFrame at) {
        long operation = at.line().operationId();
        BigDecimal line = new BigDecimal("220");
        if (at.line().code().equals("150.3")) {
            lines.lay(act(shop.coater), operation, new MaskLines.Laid(LINE, line, line, "TA-1"));
        } else if (at.line().code().equals("150.5")) {
            lines.draw(act(shop.coater), operation, new MaskLines.Drawn(LINE, new BigDecimal("0.1"), "FE-1"));
        }
    }

    /** Of every other colour it is refused first. */
    void sprays(FrameSheet.OperationSheetOfFrame at) {
        String lot = COLOURS.get(at.line().code());
        long operation = at.line().operationId();
        surfaces.measured(
                act(shop.coater),
                operation,
                new MetalAir(new BigDecimal("21"), new BigDecimal("50"), new BigDecimal("20"), "TH-1", "IR-1"));
        COLOURS.values().stream()
                .filter(other -> !other.equals(lot))
                .forEach(other -> assertThatThrownBy(() -> sprayed(operation, other))
                        .isInstanceOf(Refusal.class)
                        .hasMessageContaining("asks for"));
        sprayed(operation, lot);
    }

    private void sprayed(long operation, String lot) {
        surfaces.spraying(act(shop.coater), operation, new Surfaces.Spraying(lot, new BigDecimal("0.4"), "OM-2"));
    }

    /** Opens a load of a programme and puts the frame into it. */
    private String load(String code, String serial, String programme) {
        loads.open(act(shop.heatTreater), code, "OV-3", programme, "middle hook");
        loads.load(act(shop.heatTreater), code, List.of(serial), new Loads.Ready("middle hook", true, true, null));
        return code;
    }

    /** A load of another programme, whatever comes of it. */
    void bakes(String operation, String serial, String programme) {
        load(CURES.get(operation) + "-HOT", serial, programme);
    }

    Run begins(String operation, String serial) {
        String code = load(CURES.get(operation), serial, "P-CURE-160");
        ovenRuns.sign(act(shop.heatTreater), code, shop.heatTreater.id(), RunSigner.HEAT_TREATER);
        ovenRuns.sign(act(shop.fitter), code, shop.fitter.id(), RunSigner.SECOND);
        return ovenRuns.start(act(shop.heatTreater), code);
    }

    /** Straight to 160 °C in five minutes, 21 there, and down. */
    void cured(Run run) {
        Instant began = clock.instant();
        clock.pass(Duration.ofMinutes(40));
        ovenRuns.stop(act(shop.heatTreater), run.code());
        StringBuilder text = new StringBuilder("time;TC-22 °C\n");
        DateTimeFormatter time =
                DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss").withZone(ZoneId.of("UTC"));
        for (int half = 0; half <= 80; half++) {
            double degC = half < 10 ? 22 + 13.8 * half : half <= 52 ? 160 : Math.max(30, 160 - 20 * (half - 52));
            text.append(time.format(began.plusSeconds(half * 30L)))
                    .append(';')
                    .append(degC)
                    .append('\n');
        }
        records.read(
                act(shop.heatTreater),
                run.code(),
                new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)),
                "log.csv",
                new LogImport.Choices(ZoneId.of("UTC"), null, false));
        Run judged = records.take(
                act(shop.heatTreater), run.code(), runs.draftId(run.code()).orElseThrow());
        assertThat(judged.judged()).isEqualTo(Judged.CONFORMING);
        release.decide(act(shop.other), run.code(), shop.other.id(), Set.of(), null);
    }

    private Act act(Hand by) {
        return new Act(UUID.randomUUID(), by.id(), null, clock.instant(), null);
    }
}
