package org.trammel.shop.routes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/** Drawing up, editing, releasing and withdrawing revisions of routes. The checks of screens and API are here. */
@Service
@Transactional
public class RouteDrafts {

    private final RouteRepository routes;
    private final RevisionRepository revisions;
    private final RetiredRepository retired;
    private final RouteBook book;
    private final Keepers keepers;
    private final ShopSide shop;
    private final ActLog log;
    private final Words words;

    RouteDrafts(
            RouteRepository routes,
            RevisionRepository revisions,
            RetiredRepository retired,
            RouteBook book,
            Keepers keepers,
            ShopSide shop,
            ActLog log,
            Words words) {
        this.routes = routes;
        this.revisions = revisions;
        this.retired = retired;
        this.book = book;
        this.keepers = keepers;
        this.shop = shop;
        this.log = log;
        this.words = words;
    }

    /**
     * Lays out a new route with an empty draft, or with a draft that copies another route.
     *
     * @return the draft
     */
    public RevisionSummary layOut(Act act, NewRoute wanted) {
        String code = wanted.checkedCode();
        if (!log.opens(act, "lay-out-route", "route:" + code, Chains.SHOP)) {
            return draft(code);
        }
        keepers.require(act.by(), "The route was not laid out.");
        if (routes.existsByCode(code)) {
            throw Refusal.input(
                    "code",
                    "The route was not laid out.",
                    "There is a route " + code + " already.",
                    "Give another code, or draw up a revision of that route.");
        }
        NewRoute checked = wanted.checked();
        RouteRow route = routes.save(new RouteRow(code, checked.name(), checked.metal(), checked.kind()));
        RouteRevision from = checked.copyOf() == null ? null : newest(checked.copyOf());
        RouteRevision draft = revisions.save(new RouteRevision(
                route,
                1,
                from == null ? "drawn up empty" : "copied from " + from.route().code() + " revision " + from.letter(),
                act.by(),
                act.at()));
        if (from != null) {
            draft.redraw(book.sheet(from), parts(from));
        }
        log.event(
                Chains.SHOP,
                "route-laid-out",
                Map.of("route", code, "revision", draft.id(), "copied", from == null ? 0 : from.id()));
        return saved(draft);
    }

    /** Draws up the next revision: a draft that begins as a copy of the released one, or of the newest there is. */
    public RevisionSummary drawUp(Act act, String code) {
        if (!log.opens(act, "draw-up-route", "route:" + code, Chains.SHOP)) {
            return draft(code);
        }
        keepers.require(act.by(), "The revision was not drawn up.");
        List<RouteRevision> history = revisions.history(book.known(code).code());
        history.stream().filter(RouteRevision::draft).findFirst().ifPresent(draft -> {
            throw Refusal.state(
                    "The revision was not drawn up.",
                    "Revision " + draft.letter() + " of " + code + " is a draft already.",
                    "Edit that one, or withdraw it.");
        });
        RouteRevision from = history.stream()
                .filter(revision -> revision.state() == RevisionState.RELEASED)
                .findFirst()
                .orElse(history.get(0));
        RouteRevision draft = revisions.save(new RouteRevision(
                from.route(),
                history.get(0).ordinal() + 1,
                "drawn up from revision " + from.letter(),
                act.by(),
                act.at()));
        draft.redraw(book.sheet(from), parts(from));
        log.event(
                Chains.SHOP,
                "route-drawn-up",
                Map.of("route", code, "revision", draft.id(), "letter", draft.letter(), "from", from.id()));
        return saved(draft);
    }

    /**
     * Changes the draft of a route.
     *
     * @param version the version of the draft that the change was made on
     */
    public RevisionSummary edit(Act act, String code, long version, Edit edit) {
        if (!log.opens(act, "edit-route", "route:" + code, Chains.SHOP)) {
            return draft(code);
        }
        keepers.require(act.by(), Said.UNCHANGED);
        RouteRevision draft = draftAt(code, version, Said.UNCHANGED);
        RouteRevision released = revisions.find(code, RevisionState.RELEASED).orElse(null);
        Draft before = new Draft(
                book.sheet(draft),
                parts(draft).stream()
                        .map(part -> new RouteFile.Child(
                                part.part(), part.name(), part.route().code()))
                        .toList(),
                released == null ? null : book.sheet(released),
                retired.findByRouteIdOrderById(draft.route().id()).stream()
                        .map(RetiredRow::sheet)
                        .toList());
        Draft after = edit.in(before);
        draft.redraw(after.sheet(), routed(after.children()));
        log.event(
                Chains.SHOP,
                edit.event(),
                Map.of("route", code, "revision", draft.id(), "letter", draft.letter(), "place", edit.place()));
        return saved(draft);
    }

