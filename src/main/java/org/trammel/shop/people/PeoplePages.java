package org.trammel.shop.people;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.Settings;

/** The crew, and the sheet of each of them. */
@Controller
@RequestMapping("/shop/people")
class PeoplePages {

    private final CrewLists lists;
    private final PersonSheets sheets;
    private final Roster roster;
    private final Qualifications qualifications;
    private final Signatures signatures;
    private final Settings settings;

    PeoplePages(
            CrewLists lists,
            PersonSheets sheets,
            Roster roster,
            Qualifications qualifications,
            Signatures signatures,
            Settings settings) {
        this.lists = lists;
        this.sheets = sheets;
        this.roster = roster;
        this.qualifications = qualifications;
        this.signatures = signatures;
        this.settings = settings;
    }

    /** The roles and how the shop says them. */
    @ModelAttribute("roles")
    Map<String, String> roles() {
        Map<String, String> roles = new LinkedHashMap<>();
        for (Role role : Role.values()) {
            roles.put(role.name(), RoleWords.of(role));
        }
        return roles;
    }

    @GetMapping
    String list(SignedOn who, Model model) {
        model.addAttribute("crew", lists.active());
        model.addAttribute("gone", lists.gone());
        model.addAttribute("names", who.person().seesPersonalData());
        model.addAttribute("keeper", who.person().isAny(Role.OWNER, Role.QA_LEAD));
        return "people/list";
    }

    @GetMapping("/{id}")
    String one(@PathVariable long id, SignedOn who, Model model) {
        model.addAttribute("sheet", sheets.of(id, who.person()));
        model.addAttribute("today", settings.today());
        return "people/person";
    }

    @PostMapping
    String takeOn(
            Act act,
            SignedOn who,
            @RequestParam String initials,
            @RequestParam String name,
            @RequestParam(name = "role", defaultValue = "") List<Role> given,
            @RequestParam(defaultValue = "") String secret) {
        signatures.confirm(who, secret);
        Person person = roster.takeOn(act, initials, name, set(given));
        return to(person.id());
    }

    @PostMapping("/{id}/name")
    String rename(Act act, @PathVariable long id, @RequestParam String name) {
        roster.rename(act, id, name);
        return to(id);
    }

    @PostMapping("/{id}/roles")
    String roles(
            Act act,
            SignedOn who,
            @PathVariable long id,
            @RequestParam(name = "role", defaultValue = "") List<Role> given,
            @RequestParam(defaultValue = "") String secret) {
        signatures.confirm(who, secret);
        roster.giveRoles(act, id, set(given));
        return to(id);
    }

    @PostMapping("/{id}/leaving")
    String leaves(Act act, SignedOn who, @PathVariable long id, @RequestParam(defaultValue = "") String secret) {
        signatures.confirm(who, secret);
        roster.leaves(act, id);
        return to(id);
    }

    @PostMapping("/{id}/deputy")
    String deputy(
            Act act,
            SignedOn who,
            @PathVariable long id,
            @RequestParam Role role,
            @RequestParam @Nullable LocalDate from,
            @RequestParam @Nullable LocalDate until,
            @RequestParam(defaultValue = "") String secret) {
        signatures.confirm(who, secret);
        roster.nameDeputy(act, role, id, from == null ? settings.today() : from, until);
        return to(id);
    }

    @PostMapping("/{id}/deputy/end")
    String endDeputy(Act act, @PathVariable long id, @RequestParam Role role) {
        roster.endDeputy(act, role, id);
        return to(id);
    }

    @PostMapping("/{id}/away")
    String away(Act act, @PathVariable long id, @RequestParam LocalDate from, @RequestParam LocalDate until) {
        roster.away(act, id, from, until);
        return to(id);
    }

    @PostMapping("/{id}/back")
    String back(Act act, @PathVariable long id) {
        roster.back(act, id);
        return to(id);
    }

    @PostMapping("/{id}/qualifications")
    String enter(Act act, @PathVariable long id, QualificationForm form) {
        qualifications.enter(act, id, form.sheet());
        return to(id);
    }

    @PostMapping("/{id}/qualifications/{qualification}/confirmation")
    String confirm(
            Act act, @PathVariable long id, @PathVariable long qualification, @RequestParam LocalDate confirmedOn) {
        qualifications.confirm(act, qualification, confirmedOn);
        return to(id);
    }

    @PostMapping("/{id}/qualifications/{qualification}/end")
    String end(
            Act act, @PathVariable long id, @PathVariable long qualification, @RequestParam @Nullable String reason) {
        qualifications.end(act, qualification, settings.dayOf(act.at()), reason);
        return to(id);
    }

    private static Set<Role> set(List<Role> given) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        roles.addAll(given);
        return roles;
    }

    private static String to(long id) {
        return "redirect:/shop/people/" + id;
    }
}
