package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.Words;

/** The routes of the shop, as other modules read them. */
@Service
@Transactional(readOnly = true)
public class RouteBook {

    private static final Set<RevisionState> CURRENT = Set.of(RevisionState.RELEASED, RevisionState.DRAFT);

    private final RouteRepository routes;
    private final RevisionRepository revisions;
    private final Words words;

    RouteBook(RouteRepository routes, RevisionRepository revisions, Words words) {
        this.words = words;
        this.routes = routes;
        this.revisions = revisions;
    }

    /** What the released routes rest on of what is recorded on a sheet. */
    public List<ProofAsked> rests(Proof.Sheet sheet) {
        return revisions.proofsAsked(Arrays.stream(Proof.values())
                .filter(proof -> proof.sheet() == sheet)
                .toList());
    }

    /** Every route with its released revision and its draft, by code. */
    public List<RouteSummary> routes() {
        Map<Long, RouteRevision> released = new HashMap<>();
        Map<Long, RouteRevision> drafts = new HashMap<>();
        for (RouteRevision revision : revisions.in(CURRENT)) {
            (revision.draft() ? drafts : released).put(revision.route().id(), revision);
        }
        return routes.findAllByOrderByCode().stream()
                .map(route -> summary(route, released.get(route.id()), drafts.get(route.id())))
                .toList();
    }

    /** One route with its released revision and its draft. */
    public RouteSummary route(String code) {
        RouteRow route = known(code);
        List<RouteRevision> current = revisions.of(List.of(route.id()), CURRENT);
        return summary(
                route,
                current.stream().filter(r -> !r.draft()).findFirst().orElse(null),
                current.stream().filter(RouteRevision::draft).findFirst().orElse(null));
    }

    /**
     * The released revision of a route.
     *
     * @throws Refusal if there is no such route, or none of its revisions is released
     */
    public RouteSheet released(String code) {
        return revisions
                .find(code, RevisionState.RELEASED)
                .map(this::sheet)
                .orElseThrow(() -> Refusal.state(
                        "Route " + known(code).code() + " cannot be worked on.",
                        "None of its revisions is released.",
                        "Let the QA lead check its draft and release it."));
    }

    /** What the routes in force have judged with these kinds of gauge between two limits, by code, each once. */
    public List<ToleranceAsked> tolerancesOf(Collection<String> gaugeKinds) {
        return gaugeKinds.isEmpty() ? List.of() : revisions.tolerancesOf(gaugeKinds);
    }

    /** One revision, whatever its state. */
    public RouteSheet revision(long revisionId) {
        return revisions.withRoute(List.of(revisionId)).stream()
                .findFirst()
                .map(this::sheet)
                .orElseThrow(() -> Refusal.missing(
                        "The revision was not found.",
                        "No route has a revision with the number " + revisionId + ".",
                        "Open the route and choose one of its revisions."));
    }

    /**
     * A revision that frames are released on.
     *
     * @throws Refusal unless it is the released one of its route, and the route is one of whole frames
     */
    public RouteSheet forFrames(long revisionId) {
        RouteSheet sheet = revision(revisionId);
        RouteRevision revision = revisions.findById(revisionId).orElseThrow();
        if (revision.state() != RevisionState.RELEASED) {
            throw Refusal.state(
                    "Nothing is released on route " + sheet.code() + ", revision " + revision.letter() + ".",
                    "That revision is " + revision.state().word() + ".",
                    "Draw the frame on the revision in force.");
        }
        if (Kinds.NO_FRAMES.contains(sheet.kind())) {
            throw Refusal.state(
                    "Nothing is released on route " + sheet.code() + ".",
                    "It is the route of " + (sheet.kind().equals(Kinds.STATION_CHECK) ? "a station check." : "a part."),
                    "Choose a route of whole frames.");
        }
        return sheet;
    }

    /** One revision of a route by its letter. */
    public RouteSheet byLetter(String code, String letter) {
        return revisions.history(known(code).code()).stream()
                .filter(revision -> revision.letter().equals(letter))
                .findFirst()
                .map(this::sheet)
                .orElseThrow(() -> Refusal.missing(
                        "The revision was not found.",
                        "Route " + code + " has no revision " + letter + ".",
                        "Choose one of its revisions."));
    }

