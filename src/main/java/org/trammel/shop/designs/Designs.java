package org.trammel.shop.designs;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.Words;
import org.trammel.shop.routes.RouteSheet;

/** Designs of frames and their revisions, for orders and travellers. */
@Service
public class Designs {

    private final DesignRepository designs;
    private final DesignRevisionRepository revisions;
    private final RevisionAct opening;
    private final GateStand stand;
    private final ActLog log;
    private final Crew crew;
    private final Words words;
    private final ApplicationEventPublisher events;

    Designs(
            DesignRepository designs,
            DesignRevisionRepository revisions,
            RevisionAct opening,
            GateStand stand,
            ActLog log,
            Crew crew,
            Words words,
            ApplicationEventPublisher events) {
        this.designs = designs;
        this.revisions = revisions;
        this.opening = opening;
        this.stand = stand;
        this.log = log;
        this.crew = crew;
        this.words = words;
        this.events = events;
    }

    /**
     * One revision.
     *
     * @throws Refusal if there is none with that id
     */
    @Transactional(readOnly = true)
    public DesignSheet revision(long revisionId) {
        return opening.load(revisionId).sheet();
    }

    /** The letter of a later revision that is signed at its gate and waits to be released; empty if none does. */
    @Transactional(readOnly = true)
    public Optional<String> waitingAfter(long revisionId) {
        return revisions.waitingAfter(revisionId).stream().reduce((earlier, later) -> later);
    }

    /** The history of a design, first revision first. */
    @Transactional(readOnly = true)
    public List<RevisionSummary> revisions(long designId) {
        return revisions.ofDesign(designId).stream()
                .map(DesignRevision::summary)
                .toList();
    }

    /** Begins the design of an order with revision A as a draft. An order has one design. */
    @Transactional
    public RevisionSummary begin(Act act, NewDesign first) {
        String deed = "No design was begun for " + first.drawnFor() + ".";
        boolean opened = log.opens(act, "begin-design", "order:" + first.drawnFor(), Chains.order(first.drawnFor()));
        Optional<Design> known = designs.findByDrawnFor(first.drawnFor());
        if (!opened) {
            return revisions.ofDesign(known.orElseThrow().id()).get(0).summary();
        }
        crew.require(act.by(), deed, Role.OWNER, Role.QA_LEAD);
        if (known.isPresent()) {
            throw Refusal.state(
                    deed, "It has one already.", "Open the order and begin the next revision of its design there.");
        }
        Design design = designs.save(new Design(first.drawnFor()));
        DesignRevision revision = revisions.save(new DesignRevision(design, first, act));
        opening.event(revision, "design-begun", Map.of("design", design.id()));
        return revision.summary();
    }

    /** Characteristics of the route, children included, that want a nominal which the revision does not give. */
    @Transactional(readOnly = true)
    public List<Lacking> readyFor(long revisionId, RouteSheet route) {
        return CharacteristicList.of(route, opening.load(revisionId).nominals()).lacking();
    }

    /**
     * Releases a checked revision to the shop; the one released before is superseded. Called by whoever makes the
     * traveller, in the same transaction.
     *
     * @throws Refusal unless it is checked, its answers at the gate hold for its inputs as they are now, the route is
     *     for its metal and every nominal of the route is there
     */
    @Transactional
    public DesignSheet release(Act act, long revisionId, RouteSheet route) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.RELEASE, revisionId);
        if (opened.isEmpty()) {
            return revision(revisionId);
        }
        DesignRevision revision = opened.get();
        String deed = DesignVerb.RELEASE.undone(revision.letter());
        CharacteristicList.refuseOtherMetal(deed, revision.metal(), route);
        CharacteristicList list = CharacteristicList.of(route, revision.nominals());
        list.refuseIfLacking(deed);
        list.refuseIfMoved(deed);
        stand.refuseUnlessAnswered(deed, revision, route);
        revision.release(act, route.revisionId());
        revisions.ofDesign(revision.design().id()).stream()
                .filter(other -> other.position() < revision.position() && other.state() == DesignState.RELEASED)
                .forEach(other -> {
                    other.supersede(act.at());
                    opening.event(other, "design-superseded", Map.of("by", revision.id()));
                });
        opening.event(revision, "design-released", Map.of("route", route.revisionId()));
        events.publishEvent(new DesignEvent.Released(act, revision.design().id(), revision.id()));
        return revision.sheet();
    }

    /** Forgets who approved, because the customer asked to be erased; the approval itself stays. */
    @Transactional
    public void forgetApprovers(Act act, long designId) {
        String number = revisions.drawnForOfDesign(designId).orElseThrow();
        if (!log.opens(act, "forget-approvers", "design:" + designId, Chains.order(number))) {
            return;
        }
        crew.require(act.by(), "The approvers' names were not erased.", Role.OWNER);
        for (DesignRevision revision : revisions.ofDesign(designId)) {
            Long approver = revision.approverWords();
            if (approver != null) {
                words.erase(act, approver);
                opening.event(revision, "approver-forgotten", Map.of());
            }
        }
    }
}
