package org.trammel.shop.welding;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.welding.Imperfection;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;

/** The sheets of tables of limits. */
@Controller
@RequestMapping("/shop/weld-limits")
class LimitPages {

    private final LimitSets sets;
    private final Signatures signatures;
    private final Crew crew;

    LimitPages(LimitSets sets, Signatures signatures, Crew crew) {
        this.sets = sets;
        this.signatures = signatures;
        this.crew = crew;
    }

    @GetMapping
    String list(SignedOn who, Model model) {
        model.addAttribute("sets", sets.all());
        model.addAttribute("keeps", who.person().is(Role.QA_LEAD));
        return "welding/limit-sets";
    }

    @GetMapping("/new")
    String fresh(Model model) {
        model.addAttribute("imperfections", Imperfection.values());
        return "welding/limit-form";
    }

    @GetMapping("/{code}")
    String one(@PathVariable String code, Model model) {
        model.addAttribute("s", sets.of(code));
        model.addAttribute("names", crew.names());
        return "welding/limit-set";
    }

    @PostMapping
    String enter(
            Act act,
            @RequestParam(defaultValue = "") String code,
            LimitSets.NewLimits content,
            @RequestParam(defaultValue = "") String secret,
            SignedOn who) {
        signatures.confirm(who, secret);
        return "redirect:/shop/weld-limits/" + sets.enter(act, code, content).code();
    }
}
