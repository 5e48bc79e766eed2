package org.trammel.shop.people;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Words;
import org.trammel.shop.settings.Settings;

/** Puts together what the sheet of a person shows to somebody. */
@Component
@Transactional(readOnly = true)
class PersonSheets {

    private final PersonRepository people;
    private final PersonNameRepository names;
    private final DeputyRepository deputies;
    private final AbsenceRepository absences;
    private final SignOnFailureRepository failures;
    private final LiftedLockRepository lifts;
    private final Words words;
    private final Qualifications qualifications;
    private final Guesses guesses;
    private final CrewLists lists;
    private final Crew crew;
    private final ObjectProvider<LapsedWork> lapsedWork;
    private final Settings settings;

    PersonSheets(
            PersonRepository people,
            PersonNameRepository names,
            DeputyRepository deputies,
            AbsenceRepository absences,
            SignOnFailureRepository failures,
            LiftedLockRepository lifts,
            Words words,
            Qualifications qualifications,
            Guesses guesses,
            CrewLists lists,
            Crew crew,
            ObjectProvider<LapsedWork> lapsedWork,
            Settings settings) {
        this.people = people;
        this.names = names;
        this.deputies = deputies;
        this.absences = absences;
        this.failures = failures;
        this.lifts = lifts;
        this.words = words;
        this.qualifications = qualifications;
        this.guesses = guesses;
        this.lists = lists;
        this.crew = crew;
        this.lapsedWork = lapsedWork;
        this.settings = settings;
    }

    PersonSheet of(long personId, Person who) {
        Person person = crew.byId(personId);
        PersonRow row = people.findById(personId).orElseThrow();
        boolean keeper = who.isAny(Role.OWNER, Role.QA_LEAD);
        boolean self = who.id() == personId;
        LocalDate today = settings.today();
        int warnDays = settings.whole("qualification.warn.days");
        return new PersonSheet(
                lists.of(person),
                who.seesPersonalData() ? person.name() : person.initials(),
                row.joinedOn(),
                row.leftOn(),
                qualifications.rows(personId).stream()
                        .map(one -> held(one, today, warnDays))
                        .toList(),
                keeper ? names(personId) : List.of(),
                deputies.findByPersonIdOrderById(personId).stream()
                        .map(one -> new PersonSheet.StandIn(
                                one.role(), RoleWords.of(one.role()), one.fromOn(), one.untilOn(), one.open(today)))
                        .toList(),
                who.seesPersonalData()
                        ? absences.findByPersonIdOrderByFromOn(personId).stream()
                                .filter(one -> !one.untilOn().isBefore(today))
                                .map(one -> new PersonSheet.Away(one.fromOn(), one.untilOn()))
                                .toList()
                        : List.of(),
                keeper || self ? wrong(personId) : List.of(),
                keeper || self ? lifts(personId) : List.of(),
                row.pinHash() != null,
                row.pinOneTime(),
                row.passwordHash() != null,
                guesses.locked(personId, row.initials()),
                keeper,
                self,
                lapsedWork.stream().flatMap(one -> one.of(personId).stream()).toList());
    }

    private List<PersonSheet.Named> names(long personId) {
        return names.findByPersonIdOrderBySinceAscIdAsc(personId).stream()
                .map(one -> new PersonSheet.Named(one.name(), one.since()))
                .toList();
    }

    private List<PersonSheet.Wrong> wrong(long personId) {
        return failures.findTop10ByPersonIdOrderByIdDesc(personId).stream()
                .map(one -> new PersonSheet.Wrong(one.at(), one.secret().name(), one.locked()))
                .toList();
    }

    private List<PersonSheet.Lifted> lifts(long personId) {
        return lifts.findTop5ByPersonIdOrderByIdDesc(personId).stream()
                .map(one -> new PersonSheet.Lifted(
                        one.at(),
                        crew.byId(one.liftedBy()).initials(),
                        words.find(one.reasonId()).shown()))
                .toList();
    }

    private PersonSheet.Held held(QualificationRow row, LocalDate today, int warnDays) {
        Qualification sheet = row.sheet();
        LocalDate until = sheet.until();
        Standing.State state = sheet.state(today);
        boolean soon = state == Standing.State.VALID && until != null && !until.isAfter(today.plusDays(warnDays));
        return new PersonSheet.Held(sheet, state, until, soon, MayDo.words(sheet.kind()), takenBack(row));
    }

    private @Nullable String takenBack(QualificationRow row) {
        Long by = row.endedBy();
        Long reason = row.endReasonId();
        return by == null || reason == null
                ? null
                : crew.byId(by).initials() + ": " + words.find(reason).shown();
    }
}
