package org.trammel.shop.people;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;

/** Changes who works here: takes people on, renames them, gives roles, names deputies, notes who is away or leaves. */
@Service
@Transactional
public class Roster {

    /** Stands for the number of a person who has none yet. */
    private static final long NOBODY = 0;

    private static final Set<Role> FOR_OWNER_ONLY = EnumSet.of(Role.OWNER, Role.QA_LEAD);

    private final PersonRepository people;
    private final PersonNameRepository names;
    private final DeputyRepository deputies;
    private final AbsenceRepository absences;
    private final SignOnBook signOns;
    private final SecretHash secrets;
    private final Crew crew;
    private final Settings settings;
    private final ActLog log;

    Roster(
            PersonRepository people,
            PersonNameRepository names,
            DeputyRepository deputies,
            AbsenceRepository absences,
            SignOnBook signOns,
            SecretHash secrets,
            Crew crew,
            Settings settings,
            ActLog log) {
        this.people = people;
        this.names = names;
        this.deputies = deputies;
        this.absences = absences;
        this.signOns = signOns;
        this.secrets = secrets;
        this.crew = crew;
        this.settings = settings;
        this.log = log;
    }

    /** Takes somebody on. Initials are never given twice, not even those of somebody who left. */
    public Person takeOn(Act act, String initials, String name, Set<Role> roles) {
        String mark = initials.trim().toUpperCase(Locale.ROOT);
        if (!log.opens(act, "take-on", "initials:" + mark, Chains.SHOP)) {
            return crew.byInitials(mark).orElseThrow();
        }
        String deed = "Nobody was taken on.";
        requireMayGive(act, roles, deed);
        PersonRow row = entered(act, mark, name, roles, deed);
        return crew.byId(row.id());
    }

    /** Renames somebody. Records go on showing the name of their day. */
    public Person rename(Act act, long personId, String name) {
        if (!log.opens(act, "rename", "person:" + personId, Chains.SHOP)) {
            return crew.byId(personId);
        }
        String deed = "Nobody was renamed.";
        crew.require(act.by(), deed, Role.OWNER, Role.QA_LEAD);
        PersonRow row = working(personId, deed);
        row.rename(ownName(name, personId, deed));
        PersonName kept = names.save(new PersonName(personId, row.name(), act.at(), act.by()));
        log.event(Chains.SHOP, "renamed", Map.of("person", personId, "name", kept.id()));
        people.flush();
        return crew.byId(personId);
    }

    /** Gives somebody exactly these roles. Those of owner and QA lead are the owner's to give and take. */
    public Person giveRoles(Act act, long personId, Set<Role> roles) {
        if (!log.opens(act, "give-roles", "person:" + personId, Chains.SHOP)) {
            return crew.byId(personId);
        }
        String deed = "The roles were not changed.";
        PersonRow row = working(personId, deed);
        Set<Role> changed = EnumSet.noneOf(Role.class);
        for (Role role : Role.values()) {
            if (roles.contains(role) != row.roles().contains(role)) {
                changed.add(role);
            }
        }
        requireMayGive(act, changed, deed);
        if (row.roles().contains(Role.OWNER) && !roles.contains(Role.OWNER)) {
            requireAnotherOwner(deed);
        }
        row.holds(roles);
        log.event(
                Chains.SHOP,
                "roles-given",
                Map.of(
                        "person",
                        personId,
                        "roles",
                        roles.stream().sorted().map(Role::name).toList()));
        people.flush();
        return crew.byId(personId);
    }

    /** Notes that somebody has left: from now on they cannot sign on anywhere. */
    public Person leaves(Act act, long personId) {
        if (!log.opens(act, "leaves", "person:" + personId, Chains.SHOP)) {
            return crew.byId(personId);
        }
        String deed = "Nobody left.";
        PersonRow row = working(personId, deed);
        requireMayGive(act, row.roles(), deed);
        if (row.roles().contains(Role.OWNER)) {
            requireAnotherOwner(deed);
        }
        LocalDate today = settings.today();
        row.leave(today.isBefore(row.joinedOn()) ? row.joinedOn() : today);
        signOns.endAllOf(personId, act.at());
        log.event(Chains.SHOP, "left", Map.of("person", personId));
        people.flush();
        return crew.byId(personId);
    }

    /** Names somebody to stand in for the QA lead or the owner; the owner does it, for the QA lead also themself. */
    public void nameDeputy(Act act, Role role, long personId, LocalDate from, @Nullable LocalDate until) {
        if (!log.opens(act, "name-deputy", "person:" + personId + ":" + role, Chains.SHOP)) {
            return;
        }
        String deed = "No deputy was named.";
        if (!FOR_OWNER_ONLY.contains(role)) {
            throw Refusal.input("role", deed, "Only owner and QA lead have deputies.", "Choose one of the two.");
        }
        if (role == Role.OWNER) {
            crew.require(act.by(), deed, Role.OWNER);
        } else {
            crew.require(act.by(), deed, Role.OWNER, Role.QA_LEAD);
        }
        PersonRow row = working(personId, deed);
        if (!crew.byId(personId).maySign()) {
            throw Refusal.person(deed, row.initials() + " may not sign hold points.", "Name somebody who may.");
        }
        requireOrder("until", from, until, deed);
        deputies.save(new DeputyRow(role, personId, from, until, act.by()));
        log.event(
                Chains.SHOP,
                "deputy-named",
                Map.of(
                        "person",
                        personId,
                        "role",
                        role.name(),
                        "from",
                        from.toString(),
                        "until",
                        until == null ? "" : until.toString()));
    }

