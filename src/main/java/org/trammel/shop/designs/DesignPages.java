package org.trammel.shop.designs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.StoredFile;
import org.trammel.shop.web.Shown;
import org.trammel.shop.web.TypedFields;
import org.trammel.shop.web.Uploads;

/** The sheets of a design revision. */
@Controller
@RequestMapping("/designs/{id:\\d+}")
class DesignPages {

    private final DesignReading reading;
    private final DrawingOffice office;
    private final DesignGate gate;
    private final Crew crew;
    private final FramePage frames;
    private final Templates templates;
    private final PaperSizes papers;

    DesignPages(
            DesignReading reading,
            DrawingOffice office,
            DesignGate gate,
            Crew crew,
            FramePage frames,
            Templates templates,
            PaperSizes papers) {
        this.reading = reading;
        this.office = office;
        this.gate = gate;
        this.crew = crew;
        this.frames = frames;
        this.templates = templates;
        this.papers = papers;
    }

    @GetMapping
    String sheet(@PathVariable long id, SignedOn who, Model model) {
        RevisionStory story = show(id, who, model);
        model.addAttribute("signers", story.sheet().state() == DesignState.APPROVED ? signers(story) : Map.of());
        return "designs/sheet";
    }

    /** The drawing and the cut list, computed from the inputs. */
    @GetMapping("/frame")
    String frame(@PathVariable long id, SignedOn who, Model model) {
        RevisionStory story = show(id, who, model);
        model.addAttribute("frame", frames.of(story, papers.usual()));
        model.addAttribute("papers", templates.choice(story.sheet()));
        return "designs/frame";
    }

    @GetMapping("/characteristics")
    String characteristics(@PathVariable long id, SignedOn who, Model model) {
        show(id, who, model);
        return "designs/characteristics";
    }

    @GetMapping("/edit")
    String edit(@PathVariable long id, SignedOn who, Model model) {
        RevisionStory story = show(id, who, model);
        model.addAttribute("routes", reading.routesFor(story.sheet(), story.routeName()));
        model.addAttribute("metals", FrameWords.metals());
        model.addAttribute("kinds", kinds(story.sheet().kind()));
        Map<String, String> yesOrNo = new LinkedHashMap<>();
        yesOrNo.put("", "not given");
        yesOrNo.put("1", "yes");
        yesOrNo.put("0", "no");
        model.addAttribute("yesOrNo", yesOrNo);
        model.addAttribute(
                "opened",
                Arrays.stream(GeometryInput.values())
                        .filter(input -> story.sheet().geometry().containsKey(input.code()))
                        .map(GeometryInput::group)
                        .collect(Collectors.toSet()));
        model.addAttribute("components", ComponentLines.written(story.sheet().components()));
        return "designs/edit";
    }

    @GetMapping("/approval")
    String approval(@PathVariable long id, SignedOn who, Model model) {
        show(id, who, model);
        return "designs/approval";
    }

    private RevisionStory show(long id, SignedOn who, Model model) {
        boolean personal = who.person().isAny(Role.OWNER, Role.QA_LEAD);
        RevisionStory story = reading.story(id, personal);
        model.addAttribute("story", story);
        model.addAttribute("personal", personal);
        model.addAttribute("inputs", byGroup());
        Map<String, Boolean> may = Arrays.stream(DesignVerb.values())
                .collect(Collectors.toMap(
                        DesignVerb::name,
                        verb -> who.person().isAny(verb.by())
                                && verb.allowedFrom(story.sheet().state())));
        model.addAttribute("may", may);
        return story;
    }

    private Map<String, String> signers(RevisionStory story) {
        Map<String, String> signers = new LinkedHashMap<>();
        for (Person person : crew.active()) {
            for (Role role : List.of(Role.OWNER, Role.QA_LEAD)) {
                if (person.is(role) && !story.signedAs(role.name())) {
                    signers.put(
                            person.id() + ":" + role.name(),
                            person.name() + ", " + (role == Role.OWNER ? "owner" : "QA lead"));
                }
            }
        }
        return signers;
    }

    private static Map<String, String> kinds(String own) {
        Map<String, String> kinds = FrameWords.kinds();
        kinds.putIfAbsent(own, FrameWords.kind(own));
        return kinds;
    }

    static Map<GeometryInput.Group, List<GeometryInput>> byGroup() {
        return Arrays.stream(GeometryInput.values())
                .collect(Collectors.groupingBy(GeometryInput::group, LinkedHashMap::new, Collectors.toList()));
    }

