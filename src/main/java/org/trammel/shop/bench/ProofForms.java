package org.trammel.shop.bench;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.view.RedirectView;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.handwork.ProofEntry;
import org.trammel.shop.handwork.ProofTicks;
import org.trammel.shop.handwork.WaterForm;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** A step that rests on more than its tick: what it rests on and the tick are sent by one button. */
@Controller
@RequestMapping("/station")
class ProofForms {

    private static final String NOT_TICKED = "The step was not ticked.";

    private final ProofTicks ticks;

    ProofForms(ProofTicks ticks) {
        this.ticks = ticks;
    }

    @PostMapping("/{tag}/prove")
    RedirectView prove(
            Act act,
            @PathVariable String tag,
            @RequestParam long step,
            @RequestParam MultiValueMap<String, String> fields) {
        ticks.tick(act, List.of(step), entry(fields), fields.getFirst("lot"), fields.getFirst("reason"));
        return Back.toFrame(tag);
    }

    @PostMapping("/prove-together")
    RedirectView together(
            Act act,
            @RequestParam(required = false) @Nullable List<Long> step,
            @RequestParam MultiValueMap<String, String> fields,
            RedirectAttributes flash) {
        if (step == null || step.isEmpty()) {
            throw Refusal.input(
                    "step", "Nothing was ticked.", "No frame was chosen.", "Choose the frames that are done together.");
        }
        ticks.tick(act, step, entry(fields), fields.getFirst("lot"), null);
        flash.addFlashAttribute(
                "done", step.size() == 1 ? "One frame is ticked." : step.size() + " frames are ticked.");
        return Back.toStations();
    }

    private static ProofEntry entry(MultiValueMap<String, String> fields) {
        return new ProofEntry(
                fields.getOrDefault("tool", List.of()).stream()
                        .map(String::strip)
                        .filter(code -> !code.isEmpty())
                        .distinct()
                        .toList(),
                air(fields),
                WaterForm.seen(fields),
                fields.getFirst("serial"));
    }

    /** A form that was left empty measured nothing; one that was begun is told what it lacks. */
    private static @Nullable MetalAir air(MultiValueMap<String, String> fields) {
        Map<String, String> single = fields.toSingleValueMap();
        return MetalAir.begun(single) ? MetalAir.of(single, NOT_TICKED) : null;
    }
}