    /** Ends what somebody was named to stand in for. */
    public void endDeputy(Act act, Role role, long personId) {
        if (!log.opens(act, "end-deputy", "person:" + personId + ":" + role, Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), "The deputy was not ended.", Role.OWNER, Role.QA_LEAD);
        LocalDate today = settings.today();
        for (DeputyRow row : deputies.findByPersonIdOrderById(personId)) {
            if (row.role() == role && (row.untilOn() == null || !row.untilOn().isBefore(today))) {
                row.end(today.minusDays(1));
            }
        }
        log.event(Chains.SHOP, "deputy-ended", Map.of("person", personId, "role", role.name()));
    }

    /** Notes the days on which somebody is away; a deputy stands in for their role meanwhile. */
    public void away(Act act, long personId, LocalDate from, LocalDate until) {
        if (!log.opens(act, "away", "person:" + personId, Chains.SHOP)) {
            return;
        }
        String deed = "The days away were not noted.";
        if (act.by() != personId) {
            crew.require(act.by(), deed, Role.OWNER, Role.QA_LEAD);
        }
        working(personId, deed);
        requireOrder("until", from, until, deed);
        absences.save(new AbsenceRow(personId, from, until, act.by()));
        log.event(
                Chains.SHOP,
                "away-noted",
                Map.of("person", personId, "from", from.toString(), "until", until.toString()));
    }

    /** Ends an absence early: the person is back today. */
    public void back(Act act, long personId) {
        if (!log.opens(act, "back", "person:" + personId, Chains.SHOP)) {
            return;
        }
        if (act.by() != personId) {
            crew.require(act.by(), "The return was not noted.", Role.OWNER, Role.QA_LEAD);
        }
        LocalDate today = settings.today();
        List<AbsenceRow> current = absences.findByPersonIdOrderByFromOn(personId).stream()
                .filter(row -> row.away(today))
                .toList();
        for (AbsenceRow row : current) {
            if (row.fromOn().equals(today)) {
                absences.delete(row);
            } else {
                row.end(today.minusDays(1));
            }
        }
        log.event(Chains.SHOP, "back-noted", Map.of("person", personId));
    }

    /** Gives somebody a new badge; the old one is worth nothing from now on. */
    public void newBadge(Act act, long personId) {
        if (!log.opens(act, "new-badge", "person:" + personId, Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), "No badge was made.", Role.OWNER, Role.QA_LEAD);
        working(personId, "No badge was made.").wear(freshBadge());
        log.event(Chains.SHOP, "badge-made", Map.of("person", personId));
    }

    /** Enters a person whom the caller was allowed to take on; part of that act. */
    PersonRow entered(Act act, String initials, String name, Set<Role> roles, String deed) {
        String mark = initials.trim().toUpperCase(Locale.ROOT);
        if (!mark.matches("\\p{Lu}[\\p{Lu}0-9]{1,3}")) {
            throw Refusal.input(
                    "initials",
                    deed,
                    "Initials are 2 to 4 letters or digits and begin with a letter.",
                    "Enter them the way they are signed on paper.");
        }
        if (people.existsByInitials(mark)) {
            throw Refusal.input(
                    "initials",
                    deed,
                    "The initials " + mark + " are or were somebody's, and records name them.",
                    "Choose others, such as with a third letter.");
        }
        if (roles.isEmpty()) {
            throw Refusal.input("roles", deed, "No role was chosen.", "Choose at least one.");
        }
        PersonRow row = people.save(
                new PersonRow(mark, ownName(name, NOBODY, deed), freshBadge(), settings.dayOf(act.at()), roles));
        names.save(new PersonName(row.id(), row.name(), act.at(), act.by()));
        log.event(
                Chains.SHOP,
                "taken-on",
                Map.of(
                        "person",
                        row.id(),
                        "roles",
                        roles.stream().sorted().map(Role::name).toList()));
        people.flush();
        return row;
    }

    private String freshBadge() {
        return "B" + secrets.freshDigits(11);
    }

    private void requireMayGive(Act act, Set<Role> roles, String deed) {
        if (roles.stream().anyMatch(FOR_OWNER_ONLY::contains)) {
            crew.require(act.by(), deed, Role.OWNER);
        } else {
            crew.require(act.by(), deed, Role.OWNER, Role.QA_LEAD);
        }
    }

    private void requireAnotherOwner(String deed) {
        if (people.activeWith(Role.OWNER) < 2) {
            throw Refusal.state(deed, "The shop would be without an owner.", "Make another person owner first.");
        }
    }

    /** Who did what is chosen and told by name: two who work here are never called the same. */
    private String ownName(String typed, long but, String deed) {
        String name = TypedText.line("name", "The name", deed, typed, 120).replaceAll("\\s+", " ");
        List<String> others = people.named(name, but);
        if (!others.isEmpty()) {
            throw Refusal.input(
                    "name",
                    deed,
                    others.get(0) + ", who works here, is called " + name + " too.",
                    "Add what tells the two apart, such as a second first name; who signs is chosen by name.");
        }
        return name;
    }

    private PersonRow working(long personId, String deed) {
        PersonRow row = people.lock(personId)
                .orElseThrow(() ->
                        Refusal.missing(deed, "Nobody has the number " + personId + ".", "Choose from the list."));
        if (!row.active()) {
            throw Refusal.state(
                    deed, row.initials() + " does not work here any more.", "Take them on again with new initials.");
        }
        return row;
    }

    private static void requireOrder(String field, LocalDate from, @Nullable LocalDate until, String deed) {
        if (until != null && until.isBefore(from)) {
            throw Refusal.input(
                    field,
                    deed,
                    "The last day, " + until + ", lies before the first, " + from + ".",
                    "Enter both again.");
        }
    }
}
