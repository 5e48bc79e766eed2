package org.trammel.shop.bench;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.view.RedirectView;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;

/** Hold and witness points: signed with the signer's own PIN, or a witness point passed after waiting. */
@Controller
@RequestMapping("/station/{tag}")
class PointForms {

    private final SignedPoints points;

    PointForms(SignedPoints points) {
        this.points = points;
    }

    @PostMapping("/sign")
    RedirectView sign(
            Act act,
            SignedOn who,
            @PathVariable String tag,
            @RequestParam long operation,
            @RequestParam(defaultValue = "0") long signer,
            @RequestParam Signer as,
            @RequestParam(defaultValue = "") String pin,
            RedirectAttributes flash) {
        if (signer == 0) {
            throw Refusal.input("signer", "Not signed.", "Nobody was chosen.", "Tap the name of whoever signs.");
        }
        Person person = points.sign(act, operation, signer, as, pin, who.deviceId());
        flash.addFlashAttribute("done", "Signed as " + as.word() + " by " + person.name() + ".");
        return Back.toFrame(tag);
    }

    @PostMapping("/pass-witness")
    RedirectView pass(Act act, @PathVariable String tag, @RequestParam long operation) {
        points.pass(act, operation);
        return Back.toFrame(tag);
    }
}
