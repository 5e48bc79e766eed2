package org.trammel.shop.ovens;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.trammel.calc.thermal.HardnessMethod;
import org.trammel.calc.thermal.RunVerdict;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** The sheets of loads and runs. */
@Controller
class LoadPages {

    private static final int PAGE = 50;

    private final Runs runs;
    private final Loads loads;
    private final OvenRuns ovenRuns;
    private final LogImport records;
    private final RunRelease release;
    private final RunJudge judge;
    private final HardnessOfRuns hardness;
    private final Quenches quenches;
    private final Ovens ovens;
    private final Programmes programmes;
    private final RunDoubts doubts;
    private final Signatures signatures;
    private final Crew crew;
    private final Settings settings;

    LoadPages(
            Runs runs,
            Loads loads,
            OvenRuns ovenRuns,
            LogImport records,
            RunRelease release,
            RunJudge judge,
            HardnessOfRuns hardness,
            Quenches quenches,
            Ovens ovens,
            Programmes programmes,
            RunDoubts doubts,
            Signatures signatures,
            Crew crew,
            Settings settings) {
        this.runs = runs;
        this.loads = loads;
        this.ovenRuns = ovenRuns;
        this.records = records;
        this.release = release;
        this.judge = judge;
        this.hardness = hardness;
        this.quenches = quenches;
        this.ovens = ovens;
        this.programmes = programmes;
        this.doubts = doubts;
        this.signatures = signatures;
        this.crew = crew;
        this.settings = settings;
    }

    @GetMapping("/loads")
    String list(@RequestParam @Nullable Long before, SignedOn who, Model model) {
        List<Run> page = runs.page(before == null ? Long.MAX_VALUE : before, PAGE);
        model.addAttribute("runs", page);
        model.addAttribute("doubts", doubts.of(page.stream().map(Run::id).toList()));
        model.addAttribute(
                "next", page.size() < PAGE ? null : page.get(PAGE - 1).id());
        model.addAttribute("works", who.person().mayWork());
        return "ovens/loads";
    }

    @GetMapping("/loads/new")
    String fresh(Model model) {
        Map<String, String> open = new LinkedHashMap<>();
        ovens.all().stream()
                .filter(oven -> oven.state() != OvenState.RETIRED)
                .forEach(oven ->
                        open.put(oven.code(), oven.code() + ", " + oven.what() + (oven.open() ? "" : " (locked)")));
        Map<String, String> approved = new LinkedHashMap<>();
        programmes.all().stream()
                .filter(one -> one.state() == ProgrammeState.APPROVED)
                .forEach(one -> approved.put(
                        one.code(), one.called() + ", " + one.content().what()));
        model.addAttribute("ovens", open);
        model.addAttribute("programmes", approved);
        model.addAttribute("code", runs.nextCode());
        return "ovens/load-form";
    }

    @PostMapping("/loads")
    String open(Act act, @RequestParam Map<String, String> fields) {
        Typed typed = new Typed(fields, "The load was not opened.");
        return sheet(
                loads.open(act, typed.text("code"), typed.text("oven"), typed.text("programme"), typed.text("hung")));
    }

    @GetMapping("/loads/{code}")
    String one(@PathVariable String code, SignedOn who, Model model) {
        Run run = runs.byCode(code);
        RunRow row = runs.row(code);
        model.addAttribute("run", run);
        model.addAttribute("p", run.programme());
        model.addAttribute("oven", ovens.byCode(run.oven()));
        model.addAttribute("hardness", hardness.of(code));
        Map<String, String> methods = new LinkedHashMap<>();
        Arrays.stream(HardnessMethod.values()).forEach(one -> methods.put(one.name(), Hardness.word(one)));
        model.addAttribute("methods", methods);
        model.addAttribute("caveats", HardnessMethod.values());
        Map<String, String> foundOn = new LinkedHashMap<>();
        foundOn.put("", "coupon of the run");
        run.in().forEach(frame -> foundOn.put("" + frame.travellerId(), frame.mark()));
        model.addAttribute("foundOn", foundOn);
        model.addAttribute("doubts", doubts.of(List.of(run.id())).getOrDefault(run.id(), List.of()));
        model.addAttribute("quench", runs.quench(run.id()).orElse(null));
        model.addAttribute("outSince", quenches.outSince(run.id()).orElse(null));
        model.addAttribute("hardnessGauges", hardness.usable());
        model.addAttribute("names", crew.names());
        model.addAttribute("works", who.person().mayWork() && who.person().maySign());
        model.addAttribute("signers", signers(run));
        Optional<LogDraftRow> draft = runs.draft(run.id());
        draft.ifPresent(there -> model.addAttribute("draftId", there.id()));
        Optional<KeptLog> shown = draft.map(LogDraftRow::kept).or(() -> runs.log(run.id()));
        shown.ifPresent(log -> read(run, row, log, model));
        model.addAttribute("log", shown.orElse(null));
        model.addAttribute("zone", settings.zone().getId());
        return "ovens/run";
    }