    @PostMapping("/edit")
    String change(Act act, @PathVariable long id, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "The draft was not changed.");
        DesignDraft draft = DesignForms.draft(fields);
        Long version = fields.idOrNone("version");
        fields.refuseIfWrong();
        office.change(act, id, version, draft);
        return back(id);
    }

    /** Every field that cannot be read is named at once; nothing is taken while one cannot. */
    @PostMapping("/characteristics")
    String give(
            Act act,
            @PathVariable long id,
            SignedOn who,
            @RequestParam Map<String, String> typed,
            RedirectAttributes flash) {
        TypedFields fields = new TypedFields(typed, "No nominal was changed.");
        RevisionStory story = reading.story(id, false);
        DesignForms.Nominals nominals =
                DesignForms.nominals(fields, story.lines(), story.sheet().nominals());
        Long version = fields.idOrNone("version");
        String page = "redirect:/designs/" + id + "/characteristics";
        Map<String, String> wrongs = fields.wrongs();
        if (wrongs.size() > 1) {
            flash.addFlashAttribute(
                    "refusal",
                    new Shown(
                            "No nominal was changed.",
                            wrongs.size() + " fields cannot be read.",
                            "Each says why; correct them and send the list again.",
                            null,
                            false,
                            false,
                            "",
                            List.of(),
                            List.of()));
            flash.addFlashAttribute("typed", typed);
            flash.addFlashAttribute("wrongs", wrongs);
            return page;
        }
        fields.refuseIfWrong();
        if (nominals.given().isEmpty() && nominals.dropped().isEmpty()) {
            throw Refusal.input(
                    "paste",
                    "No nominal was changed.",
                    "What was sent is what the revision has already.",
                    "Type a nominal or paste lines.");
        }
        office.give(act, id, version, nominals.given(), nominals.dropped(), fields.confirmed());
        return page;
    }

    @PostMapping("/drawing")
    String draw(Act act, @PathVariable long id, @RequestParam MultipartFile file) throws IOException {
        office.draw(
                act,
                id,
                Uploads.bytes(file),
                Objects.requireNonNullElse(file.getContentType(), ""),
                Objects.requireNonNullElse(file.getOriginalFilename(), "drawing"));
        return back(id);
    }

    @GetMapping("/drawing")
    ResponseEntity<byte[]> drawing(@PathVariable long id) {
        StoredFile file = reading.story(id, false).file();
        if (file == null) {
            throw Refusal.missing(
                    "There is no drawing.", "None was added to this revision.", "Go back to the design's sheet.");
        }
        byte[] content = reading.drawing(file)
                .orElseThrow(() -> Refusal.missing(
                        "The drawing is not there any more.", "It was erased.", "Go back to the design's sheet."));
        ContentDisposition name = ContentDisposition.inline()
                .filename(file.name(), StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(file.mediaType()))
                .header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
                .body(content);
    }

    @PostMapping("/note")
    String note(Act act, @PathVariable long id, @RequestParam String note) {
        office.note(act, id, note);
        return back(id);
    }

    @PostMapping("/sending")
    String send(Act act, @PathVariable long id, @RequestParam(defaultValue = "false") boolean confirm) {
        office.send(act, id, confirm);
        return "redirect:/designs/" + id + "/approval";
    }

    @PostMapping("/approval")
    String approve(Act act, @PathVariable long id, @RequestParam Map<String, String> typed) {
        String deed = "The approval was not entered.";
        TypedFields fields = new TypedFields(typed, deed);
        var on = fields.dayOrNone("on");
        if (on == null) {
            fields.wrong("on", "The day of the approval is missing.", "Enter the day the customer approved.");
        }
        fields.refuseIfWrong();
        gate.approve(
                act,
                id,
                new Approval(
                        fields.text("letter"),
                        fields.text("file"),
                        fields.text("approver"),
                        Objects.requireNonNull(on)));
        return back(id);
    }

    @PostMapping("/check")
    String answer(Act act, @PathVariable long id, @RequestParam Map<String, String> typed, RedirectAttributes flash) {
        TypedFields fields = new TypedFields(typed, "The check was not answered.");
        GateCheck check = fields.one(GateCheck.class, "check", GateCheck.RIDER_DATA);
        GateAnswer answer = fields.one(GateAnswer.class, "answer", GateAnswer.MEETS);
        fields.refuseIfWrong();
        int lapsed = gate.answer(act, id, check, answer, fields.text("check." + check.name()));
        if (lapsed > 0) {
            flash.addFlashAttribute(
                    "lapsed",
                    (lapsed == 1 ? "The signature that the gate had was" : "Both signatures of the gate were")
                            + " taken back, since an answer changed after it was signed. It is signed anew.");
        }
        return back(id);
    }

    /** One of the two signatures; who signs and in which capacity stand in one field, the PIN is the signer's own. */
    @PostMapping("/signature")
    String sign(
            Act act, @PathVariable long id, @RequestParam(defaultValue = "") String signer, @RequestParam String pin) {
        String[] parts = signer.split(":");
        Role capacity = Arrays.stream(Role.values())
                .filter(role -> parts.length == 2 && role.name().equals(parts[1]))
                .findFirst()
                .orElse(Role.AUDITOR);
        if (!parts[0].matches("[0-9]{1,18}") || capacity == Role.AUDITOR) {
            throw Refusal.input(
                    "signer", "The gate was not signed.", "Nobody was chosen to sign.", "Choose who signs, as what.");
        }
        gate.sign(act, id, Long.parseLong(parts[0]), capacity, pin);
        return back(id);
    }

    @PostMapping("/withdrawal")
    String withdraw(Act act, @PathVariable long id, @RequestParam String withdrawReason) {
        at("withdrawReason", () -> office.withdraw(act, id, withdrawReason));
        return back(id);
    }

    @PostMapping("/next")
    String revise(Act act, @PathVariable long id, @RequestParam String nextReason) {
        return back(at("nextReason", () -> office.revise(act, id, nextReason)).revisionId());
    }

    /** The office calls it the reason; on this sheet each form has one, so a refusal names the form's own field. */
    private static RevisionSummary at(String field, Supplier<RevisionSummary> deed) {
        try {
            return deed.get();
        } catch (Refusal refused) {
            throw "reason".equals(refused.field()) ? refused.at(field) : refused;
        }
    }

    private static String back(long id) {
        return "redirect:/designs/" + id;
    }
}
