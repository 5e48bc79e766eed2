package org.trammel.shop.assembly;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** The components of a frame at a desk. */
@Controller
@RequestMapping("/components/{travellerId}")
class FrameComponentPages {

    private final FrameComponents frames;
    private final Components components;
    private final Travellers travellers;
    private final Crew crew;

    FrameComponentPages(FrameComponents frames, Components components, Travellers travellers, Crew crew) {
        this.frames = frames;
        this.components = components;
        this.travellers = travellers;
        this.crew = crew;
    }

    @GetMapping
    String list(@PathVariable long travellerId, SignedOn who, Model model) {
        FrameSheet.Head head = travellers.head(travellerId);
        List<FramePart> parts = frames.of(head.serial(), head.part());
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", "choose a component");
        components
                .inForce()
                .forEach(one ->
                        choices.put(one.code(), one.called() + ", " + one.kind().word() + ": " + one.what()));
        model.addAttribute("head", head);
        model.addAttribute("parts", parts);
        model.addAttribute("names", crew.names());
        model.addAttribute("choices", choices);
        model.addAttribute("changes", who.person().mayWork() && head.state().open());
        return "assembly/frame-components";
    }

    @PostMapping("/give")
    String give(
            Act act,
            @PathVariable long travellerId,
            @RequestParam(defaultValue = "") String component,
            @RequestParam(defaultValue = "") String place) {
        frames.give(act, travellerId, component, place);
        return "redirect:/components/" + travellerId;
    }

    @PostMapping("/remove")
    String remove(
            Act act,
            @PathVariable long travellerId,
            @RequestParam long part,
            @RequestParam(defaultValue = "") String words) {
        frames.remove(act, part, words);
        return "redirect:/components/" + travellerId;
    }
}
