package org.trammel.shop.ovens;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.thermal.RunVerdict;
import org.trammel.calc.thermal.ThermocoupleCheck;
import org.trammel.calc.thermal.TopUp;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@RestController
@RequestMapping("/api/v1/oven-loads")
@Tag(name = "Oven loads", description = "Loads, their runs, what was recorded, and their release")
class LoadApi {

    private final Runs runs;
    private final Loads loads;
    private final OvenRuns ovenRuns;
    private final LogImport records;
    private final RunRelease release;
    private final RunJudge judge;
    private final HardnessOfRuns hardness;
    private final Quenches quenches;
    private final Signatures signatures;

    LoadApi(
            Runs runs,
            Loads loads,
            OvenRuns ovenRuns,
            LogImport records,
            RunRelease release,
            RunJudge judge,
            HardnessOfRuns hardness,
            Quenches quenches,
            Signatures signatures) {
        this.runs = runs;
        this.loads = loads;
        this.ovenRuns = ovenRuns;
        this.records = records;
        this.release = release;
        this.judge = judge;
        this.hardness = hardness;
        this.quenches = quenches;
        this.signatures = signatures;
    }

    @GetMapping
    @Operation(summary = "Loads, newest first, a page at a time")
    List<Run> page(@RequestParam @Nullable Long before, @RequestParam(defaultValue = "50") int limit) {
        return runs.page(before == null ? Long.MAX_VALUE : before, Math.max(1, Math.min(100, limit)));
    }

    @GetMapping("/{code}")
    Run one(@PathVariable String code) {
        return runs.byCode(code);
    }

    /**
     * @param taken whether the run is judged by it; else it was only read
     * @param draft id to take it by, while it is not taken
     * @param verdict null where the load has no record
     * @param none why there is no verdict
     * @param noSheet lots of powder in it whose sheet was not entered, so that it is not compared with them
     */
    record RecordOfRun(
            String name,
            String sha256,
            boolean taken,
            @Nullable Long draft,
            List<String> howRead,
            @Nullable RunVerdict verdict,
            @Nullable String none,
            List<ThermocoupleCheck.Sign> looks,
            @Nullable TopUp topUp,
            List<String> noSheet) {}

    @GetMapping("/{code}/record")
    @Operation(
            summary = "The record of a run, how it was read, and what it says; one that is not taken yet comes first")
    RecordOfRun record(@PathVariable String code) {
        RunRow row = runs.row(code);
        Optional<LogDraftRow> draft = runs.draft(row.id());
        KeptLog log = draft.map(LogDraftRow::kept)
                .or(() -> runs.log(row.id()))
                .orElseThrow(() -> Refusal.missing(
                        "The record was not found.",
                        "Run " + row.code() + " has none yet.",
                        "Send the logger's file once the run is stopped."));
        RunJudge.Said said = judge.of(row, log.read());
        return new RecordOfRun(
                log.name(),
                log.sha256(),
                draft.isEmpty(),
                draft.map(LogDraftRow::id).orElse(null),
                log.sentences(),
                said.verdict() instanceof Answer.Determined<RunVerdict> there ? there.value() : null,
                said.verdict() instanceof Answer.NotDeterminable<RunVerdict> not
                        ? not.gaps().get(0).words()
                        : null,
                said.signs(),
                said.topUp(),
                said.noSheet());
    }

    record Opened(
            @Nullable String code,
            @Nullable String oven,
            @Nullable String programme,
            @Nullable String hung) {}

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    Run open(Act act, @RequestBody Opened body) {
        return loads.open(act, body.code(), orEmpty(body.oven()), orEmpty(body.programme()), body.hung());
    }

    /** @param tags serials or tags with their check characters; parts too */
    record LoadedFrames(
            @Nullable List<String> tags,
            @Nullable String place,
            @Nullable Boolean vents,
            @Nullable Boolean dry,
            @Nullable BigDecimal massKg) {}

    @PostMapping("/{code}/frames")
    @Operation(summary = "Loads frames; all of them or none")
    Run load(Act act, @PathVariable String code, @RequestBody LoadedFrames body) {
        return loads.load(
                act,
                code,
                body.tags() == null ? List.of() : body.tags(),
                new Loads.Ready(
                        body.place(),
                        Boolean.TRUE.equals(body.vents()),
                        Boolean.TRUE.equals(body.dry()),
                        body.massKg()));
    }

    record Because(@Nullable String reason) {}

    @PostMapping("/{code}/frames/{travellerId}/take-out")
    Run takeOut(Act act, @PathVariable String code, @PathVariable long travellerId, @RequestBody Because body) {
        return loads.takeOut(act, code, travellerId, body.reason());
    }

    record Placed(@Nullable String column, @Nullable String place) {}

    @PostMapping("/{code}/thermocouples/{thermocouple}")
    @Operation(summary = "Where a thermocouple sits, and its column in the record")
    Run wire(Act act, @PathVariable String code, @PathVariable String thermocouple, @RequestBody Placed body) {
        return loads.wire(act, code, thermocouple, body.column(), body.place());
    }

