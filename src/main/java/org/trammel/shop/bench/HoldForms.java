package org.trammel.shop.bench;

import java.io.IOException;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.view.RedirectView;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.web.Uploads;

/** Stop and call, holds, notes, photographs: what is said beside the work. */
@Controller
@RequestMapping("/station/{tag}")
class HoldForms {

    /** Source of a hold that a person placed. */
    static final String BY_HAND = "by hand";

    private final Holds holds;
    private final Remarks remarks;

    HoldForms(Holds holds, Remarks remarks) {
        this.holds = holds;
        this.remarks = remarks;
    }

    @PostMapping("/call")
    RedirectView call(
            Act act,
            SignedOn who,
            @PathVariable String tag,
            @RequestParam long traveller,
            @RequestParam @Nullable Long operation,
            @RequestParam(defaultValue = "") String words,
            RedirectAttributes flash) {
        remarks.call(act, traveller, operation, words.isBlank() ? asked(who) : words);
        flash.addFlashAttribute("done", "QA is called.");
        return Back.toFrame(tag);
    }

    private static String asked(SignedOn who) {
        return who.person().name() + " asks for somebody to look"
                + (who.tablet() ? ", at tablet " + who.deviceName() : "") + ".";
    }

    /** A hold must not wait for words: two taps place it, and the words can follow as a note. */
    @PostMapping("/hold")
    RedirectView hold(
            Act act,
            @PathVariable String tag,
            @RequestParam long traveller,
            @RequestParam @Nullable Long operation,
            @RequestParam HoldReason reason,
            @RequestParam(defaultValue = "FRAME") HoldScope scope,
            @RequestParam(defaultValue = "") String words,
            RedirectAttributes flash) {
        String said = words.isBlank() ? "Placed at the station without words." : words;
        holds.place(act, new Holds.Request(traveller, scope, operation, reason, said, BY_HAND, Set.of()));
        flash.addFlashAttribute("done", "On hold: " + reason.word() + ".");
        return Back.toFrame(tag);
    }

    @PostMapping("/lift")
    RedirectView lift(
            Act act,
            @PathVariable String tag,
            @RequestParam long hold,
            @RequestParam(defaultValue = "") String words,
            RedirectAttributes flash) {
        boolean lifted = holds.lift(act, hold, words);
        flash.addFlashAttribute(
                "done", lifted ? "The hold is lifted." : "Agreed. The hold stays until the others agree.");
        return Back.toFrame(tag);
    }

    @PostMapping("/free")
    RedirectView free(
            Act act,
            @PathVariable String tag,
            @RequestParam long hold,
            @RequestParam long operation,
            @RequestParam(defaultValue = "") String reason,
            RedirectAttributes flash) {
        holds.free(act, hold, operation, reason);
        flash.addFlashAttribute("done", "The operation is freed; the hold stays.");
        return Back.toFrame(tag);
    }

    @PostMapping("/note")
    RedirectView note(
            Act act,
            @PathVariable String tag,
            @RequestParam long traveller,
            @RequestParam @Nullable Long operation,
            @RequestParam(defaultValue = "") String words) {
        remarks.note(act, traveller, operation, words);
        return Back.toFrame(tag);
    }

    @PostMapping("/photo")
    RedirectView photo(
            Act act,
            @PathVariable String tag,
            @RequestParam long step,
            @RequestParam MultipartFile file,
            RedirectAttributes flash)
            throws IOException {
        remarks.photo(act, step, sent(file));
        flash.addFlashAttribute("done", "The photograph is kept.");
        return Back.toFrame(tag);
    }

    static Remarks.Sent sent(MultipartFile file) throws IOException {
        if (file.isEmpty()) {
            throw Refusal.input(
                    "file", "No photograph was kept.", "None was taken or chosen.", "Take one, then send it.");
        }
        String type = file.getContentType();
        String name = file.getOriginalFilename();
        return new Remarks.Sent(
                Uploads.bytes(file), type == null ? "" : type, name == null || name.isBlank() ? "photo" : name);
    }
}