    private void read(Run run, RunRow row, KeptLog log, Model model) {
        var samples = log.read();
        RunJudge.Said said = judge.of(row, samples);
        RunVerdict verdict = said.verdict() instanceof Answer.Determined<RunVerdict> there ? there.value() : null;
        model.addAttribute("verdict", verdict);
        model.addAttribute(
                "none",
                said.verdict() instanceof Answer.NotDeterminable<RunVerdict> not
                        ? not.gaps().get(0).words()
                        : null);
        model.addAttribute("looks", said.signs());
        model.addAttribute("noSheet", said.noSheet());
        model.addAttribute("topUp", said.topUp());
        model.addAttribute("worth", said.worth());
        model.addAttribute(
                "chart",
                RunChart.of(
                        samples,
                        run.thermocouples(),
                        judge.asked(row),
                        verdict,
                        RunJudge.gap(row).toMillis()));
    }

    /** Who may sign now, by what is outstanding; the service asks once more. */
    private Map<Long, String> signers(Run run) {
        Map<Long, String> may = new LinkedHashMap<>();
        Set<Long> took = run.hadAHand();
        for (Person person : crew.here()) {
            boolean decides = run.state() == RunState.STOPPED
                    && !took.contains(person.id())
                    && (!run.programme().purpose().releasedByQa()
                            || person.is(Role.QA_LEAD)
                            || crew.standsInForQaLead(person.id(), took));
            if (person.mayWork() && person.maySign() && (run.state() == RunState.LOADING || decides)) {
                may.put(person.id(), person.name());
            }
        }
        return may;
    }

    @PostMapping("/loads/{code}/frames")
    String load(Act act, @PathVariable String code, @RequestParam Map<String, String> fields) {
        Typed typed = new Typed(fields, "Nothing was loaded into " + code + ".");
        BigDecimal mass = typed.figure("mass");
        return sheet(loads.load(
                act,
                code,
                Arrays.stream(typed.text("tags").split("[\\n,;]+"))
                        .map(String::strip)
                        .toList(),
                new Loads.Ready(typed.text("place"), typed.ticked("vents"), typed.ticked("dry"), mass)));
    }

    @PostMapping("/loads/{code}/frames/{travellerId}/take-out")
    String takeOut(
            Act act, @PathVariable String code, @PathVariable long travellerId, @RequestParam @Nullable String reason) {
        return sheet(loads.takeOut(act, code, travellerId, reason));
    }

    @PostMapping("/loads/{code}/thermocouples/{thermocouple}")
    String wire(
            Act act,
            @PathVariable String code,
            @PathVariable String thermocouple,
            @RequestParam @Nullable String column,
            @RequestParam @Nullable String sits) {
        return sheet(loads.wire(act, code, thermocouple, column, sits));
    }

    @PostMapping("/loads/{code}/signatures")
    String sign(
            Act act,
            @PathVariable String code,
            @RequestParam long signer,
            @RequestParam RunSigner as,
            @RequestParam(defaultValue = "") String pin,
            SignedOn who) {
        signatures.sign(signer, pin, who.deviceId());
        return sheet(ovenRuns.sign(act, code, signer, as));
    }