    record Signed(
            @Schema(description = "id of who signs") long signer,

            @Nullable RunSigner as,

            @Schema(description = "the signer's own PIN", accessMode = Schema.AccessMode.WRITE_ONLY) @Nullable
            String pin) {}

    @PostMapping("/{code}/signatures")
    @Operation(summary = "Signs the load: the heat treater, and an independent second")
    Run sign(Act act, SignedOn who, @PathVariable String code, @RequestBody Signed body) {
        if (body.as() == null) {
            throw Refusal.input("as", "Not signed.", "It is not said as what.", "Send HEAT_TREATER or SECOND.");
        }
        signatures.sign(body.signer(), orEmpty(body.pin()), who.deviceId());
        return ovenRuns.sign(act, code, body.signer(), body.as());
    }

    @PostMapping("/{code}/change")
    Run change(Act act, @PathVariable String code) {
        return loads.change(act, code);
    }

    @PostMapping("/{code}/call-off")
    Run callOff(Act act, @PathVariable String code, @RequestBody Because body) {
        return loads.callOff(act, code, body.reason());
    }

    @PostMapping("/{code}/start")
    Run start(Act act, @PathVariable String code) {
        return ovenRuns.start(act, code);
    }

    record Moved(@Nullable Boolean opened, @Nullable String words) {}

    @PostMapping("/{code}/doors")
    Run door(Act act, @PathVariable String code, @RequestBody Moved body) {
        if (body.opened() == null) {
            throw Refusal.input(
                    "opened", "The door was not noted.", "It is not said which way.", "Send true or false.");
        }
        return ovenRuns.door(act, code, body.opened(), body.words());
    }

    /**
     * @param mark OUT as the door moves, IN as the last of the load is under water; left out for a late entry
     * @param delayS of a late entry, s
     * @param words where a late entry comes from
     */
    record Quenched(
            @Nullable QuenchMark mark,
            @Nullable BigDecimal delayS,
            @Nullable String words) {}

    @PostMapping("/{code}/quench")
    @Operation(summary = "How long it took from the door to the water; the newest counts")
    Run quench(Act act, @PathVariable String code, @RequestBody Quenched body) {
        return body.mark() == null
                ? quenches.late(act, code, body.delayS(), body.words())
                : quenches.tap(act, code, body.mark());
    }

    @GetMapping("/{code}/hardness")
    @Operation(summary = "Hardness and conductivity of the coupon and the frames; nothing is converted")
    List<Hardness> hardness(@PathVariable String code) {
        return hardness.of(code);
    }

    @PostMapping("/{code}/hardness")
    @Operation(summary = "Enters what was found; it releases nothing by itself")
    Run hardness(Act act, @PathVariable String code, @RequestBody Hardness.Entry body) {
        return hardness.enter(act, code, body);
    }

    @PostMapping("/{code}/stop")
    Run stop(Act act, @PathVariable String code) {
        return ovenRuns.stop(act, code);
    }

    /**
     * @param text of the logger's file, as it is
     * @param zone of its clock, where the file names none; the shop's if left out
     */
    record LoggerText(
            @Nullable String text,
            @Nullable String name,
            @Nullable String zone,
            @Nullable Boolean dayFirst,
            @Nullable Boolean countsFromStart) {}

    @PostMapping("/{code}/record")
    @Operation(summary = "Reads a logger's file; it judges nothing before it is taken")
    Run read(Act act, @PathVariable String code, @RequestBody LoggerText body) {
        return records.read(
                act,
                code,
                new ByteArrayInputStream(orEmpty(body.text()).getBytes(StandardCharsets.UTF_8)),
                body.name() == null ? "record" : body.name(),
                new LogImport.Choices(zone(body.zone()), body.dayFirst(), Boolean.TRUE.equals(body.countsFromStart())));
    }

    private static @Nullable ZoneId zone(@Nullable String typed) {
        try {
            return typed == null || typed.isBlank() ? null : ZoneId.of(typed.strip());
        } catch (DateTimeException unknown) {
            throw Refusal.input(
                    "zone", "The record was not read.", typed + " is no time zone.", "Send Europe/Berlin or +01:00.");
        }
    }

    record Taken(long draft) {}

    @PostMapping("/{code}/record/take")
    @Operation(summary = "Takes the record that was read; the run is judged by it")
    Run take(Act act, @PathVariable String code, @RequestBody Taken body) {
        return records.take(act, code, body.draft());
    }

    /** @param kept travellers that are not released; the others are */
    record Decision(
            long signer,

            @Schema(description = "the signer's own PIN", accessMode = Schema.AccessMode.WRITE_ONLY) @Nullable
            String pin,

            @Nullable List<Long> kept,
            @Nullable String reason) {}

    @PostMapping("/{code}/decision")
    @Operation(summary = "Decides a run: the QA lead, of a cure an independent second; whoever took part does not")
    Run decide(Act act, SignedOn who, @PathVariable String code, @RequestBody Decision body) {
        signatures.sign(body.signer(), orEmpty(body.pin()), who.deviceId());
        return release.decide(
                act, code, body.signer(), body.kept() == null ? Set.of() : Set.copyOf(body.kept()), body.reason());
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