    /**
     * Puts the draft in force. From then on it never changes; the revision it replaces is superseded.
     *
     * @param version the version of the draft that was looked at
     * @param reason why, in a few words
     */
    public RevisionSummary release(Act act, String code, long version, String reason) {
        if (!log.opens(act, "release-route", "route:" + code, Chains.SHOP)) {
            return history(code).get(0);
        }
        String deed = "Route " + code + " was not released.";
        keepers.require(act.by(), deed);
        RouteRevision draft = draftAt(code, version, deed);
        List<Finding> findings = new ArrayList<>(partFindings(draft));
        findings.addAll(RouteCheck.of(book.sheet(draft), shop.side()));
        if (!findings.isEmpty()) {
            throw refused(deed, findings);
        }
        WordsRef why = words.keep(reason);
        Map<Long, RouteRevision> pinned = releasedParts(draft);
        draft.children()
                .forEach(
                        child -> draft.pin(child, pinned.get(child.route().id()).id()));
        revisions.flush();
        RouteRevision before = revisions.find(code, RevisionState.RELEASED).orElse(null);
        RouteSheet sheet = pinnedSheet(draft, pinned);
        if (before != null) {
            retire(before, sheet, act);
            before.supersede(act.at());
            revisions.flush();
        }
        String seal = ContentSeal.of(sheet);
        draft.release(act.by(), act.at(), why.id(), seal);
        Map<String, Object> facts = new TreeMap<>(Map.of(
                "route", code, "revision", draft.id(), "letter", draft.letter(), "content", seal, "words", why.id()));
        facts.put("sha256", why.sha256());
        facts.put("superseded", before == null ? 0 : before.id());
        log.event(Chains.SHOP, "route-released", facts);
        return saved(draft);
    }

    /** Gives the draft up. */
    public RevisionSummary withdraw(Act act, String code, String reason) {
        if (!log.opens(act, "withdraw-route", "route:" + code, Chains.SHOP)) {
            return history(code).get(0);
        }
        keepers.require(act.by(), "The draft was not withdrawn.");
        RouteRevision draft = currentDraft(code, "The draft was not withdrawn.");
        WordsRef why = words.keep(reason);
        draft.withdraw(why.id());
        log.event(
                Chains.SHOP,
                "route-withdrawn",
                Map.of("route", code, "revision", draft.id(), "words", why.id(), "sha256", why.sha256()));
        return saved(draft);
    }

    /** The draft of a route. */
    @Transactional(readOnly = true)
    public RevisionSummary draft(String code) {
        return book.summary(currentDraft(code, "The draft was not found."));
    }

    /** What keeps the draft of a route from being released; empty if nothing does. */
    @Transactional(readOnly = true)
    public List<Finding> findings(String code) {
        RouteRevision draft = currentDraft(code, "The draft was not checked.");
        List<Finding> findings = new ArrayList<>(partFindings(draft));
        findings.addAll(RouteCheck.of(book.sheet(draft), shop.side()));
        return findings;
    }

    /** What the draft changes against the released revision; all of it is new where none is released. */
    @Transactional(readOnly = true)
    public List<Changed> changes(String code) {
        return changes(code, BigDecimal::toPlainString);
    }

    /** The same with numbers as the shop writes them. */
    @Transactional(readOnly = true)
    List<Changed> changes(String code, Function<BigDecimal, String> figures) {
        RouteRevision draft = currentDraft(code, "The draft was not compared.");
        return revisions
                .find(code, RevisionState.RELEASED)
                .map(released -> Compare.of(book.sheet(released), book.sheet(draft), figures))
                .orElse(List.of());
    }

    private List<RevisionSummary> history(String code) {
        return book.history(code).stream()
                .filter(revision -> revision.state() != RevisionState.DRAFT)
                .toList();
    }

