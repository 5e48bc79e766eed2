package org.trammel.shop.designs;

import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.web.TypedFields;

/** The sheets of the test families. */
@Controller
@RequestMapping("/shop/test-families")
class TestFamilyPages {

    private final TestFamilies families;
    private final Crew crew;

    TestFamilyPages(TestFamilies families, Crew crew) {
        this.families = families;
        this.crew = crew;
    }

    @GetMapping
    String list(SignedOn who, Model model) {
        model.addAttribute("families", families.inForce());
        model.addAttribute("keeps", keeps(who));
        return "families/list";
    }

    @GetMapping("/one")
    String one(@RequestParam String code, SignedOn who, Model model) {
        List<TestFamily> history = families.history(code);
        model.addAttribute("now", history.get(0));
        model.addAttribute("history", history);
        model.addAttribute("people", crew.names());
        model.addAttribute("keeps", keeps(who));
        return "families/sheet";
    }

    /** Who may put a family in force; nobody else is shown the form. */
    private static boolean keeps(SignedOn who) {
        return who.person().isAny(Role.QA_LEAD, Role.OWNER);
    }

    @PostMapping
    String enter(Act act, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "The test family was not entered.");
        TestFamilies.Covered covered = new TestFamilies.Covered(
                fields.text("code"),
                fields.text("covers"),
                fields.figureOrNone("longestFork"),
                fields.figureOrNone("heaviestRider"),
                fields.figureOrNone("leastStack"),
                fields.figureOrNone("mostStack"),
                fields.text("source"));
        Long seen = fields.idOrNone("seen");
        fields.refuseIfWrong();
        families.enter(act, covered, seen);
        return "redirect:/shop/test-families";
    }
}
