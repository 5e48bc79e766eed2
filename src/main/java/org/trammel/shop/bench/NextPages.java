package org.trammel.shop.bench;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.view.RedirectView;
import org.springframework.web.util.UriComponentsBuilder;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Refusal;

/** The list of a tablet, and the door by which a scanned tag comes in. */
@Controller
class NextPages {

    private final NextFrames nextFrames;
    private final Tags tags;

    NextPages(NextFrames nextFrames, Tags tags) {
        this.nextFrames = nextFrames;
        this.tags = tags;
    }

    @GetMapping("/station")
    String next(@RequestParam @Nullable String at, SignedOn who, Model model) {
        model.addAttribute("list", nextFrames.of(who, at == null || at.isBlank() ? null : at.strip()));
        return "bench/next";
    }

    /**
     * Opens the frame of a tag. From the sheet of another frame the tag is shown beside that frame, so that nobody goes
     * on with the wrong one in hand.
     *
     * @param on the frame whose sheet is open; empty if none is
     */
    @GetMapping("/station/scan")
    RedirectView scan(@RequestParam String code, @RequestParam(defaultValue = "") String on, RedirectAttributes flash) {
        UriComponentsBuilder sheet = UriComponentsBuilder.fromPath("/station/{tag}");
        try {
            Tags.Read read = tags.read(code);
            if (read.superseded()) {
                sheet.queryParam("old", read.letter());
            }
            if (!on.isBlank()) {
                sheet.queryParam("scanned", read.head().tag());
            }
            return Back.to(sheet.buildAndExpand(on.isBlank() ? read.head().tag() : on)
                    .encode()
                    .toUriString());
        } catch (Refusal unread) {
            flash.addFlashAttribute("unread", new Unread(unread.what(), unread.why(), unread.instead(), code));
            return on.isBlank() ? Back.toStations() : Back.toFrame(on);
        }
    }

    /** A code that named no frame, told on the sheet it was read at. */
    public record Unread(String what, String why, String instead, String code) {}
}
