package org.trammel.shop.people;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;
import org.trammel.shop.settings.Settings;

/** Enters, confirms and ends what people are qualified or authorised for. */
@Service
@Transactional
public class Qualifications {

    private final QualificationRepository qualifications;
    private final QualificationConfirmationRepository confirmations;
    private final Crew crew;
    private final Words words;
    private final Settings settings;
    private final ActLog log;

    Qualifications(
            QualificationRepository qualifications,
            QualificationConfirmationRepository confirmations,
            Crew crew,
            Words words,
            Settings settings,
            ActLog log) {
        this.qualifications = qualifications;
        this.confirmations = confirmations;
        this.crew = crew;
        this.words = words;
        this.settings = settings;
        this.log = log;
    }

    /** What somebody holds or held. */
    @Transactional(readOnly = true)
    public List<Qualification> of(long personId) {
        return rows(personId).stream().map(QualificationRow::sheet).toList();
    }

    /** The same, with who took them back and why. */
    List<QualificationRow> rows(long personId) {
        return qualifications.findByPersonIdOrderByKind(personId);
    }

    /** What anybody holds or held. */
    @Transactional(readOnly = true)
    public List<Qualification> all() {
        return qualifications.findAll().stream().map(QualificationRow::sheet).toList();
    }

    /** Enters a qualification. Nobody enters their own, but the owner where there is nobody else. */
    public Qualification enter(Act act, long personId, Qualification sheet) {
        if (!log.opens(act, "enter-qualification", "person:" + personId, Chains.SHOP)) {
            return of(personId).stream()
                    .filter(one -> one.kind().equals(sheet.kind()))
                    .reduce((first, second) -> second)
                    .orElseThrow();
        }
        String deed = "The qualification was not entered.";
        Person keeper = crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        requireOther(keeper, personId, deed);
        Person holder = crew.byId(personId);
        if (!holder.active()) {
            throw Refusal.state(
                    deed, holder.initials() + " does not work here any more.", "Choose somebody of the crew.");
        }
        checked(sheet, deed);
        QualificationRow row = qualifications.save(new QualificationRow(personId, sheet));
        LocalDate confirmedOn = sheet.confirmedOn();
        if (confirmedOn != null) {
            confirmations.save(new QualificationConfirmation(row.id(), confirmedOn, act.by(), act.at()));
        }
        log.event(
                Chains.SHOP,
                "qualification-entered",
                Map.of("person", personId, "qualification", row.id(), "kind", sheet.kind()));
        return row.sheet();
    }

    /**
     * Confirms that the holder has worked within the qualification, which keeps it for six months more. A confirmation
     * dated after the six months ran out cannot mend it: that takes a new test.
     */
    public Qualification confirm(Act act, long qualificationId, LocalDate on) {
        if (!log.opens(act, "confirm-qualification", "qualification:" + qualificationId, Chains.SHOP)) {
            return row(qualificationId).sheet();
        }
        String deed = "The qualification was not confirmed.";
        Person keeper = crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        QualificationRow row = row(qualificationId);
        requireOther(keeper, row.personId(), deed);
        Qualification sheet = row.sheet();
        LocalDate until = sheet.confirmedUntil();
        if (until == null) {
            throw Refusal.state(deed, sheet.kind() + " does not need a confirmation.", "Nothing needs to be done.");
        }
        if (sheet.endedOn() != null) {
            throw Refusal.state(deed, sheet.kind() + " was taken back on " + sheet.endedOn() + ".", "Enter a new one.");
        }
        LocalDate today = settings.dayOf(act.at());
        if (on.isAfter(today) || on.isBefore(sheet.issuedOn())) {
            throw Refusal.input(
                    "confirmedOn",
                    deed,
                    "The day lies "
                            + (on.isAfter(today) ? "after today, " + today : "before the test, " + sheet.issuedOn())
                            + ".",
                    "Enter the day the work was confirmed.");
        }
        if (on.isAfter(until)) {
            throw Refusal.state(
                    deed,
                    "The six months since the last confirmation ran out on " + until + ".",
                    "Enter the new test as a qualification of its own, or the earlier day it was confirmed on.");
        }
        if (!confirmations.existsByQualificationIdAndConfirmedOn(qualificationId, on)) {
            confirmations.save(new QualificationConfirmation(qualificationId, on, act.by(), act.at()));
        }
        row.confirm(on);
        log.event(
                Chains.SHOP, "qualification-confirmed", Map.of("qualification", qualificationId, "on", on.toString()));
        return row.sheet();
    }

