package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.CsvFile;
import org.trammel.shop.web.Formats;

/** The sheets of re-judgements. */
@Controller
@RequestMapping("/rejudgements")
class RejudgementPages {

    private static final int PAGE = 50;
    private static final int READINGS = 100;
    private static final int OF_FILE = 1000;

    private final Rejudgements rejudgements;
    private final FrameResults results;
    private final Crew crew;
    private final Formats formats;

    RejudgementPages(Rejudgements rejudgements, FrameResults results, Crew crew, Formats formats) {
        this.rejudgements = rejudgements;
        this.results = results;
        this.crew = crew;
        this.formats = formats;
    }

    @GetMapping
    String list(@RequestParam(defaultValue = "" + Long.MAX_VALUE) long before, Model model) {
        List<RejudgementLine> page = rejudgements.page(before, PAGE);
        model.addAttribute("lines", page);
        model.addAttribute(
                "next", page.size() < PAGE ? null : page.get(page.size() - 1).id());
        return "rejudgements/list";
    }

    @GetMapping("/{id}")
    String one(
            @PathVariable long id,
            @RequestParam(defaultValue = "0") int frame,
            @RequestParam(defaultValue = "0") int reading,
            SignedOn who,
            Model model) {
        RejudgementLine line = rejudgements.one(id);
        List<RejudgedFrameLine> frames = rejudgements.frames(id, Math.max(frame, 0), PAGE);
        List<RejudgedLine> readings = rejudgements.readings(id, Math.max(reading, 0), READINGS);
        model.addAttribute("r", line);
        model.addAttribute("found", found(line));
        model.addAttribute("span", span(line));
        model.addAttribute("frames", frames);
        model.addAttribute("moreFrames", frames.size() < PAGE ? null : Integer.valueOf(Math.max(frame, 0) + PAGE));
        model.addAttribute("readings", readings);
        model.addAttribute(
                "moreReadings", readings.size() < READINGS ? null : Integer.valueOf(Math.max(reading, 0) + READINGS));
        model.addAttribute("inside", words(FrameResult.MEASURED_AGAIN, FrameResult.DECIDED));
        model.addAttribute("outside", words(FrameResult.OWNER_CONTACTED, FrameResult.DECIDED));
        Map<Long, String> names = new HashMap<>(crew.names());
        names.put(Act.SERVICE, "by itself");
        model.addAttribute("names", names);
        model.addAttribute("qa", who.person().is(Role.QA_LEAD));
        model.addAttribute("works", who.person().maySign());
        return "rejudgements/sheet";
    }

    private static Map<String, String> words(FrameResult... results) {
        Map<String, String> words = new LinkedHashMap<>();
        for (FrameResult result : results) {
            words.put(result.name(), result.word());
        }
        return words;
    }

    private String found(RejudgementLine r) {
        if (r.error() == null) {
            return "it was found wrong without a figure";
        }
        String place = r.errorAt() == null ? "" : " at " + plain(r.errorAt()) + " " + r.unit();
        return "read " + plain(r.error().abs()) + " " + r.unit() + (r.error().signum() < 0 ? " too low" : " too high")
                + place;
    }

    private String span(RejudgementLine r) {
        if (r.least() == null || r.greatest() == null) {
            return "not known; nothing can be cleared by calculation";
        }
        String span = "an error from " + plain(r.least()) + " to " + plain(r.greatest()) + " " + r.unit()
                + " at every value, as nobody knows when it began";
        return r.unit().equals("mm")
                ? span + "; the same at heights within " + plain(r.equalWithin_mm()) + " mm of each other"
                : span;
    }

    private String plain(BigDecimal figure) {
        BigDecimal bare = figure.stripTrailingZeros();
        return formats.number(bare, Math.max(bare.scale(), 0));
    }

    @GetMapping("/{id}.csv")
    ResponseEntity<byte[]> file(@PathVariable long id) {
        CsvFile file = CsvFile.of(
                "frame",
                "characteristic",
                "gauge",
                "read at",
                "value",
                "unit",
                "least",
                "greatest",
                "lower limit",
                "upper limit",
                "guard band",
                "verdict",
                "outcome",
                "why",
                "in doubt");
        int from = 0;
        List<RejudgedLine> part;
        do {
            part = rejudgements.readings(id, from, OF_FILE);
            part.forEach(x -> file.row(
                    x.serial(),
                    x.code(),
                    x.gauge(),
                    x.at(),
                    x.value(),
                    x.unit(),
                    x.least(),
                    x.greatest(),
                    x.lowerLimit(),
                    x.upperLimit(),
                    x.guardBand(),
                    x.verdict().word(),
                    x.outcome().word(),
                    x.why(),
                    x.inDoubt() ? "yes" : "no"));
            from += OF_FILE;
        } while (part.size() == OF_FILE);
        return file.answer(Rejudgement.number(id) + ".csv");
    }

    @PostMapping("/{id}/frames/{serial}")
    String settle(
            Act act,
            @PathVariable long id,
            @PathVariable String serial,
            @RequestParam(defaultValue = "") String result,
            @RequestParam(defaultValue = "") String words,
            @RequestParam(defaultValue = "false") boolean changesWhatWasOrdered,
            @RequestParam(defaultValue = "") String customer,
            RedirectAttributes flash) {
        boolean settled = results.settle(
                act, id, serial, new FrameSettling(result(result), words, changesWhatWasOrdered, customer));
        return done(id, serial, settled, flash);
    }

    @PostMapping("/{id}/frames/{serial}/agreement")
    String agree(
            Act act,
            @PathVariable long id,
            @PathVariable String serial,
            @RequestParam int number,
            RedirectAttributes flash) {
        return done(id, serial, results.agree(act, id, serial, number), flash);
    }

    private String done(long id, String serial, boolean settled, RedirectAttributes flash) {
        flash.addFlashAttribute(
                "done",
                formats.mark(serial)
                        + (settled ? " has its result." : " has a decision put forward; somebody must still agree."));
        return "redirect:/rejudgements/" + id;
    }

    private static FrameResult result(@Nullable String typed) {
        try {
            return FrameResult.valueOf(typed);
        } catch (IllegalArgumentException e) {
            throw Refusal.input(
                    "result",
                    "The frame was not given its result.",
                    "No result was chosen.",
                    "Choose one of the list.");
        }
    }

    @PostMapping("/{id}/closing")
    String close(
            Act act, @PathVariable long id, @RequestParam(defaultValue = "") String words, RedirectAttributes flash) {
        flash.addFlashAttribute("done", rejudgements.close(act, id, words).number() + " is closed.");
        return "redirect:/rejudgements/" + id;
    }
}