    /** The content as it will be read from now on: each part at the revision that was settled. */
    private RouteSheet pinnedSheet(RouteRevision draft, Map<Long, RouteRevision> pinned) {
        RouteSheet sheet = book.sheet(draft);
        List<ChildSheet> children = draft.children().stream()
                .map(child -> new ChildSheet(
                        child.part(),
                        child.name(),
                        book.sheet(pinned.get(child.route().id()))))
                .toList();
        return new RouteSheet(
                sheet.revisionId(),
                sheet.code(),
                sheet.name(),
                sheet.letter(),
                sheet.metal(),
                sheet.kind(),
                sheet.operations(),
                sheet.clocks(),
                children);
    }

    private void retire(RouteRevision before, RouteSheet after, Act act) {
        List<Draft.RetiredCode> known = retired
                .findByRouteIdOrderById(before.route().id())
                .stream()
                .map(RetiredRow::sheet)
                .toList();
        for (Draft.RetiredCode code : RetiredCodes.between(book.sheet(before), after)) {
            if (known.stream()
                    .noneMatch(k -> k.thing() == code.thing() && k.code().equals(code.code()))) {
                retired.save(new RetiredRow(before.route().id(), code, act.at()));
            }
        }
    }

    private List<Finding> partFindings(RouteRevision draft) {
        Map<Long, RouteRevision> released = releasedParts(draft);
        List<Finding> findings = new ArrayList<>();
        for (ChildRow child : draft.children()) {
            RouteRevision theirs = released.get(child.route().id());
            if (theirs == null) {
                findings.add(new Finding(
                        child.part(),
                        "Its route " + child.route().code() + " has no released revision.",
                        "Release " + child.route().code() + " first."));
            } else if (!theirs.children().isEmpty()) {
                findings.add(new Finding(
                        child.part(),
                        "Its route " + child.route().code() + " has parts of its own.",
                        "Name a route without parts."));
            } else if (!child.route().metal().equals(draft.route().metal())) {
                findings.add(new Finding(
                        child.part(),
                        "Its route " + child.route().code() + " is for "
                                + child.route().metal() + ", this one for "
                                + draft.route().metal() + ".",
                        "Name a route for the same metal."));
            }
        }
        return findings;
    }

    private Map<Long, RouteRevision> releasedParts(RouteRevision draft) {
        Map<Long, RouteRevision> released = new HashMap<>();
        List<Long> ids =
                draft.children().stream().map(child -> child.route().id()).toList();
        if (!ids.isEmpty()) {
            revisions
                    .of(ids, List.of(RevisionState.RELEASED))
                    .forEach(r -> released.put(r.route().id(), r));
        }
        return released;
    }

    private static Refusal refused(String deed, List<Finding> findings) {
        Finding first = findings.get(0);
        String place = first.place().isEmpty() ? "" : first.place() + ": ";
        String more = findings.size() == 1 ? "" : " " + (findings.size() - 1) + " more stand on the page.";
        return Refusal.state(deed, place + first.why() + more, first.instead());
    }

    private RouteRevision newest(String code) {
        List<RouteRevision> history = revisions.history(book.known(code).code());
        return history.stream()
                .filter(revision -> revision.state() == RevisionState.RELEASED)
                .findFirst()
                .orElse(history.get(0));
    }

    private RouteRevision currentDraft(String code, String deed) {
        return revisions
                .find(book.known(code).code(), RevisionState.DRAFT)
                .orElseThrow(() -> Refusal.state(
                        deed,
                        "Route " + code + " has no draft; a released revision never changes.",
                        "Draw up the next revision."));
    }

    private RouteRevision draftAt(String code, long version, String deed) {
        RouteRevision draft = currentDraft(code, deed);
        if (draft.version() != version) {
            throw Refusal.stale(
                    deed,
                    "Somebody changed revision " + draft.letter() + " of " + code + " meanwhile.",
                    "Look at the draft as it is now and do it again if it is still wanted.");
        }
        return draft;
    }

    private static List<Part> parts(RouteRevision revision) {
        return revision.children().stream()
                .map(child -> new Part(child.part(), child.name(), child.route()))
                .toList();
    }

    private List<Part> routed(List<RouteFile.Child> children) {
        return children.stream()
                .map(child -> new Part(child.part(), child.name(), book.known(child.route())))
                .toList();
    }

    private RevisionSummary saved(RouteRevision revision) {
        revisions.saveAndFlush(revision);
        return book.summary(revision);
    }
}