    /** Takes a qualification back from a day on, which is none to come; with a reason. */
    public Qualification end(Act act, long qualificationId, LocalDate on, @Nullable String reason) {
        if (!log.opens(act, "end-qualification", "qualification:" + qualificationId, Chains.SHOP)) {
            return row(qualificationId).sheet();
        }
        String deed = "The qualification was not taken back.";
        crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        QualificationRow row = row(qualificationId);
        if (row.sheet().endedOn() != null) {
            throw Refusal.state(deed, "It was taken back before.", "Nothing needs to be done.");
        }
        LocalDate today = settings.dayOf(act.at());
        LocalDate issuedOn = row.sheet().issuedOn();
        if (on.isAfter(today) || on.isBefore(issuedOn)) {
            throw Refusal.input(
                    "on",
                    deed,
                    on + " lies "
                            + (on.isAfter(today) ? "after today, " + today : "before it was issued, " + issuedOn)
                            + ".",
                    "Enter the day from which it did not hold any more.");
        }
        String why = TypedText.line("reason", "The reason", deed, reason, 400);
        WordsRef kept = words.keep(why);
        row.end(on, act.by(), kept.id());
        log.event(
                Chains.SHOP,
                "qualification-ended",
                Map.of(
                        "qualification",
                        qualificationId,
                        "on",
                        on.toString(),
                        "words",
                        kept.id(),
                        "sha256",
                        kept.sha256()));
        return row.sheet();
    }

    private void requireOther(Person keeper, long holder, String deed) {
        boolean alone = crew.active().stream()
                .filter(person -> person.isAny(Role.OWNER, Role.QA_LEAD))
                .allMatch(person -> person.id() == keeper.id());
        if (keeper.id() == holder && !alone) {
            throw Refusal.person(
                    deed,
                    keeper.initials() + " would do it for themself.",
                    "Let the other of QA lead and owner do it.");
        }
    }

    private QualificationRow row(long qualificationId) {
        return qualifications
                .findById(qualificationId)
                .orElseThrow(() -> Refusal.missing(
                        "The qualification was not found.",
                        "There is no qualification " + qualificationId + ".",
                        "Choose one on the person's page."));
    }

    private static void checked(Qualification sheet, String deed) {
        if (!sheet.kind().matches("[A-Z0-9-]{1,20}(:[A-Z0-9-]{1,9}){0,2}")) {
            throw Refusal.input(
                    "kind",
                    deed,
                    "A kind is a code of capital letters and digits in up to three parts.",
                    "Enter the code that routes ask for, such as WELD:AL:141.");
        }
        TypedText.line("standard", "The standard or authorisation", deed, sheet.standard(), 60);
        LocalDate expiresOn = sheet.expiresOn();
        if (expiresOn != null && expiresOn.isBefore(sheet.issuedOn())) {
            throw Refusal.input(
                    "expiresOn",
                    deed,
                    "It would expire on " + expiresOn + ", before it began on " + sheet.issuedOn() + ".",
                    "Enter both days again.");
        }
        LocalDate confirmedOn = sheet.confirmedOn();
        if (confirmedOn != null && confirmedOn.isBefore(sheet.issuedOn())) {
            throw Refusal.input(
                    "confirmedOn",
                    deed,
                    "It was confirmed on " + confirmedOn + ", before it began on " + sheet.issuedOn() + ".",
                    "Enter both days again.");
        }
        if (sheet.thicknessFromMm() != null
                && sheet.thicknessToMm() != null
                && sheet.thicknessToMm().compareTo(sheet.thicknessFromMm()) < 0) {
            throw Refusal.input(
                    "thicknessToMm", deed, "The range ends below where it begins.", "Enter the thinnest wall first.");
        }
    }
}
