package org.trammel.shop.designs;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Files;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.StoredFile;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;

/** Where drafts are drawn, sent, withdrawn and revised. */
@Service
@Transactional
public class DrawingOffice {

    private static final int COMPONENTS = 80;
    private static final int LINE = 200;
    private static final int SHORT = 60;

    private final DesignRevisionRepository revisions;
    private final DesignNoteRepository notes;
    private final RevisionAct opening;
    private final RouteBook routes;
    private final DrawnNominals drawn;
    private final Files files;
    private final ApplicationEventPublisher events;

    DrawingOffice(
            DesignRevisionRepository revisions,
            DesignNoteRepository notes,
            RevisionAct opening,
            RouteBook routes,
            DrawnNominals drawn,
            Files files,
            ApplicationEventPublisher events) {
        this.revisions = revisions;
        this.notes = notes;
        this.opening = opening;
        this.routes = routes;
        this.drawn = drawn;
        this.files = files;
        this.events = events;
    }

    /**
     * Writes everything of a draft that is typed, but its nominals.
     *
     * @param seenVersion version of the revision on the page; null to skip the comparison
     */
    public DesignSheet change(Act act, long revisionId, @Nullable Long seenVersion, DesignDraft draft) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.CHANGE, revisionId);
        if (opened.isEmpty()) {
            return opening.load(revisionId).sheet();
        }
        DesignRevision revision = opened.get();
        RevisionAct.refuseIfStale(revision, DesignVerb.CHANGE, seenVersion);
        revision.change(checked(DesignVerb.CHANGE.undone(revision.letter()), draft, revision.sheet()));
        drawn.fill(revision);
        Map<String, String> geometry = new TreeMap<>();
        draft.geometry()
                .forEach((input, amount) ->
                        geometry.put(input.code(), Nominal.plain(amount).toPlainString()));
        opening.event(
                revision,
                "design-changed",
                Map.of(
                        "geometry",
                        geometry,
                        "components",
                        draft.components().size(),
                        "metal",
                        draft.metal(),
                        "kind",
                        draft.kind(),
                        "route",
                        Optional.ofNullable(draft.routeRevisionId()).orElse(0L)));
        return revision.sheet();
    }

    private DesignDraft checked(String deed, DesignDraft draft, DesignSheet kept) {
        DraftNumbers.check(deed, draft, kept);
        if (draft.components().size() > COMPONENTS) {
            throw Refusal.input(
                    "components",
                    deed,
                    draft.components().size() + " components are listed; " + COMPONENTS + " are kept.",
                    "Put small parts together on one line.");
        }
        List<Component> components = draft.components().stream()
                .map(one -> new Component(
                        TypedText.line("components", "The component", deed, one.what(), SHORT),
                        TypedText.line("components", "What " + one.what() + " is", deed, one.description(), LINE)))
                .toList();
        if (draft.routeRevisionId() != null) {
            RouteSheet route = routes.revision(draft.routeRevisionId());
            CharacteristicList.refuseOtherMetal(deed, draft.metal(), route);
            FrameWords.refuseOtherKind(deed, draft.kind().strip(), route);
        }
        return new DesignDraft(
                TypedText.line("description", "Description", deed, draft.description(), LINE),
                FrameWords.checkedMetal(deed, draft.metal()),
                TypedText.line("kind", "Kind", deed, draft.kind(), 40),
                draft.routeRevisionId(),
                TypedText.lineOrNone("testFamily", "Test family", deed, draft.testFamily(), SHORT),
                components,
                draft.geometry(),
                draft.confirmed());
    }

    /** Gives nominals and takes none away. */
    public DesignSheet give(Act act, long revisionId, @Nullable Long seenVersion, Map<String, Nominal> given) {
        return give(act, revisionId, seenVersion, given, Set.of());
    }

    /**
     * Gives nominals, and limits where the design wants its own, to characteristics of the route the draft names, and
     * takes others away again. Those given before and not named now stay; what the drawing knows and nobody types is
     * taken from it.
     *
     * @param dropped characteristics whose nominal is taken away; the drawing's or the route's holds then, or it is
     *     missing
     */
    public DesignSheet give(
            Act act, long revisionId, @Nullable Long seenVersion, Map<String, Nominal> given, Set<String> dropped) {
        return give(act, revisionId, seenVersion, given, dropped, false);
    }

    /**
     * The same for limits that may be wide.
     *
     * @param confirmed limits of their own that are far wider than the route's were asked about and meant
     */
    public DesignSheet give(
            Act act,
            long revisionId,
            @Nullable Long seenVersion,
            Map<String, Nominal> given,
            Set<String> dropped,
            boolean confirmed) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.CHANGE, revisionId);
        if (opened.isEmpty()) {
            return opening.load(revisionId).sheet();
        }
        DesignRevision revision = opened.get();
        RevisionAct.refuseIfStale(revision, DesignVerb.CHANGE, seenVersion);
        String deed = "No nominal of revision " + revision.letter() + " was changed.";
        CharacteristicList list = CharacteristicList.of(route(revision, deed), revision.nominals());
        Unusual unusual = new Unusual();
        given.forEach((code, nominal) -> NominalCheck.check(
                list, deed, code, nominal, revision.nominals().get(code), unusual));
        unusual.ask(deed, confirmed);
        dropped.stream()
                .filter(code -> !revision.nominals().containsKey(code))
                .findFirst()
                .ifPresent(code -> {
                    throw Refusal.missing(
                            deed, "The revision gives none for " + code + ".", "Choose one from the list.");
                });
        revision.give(given);
        dropped.forEach(revision::drop);
        drawn.fill(revision);
        Map<String, String> facts = new TreeMap<>();
        given.forEach((code, nominal) -> facts.put(code, NominalCheck.written(nominal)));
        opening.event(
                revision, "nominals-given", Map.of("nominals", facts, "dropped", List.copyOf(new TreeSet<>(dropped))));
        return revision.sheet();
    }

    private RouteSheet route(DesignRevision revision, String deed) {
        Long route = revision.routeRevisionId();
        if (route == null) {
            throw Refusal.state(
                    deed,
                    "The draft names no route, and the route says which characteristics there are.",
                    "Choose the route first.");
        }
        return routes.revision(route);
    }

    /**
     * Puts a drawing to the draft, a PDF or a picture; the one before stays among the files.
     *
     * @param mediaType what the sender says it is; the content decides
     */
    public DesignSheet draw(Act act, long revisionId, byte[] content, String mediaType, String name) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.CHANGE, revisionId);
        if (opened.isEmpty()) {
            return opening.load(revisionId).sheet();
        }
        DesignRevision revision = opened.get();
        String deed = DesignVerb.CHANGE.undone(revision.letter());
        StoredFile file = files.keep(content, mediaType, name);
        if (!file.isImage() && !file.mediaType().equals("application/pdf")) {
            throw Refusal.input(
                    "drawing",
                    deed,
                    "A drawing is a PDF or a picture; this is " + file.mediaType() + ".",
                    "Save the drawing as a PDF and add that.");
        }
        revision.draw(file.sha256(), file.name());
        opening.event(revision, "drawing-added", Map.of("file", file.sha256()));
        return revision.sheet();
    }

    /** Leaves a note at a revision, whatever its state. */
    public void note(Act act, long revisionId, String typed) {
        opening.open(act, DesignVerb.NOTE, revisionId).ifPresent(revision -> {
            String deed = DesignVerb.NOTE.undone(revision.letter());
            String text = TypedText.words("note", "The note", deed, typed);
            notes.save(new DesignNote(revisionId, opening.keep(revision, "design-noted", text), act));
        });
    }

    /** Sends a draft to the customer, without a drawing that was approved for another revision. */
    public RevisionSummary send(Act act, long revisionId) {
        return send(act, revisionId, false);
    }

    /**
     * Sends a draft to the customer; one that was with the customer, approved or checked before is superseded.
     *
     * @param confirmed a drawing that was approved for another revision was asked about and meant
     */
    public RevisionSummary send(Act act, long revisionId, boolean confirmed) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.SEND, revisionId);
        if (opened.isEmpty()) {
            return opening.load(revisionId).summary();
        }
        DesignRevision revision = opened.get();
        DesignVerb.SEND.refuseUnless(revision.letter(), revision.state());
        List<DesignRevision> all = revisions.ofDesign(revision.design().id());
        String deed = DesignVerb.SEND.undone(revision.letter());
        drawn.fill(revision);
        SentDrawing.refuseUnlessFits(deed, revision.sheet().drawing(), revision.fitsItsDrawing());
        // Nothing is added after the approval: what is missing now would need another revision, and another approval.
        CharacteristicList.of(route(revision, deed), revision.nominals()).refuseIfLacking(deed);
        SentDrawing.askIfApprovedBefore(deed, revision, all, confirmed);
        revision.send(act);
        all.stream()
                .filter(other -> other.position() < revision.position()
                        && (other.state() == DesignState.SENT
                                || other.state() == DesignState.APPROVED
                                || other.state() == DesignState.CHECKED))
                .forEach(other -> {
                    other.supersede(act.at());
                    opening.event(other, "design-superseded", Map.of("by", revision.id()));
                });
        opening.event(revision, "design-sent", Map.of());
        events.publishEvent(new DesignEvent.Sent(act, revision.design().id(), revision.id()));
        return revision.summary();
    }

    /** Gives a revision up before its release. */
    public RevisionSummary withdraw(Act act, long revisionId, String reason) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.WITHDRAW, revisionId);
        if (opened.isEmpty()) {
            return opening.load(revisionId).summary();
        }
        DesignRevision revision = opened.get();
        String deed = DesignVerb.WITHDRAW.undone(revision.letter());
        String why = TypedText.words("reason", "The reason", deed, reason);
        revision.withdraw(act, opening.keep(revision, "design-withdrawn", why));
        return revision.summary();
    }

    /** Begins the next revision as a copy; a design has one draft at a time. */
    public RevisionSummary revise(Act act, long revisionId, String reason) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.REVISE, revisionId);
        long designId = opening.load(revisionId).design().id();
        List<DesignRevision> all = revisions.ofDesign(designId);
        DesignRevision last = all.get(all.size() - 1);
        if (opened.isEmpty()) {
            return last.summary();
        }
        DesignRevision revision = opened.get();
        String deed = DesignVerb.REVISE.undone(revision.letter());
        String why = TypedText.words("reason", "The reason", deed, reason);
        all.stream()
                .filter(other -> other.state() == DesignState.DRAFT)
                .findFirst()
                .ifPresent(draft -> {
                    throw Refusal.state(
                            deed,
                            "Revision " + draft.letter() + " is being drawn already.",
                            "Change revision " + draft.letter() + ", or withdraw it first.");
                });
        long kept = opening.keep(revision, "design-wish", why);
        DesignRevision next = revisions.save(revision.next(last.position() + 1, kept, act));
        opening.event(next, "design-revised", Map.of("from", revision.id()));
        return next.summary();
    }
}
