package org.trammel.shop.backtraces;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Deciders;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.CsvFile;

/** The sheets of traces after a thermocouple was found wrong. */
@Controller
@RequestMapping("/oven-traces")
class OvenTracePages {

    private static final int PAGE = 50;

    /** Who might decide of a frame; who had a hand in its run is told so as they try. */
    private static final Deciders.Matter ANY = new Deciders.Matter(Set.of(), Set.of(), List.of());

    private final OvenTraces traces;
    private final TraceResults results;
    private final TraceClosing closing;
    private final Deciders deciders;
    private final Crew crew;

    OvenTracePages(OvenTraces traces, TraceResults results, TraceClosing closing, Deciders deciders, Crew crew) {
        this.traces = traces;
        this.results = results;
        this.closing = closing;
        this.deciders = deciders;
        this.crew = crew;
    }

    @GetMapping
    String list(@RequestParam(defaultValue = "" + Long.MAX_VALUE) long before, Model model) {
        List<OvenTrace> page = traces.page(before, PAGE);
        model.addAttribute("traces", page);
        model.addAttribute(
                "next", page.size() < PAGE ? null : page.get(PAGE - 1).id());
        return "backtraces/traces";
    }

    @GetMapping("/{id}")
    String one(@PathVariable long id, SignedOn who, Model model) {
        OvenTrace trace = traces.one(id);
        model.addAttribute("t", trace);
        model.addAttribute("runs", traces.runs(id));
        model.addAttribute("frames", traces.frames(id));
        boolean qa = trace.open() && who.person().is(Role.QA_LEAD);
        model.addAttribute("qa", qa);
        model.addAttribute("decides", trace.open() && deciders.allows(who.person(), ANY));
        model.addAttribute(
                "inside",
                qa
                        ? words(TraceResult.HARDNESS, TraceResult.AGED_FURTHER, TraceResult.DECIDED)
                        : words(TraceResult.DECIDED));
        model.addAttribute(
                "outside", qa ? words(TraceResult.OWNER_CONTACTED, TraceResult.DECIDED) : words(TraceResult.DECIDED));
        Map<Long, String> names = new LinkedHashMap<>(crew.names());
        names.put(Act.SERVICE, "by itself");
        model.addAttribute("names", names);
        return "backtraces/trace";
    }

    private static Map<String, String> words(TraceResult... of) {
        Map<String, String> words = new LinkedHashMap<>();
        for (TraceResult result : of) {
            words.put(result.name(), result.word());
        }
        return words;
    }

    @GetMapping("/{id}.csv")
    org.springframework.http.ResponseEntity<byte[]> file(@PathVariable long id) {
        Map<String, OvenTrace.TracedRun> runs = new LinkedHashMap<>();
        traces.runs(id).forEach(run -> runs.put(run.run(), run));
        CsvFile file = CsvFile.of(
                "frame",
                "run",
                "started",
                "role",
                "drift K",
                "worst K",
                "recorded h",
                "linear h",
                "worst case h",
                "others h",
                "outcome",
                "shipped",
                "stands",
                "result");
        for (OvenTrace.TracedFrame frame : traces.frames(id)) {
            OvenTrace.TracedRun run = java.util.Objects.requireNonNull(runs.get(frame.run()));
            file.row(
                    frame.part().isEmpty() ? frame.serial() : frame.serial() + "-" + frame.part(),
                    frame.run(),
                    run.startedAt(),
                    run.roleWord(),
                    run.drift_K(),
                    run.worst_K(),
                    run.recorded_h(),
                    run.linear_h(),
                    run.worst_h(),
                    run.without_h(),
                    frame.outcome().word(),
                    frame.shippedAt(),
                    frame.standing(),
                    frame.result() == null ? "" : frame.result().word());
        }
        return file.answer(OvenTrace.number(id) + ".csv");
    }

    @PostMapping("/{id}/frames/{frame}")
    String settle(
            Act act,
            @PathVariable long id,
            @PathVariable long frame,
            @RequestParam(defaultValue = "") String result,
            @RequestParam @Nullable String words,
            @RequestParam(defaultValue = "false") boolean changesWhatWasOrdered,
            @RequestParam @Nullable String customer,
            RedirectAttributes flash) {
        boolean settled = results.settle(
                act, id, frame, new TraceSettling(result(result), words, changesWhatWasOrdered, customer));
        return done(id, settled, flash);
    }

    @PostMapping("/{id}/frames/{frame}/agreement")
    String agree(
            Act act,
            @PathVariable long id,
            @PathVariable long frame,
            @RequestParam int number,
            RedirectAttributes flash) {
        return done(id, results.agree(act, id, frame, number), flash);
    }

    private static String done(long id, boolean settled, RedirectAttributes flash) {
        flash.addFlashAttribute(
                "done",
                settled
                        ? "The frame has its result."
                        : "The frame has a decision put forward; somebody must still agree.");
        return "redirect:/oven-traces/" + id;
    }

    private static @Nullable TraceResult result(String typed) {
        if (typed.isEmpty()) {
            return null;
        }
        try {
            return TraceResult.valueOf(typed);
        } catch (IllegalArgumentException unknown) {
            throw Refusal.input(
                    "result",
                    "The frame was not given its result.",
                    "No result is called so.",
                    "Choose one of the list.");
        }
    }

    @PostMapping("/{id}/widening")
    String widen(Act act, @PathVariable long id, @RequestParam @Nullable String reason, RedirectAttributes flash) {
        flash.addFlashAttribute("done", closing.widen(act, id, reason).number() + " reaches further back.");
        return "redirect:/oven-traces/" + id;
    }

    @PostMapping("/{id}/closing")
    String close(Act act, @PathVariable long id, @RequestParam @Nullable String words, RedirectAttributes flash) {
        flash.addFlashAttribute("done", closing.close(act, id, words).number() + " is closed.");
        return "redirect:/oven-traces/" + id;
    }
}
