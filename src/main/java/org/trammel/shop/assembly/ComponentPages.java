package org.trammel.shop.assembly;

import java.util.List;
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

/** The sheets of components. */
@Controller
@RequestMapping("/shop/components")
class ComponentPages {

    private final Components components;
    private final Signatures signatures;
    private final Crew crew;

    ComponentPages(Components components, Signatures signatures, Crew crew) {
        this.components = components;
        this.signatures = signatures;
        this.crew = crew;
    }

    @GetMapping
    String list(SignedOn who, Model model) {
        model.addAttribute("components", components.current());
        model.addAttribute("writes", who.person().maySign());
        return "assembly/components";
    }

    @GetMapping("/new")
    String fresh(@RequestParam @Nullable String from, Model model) {
        Component last = from == null ? null : components.of(from).get(0);
        model.addAttribute("last", last);
        model.addAttribute("values", ComponentForm.values(last));
        model.addAttribute("kinds", ComponentForm.kinds("choose what it is"));
        model.addAttribute("clamps", ComponentForm.kinds("clamps no other component"));
        model.addAttribute("witness", ComponentForm.witness());
        model.addAttribute("places", ComponentForm.places(last));
        return "assembly/component-form";
    }

    @GetMapping("/{code}")
    String one(@PathVariable String code, SignedOn who, Model model) {
        List<Component> revisions = components.of(code);
        model.addAttribute("c", revisions.get(0));
        model.addAttribute("revisions", revisions);
        model.addAttribute("names", crew.names());
        model.addAttribute("writes", who.person().maySign());
        model.addAttribute("decides", who.person().isAny(Role.QA_LEAD, Role.OWNER));
        return "assembly/component";
    }

    @PostMapping
    String draft(Act act, @RequestParam Map<String, String> fields) {
        Component drafted = components.draft(act, fields.getOrDefault("code", ""), ComponentForm.content(fields));
        return "redirect:/shop/components/" + drafted.code();
    }

    @PostMapping("/{code}/in-force")
    String putInForce(
            Act act,
            @PathVariable String code,
            @RequestParam(defaultValue = "") String letter,
            @RequestParam(defaultValue = "") String secret,
            SignedOn who) {
        signatures.confirm(who, secret);
        return "redirect:/shop/components/"
                + components.putInForce(act, code, letter).code();
    }
}
