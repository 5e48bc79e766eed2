package org.trammel.shop.ovens;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Programmes of ovens: drawn up as drafts, approved by the QA lead, superseded by the next revision. */
@Service
public class Programmes {

    private final ProgrammeRepository programmes;
    private final ProgrammeRevisionRepository revisions;
    private final ProgrammeWorths worths;
    private final Crew crew;
    private final ActLog log;

    Programmes(
            ProgrammeRepository programmes,
            ProgrammeRevisionRepository revisions,
            ProgrammeWorths worths,
            Crew crew,
            ActLog log) {
        this.programmes = programmes;
        this.revisions = revisions;
        this.worths = worths;
        this.crew = crew;
        this.log = log;
    }

    /** Every revision, by code, the newest of each first. */
    @Transactional(readOnly = true)
    public List<Programme> all() {
        return revisions.everyOne().stream()
                .map(ProgrammeRevisionRow::programme)
                .toList();
    }

    /** The revisions of one programme, newest first; at least one. */
    @Transactional(readOnly = true)
    public List<Programme> of(String code) {
        List<Programme> found = revisions.of(Ovens.label(code)).stream()
                .map(ProgrammeRevisionRow::programme)
                .toList();
        if (found.isEmpty()) {
            throw none(code);
        }
        return found;
    }

    @Transactional(readOnly = true)
    public Programme revision(long revisionId) {
        return row(revisionId).programme();
    }

    /** The approved revision of a programme, if it has one. */
    @Transactional(readOnly = true)
    public Optional<Programme> approved(String code) {
        return revisions.of(Ovens.label(code)).stream()
                .filter(row -> row.state() == ProgrammeState.APPROVED)
                .map(ProgrammeRevisionRow::programme)
                .findFirst();
    }

    /** What a revision is worth to each of its metals that age. */
    @Transactional(readOnly = true)
    public List<Worth> worth(Programme programme) {
        return worths.of(programme);
    }

    /**
     * Draws up a draft: of a new programme, or as the next revision of one. A draft that is there already is changed by
     * {@link #change}.
     */
    @Transactional
    public Programme draw(Act act, String typed, @Nullable Purpose purpose, NewProgramme content) {
        String deed = "The programme was not drawn up.";
        String code = TypedText.line("code", "The number", deed, Ovens.label(typed), 30);
        if (!log.opens(act, "draw-up-programme", "programme:" + code, Chains.SHOP)) {
            return of(code).get(0);
        }
        crew.require(act.by(), deed, Role.QA_LEAD, Role.HEAT_TREATER);
        if (!code.matches("[A-Z0-9][A-Z0-9-]*")) {
            throw Refusal.input(
                    "code", deed, code + " has signs beside letters, digits and dashes.", "Write it otherwise.");
        }
        List<ProgrammeRevisionRow> before = revisions.of(code);
        before.stream()
                .filter(row -> row.state() == ProgrammeState.DRAFT)
                .findFirst()
                .ifPresent(row -> {
                    throw Refusal.state(
                            deed,
                            code + " " + row.letter() + " is a draft already.",
                            "Change that draft, or have it approved first.");
                });
        ProgrammeRow programme = programmes.findByCode(code).orElse(null);
        if (programme == null) {
            if (purpose == null) {
                throw Refusal.input("purpose", deed, "It is not said what it is for.", "Choose from the list.");
            }
            programme = programmes.saveAndFlush(new ProgrammeRow(code, purpose));
        } else if (purpose != null && purpose != programme.purpose()) {
            throw Refusal.input(
                    "purpose",
                    deed,
                    code + " is a programme of " + programme.purpose().word() + ".",
                    "Draw up another programme under another number.");
        }
        NewProgramme read = new ProgrammeCheck(programme.purpose(), deed).checked(content);
        ProgrammeRevisionRow row =
                revisions.saveAndFlush(new ProgrammeRevisionRow(programme, letter(before.size()), read, act));
        log.event(
                Chains.SHOP, "programme-drawn-up", Map.of("revision", row.id(), "code", code, "letter", row.letter()));
        return row.programme();
    }

    /** @param version of the draft as it was shown */
    @Transactional
    public Programme change(Act act, long revisionId, long version, NewProgramme content) {
        if (!opens(act, "change-programme", revisionId)) {
            return revision(revisionId);
        }
        ProgrammeRevisionRow row = row(revisionId);
        String deed = "Programme " + row.programme().called() + " was not changed.";
        crew.require(act.by(), deed, Role.QA_LEAD, Role.HEAT_TREATER);
        requireSeen(row, version, deed);
        NewProgramme read = new ProgrammeCheck(row.programme().purpose(), deed).checked(content);
        row.change(read, act);
        revisions.saveAndFlush(row);
        row.addSteps(read);
        revisions.saveAndFlush(row);
        log.event(Chains.SHOP, "programme-changed", Map.of("revision", row.id()));
        return row.programme();
    }

    /**
     * Approves a draft, which supersedes the revision before. The caller has asked the QA lead for the own secret. It is
     * refused only where the QA lead's rule refuses what it is worth; what it may mean is said in words.
     */
    @Transactional
    public Programme approve(Act act, long revisionId, long version) {
        if (!opens(act, "approve-programme", revisionId)) {
            return revision(revisionId);
        }
        ProgrammeRevisionRow row = row(revisionId);
        String deed = "Programme " + row.programme().called() + " was not approved.";
        crew.require(act.by(), deed, Role.QA_LEAD);
        requireSeen(row, version, deed);
        worths.of(row.programme()).stream()
                .map(Worth::refusal)
                .filter(Objects::nonNull)
                .findFirst()
                .ifPresent(why -> {
                    throw Refusal.state(
                            deed, why, "Shorten or cool the programme, or change the rule under Heat with its reason.");
                });
        row.approve(act);
        revisions.of(row.programme().code()).stream()
                .filter(other -> other.id() != row.id() && other.state() == ProgrammeState.APPROVED)
                .forEach(other -> {
                    other.supersede(act);
                    revisions.saveAndFlush(other);
                });
        revisions.saveAndFlush(row);
        log.event(Chains.SHOP, "programme-approved", Map.of("revision", row.id()));
        return row.programme();
    }

    private boolean opens(Act act, String kind, long revisionId) {
        return log.opens(act, kind, "programme-revision:" + revisionId, Chains.SHOP);
    }

    private static void requireSeen(ProgrammeRevisionRow row, long version, String deed) {
        if (row.version() != version) {
            throw Refusal.stale(
                    deed, "Somebody else changed it meanwhile.", "Look at it as it is now, then do it again.");
        }
    }

    private ProgrammeRevisionRow row(long revisionId) {
        return revisions.withSteps(revisionId).orElseThrow(() -> none("revision " + revisionId));
    }

    private static Refusal none(String code) {
        return Refusal.missing(
                "The programme was not found.", "No programme is called " + code + ".", "Choose it from the list.");
    }

    /** A to Z, then AA, AB and on. */
    static String letter(int before) {
        String last = String.valueOf((char) ('A' + before % 26));
        return before < 26 ? last : letter(before / 26 - 1) + last;
    }
}
