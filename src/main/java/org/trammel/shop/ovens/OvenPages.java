package org.trammel.shop.ovens;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.Settings;

/** The sheets of the register of ovens. */
@Controller
class OvenPages {

    private final Ovens ovens;
    private final OvenRegister register;
    private final Crew crew;
    private final Settings settings;

    OvenPages(Ovens ovens, OvenRegister register, Crew crew, Settings settings) {
        this.ovens = ovens;
        this.register = register;
        this.crew = crew;
        this.settings = settings;
    }

    @GetMapping("/shop/ovens")
    String list(SignedOn who, Model model) {
        model.addAttribute("ovens", ovens.all());
        model.addAttribute("keeps", keeps(who));
        return "ovens/list";
    }

    @GetMapping("/shop/ovens/new")
    String fresh(Model model) {
        model.addAttribute("oven", null);
        model.addAttribute("purposes", Purpose.values());
        return "ovens/form";
    }

    @PostMapping("/shop/ovens")
    String register(Act act, @RequestParam Map<String, String> fields) {
        Typed typed = new Typed(fields, "The oven was not registered.");
        return sheet(register.register(act, typed.text("code"), entry(typed)));
    }

    @GetMapping("/shop/ovens/{code}")
    String one(@PathVariable String code, SignedOn who, Model model) {
        Oven oven = ovens.byCode(code);
        model.addAttribute("oven", oven);
        model.addAttribute("tests", ovens.testsOf(oven.id()));
        model.addAttribute("ever", ovens.everFitted(oven.id()));
        model.addAttribute("roles", roles());
        model.addAttribute(
                "codes",
                ovens.everFitted(oven.id()).stream()
                        .map(Fitted::code)
                        .collect(Collectors.toMap(c -> c, c -> c, (a, b) -> a, LinkedHashMap::new)));
        model.addAttribute("names", crew.names());
        model.addAttribute("today", settings.today());
        model.addAttribute("keeps", keeps(who));
        model.addAttribute("fits", who.person().isAny(Role.QA_LEAD, Role.HEAT_TREATER));
        model.addAttribute("unblocks", who.person().is(Role.QA_LEAD));
        model.addAttribute("works", who.person().mayWork());
        return "ovens/sheet";
    }

    @GetMapping("/shop/ovens/{code}/edit")
    String change(@PathVariable String code, Model model) {
        model.addAttribute("oven", ovens.byCode(code));
        model.addAttribute("purposes", Purpose.values());
        return "ovens/form";
    }

    @PostMapping("/shop/ovens/{code}/edit")
    String change(
            Act act, @PathVariable String code, @RequestParam long version, @RequestParam Map<String, String> fields) {
        return sheet(register.edit(act, code, version, entry(new Typed(fields, code + " was not changed."))));
    }

    @PostMapping("/shop/ovens/{code}/block")
    String block(Act act, @PathVariable String code, @RequestParam @Nullable String reason) {
        return sheet(register.block(act, code, reason));
    }

    @PostMapping("/shop/ovens/{code}/unblock")
    String unblock(Act act, @PathVariable String code, @RequestParam @Nullable String reason) {
        return sheet(register.unblock(act, code, reason));
    }

    @PostMapping("/shop/ovens/{code}/retire")
    String retire(Act act, @PathVariable String code, @RequestParam @Nullable String reason) {
        return sheet(register.retire(act, code, reason));
    }

    @PostMapping("/shop/ovens/{code}/thermocouples")
    String fit(Act act, @PathVariable String code, @RequestParam Map<String, String> fields) {
        Typed typed = new Typed(fields, "The thermocouple was not fitted.");
        return sheet(register.fit(act, code, typed.text("thermocouple"), typed.choice("role", ThermocoupleRole.class)));
    }

    @PostMapping("/shop/ovens/{code}/thermocouples/{thermocouple}/remove")
    String remove(
            Act act,
            @PathVariable String code,
            @PathVariable String thermocouple,
            @RequestParam @Nullable String reason) {
        return sheet(register.remove(act, code, thermocouple, reason));
    }

    @PostMapping("/shop/ovens/{code}/survey")
    String survey(Act act, @PathVariable String code, @RequestParam Map<String, String> fields) {
        Typed typed = new Typed(fields, "The survey was not recorded.");
        return sheet(register.tested(
                act,
                code,
                NewTest.survey(
                        typed.moment("testedOn", "testedTime", settings.zone()),
                        typed.day("dueOn"),
                        typed.figure("lowest"),
                        typed.figure("highest"),
                        typed.figure("atDegC"),
                        typed.text("report"))));
    }

    @PostMapping("/shop/ovens/{code}/accuracy")
    String accuracy(Act act, @PathVariable String code, @RequestParam Map<String, String> fields) {
        Typed typed = new Typed(fields, "The accuracy test was not recorded.");
        return sheet(register.tested(
                act,
                code,
                NewTest.accuracy(
                        typed.text("thermocouple"),
                        typed.moment("testedOn", "testedTime", settings.zone()),
                        typed.day("dueOn"),
                        typed.figure("error"),
                        typed.figure("limit"),
                        typed.figure("atDegC"),
                        typed.text("report"))));
    }

    private static NewOven entry(Typed typed) {
        return new NewOven(
                typed.text("what"),
                Arrays.stream(Purpose.values())
                        .filter(purpose -> typed.ticked("for" + purpose))
                        .collect(Collectors.toSet()),
                typed.figure("uniformity"),
                typed.figure("length"),
                typed.figure("width"),
                typed.figure("height"),
                typed.figure("mass"));
    }

    private static Map<String, String> roles() {
        Map<String, String> roles = new LinkedHashMap<>();
        for (ThermocoupleRole role : ThermocoupleRole.values()) {
            roles.put(role.name(), Fitted.word(role));
        }
        return roles;
    }

    private static boolean keeps(SignedOn who) {
        return who.person().isAny(Role.QA_LEAD, Role.OWNER);
    }

    private static String sheet(Oven oven) {
        return "redirect:/shop/ovens/" + oven.code();
    }
}
