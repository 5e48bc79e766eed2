package org.trammel.shop.materials;

import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** The saw plan, which is also printed and taken to the saw, with the rack it is laid into. */
@Controller
class SawPages {

    private final SawPlans plans;
    private final TubeRack rack;

    SawPages(SawPlans plans, TubeRack rack) {
        this.plans = plans;
        this.rack = rack;
    }

    @GetMapping("/shop/saw-plan")
    String plan(SignedOn who, Model model) {
        model.addAttribute("plan", plans.now());
        model.addAttribute("rack", rack.bars());
        model.addAttribute("works", who.person().mayWork());
        return "lots/saw";
    }

    @PostMapping("/shop/saw-plan/bars")
    String lay(Act act, @RequestParam Map<String, String> fields) {
        LotForm form = new LotForm(fields);
        rack.lay(
                act,
                form.text("lot"),
                new NewBars(
                        form.neededFigure("outside"),
                        form.neededFigure("wall"),
                        form.neededFigure("length"),
                        count(form),
                        !form.text("butted").isEmpty()));
        return "redirect:/shop/saw-plan";
    }

    private static int count(LotForm form) {
        try {
            return form.neededFigure("count").intValueExact();
        } catch (ArithmeticException e) {
            throw Refusal.input(
                    "count",
                    "No bar was laid on the rack.",
                    "Bars are counted in whole numbers.",
                    "Count the bars and enter how many.");
        }
    }

    @PostMapping("/shop/saw-plan/bars/{id}/cut")
    String cut(Act act, @PathVariable long id, @RequestParam Map<String, String> fields) {
        rack.cut(act, id, new LotForm(fields).neededFigure("left"));
        return "redirect:/shop/saw-plan";
    }
}
