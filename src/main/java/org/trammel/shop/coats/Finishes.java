package org.trammel.shop.coats;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

/** The finishes of the shop, kept by the QA lead, and which of them guards an operation. */
@Service
public class Finishes {

    private final FinishRepository rows;
    private final Crew crew;
    private final ActLog log;

    Finishes(FinishRepository rows, Crew crew, ActLog log) {
        this.rows = rows;
        this.crew = crew;
        this.log = log;
    }

    /** Those in force, by their codes. */
    @Transactional(readOnly = true)
    public List<Finish> inForce() {
        return rows.findBySupersededAtIsNullOrderByCode().stream()
                .map(FinishRow::finish)
                .toList();
    }

    /** Every revision of a finish, newest first. */
    @Transactional(readOnly = true)
    public List<Finish> of(String code) {
        List<Finish> all = rows.findByCodeOrderByIdDesc(label(code)).stream()
                .map(FinishRow::finish)
                .toList();
        if (all.isEmpty()) {
            throw Refusal.missing(
                    "The finish was not found.",
                    "No finish is called " + label(code) + ".",
                    "Choose one from the list of finishes.");
        }
        return all;
    }

    /** The finish that guards an operation of a frame of that metal. */
    @Transactional(readOnly = true)
    public Optional<Finish> guarding(String operation, String metal) {
        return naming(operation, metal).stream().filter(Finish::inForce).findFirst();
    }

    /** The same for work that began at a moment: what was in work before any finish asked goes by paper. */
    Optional<Finish> guarding(String operation, String metal, @Nullable Instant begunAt) {
        List<Finish> naming = naming(operation, metal);
        boolean before = begunAt != null && naming.stream().noneMatch(finish -> !begunAt.isBefore(finish.setAt()));
        return before
                ? Optional.empty()
                : naming.stream().filter(Finish::inForce).findFirst();
    }

    /** Whether any finish in force names the operation, for whatever metal, and its records give something. */
    boolean gives(String operation) {
        return rows.naming(operation).stream()
                .map(FinishRow::finish)
                .anyMatch(finish -> finish.guards(operation)
                        && finish.inForce()
                        && !finish.content().gives().isEmpty());
    }

    private List<Finish> naming(String operation, String metal) {
        return rows.naming(operation).stream()
                .map(FinishRow::finish)
                .filter(finish -> finish.guards(operation) && finish.isFor(metal))
                .toList();
    }

    /** The same for a finish that asks nothing of the finished coat. */
    @Transactional
    public Finish putInForce(Act act, String typed, NewFinish content) {
        return putInForce(act, typed, content, null);
    }

    /** Puts a finish, or the next revision of one, in force. The caller has asked the QA lead for the own secret. */
    @Transactional
    public Finish putInForce(Act act, String typed, NewFinish content, @Nullable CoatAsked coat) {
        String deed = "The finish was not put in force.";
        String code = TypedText.line("code", "The number", deed, label(typed), 20);
        if (!log.opens(act, "put-finish-in-force", "finish:" + code, Chains.SHOP)) {
            return of(code).get(0);
        }
        crew.require(act.by(), deed, Role.QA_LEAD);
        if (!code.matches("[A-Z0-9][A-Z0-9-]*")) {
            throw Refusal.input(
                    "code", deed, code + " has signs beside letters, digits and dashes.", "Write it otherwise.");
        }
        NewFinish read = content.checked(deed);
        CoatAsked asked = coat == null ? null : coat.checked(deed);
        requireAlone(code, read, asked, deed);
        List<FinishRow> before = rows.findByCodeOrderByIdDesc(code);
        before.stream().filter(row -> row.finish().inForce()).forEach(row -> {
            row.supersede(act);
            rows.saveAndFlush(row);
        });
        Finish set = rows.saveAndFlush(new FinishRow(code, letter(before.size()), read, asked, act))
                .finish();
        log.event(Chains.SHOP, "finish-put-in-force", Map.of("finish", set.id(), "code", code, "letter", set.letter()));
        return set;
    }

    /** Two finishes that ask different things of one operation would leave it open which counts. */
    private void requireAlone(String code, NewFinish content, @Nullable CoatAsked asked, String deed) {
        SecondColour second = content.secondColour();
        for (Finish other : inForce()) {
            if (other.code().equals(code)) {
                continue;
            }
            List.of(
                            content.blastOperations(),
                            content.coatOperations(),
                            asked == null ? List.<String>of() : asked.operations(),
                            second == null ? List.<String>of() : second.layOperations(),
                            second == null ? List.<String>of() : second.drawOperations())
                    .stream()
                    .flatMap(List::stream)
                    .filter(other::guards)
                    .filter(named -> content.metals().stream().anyMatch(other::isFor))
                    .findFirst()
                    .ifPresent(named -> {
                        throw Refusal.input(
                                other.blasts(named) ? "blastOperations" : "coatOperations",
                                deed,
                                "Operation " + named + " of such a metal goes by finish " + other.called()
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
