package org.trammel.shop.welding;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
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
import org.trammel.shop.travellers.FrameSheet;

/** The procedures of the shop: drafted by whoever welds, put in force by the QA lead, and which of them guards an operation. */
@Service
public class Procedures {

    private final ProcedureRepository rows;
    private final ProcedureCheck check;
    private final WeldProcessRepository processes;
    private final Crew crew;
    private final ActLog log;

    Procedures(ProcedureRepository rows, ProcedureCheck check, WeldProcessRepository processes, Crew crew, ActLog log) {
        this.rows = rows;
        this.check = check;
        this.processes = processes;
        this.crew = crew;
        this.log = log;
    }

    /** Drafts and those in force, by their codes. */
    @Transactional(readOnly = true)
    public List<Procedure> current() {
        return rows.findByStateInOrderByCodeAscIdAsc(Set.of(ProcedureState.DRAFT, ProcedureState.IN_FORCE)).stream()
                .map(ProcedureRow::procedure)
                .toList();
    }

    /** Every revision of a procedure, newest first. */
    @Transactional(readOnly = true)
    public List<Procedure> of(String code) {
        List<Procedure> all = rows.findByCodeOrderByIdDesc(label(code)).stream()
                .map(ProcedureRow::procedure)
                .toList();
        if (all.isEmpty()) {
            throw Refusal.missing(
                    "The procedure was not found.",
                    "No procedure is called " + label(code) + ".",
                    "Choose one from the list of procedures.");
        }
        return all;
    }

    /** The processes there are, by number. */
    @Transactional(readOnly = true)
    List<WeldProcess> processes() {
        return processes.findAllByOrderByNumber();
    }

    /**
     * The procedure in force by which an operation of a frame is tacked, welded or looked at.
     *
     * @param begunAt when the work began: what was in work before any procedure asked goes by paper
     */
    Optional<Procedure> guarding(FrameSheet.Head head, String operation, @Nullable Instant begunAt) {
        return guarding(head.metal(), operation, begunAt, joined(head.kind()));
    }

    /** The same, where the kind of the frame is looked up only if it matters. */
    Optional<Procedure> guarding(
            String metal, String operation, @Nullable Instant begunAt, Predicate<Procedure> joinedSo) {
        List<Procedure> naming = rows.everInForceFor(metal).stream()
                .map(ProcedureRow::procedure)
                .filter(one -> one.content().operations().joins(operation) || one.looks(operation))
                .filter(joinedSo)
                .toList();
        boolean before = begunAt != null
                && naming.stream().noneMatch(one -> one.approvedAt() != null && !begunAt.isBefore(one.approvedAt()));
        return before
                ? Optional.empty()
                : naming.stream().filter(Procedure::inForce).findFirst();
    }

    /** A frame that is fillet-brazed goes by a procedure of brazing, every other by one of an arc. */
    Predicate<Procedure> joined(String kind) {
        return one -> joinsAs(one.content().process()).equals(org.trammel.shop.materials.Joins.as(kind));
    }

    private String joinsAs(String process) {
        return processes.findById(process).map(WeldProcess::joinsAs).orElse("");
    }

    /** Writes the draft of a procedure, or of its next revision. */
    @Transactional
    public Procedure draft(Act act, String typed, NewProcedure content) {
        String deed = "The procedure was not drafted.";
        String code = TypedText.line("code", "The number", deed, label(typed), 20);
        if (!log.opens(act, "draft-procedure", "procedure:" + code, Chains.SHOP)) {
            return of(code).get(0);
        }
        crew.require(act.by(), deed, Role.QA_LEAD, Role.WELDER);
        if (!code.matches("[A-Z0-9][A-Z0-9-]*")) {
            throw Refusal.input(
                    "code", deed, code + " has signs beside letters, digits and dashes.", "Write it otherwise.");
        }
        NewProcedure read = check.draft(content, deed);
        List<ProcedureRow> before = rows.findByCodeOrderByIdDesc(code);
        ProcedureRow row = before.stream()
                .filter(one -> one.state() == ProcedureState.DRAFT)
                .findFirst()
                .orElse(null);
        if (row == null) {
            row = new ProcedureRow(code, letter(before.size()), read, act);
        } else {
            row.rewrite(read, act);
        }
        Procedure set = rows.saveAndFlush(row).procedure();
        log.event(
                Chains.SHOP, "procedure-drafted", Map.of("procedure", set.id(), "code", code, "letter", set.letter()));
        return set;
    }

    /**
     * Puts the draft of a procedure in force. The caller has asked the QA lead for the own secret.
     *
     * @param version of the draft that was read; one written anew since is put in force by nobody who did not see it
     */
    @Transactional
    public Procedure putInForce(Act act, String typed, long version) {
        String deed = "The procedure was not put in force.";
        String code = label(typed);
        if (!log.opens(act, "put-procedure-in-force", "procedure:" + code, Chains.SHOP)) {
            return of(code).get(0);
        }
        crew.require(act.by(), deed, Role.QA_LEAD);
        List<ProcedureRow> all = rows.findByCodeOrderByIdDesc(code);
        ProcedureRow draft = all.stream()
                .filter(row -> row.state() == ProcedureState.DRAFT)
                .findFirst()
                .orElseThrow(() -> Refusal.state(
                        deed, "There is no draft of " + code + ".", "Draft it, or its next revision, first."));
        if (draft.procedure().version() != version) {
            throw Refusal.stale(
                    deed,
                    "The draft of " + code + " was written anew by "
                            + crew.byId(draft.procedure().draftedBy()).name() + " since it was opened.",
                    "Read it as it is now, then put it in force.");
        }
        NewProcedure content = draft.procedure().content();
        check.requireWhole(content, deed);
        requireAlone(code, content, deed);
        all.stream().filter(row -> row.state() == ProcedureState.IN_FORCE).forEach(row -> {
            row.supersede(act);
            rows.saveAndFlush(row);
        });
        draft.approve(act);
        Procedure set = rows.saveAndFlush(draft).procedure();
        log.event(
                Chains.SHOP,
                "procedure-put-in-force",
                Map.of("procedure", set.id(), "code", code, "letter", set.letter()));
        return set;
    }

    /** Two procedures that ask different things of one operation would leave it open which counts. */
    private void requireAlone(String code, NewProcedure content, String deed) {
        String joins = joinsAs(content.process());
        for (Procedure other : current()) {
            if (!other.inForce()
                    || other.code().equals(code)
                    || !other.content().metal().equals(content.metal())
                    || !joinsAs(other.content().process()).equals(joins)) {
                continue;
            }
            content.operations()
                    .all()
                    .filter(named -> other.content().operations().all().anyMatch(named::equals))
                    .findFirst()
                    .ifPresent(named -> {
                        throw Refusal.state(
                                deed,
                                "Operation " + named + " of such a frame goes by procedure " + other.called()
                                        + " already.",
                                "Give the operation a code of its own on the route, or put a revision of "
                                        + other.code() + " in force.");
                    });
        }
    }

    static String label(String code) {
        return code.strip().toUpperCase(Locale.ROOT);
    }

    /** A to Z, then AA, AB and on. */
    private static String letter(int before) {
        String last = String.valueOf((char) ('A' + before % 26));
        return before < 26 ? last : letter(before / 26 - 1) + last;
    }
}
