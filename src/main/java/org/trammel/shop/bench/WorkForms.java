package org.trammel.shop.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.view.RedirectView;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Rework;

/** Ticks, ticks taken back, work broken off and taken up again. */
@Controller
@RequestMapping("/station")
class WorkForms {

    private final Bench bench;
    private final Rework rework;

    WorkForms(Bench bench, Rework rework) {
        this.bench = bench;
        this.rework = rework;
    }

    @PostMapping("/{tag}/tick")
    RedirectView tick(
            Act act,
            @PathVariable String tag,
            @RequestParam long step,
            @RequestParam @Nullable String lot,
            @RequestParam @Nullable String reason) {
        bench.tick(act, List.of(step), lot, reason);
        return Back.toFrame(tag);
    }

    @PostMapping("/tick-together")
    RedirectView together(
            Act act,
            @RequestParam(required = false) @Nullable List<Long> step,
            @RequestParam @Nullable String lot,
            RedirectAttributes flash) {
        if (step == null || step.isEmpty()) {
            throw Refusal.input(
                    "step", "Nothing was ticked.", "No frame was chosen.", "Choose the frames that go in together.");
        }
        bench.tick(act, step, lot, null);
        flash.addFlashAttribute(
                "done", step.size() == 1 ? "One frame is ticked." : step.size() + " frames are ticked.");
        return Back.toStations();
    }

    @PostMapping("/{tag}/untick")
    RedirectView untick(
            Act act, @PathVariable String tag, @RequestParam long step, @RequestParam @Nullable String reason) {
        bench.untick(act, step, reason);
        return Back.toFrame(tag);
    }

    @PostMapping("/{tag}/break-off")
    RedirectView breakOff(
            Act act,
            @PathVariable String tag,
            @RequestParam long operation,
            @RequestParam(defaultValue = "") String words) {
        bench.stop(act, operation, words);
        return Back.toFrame(tag);
    }

    @PostMapping("/{tag}/resume")
    RedirectView resume(Act act, @PathVariable String tag, @RequestParam long operation) {
        bench.resume(act, operation);
        return Back.toFrame(tag);
    }

    /** Does the operations since a closed clock's start once more. */
    @PostMapping("/{tag}/redo")
    RedirectView redo(Act act, @PathVariable String tag, @RequestParam long operation, @RequestParam String clock) {
        rework.redoForClock(act, operation, clock);
        return Back.toFrame(tag);
    }
}
