package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.web.TypedFields;

/** The sheets of the tolerance classes. */
@Controller
@RequestMapping("/shop/tolerances")
class TolerancePages {

    private final Tolerances tolerances;
    private final Crew crew;

    TolerancePages(Tolerances tolerances, Crew crew) {
        this.tolerances = tolerances;
        this.crew = crew;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("tolerances", tolerances.inForce().values());
        model.addAttribute(
                "names",
                Arrays.stream(DrawnFeature.values())
                        .collect(Collectors.groupingBy(
                                DrawnFeature::toleranceClass,
                                Collectors.flatMapping(feature -> feature.names().stream(), Collectors.toList()))));
        return "tolerances/list";
    }

    @GetMapping("/{code}")
    String one(@PathVariable String code, Model model) {
        List<Tolerance> history = tolerances.history(code);
        model.addAttribute("now", history.get(0));
        model.addAttribute("history", history);
        model.addAttribute("people", crew.names());
        return "tolerances/sheet";
    }

    @PostMapping("/{code}")
    String change(Act act, @PathVariable String code, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "The tolerance was not changed.");
        BigDecimal lower = fields.figureOrNone("lower");
        BigDecimal upper = fields.figureOrNone("upper");
        Long seen = fields.idOrNone("seen");
        fields.refuseIfWrong();
        tolerances.change(act, code, lower, upper, fields.text("source"), fields.text("reason"), seen);
        return "redirect:/shop/tolerances/" + code;
    }
}
