package org.trammel.shop.people;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.Settings;

/** The crew for programs, with the same checks as the sheets. */
@RestController
@RequestMapping("/api/v1/people")
class PeopleApi {

    private final Crew crew;
    private final Roster roster;
    private final Qualifications qualifications;
    private final Credentials credentials;
    private final Signatures signatures;
    private final Settings settings;

    PeopleApi(
            Crew crew,
            Roster roster,
            Qualifications qualifications,
            Credentials credentials,
            Signatures signatures,
            Settings settings) {
        this.crew = crew;
        this.roster = roster;
        this.qualifications = qualifications;
        this.credentials = credentials;
        this.signatures = signatures;
        this.settings = settings;
    }

    record NewPerson(String initials, String name, Set<Role> roles, String secret) {}

    record Named(String name) {}

    record Roles(Set<Role> roles, String secret) {}

    record Confirmed(String secret) {}

    record Lifted(String reason, String secret) {}

    record Deputy(
            Role role, @Nullable LocalDate from, @Nullable LocalDate until, String secret) {}

    record DeputyEnd(Role role) {}

    record Days(LocalDate from, LocalDate until) {}

    record On(@Nullable LocalDate on) {}

    record TakenBack(@Nullable LocalDate on, @Nullable String reason) {}

    /** What was given, to be changed at the first sign-on; it is not shown again. */
    record Given(String secret) {}

    @GetMapping
    List<Person> all(SignedOn who) {
        return crew.all().stream().map(person -> shown(person, who)).toList();
    }

    @GetMapping("/{id}")
    Person one(@PathVariable long id, SignedOn who) {
        return shown(crew.byId(id), who);
    }

    @GetMapping("/{id}/qualifications")
    List<Qualification> qualifications(@PathVariable long id) {
        return qualifications.of(id);
    }

    @PostMapping
    Person takeOn(Act act, SignedOn who, @RequestBody NewPerson person) {
        signatures.confirm(who, person.secret());
        return roster.takeOn(act, person.initials(), person.name(), person.roles());
    }

    @PostMapping("/{id}/name")
    Person rename(Act act, @PathVariable long id, @RequestBody Named named) {
        return roster.rename(act, id, named.name());
    }

    @PostMapping("/{id}/roles")
    Person roles(Act act, SignedOn who, @PathVariable long id, @RequestBody Roles roles) {
        signatures.confirm(who, roles.secret());
        return roster.giveRoles(act, id, roles.roles());
    }

    @PostMapping("/{id}/leaving")
    Person leaves(Act act, SignedOn who, @PathVariable long id, @RequestBody Confirmed confirmed) {
        signatures.confirm(who, confirmed.secret());
        return roster.leaves(act, id);
    }

    @PostMapping("/{id}/deputy")
    Person deputy(Act act, SignedOn who, @PathVariable long id, @RequestBody Deputy deputy) {
        signatures.confirm(who, deputy.secret());
        LocalDate from = deputy.from();
        roster.nameDeputy(act, deputy.role(), id, from == null ? settings.today() : from, deputy.until());
        return crew.byId(id);
    }

    @PostMapping("/{id}/deputy/end")
    Person endDeputy(Act act, @PathVariable long id, @RequestBody DeputyEnd end) {
        roster.endDeputy(act, end.role(), id);
        return crew.byId(id);
    }

    @PostMapping("/{id}/back")
    Person back(Act act, @PathVariable long id) {
        roster.back(act, id);
        return crew.byId(id);
    }

    /** Makes a new badge; the old one is worth nothing from now on. */
    @PostMapping("/{id}/badge")
    Person newBadge(Act act, @PathVariable long id) {
        roster.newBadge(act, id);
        return crew.byId(id);
    }

    @PostMapping("/{id}/away")
    Person away(Act act, @PathVariable long id, @RequestBody Days days) {
        roster.away(act, id, days.from(), days.until());
        return crew.byId(id);
    }

    @PostMapping("/{id}/qualifications")
    Qualification enter(Act act, @PathVariable long id, @RequestBody QualificationForm form) {
        return qualifications.enter(act, id, form.sheet());
    }

    @PostMapping("/qualifications/{id}/confirmation")
    Qualification confirm(Act act, @PathVariable long id, @RequestBody On on) {
        LocalDate day = on.on();
        return qualifications.confirm(act, id, day == null ? settings.today() : day);
    }

    @PostMapping("/qualifications/{id}/end")
    Qualification end(Act act, @PathVariable long id, @RequestBody TakenBack taken) {
        LocalDate day = taken.on();
        return qualifications.end(act, id, day == null ? settings.today() : day, taken.reason());
    }

    @PostMapping("/{id}/pin")
    Given givePin(Act act, SignedOn who, @PathVariable long id, @RequestBody Confirmed confirmed) {
        signatures.confirm(who, confirmed.secret());
        return new Given(credentials.resetPin(act, id));
    }

    @PostMapping("/{id}/password")
    Given givePassword(Act act, SignedOn who, @PathVariable long id, @RequestBody Confirmed confirmed) {
        signatures.confirm(who, confirmed.secret());
        return new Given(credentials.resetPassword(act, id));
    }

    @PostMapping("/{id}/lock")
    Person lift(Act act, SignedOn who, @PathVariable long id, @RequestBody Lifted lifted) {
        signatures.confirm(who, lifted.secret());
        credentials.lift(act, id, lifted.reason());
        return crew.byId(id);
    }

    /** An auditor sees initials in the place of names. */
    private static Person shown(Person person, SignedOn who) {
        return who.person().seesPersonalData()
                ? person
                : new Person(person.id(), person.initials(), person.initials(), person.roles(), person.active());
    }
}