    @PostMapping("/loads/{code}/change")
    String change(Act act, @PathVariable String code) {
        return sheet(loads.change(act, code));
    }

    @PostMapping("/loads/{code}/call-off")
    String callOff(Act act, @PathVariable String code, @RequestParam @Nullable String reason) {
        return sheet(loads.callOff(act, code, reason));
    }

    @PostMapping("/loads/{code}/start")
    String start(Act act, @PathVariable String code) {
        return sheet(ovenRuns.start(act, code));
    }

    @PostMapping("/loads/{code}/door")
    String door(
            Act act, @PathVariable String code, @RequestParam boolean opened, @RequestParam @Nullable String words) {
        return sheet(ovenRuns.door(act, code, opened, words));
    }

    @PostMapping("/loads/{code}/quench")
    String quench(Act act, @PathVariable String code, @RequestParam Map<String, String> fields) {
        Typed typed = new Typed(fields, "The quench was not noted.");
        QuenchMark mark = typed.choice("mark", QuenchMark.class);
        return sheet(
                mark == null
                        ? quenches.late(act, code, typed.figure("delay"), typed.text("words"))
                        : quenches.tap(act, code, mark));
    }

    @PostMapping("/loads/{code}/hardness")
    String hardness(Act act, @PathVariable String code, @RequestParam Map<String, String> fields) {
        Typed typed = new Typed(fields, "The hardness was not entered.");
        String on = typed.text("traveller");
        if (!on.matches("\\d{0,18}")) {
            throw Refusal.input("traveller", typed.deed(), "That is no frame of the run.", "Choose from the list.");
        }
        return sheet(hardness.enter(
                act,
                code,
                new Hardness.Entry(
                        on.isEmpty() ? null : Long.valueOf(on),
                        typed.choice("method", HardnessMethod.class),
                        typed.figure("figure"),
                        typed.text("scale"),
                        typed.figure("least"),
                        typed.figure("most"),
                        typed.text("place"),
                        typed.text("gauge"),
                        typed.text("report"))));
    }

    @PostMapping("/loads/{code}/stop")
    String stop(Act act, @PathVariable String code) {
        return sheet(ovenRuns.stop(act, code));
    }

    @PostMapping("/loads/{code}/record")
    String read(
            Act act,
            @PathVariable String code,
            @RequestParam @Nullable MultipartFile file,
            @RequestParam Map<String, String> fields) {
        Typed typed = new Typed(fields, "The record was not read.");
        if (file == null || file.isEmpty()) {
            throw Refusal.input("file", typed.deed(), "The file is empty.", "Choose the file that the logger wrote.");
        }
        try (var in = file.getInputStream()) {
            String name = Optional.ofNullable(file.getOriginalFilename()).orElse("record");
            return sheet(records.read(act, code, in, name, choices(typed)));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static LogImport.Choices choices(Typed typed) {
        try {
            String order = typed.text("dayFirst");
            return new LogImport.Choices(
                    typed.text("zone").isEmpty() ? null : ZoneId.of(typed.text("zone")),
                    order.isEmpty() ? null : order.equals("true"),
                    typed.ticked("countsFromStart"));
        } catch (DateTimeException unknown) {
            throw Refusal.input(
                    "zone",
                    typed.deed(),
                    typed.text("zone") + " is no time zone.",
                    "Enter it as Europe/Berlin or +01:00.");
        }
    }

    @PostMapping("/loads/{code}/record/take")
    String take(Act act, @PathVariable String code, @RequestParam long draft) {
        return sheet(records.take(act, code, draft));
    }

    @PostMapping("/loads/{code}/decision")
    String decide(
            Act act,
            @PathVariable String code,
            @RequestParam long signer,
            @RequestParam(defaultValue = "") String pin,
            @RequestParam @Nullable List<Long> kept,
            @RequestParam @Nullable String reason,
            SignedOn who) {
        signatures.sign(signer, pin, who.deviceId());
        return sheet(release.decide(act, code, signer, kept == null ? Set.of() : Set.copyOf(kept), reason));
    }

    private static String sheet(Run run) {
        return "redirect:/loads/" + run.code();
    }
}
