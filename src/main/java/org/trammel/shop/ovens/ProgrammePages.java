package org.trammel.shop.ovens;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** The sheets of programmes. */
@Controller
class ProgrammePages {

    private final Programmes programmes;
    private final Signatures signatures;
    private final Crew crew;

    ProgrammePages(Programmes programmes, Signatures signatures, Crew crew) {
        this.programmes = programmes;
        this.signatures = signatures;
        this.crew = crew;
    }

    @GetMapping("/shop/programmes")
    String list(SignedOn who, Model model) {
        model.addAttribute("programmes", programmes.all());
        model.addAttribute("draws", draws(who));
        return "ovens/programmes";
    }

    @GetMapping("/shop/programmes/new")
    String fresh(@RequestParam @Nullable String from, Model model) {
        Programme last = from == null ? null : programmes.of(from).get(0);
        return form(model, null, last);
    }

    @PostMapping("/shop/programmes")
    String draw(Act act, @RequestParam Map<String, String> fields) {
        Typed typed = new Typed(fields, "The programme was not drawn up.");
        return sheet(programmes.draw(
                act, typed.text("code"), typed.choice("purpose", Purpose.class), new ProgrammeForm(typed).content()));
    }

    @GetMapping("/shop/programmes/{code}")
    String one(@PathVariable String code, @RequestParam @Nullable String letter, SignedOn who, Model model) {
        List<Programme> revisions = programmes.of(code);
        Programme shown = letter == null
                ? revisions.get(0)
                : revisions.stream()
                        .filter(revision -> revision.letter().equals(letter))
                        .findFirst()
                        .orElseThrow(() -> Refusal.missing(
                                "The revision was not found.",
                                code + " has no revision " + letter + ".",
                                "Choose one of its revisions."));
        model.addAttribute("p", shown);
        model.addAttribute("figures", RunFigure.values());
        model.addAttribute("revisions", revisions);
        model.addAttribute("worths", programmes.worth(shown));
        model.addAttribute("names", crew.names());
        model.addAttribute("draws", draws(who));
        model.addAttribute("approves", who.person().is(Role.QA_LEAD));
        return "ovens/programme";
    }

    @GetMapping("/shop/programmes/{code}/edit")
    String change(@PathVariable String code, Model model) {
        // What is approved is never changed: whoever wants to change it draws up the next revision.
        return programmes.of(code).get(0).state() == ProgrammeState.DRAFT
                ? form(model, draft(code), null)
                : "redirect:/shop/programmes/new?from="
                        + programmes.of(code).get(0).code();
    }

    @PostMapping("/shop/programmes/{code}/edit")
    String change(
            Act act, @PathVariable String code, @RequestParam long version, @RequestParam Map<String, String> fields) {
        Programme draft = draft(code);
        Typed typed = new Typed(fields, "Programme " + draft.called() + " was not changed.");
        return sheet(programmes.change(act, draft.revisionId(), version, new ProgrammeForm(typed).content()));
    }

    @PostMapping("/shop/programmes/{code}/approve")
    String approve(
            Act act,
            @PathVariable String code,
            @RequestParam long version,
            @RequestParam(defaultValue = "") String secret,
            SignedOn who) {
        Programme draft = draft(code);
        signatures.confirm(who, secret);
        return sheet(programmes.approve(act, draft.revisionId(), version));
    }

    private Programme draft(String code) {
        Programme newest = programmes.of(code).get(0);
        if (newest.state() != ProgrammeState.DRAFT) {
            throw Refusal.state(
                    newest.called() + " is no draft.",
                    "It is " + newest.state().word() + "; what frames were treated by is never changed.",
                    "Draw up a new revision.");
        }
        return newest;
    }

    private static String form(Model model, @Nullable Programme draft, @Nullable Programme last) {
        Programme from = draft == null ? last : draft;
        Map<String, String> purposes = new LinkedHashMap<>();
        for (Purpose purpose : Purpose.values()) {
            purposes.put(purpose.name(), purpose.word());
        }
        model.addAttribute("draft", draft);
        model.addAttribute("last", last);
        model.addAttribute("purposes", purposes);
        model.addAttribute("metals", ProgrammeCheck.METALS);
        model.addAttribute("steps", ProgrammeForm.STEPS);
        model.addAttribute("figures", RunFigure.values());
        model.addAttribute("values", ProgrammeForm.values(from == null ? null : from.content()));
        return "ovens/programme-form";
    }

    private static boolean draws(SignedOn who) {
        return who.person().isAny(Role.QA_LEAD, Role.HEAT_TREATER);
    }

    private static String sheet(Programme programme) {
        return "redirect:/shop/programmes/" + programme.code();
    }
}
