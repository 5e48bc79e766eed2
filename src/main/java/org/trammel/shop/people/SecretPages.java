package org.trammel.shop.people;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** PINs, passwords, locks and badges. What is given is on the answer itself, once, and in no address and no log. */
@Controller
class SecretPages {

    private final Credentials credentials;
    private final Signatures signatures;
    private final Roster roster;
    private final PersonRepository people;
    private final Crew crew;

    SecretPages(Credentials credentials, Signatures signatures, Roster roster, PersonRepository people, Crew crew) {
        this.credentials = credentials;
        this.signatures = signatures;
        this.roster = roster;
        this.people = people;
        this.crew = crew;
    }

    @PostMapping("/shop/people/{id}/pin")
    String givePin(
            Act act, SignedOn who, @PathVariable long id, @RequestParam(defaultValue = "") String secret, Model model) {
        signatures.confirm(who, secret);
        return given(id, "PIN", credentials.resetPin(act, id), model);
    }

    @PostMapping("/shop/people/{id}/password")
    String givePassword(
            Act act, SignedOn who, @PathVariable long id, @RequestParam(defaultValue = "") String secret, Model model) {
        signatures.confirm(who, secret);
        return given(id, "password", credentials.resetPassword(act, id), model);
    }

    @PostMapping("/shop/people/{id}/lock")
    String lift(
            Act act,
            SignedOn who,
            @PathVariable long id,
            @RequestParam(defaultValue = "") String reason,
            @RequestParam(defaultValue = "") String secret) {
        signatures.confirm(who, secret);
        credentials.lift(act, id, reason);
        return "redirect:/shop/people/" + id;
    }

    @GetMapping("/shop/people/{id}/badge")
    String badge(@PathVariable long id, SignedOn who, Model model) {
        if (who.person().id() != id) {
            crew.require(who.person().id(), "The badge is not shown.", Role.OWNER, Role.QA_LEAD);
        }
        PersonRow row = people.findById(id)
                .filter(PersonRow::active)
                .orElseThrow(() -> Refusal.missing(
                        "There is no badge.", "Nobody of this number works here.", "Choose from the list."));
        model.addAttribute("person", crew.byId(id));
        model.addAttribute("badge", row.badge());
        return "people/badge";
    }

    @PostMapping("/shop/people/{id}/badge")
    String newBadge(Act act, @PathVariable long id) {
        roster.newBadge(act, id);
        return "redirect:/shop/people/" + id + "/badge";
    }

    @GetMapping("/own-secrets")
    String own(SignedOn who, Model model) {
        PersonRow row = people.findById(who.person().id()).orElseThrow();
        model.addAttribute("person", who.person());
        model.addAttribute("password", row.passwordHash() != null);
        return "people/own-secrets";
    }

    @PostMapping("/own-secrets/pin")
    String ownPin(
            Act act,
            SignedOn who,
            @RequestParam(defaultValue = "") String secret,
            @RequestParam(defaultValue = "") String newPin,
            @RequestParam(defaultValue = "") String newPinAgain) {
        requireSame("newPin", newPin, newPinAgain);
        signatures.confirm(who, secret);
        credentials.keepPin(act, secret, newPin);
        return "redirect:/own-secrets";
    }

    @PostMapping("/own-secrets/password")
    String ownPassword(
            Act act,
            SignedOn who,
            @RequestParam(defaultValue = "") String secret,
            @RequestParam(defaultValue = "") String newPassword,
            @RequestParam(defaultValue = "") String newPasswordAgain) {
        requireSame("newPassword", newPassword, newPasswordAgain);
        signatures.confirm(who, secret);
        credentials.keepPassword(act, secret, newPassword);
        return "redirect:/own-secrets";
    }

    private String given(long id, String what, String secret, Model model) {
        model.addAttribute("person", crew.byId(id));
        model.addAttribute("what", what);
        model.addAttribute("given", secret);
        return "people/given";
    }

    private static void requireSame(String field, String own, String again) {
        if (!own.equals(again)) {
            throw Refusal.input(field, "Nothing was changed.", "The two new ones differ.", "Type the same one twice.");
        }
    }
}