    /** The revisions of a route, newest first. */
    public List<RevisionSummary> history(String code) {
        List<RouteRevision> history = revisions.history(known(code).code());
        Map<Long, KeptWords> reasons = words.findAll(history.stream()
                .map(RouteRevision::reasonWords)
                .filter(Objects::nonNull)
                .toList());
        return history.stream().map(revision -> summary(revision, reasons)).toList();
    }

    private static RevisionSummary summary(RouteRevision revision, Map<Long, KeptWords> reasons) {
        KeptWords reason = revision.reasonWords() == null ? null : reasons.get(revision.reasonWords());
        return revision.summary(reason == null ? null : reason.shown());
    }

    RevisionSummary summary(RouteRevision revision) {
        Long reason = revision.reasonWords();
        return summary(revision, reason == null ? Map.of() : words.findAll(List.of(reason)));
    }

    /**
     * Whether a released revision still says what it said when it was released.
     *
     * @return true for a revision whose content fits its seal; false if somebody changed it in the database
     */
    public boolean unchanged(long revisionId) {
        RouteRevision revision = revisions
                .findById(revisionId)
                .orElseThrow(() -> Refusal.missing(
                        "The revision was not found.",
                        "No route has a revision with the number " + revisionId + ".",
                        "Open the route and choose one of its revisions."));
        return revision.contentSha256() == null || revision.contentSha256().equals(ContentSeal.of(sheet(revision)));
    }

    RouteSheet sheet(RouteRevision revision) {
        Map<Long, RouteRevision> parts = childRevisions(revision);
        List<ChildSheet> children = new ArrayList<>();
        for (ChildRow child : revision.children()) {
            RouteRevision theirs = parts.get(child.route().id());
            if (theirs != null) {
                children.add(new ChildSheet(child.part(), child.name(), sheet(theirs, List.of())));
            }
        }
        return sheet(revision, children);
    }

    /** The revision of each child, by the child's route: the one settled at release, in a draft the one in force. */
    private Map<Long, RouteRevision> childRevisions(RouteRevision revision) {
        List<ChildRow> children = revision.children();
        if (children.isEmpty()) {
            return Map.of();
        }
        List<Long> pinned = children.stream()
                .map(ChildRow::childRevisionId)
                .filter(Objects::nonNull)
                .toList();
        if (!revision.draft()) {
            return byRoute(revisions.withRoute(pinned));
        }
        Collection<Long> ids =
                children.stream().map(child -> child.route().id()).toList();
        List<RouteRevision> current = new ArrayList<>(revisions.of(ids, CURRENT));
        current.sort(Comparator.comparing(RouteRevision::draft).reversed());
        return byRoute(current);
    }

    private static Map<Long, RouteRevision> byRoute(List<RouteRevision> revisions) {
        return revisions.stream()
                .collect(Collectors.toMap(r -> r.route().id(), r -> r, (earlier, later) -> later, HashMap::new));
    }

    private static RouteSheet sheet(RouteRevision revision, List<ChildSheet> children) {
        RouteRow route = revision.route();
        return new RouteSheet(
                revision.id(),
                route.code(),
                route.name(),
                revision.letter(),
                route.metal(),
                route.kind(),
                revision.operations().stream().map(OperationRow::sheet).toList(),
                revision.clocks().stream().map(ClockRow::sheet).toList(),
                children);
    }

    RouteRow known(String code) {
        return routes.findByCode(code)
                .orElseThrow(() -> Refusal.missing(
                        "The route was not found.",
                        "There is no route " + code + ".",
                        "Choose one from the list of routes."));
    }

    private static RouteSummary summary(
            RouteRow route, @Nullable RouteRevision released, @Nullable RouteRevision draft) {
        return new RouteSummary(
                route.code(),
                route.name(),
                route.metal(),
                route.kind(),
                released == null ? null : released.id(),
                released == null ? null : released.letter(),
                draft == null ? null : draft.id(),
                draft == null ? null : draft.letter());
    }
}
