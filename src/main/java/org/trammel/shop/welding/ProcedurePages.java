package org.trammel.shop.welding;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.web.Formats;

/** The sheets of procedures. */
@Controller
@RequestMapping("/shop/weld-procedures")
class ProcedurePages {

    private final Procedures procedures;
    private final ProcedureWords words;
    private final LimitSets limits;
    private final Signatures signatures;
    private final Crew crew;
    private final Formats formats;

    ProcedurePages(
            Procedures procedures,
            ProcedureWords words,
            LimitSets limits,
            Signatures signatures,
            Crew crew,
            Formats formats) {
        this.procedures = procedures;
        this.words = words;
        this.limits = limits;
        this.signatures = signatures;
        this.crew = crew;
        this.formats = formats;
    }

    @GetMapping
    String list(SignedOn who, Model model) {
        model.addAttribute("procedures", procedures.current());
        model.addAttribute("drafts", who.person().isAny(Role.QA_LEAD, Role.WELDER));
        return "welding/procedures";
    }

    @GetMapping("/new")
    String fresh(@RequestParam @Nullable String from, Model model) {
        Procedure last = from == null ? null : procedures.of(from).get(0);
        model.addAttribute("last", last);
        model.addAttribute("metals", ProcedureForm.metals(formats::metal));
        model.addAttribute("processes", ProcedureForm.processes(procedures.processes()));
        model.addAttribute("joints", NewProcedure.JOINTS);
        model.addAttribute("levels", ProcedureForm.levels());
        model.addAttribute("limits", ProcedureForm.limits(limits.all()));
        model.addAttribute("values", ProcedureForm.values(last));
        return "welding/procedure-form";
    }

    @GetMapping("/{code}")
    String one(@PathVariable String code, SignedOn who, Model model) {
        var revisions = procedures.of(code);
        model.addAttribute("p", revisions.get(0));
        model.addAttribute("lines", words.of(revisions.get(0)));
        model.addAttribute("revisions", revisions);
        model.addAttribute("names", crew.names());
        model.addAttribute("keeps", who.person().is(Role.QA_LEAD));
        model.addAttribute("drafts", who.person().isAny(Role.QA_LEAD, Role.WELDER));
        return "welding/procedure";
    }

    @PostMapping
    String draft(Act act, @RequestParam Map<String, String> fields) {
        Procedure drafted = procedures.draft(act, fields.getOrDefault("code", ""), ProcedureForm.read(fields));
        return "redirect:/shop/weld-procedures/" + drafted.code();
    }

    @PostMapping("/{code}/in-force")
    String putInForce(
            Act act,
            @PathVariable String code,
            @RequestParam(defaultValue = "") String secret,
            @RequestParam(defaultValue = "-1") long version,
            SignedOn who) {
        signatures.confirm(who, secret);
        return "redirect:/shop/weld-procedures/"
                + procedures.putInForce(act, code, version).code();
    }
}
