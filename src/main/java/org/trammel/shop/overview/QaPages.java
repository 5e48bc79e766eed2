package org.trammel.shop.overview;

import java.time.Clock;
import java.time.Duration;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.view.RedirectView;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Signing;

/** The QA lead's desk: what expires first, and the few verbs that are done from there. */
@Controller
@RequestMapping("/qa")
class QaPages {

    private static final String DESK = "/qa";
    private static final String DONE = "done";

    private final QaDesk desk;
    private final Holds holds;
    private final Remarks remarks;
    private final Signatures signatures;
    private final Signing signing;
    private final Settings settings;
    private final Clock clock;

    QaPages(
            QaDesk desk,
            Holds holds,
            Remarks remarks,
            Signatures signatures,
            Signing signing,
            Settings settings,
            Clock clock) {
        this.desk = desk;
        this.holds = holds;
        this.remarks = remarks;
        this.signatures = signatures;
        this.signing = signing;
        this.settings = settings;
        this.clock = clock;
    }

    @GetMapping
    String desk(SignedOn who, Model model) {
        DeskFacts facts = desk.now(who.person());
        model.addAttribute("desk", facts);
        model.addAttribute("works", who.person().mayWork());
        model.addAttribute("qa", who.person().is(Role.QA_LEAD));
        model.addAttribute(
                "backupOld",
                facts.backupAt() == null
                        || facts.backupAt()
                                .isBefore(
                                        clock.instant().minus(Duration.ofHours(settings.whole("backup.warn.hours")))));
        return "overview/qa";
    }

    @PostMapping("/lift")
    RedirectView lift(
            Act act, @RequestParam long hold, @RequestParam(defaultValue = "") String words, RedirectAttributes flash) {
        boolean lifted = holds.lift(act, hold, words);
        flash.addFlashAttribute(
                DONE, lifted ? "The hold is lifted." : "Agreed. The hold stays until the others agree.");
        return back();
    }

    @PostMapping("/free")
    RedirectView free(
            Act act,
            @RequestParam long hold,
            @RequestParam long operation,
            @RequestParam(defaultValue = "") String reason,
            RedirectAttributes flash) {
        holds.free(act, hold, operation, reason);
        flash.addFlashAttribute(DONE, "The operation is freed; the hold stays.");
        return back();
    }

    /** The signature is the QA lead's own: the PIN is asked for now, whoever is signed on. */
    @PostMapping("/sign")
    RedirectView sign(
            Act act,
            SignedOn who,
            @RequestParam long operation,
            @RequestParam(defaultValue = "") String pin,
            RedirectAttributes flash) {
        signatures.sign(who.person().id(), pin, who.deviceId());
        signing.sign(act, operation, who.person().id(), Signer.QA);
        flash.addFlashAttribute(DONE, "Signed as QA lead by " + who.person().name() + ".");
        return back();
    }

    @PostMapping("/answer")
    RedirectView answer(
            Act act, @RequestParam long call, @RequestParam(defaultValue = "") String words, RedirectAttributes flash) {
        remarks.answer(act, call, words);
        flash.addFlashAttribute(DONE, "The call is answered.");
        return back();
    }

    private static RedirectView back() {
        RedirectView back = new RedirectView(DESK, true);
        back.setStatusCode(org.springframework.http.HttpStatus.SEE_OTHER);
        back.setExposeModelAttributes(false);
        return back;
    }
}
