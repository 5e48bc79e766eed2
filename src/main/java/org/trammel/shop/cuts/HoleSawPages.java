package org.trammel.shop.cuts;

import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Keyed;

/** The register of hole saws. */
@Controller
@RequestMapping("/shop/hole-saws")
class HoleSawPages {

    private final HoleSaws saws;
    private final CutGauges gauges;
    private final Settings settings;

    HoleSawPages(HoleSaws saws, CutGauges gauges, Settings settings) {
        this.saws = saws;
        this.gauges = gauges;
        this.settings = settings;
    }

    @GetMapping
    String list(SignedOn who, Model model) {
        List<HoleSaw> all = saws.all();
        model.addAttribute("saws", all);
        model.addAttribute(
                "inUse", all.stream().filter(saw -> saw.retiredOn() == null).toList());
        model.addAttribute("today", settings.today());
        model.addAttribute("calipers", gauges.usable().get("gauge"));
        model.addAttribute("works", who.person().mayWork());
        model.addAttribute(
                "keeps", who.person().is(Role.QA_LEAD) || who.person().is(Role.OWNER));
        return "cuts/saws";
    }

    @PostMapping
    String register(
            Act act,
            @RequestParam(defaultValue = "") String code,
            @RequestParam(defaultValue = "") String what,
            @RequestParam(defaultValue = "") String diameter) {
        saws.register(act, code, what, Keyed.figureOrNone("diameter", "The hole saw was not registered.", diameter));
        return "redirect:/shop/hole-saws";
    }

    @PostMapping("/check")
    String check(
            Act act,
            @RequestParam(defaultValue = "") String code,
            @RequestParam(defaultValue = "") String measured,
            @RequestParam(defaultValue = "") String gauge) {
        saws.check(act, code, Keyed.figureOrNone("measured", "The hole saw was not measured.", measured), gauge);
        return "redirect:/shop/hole-saws";
    }

    @PostMapping("/retire")
    String retire(
            Act act, @RequestParam(defaultValue = "") String code, @RequestParam(defaultValue = "") String reason) {
        saws.retire(act, code, reason);
        return "redirect:/shop/hole-saws";
    }
}
