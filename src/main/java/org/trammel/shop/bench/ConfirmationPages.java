package org.trammel.shop.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.view.RedirectView;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.ConfirmationOverrides;
import org.trammel.shop.travellers.FrameSheet;

/** A welder's six-month confirmation has run out: whom the QA lead may let do the operation at hand. */
@Controller
@RequestMapping("/station/{tag}/confirmation")
class ConfirmationPages {

    private static final String NOT_OVERRIDDEN = "The confirmation was not overridden.";

    private final Tags tags;
    private final FrameViews frames;
    private final ConfirmationOverrides overrides;
    private final SignedPoints points;
    private final Crew crew;

    ConfirmationPages(Tags tags, FrameViews frames, ConfirmationOverrides overrides, SignedPoints points, Crew crew) {
        this.tags = tags;
        this.frames = frames;
        this.overrides = overrides;
        this.points = points;
        this.crew = crew;
    }

    @GetMapping
    String page(@PathVariable String tag, SignedOn who, Model model) {
        FrameSheet sheet = tags.sheet(tag);
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        List<ConfirmationOverrides.Lapsed> lapsed = at == null ? List.of() : overrides.lapsedFor(at);
        List<Person> givers = crew.active().stream()
                .filter(person -> person.is(Role.QA_LEAD) && person.maySign())
                .toList();
        model.addAttribute("view", frames.of(sheet, who, new FrameViews.Asked(null, null, true)));
        model.addAttribute("lapsed", lapsed);
        model.addAttribute("givers", givers);
        return "bench/confirmation";
    }

    /** @param welder the person and the qualification, as the list names them */
    @PostMapping
    RedirectView override(
            Act act,
            SignedOn who,
            @PathVariable String tag,
            @RequestParam long operation,
            @RequestParam(defaultValue = "") String welder,
            @RequestParam(defaultValue = "0") long signer,
            @RequestParam @Nullable String reason,
            @RequestParam(defaultValue = "") String pin,
            RedirectAttributes flash) {
        String[] chosen = welder.split(" ", 2);
        if (chosen.length < 2 || !chosen[0].matches("[0-9]{1,18}")) {
            throw Refusal.input("welder", NOT_OVERRIDDEN, "Nobody was chosen.", "Tap the name of who is to weld.");
        }
        if (signer == 0) {
            throw Refusal.input("signer", NOT_OVERRIDDEN, "Nobody was chosen.", "Tap the name of the QA lead.");
        }
        Person person = points.override(
                act,
                new SignedPoints.Letting(operation, Long.parseLong(chosen[0]), chosen[1], signer, reason),
                pin,
                who.deviceId());
        flash.addFlashAttribute(
                "done",
                crew.byId(Long.parseLong(chosen[0])).name() + " may do this operation; signed by " + person.name()
                        + ".");
        return Back.toFrame(tag);
    }
}
