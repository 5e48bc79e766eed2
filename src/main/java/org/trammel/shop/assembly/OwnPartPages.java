package org.trammel.shop.assembly;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Keyed;

/** Custody of the customer's own parts of a frame. */
@Controller
@RequestMapping("/own-parts/{travellerId}")
class OwnPartPages {

    private static final String DEED = "The part was not checked in.";

    private final OwnPartChecks checks;
    private final Travellers travellers;
    private final Crew crew;

    OwnPartPages(OwnPartChecks checks, Travellers travellers, Crew crew) {
        this.checks = checks;
        this.travellers = travellers;
        this.crew = crew;
    }

    @GetMapping
    String list(@PathVariable long travellerId, SignedOn who, Model model) {
        FrameSheet.Head head = travellers.head(travellerId);
        Map<String, String> figures = new LinkedHashMap<>();
        figures.put("", "the drawing says nothing of it");
        Stream.of(OwnPartCheck.Figure.values()).forEach(figure -> figures.put(figure.name(), figure.word()));
        model.addAttribute("head", head);
        model.addAttribute("parts", checks.of(head));
        model.addAttribute("figures", figures);
        model.addAttribute("names", crew.names());
        model.addAttribute("works", who.person().mayWork());
        return "assembly/own-parts";
    }

    @PostMapping
    String checkIn(
            Act act,
            @PathVariable long travellerId,
            @RequestParam Map<String, String> fields,
            @RequestParam @Nullable MultipartFile photo) {
        String figure = fields.getOrDefault("figure", "");
        String part = fields.getOrDefault("part", "");
        if (!part.matches("[0-9]{1,18}")) {
            throw Refusal.input("part", DEED, "It is not said which part.", "Open the list again.");
        }
        checks.checkIn(
                act,
                travellerId,
                new OwnPartChecks.Came(
                        Long.parseLong(part),
                        fields.get("condition"),
                        fields.get("makerSerial"),
                        picture(photo),
                        figure.isBlank() ? null : Keyed.one(OwnPartCheck.Figure.class, "figure", DEED, figure),
                        Keyed.figureOrNone("measured", DEED, fields.get("measured")),
                        fields.get("gauge")));
        return "redirect:/own-parts/" + travellerId;
    }

    private static OwnPartChecks.@Nullable Picture picture(@Nullable MultipartFile sent) {
        if (sent == null || sent.isEmpty()) {
            return null;
        }
        try {
            return new OwnPartChecks.Picture(
                    sent.getBytes(),
                    Objects.requireNonNullElse(sent.getContentType(), "application/octet-stream"),
                    Objects.requireNonNullElse(sent.getOriginalFilename(), "photo"));
        } catch (IOException broken) {
            throw Refusal.input("photo", DEED, "The picture did not come whole.", "Send it again.");
        }
    }
}
