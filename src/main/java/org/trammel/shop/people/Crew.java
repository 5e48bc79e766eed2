package org.trammel.shop.people;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** Reads who works here and what each may do. */
@Service
@Transactional(readOnly = true)
public class Crew {

    private final PersonRepository people;
    private final PersonNameRepository names;
    private final QualificationRepository qualifications;
    private final DeputyRepository deputies;
    private final AbsenceRepository absences;
    private final Settings settings;

    Crew(
            PersonRepository people,
            PersonNameRepository names,
            QualificationRepository qualifications,
            DeputyRepository deputies,
            AbsenceRepository absences,
            Settings settings) {
        this.people = people;
        this.names = names;
        this.qualifications = qualifications;
        this.deputies = deputies;
        this.absences = absences;
        this.settings = settings;
    }

    /**
     * The person of this id, left or not; 0 is the service itself.
     *
     * @throws Refusal if there is none
     */
    public Person byId(long id) {
        return persons(people.lines(id, settings.today())).stream()
                .findFirst()
                .orElseThrow(() -> Refusal.missing(
                        "The person was not found.", "Nobody has the number " + id + ".", "Choose from the list."));
    }

    /** The person of these initials, left or not. */
    public Optional<Person> byInitials(String initials) {
        return persons(people.lines(initials.trim().toUpperCase(Locale.ROOT), settings.today())).stream()
                .findFirst();
    }

    /** Everybody who works here or did, by name. */
    public List<Person> all() {
        return persons(people.lines(settings.today()));
    }

    /**
     * What everybody who works here or did is called to whoever asks now, see {@link SeenAs}: a record made under another
     * name goes on showing that one too.
     */
    public Map<Long, String> names() {
        boolean hidden = SeenAs.hidden();
        return people.called().stream()
                .collect(Collectors.toMap(CalledPerson::id, called -> hidden ? called.initials() : called.told()));
    }

    /** Everybody who works here now, by name. */
    public List<Person> active() {
        return all().stream().filter(Person::active).toList();
    }

    /** Everybody who works here and is not noted as away today, by name. */
    public List<Person> here() {
        Set<Long> away = absences.awayOn(settings.today());
        return active().stream().filter(person -> !away.contains(person.id())).toList();
    }

    /** What everybody is and was called, for whoever tells of old records. */
    public CalledOverTime calledOverTime() {
        return new CalledOverTime(people.namesSince());
    }

    /**
     * Lets somebody through who works here and holds one of the roles in force today.
     *
     * @param deed what is not done otherwise, as a sentence, such as "The lot was not released."
     * @throws Refusal if they do not
     */
    public Person require(long personId, String deed, Role... any) {
        Person person = byId(personId);
        if (!person.active()) {
            throw Refusal.person(
                    deed, person.initials() + " does not work here any more.", "Let somebody of the crew do it.");
        }
        if (!person.isAny(any)) {
            String wanted = Stream.of(any).map(RoleWords::of).collect(Collectors.joining(" or "));
            throw Refusal.person(
                    deed,
                    "It is for the " + wanted + "; " + person.initials() + " is " + RoleWords.all(person.roles()) + ".",
                    "Call the " + wanted + ".");
        }
        return person;
    }

    /** Whether somebody holds a valid qualification on a day. */
    public boolean qualified(long personId, String qualification, LocalDate on) {
        return standing(personId, qualification, on).valid();
    }

    /** Where somebody stands with a qualification on a day: the best of what they hold of this kind. */
    public Standing standing(long personId, String qualification, LocalDate on) {
        return standing(held(personId, qualification), qualification, on);
    }

    /**
     * Lets somebody through who is qualified on a day.
     *
     * @param deed what is not done otherwise, as a sentence, such as "The step was not started."
     * @throws Refusal with what is missing and what to do
     */
    public void requireQualified(long personId, String qualification, LocalDate on, String deed) {
        refuseUnless(standing(personId, qualification, on), personId, deed);
    }

    /** The same, for a wall of a thickness that the qualification's range must contain. */
    public void requireQualified(
            long personId, String qualification, BigDecimal thicknessMm, LocalDate on, String deed) {
        List<Qualification> held = held(personId, qualification);
        List<Qualification> covering =
                held.stream().filter(one -> one.coversMm(thicknessMm)).toList();
        if (covering.isEmpty() && !held.isEmpty()) {
            Qualification one = held.get(0);
            throw Refusal.person(
                    deed,
                    byId(personId).initials() + " holds " + qualification + " for " + one.thicknessFromMm() + " to "
                            + one.thicknessToMm() + " mm; this wall is " + thicknessMm.toPlainString() + " mm.",
                    "Let somebody qualified for this wall do it, or have the test extended and entered by QA.");
        }
        refuseUnless(standing(covering, qualification, on), personId, deed);
    }

