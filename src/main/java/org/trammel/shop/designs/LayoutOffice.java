package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.geometry.Dimension;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** Takes a layout that was closed on its sheet into the draft. */
@Service
@Transactional
class LayoutOffice {

    private final RevisionAct opening;
    private final LayoutSheet layouts;
    private final DrawnNominals drawn;

    LayoutOffice(RevisionAct opening, LayoutSheet layouts, DrawnNominals drawn) {
        this.opening = opening;
        this.layouts = layouts;
        this.drawn = drawn;
    }

    /**
     * Writes the numbers the frame is built from, and the stack as asked for if it is among the given; a stack asked for
     * before is given up otherwise. Everything else of the draft stays; nominals
     * that the drawing gives follow it.
     *
     * @param seenVersion version of the revision on the page; null to skip the comparison
     * @param given lengths in mm, angles in degrees
     * @param confirmed whether unusual numbers were asked about and meant
     */
    DesignSheet take(
            Act act, long revisionId, @Nullable Long seenVersion, Map<Dimension, BigDecimal> given, boolean confirmed) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.CHANGE, revisionId);
        if (opened.isEmpty()) {
            return opening.load(revisionId).sheet();
        }
        DesignRevision revision = opened.get();
        String deed = DesignVerb.CHANGE.undone(revision.letter());
        RevisionAct.refuseIfStale(revision, DesignVerb.CHANGE, seenVersion);
        Map<GeometryInput, BigDecimal> taken = layouts.taken(given);
        if (taken.isEmpty()) {
            throw Refusal.state(
                    deed,
                    "The numbers do not close: too few are given, or they contradict each other.",
                    "Compute on the sheet of the layout; it says what is missing or may be given up.");
        }
        BigDecimal stack = given.get(Dimension.STACK);
        if (stack != null) {
            taken.put(GeometryInput.STACK_ASKED, stack);
        }
        Unusual unusual = new Unusual();
        taken.forEach((input, amount) -> input.band().check("given." + input.code(), deed, amount, unusual));
        unusual.ask(deed, confirmed);
        revision.layOut(taken);
        drawn.fill(revision);
        Map<String, String> written = new TreeMap<>();
        taken.forEach((input, amount) ->
                written.put(input.code(), Nominal.plain(amount).toPlainString()));
        opening.event(revision, "layout-taken", Map.of("geometry", written));
        return revision.sheet();
    }
}