    /**
     * Who stands in for a role today where its holder caused the matter or is away: the named deputy who is here, for
     * the QA lead else the owner.
     */
    public Optional<Person> deputyOf(Role role) {
        LocalDate today = settings.today();
        Optional<Person> named = deputies.findByRoleOrderById(role).stream()
                .filter(row -> row.open(today))
                .map(row -> byId(row.personId()))
                .filter(Person::active)
                .filter(person -> !away(person.id(), today))
                .findFirst();
        if (named.isPresent() || role != Role.QA_LEAD) {
            return named;
        }
        return active().stream().filter(person -> person.is(Role.OWNER)).findFirst();
    }

    /**
     * Whether somebody stands in for the QA lead today in a matter that some people took part in: no QA lead is here who
     * took no part, and this is a named deputy who is here and took none, or, where there is none, the owner.
     *
     * @param tookPart ids of the people who took part in the matter
     */
    public boolean standsInForQaLead(long personId, Set<Long> tookPart) {
        return standInsForQaLead(tookPart).contains(personId);
    }

    /** Ids of those who stand in for the QA lead today in such a matter; empty while a QA lead is here for it. */
    public Set<Long> standInsForQaLead(Set<Long> tookPart) {
        LocalDate today = settings.today();
        List<Person> free = here().stream()
                .filter(person -> !tookPart.contains(person.id()))
                .toList();
        if (free.stream().anyMatch(person -> person.is(Role.QA_LEAD))) {
            return Set.of();
        }
        List<Long> named = deputies.findByRoleOrderById(Role.QA_LEAD).stream()
                .filter(row -> row.open(today))
                .map(DeputyRow::personId)
                .toList();
        Set<Long> deputiesHere =
                free.stream().map(Person::id).filter(named::contains).collect(Collectors.toSet());
        return deputiesHere.isEmpty()
                ? free.stream()
                        .filter(person -> person.is(Role.OWNER))
                        .map(Person::id)
                        .collect(Collectors.toSet())
                : deputiesHere;
    }

    /** Whether somebody is noted as away on a day. */
    public boolean away(long personId, LocalDate on) {
        return absences.findByPersonIdOrderByFromOn(personId).stream().anyMatch(row -> row.away(on));
    }

    /** How many people work here now; for the list of what a new shop still has to enter. */
    public long headcount() {
        return active().size();
    }

    private List<Qualification> held(long personId, String kind) {
        return qualifications.findByPersonIdAndKind(personId, kind).stream()
                .map(QualificationRow::sheet)
                .toList();
    }

    static Standing standing(List<Qualification> held, String kind, LocalDate on) {
        return held.stream()
                .map(one -> standing(one, kind, on))
                .min(Comparator.comparing(Standing::state)
                        .thenComparing(Standing::until, Comparator.nullsFirst(Comparator.reverseOrder())))
                .orElse(new Standing(kind, Standing.State.NOT_HELD, null));
    }

    /** Of one that expired the expiry is told, even where its confirmation had run out before. */
    private static Standing standing(Qualification held, String kind, LocalDate on) {
        Standing.State state = held.state(on);
        return new Standing(kind, state, state == Standing.State.EXPIRED ? held.expiresOn() : held.until());
    }

    private void refuseUnless(Standing standing, long personId, String deed) {
        if (standing.valid()) {
            return;
        }
        String who = byId(personId).initials();
        String named = MayDo.named(standing.kind());
        String why = switch (standing.state()) {
            case CONFIRMATION_LAPSED ->
                "The six-month confirmation of the " + named + " held by " + who + " ran out on " + standing.until()
                        + ".";
            case EXPIRED -> "The " + named + " held by " + who + " expired on " + standing.until() + ".";
            case ENDED -> "The " + named + " held by " + who + " was taken back.";
            default -> who + " holds no " + named + ".";
        };
        throw Refusal.person(deed, why, "Let somebody qualified do it, or ask the QA lead to enter the renewal first.");
    }

    private static List<Person> persons(List<Object[]> rows) {
        Map<Long, PersonLine> first = new LinkedHashMap<>();
        Map<Long, Set<Role>> roles = new LinkedHashMap<>();
        for (Object[] row : rows) {
            PersonLine line = PersonLine.of(row);
            first.putIfAbsent(line.id(), line);
            Set<Role> held = roles.computeIfAbsent(line.id(), id -> EnumSet.noneOf(Role.class));
            if (line.role() != null) {
                held.add(Role.valueOf(line.role()));
            }
        }
        List<Person> persons = new ArrayList<>();
        first.forEach((id, line) -> persons.add(
                new Person(id, line.initials(), line.name(), roles.getOrDefault(id, Set.of()), !line.left())));
        return persons;
    }
}
