package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.units.Answer;
import org.trammel.calc.welding.Imperfection;
import org.trammel.calc.welding.WeldFinding;
import org.trammel.calc.welding.WeldSizes;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.Provers;

/** Records what is seen of the welds of a frame, and judges each imperfection by the table that the procedure names. */
@Service
public class WeldLooks {

    private static final String NOT_RECORDED = "The look was not recorded.";
    private static final BigDecimal GREATEST = BigDecimal.valueOf(1000);

    private final WeldLookRepository rows;
    private final SeenNodes seen;
    private final LimitSets limits;
    private final WeldTurn turn;
    private final WeldFaults faults;
    private final Welders welders;
    private final Provers provers;
    private final Crew crew;
    private final ActLog log;

    WeldLooks(
            WeldLookRepository rows,
            SeenNodes seen,
            LimitSets limits,
            WeldTurn turn,
            WeldFaults faults,
            Welders welders,
            Provers provers,
            Crew crew,
            ActLog log) {
        this.rows = rows;
        this.seen = seen;
        this.limits = limits;
        this.turn = turn;
        this.faults = faults;
        this.welders = welders;
        this.provers = provers;
        this.crew = crew;
        this.log = log;
    }

    /** Each node with what was seen of it; none where the operation does not look. */
    @Transactional(readOnly = true)
    public List<SeenNode> of(long operationId) {
        return of(turn.of(operationId));
    }

    private List<SeenNode> of(WeldTurn.At at) {
        return at.looks() ? seen.of(at.head(), at.line().operationId(), at.procedure()) : List.of();
    }

    /**
     * What is seen.
     *
     * @param imperfection null where nothing is
     * @param size in the unit of the imperfection; may be missing where it conforms to nothing
     * @param isShort as the standard of the table says what is short
     * @param wall_mm thinner wall at the node
     */
    public record Sighting(
            @Nullable Imperfection imperfection,
            @Nullable BigDecimal size,
            boolean isShort,
            @Nullable BigDecimal wall_mm,
            @Nullable BigDecimal width_mm,
            @Nullable BigDecimal throat_mm) {

        /** Nothing was found. */
        public static Sighting nothing() {
            return new Sighting(null, null, false, null, null, null);
        }
    }

    /** Records one sighting. What does not conform opens a nonconformance; what no line speaks of is undecided. */
    @Transactional
    public List<SeenNode> see(Act act, long operationId, String node, Sighting sighting) {
        if (!turn.opens(act, "look-at-node", operationId)) {
            return of(operationId);
        }
        WeldTurn.At at = turn.atHand(act, operationId, NOT_RECORDED);
        SeenNode known = node(at, node);
        provers.require(act, operationId, Proof.LOOKED, NOT_RECORDED);
        requireOtherEyes(act, at);
        SeenNode.Look judged = judged(act, at, known, sighting);
        rows.saveAndFlush(new LookRow(operationId, node, judged, act));
        return told(act, at, "node-looked-at", node, judged.verdict());
    }

    /** Nobody looks over the own weld. */
    private void requireOtherEyes(Act act, WeldTurn.At at) {
        if (seen.weldedBy(at.head(), at.procedure()).contains(act.by())) {
            throw Refusal.person(
                    NOT_RECORDED,
                    crew.byId(act.by()).initials() + " took part in welding it.",
                    "Let somebody look who did not weld it.");
        }
    }

    private SeenNode node(WeldTurn.At at, String node) {
        if (!at.looks()) {
            throw Refusal.state(
                    NOT_RECORDED,
                    "Procedure " + at.procedure().called() + " asks for no look at operation "
                            + at.line().code() + ".",
                    "Look at the operation that the procedure names for it.");
        }
        return of(at).stream()
                .filter(one -> one.node().equals(node))
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "node", NOT_RECORDED, "The frame has no such node.", "Choose one from the list."));
    }

    private SeenNode.Look judged(Act act, WeldTurn.At at, SeenNode known, Sighting sighting) {
        String table = at.procedure().content().looks().limits();
        Imperfection found = sighting.imperfection();
        if (found == null) {
            return look(act, known, sighting, table, null, LookVerdict.CONFORMING, "Nothing found.", null);
        }
        refuseImpossible(found, sighting);
        refuseThicker(at, known.node(), sighting.wall_mm());
        LimitSet set = limits.of(table);
        BigDecimal wall = sighting.wall_mm() == null ? BigDecimal.ONE : sighting.wall_mm();
        BigDecimal size = sighting.size() == null ? BigDecimal.ONE : sighting.size();
        Answer<WeldFinding> answer = WeldFinding.of(
                found,
                size,
                sighting.isShort(),
                known.level(),
                new WeldSizes(wall, sighting.width_mm(), sighting.throat_mm()),
                set.lines());
        if (answer instanceof Answer.NotDeterminable<WeldFinding> gap) {
            Answer.Gap first = gap.gaps().get(0);
            if (!first.input().equals("imperfection")) {
                throw Refusal.input(first.input(), NOT_RECORDED, first.words(), "Measure it, and enter it in mm.");
            }
            return look(
                    act,
                    known,
                    sighting,
                    table,
                    null,
                    LookVerdict.UNDECIDED,
                    first.words() + " " + set.called() + ".",
                    null);
        }
        WeldFinding finding = ((Answer.Determined<WeldFinding>) answer).value();
        String words = finding.words() + " " + set.called() + ".";
        return look(
                act,
                known,
                sighting,
                table,
                finding.limit(),
                finding.conforming() ? LookVerdict.CONFORMING : LookVerdict.NOT_CONFORMING,
                words,
                finding.conforming() ? null : open(act, at, known.node() + ". " + words));
    }

    /** The weld is at fault, wherever it was seen. */
    private String open(Act act, WeldTurn.At at, String words) {
        return faults.open(
                act,
                at.head(),
                at.line().operationId(),
                at.procedure().content().operations().weld(),
                words);
    }

    private static SeenNode.Look look(
            Act act,
            SeenNode known,
            Sighting sighting,
            String table,
            @Nullable BigDecimal limit,
            LookVerdict verdict,
            String words,
            @Nullable String nonconformance) {
        return new SeenNode.Look(
                sighting, known.level(), table, limit, verdict, words, nonconformance, act.by(), act.at());
    }

    private static void refuseImpossible(Imperfection found, Sighting sighting) {
        if (!found.never()) {
            requireFigure("size", "The size", sighting.size(), found.unit());
            requireFigure("wall", "The wall", sighting.wall_mm(), "mm");
        }
        if (sighting.width_mm() != null) {
            requireFigure("width", "The width of the weld", sighting.width_mm(), "mm");
        }
        if (sighting.throat_mm() != null) {
            requireFigure("throat", "The throat", sighting.throat_mm(), "mm");
        }
    }

    /** Most limits grow with the wall: one that the node does not have would let more through. */
    private void refuseThicker(WeldTurn.At at, String node, @Nullable BigDecimal wall) {
        BigDecimal thickest = welders.thickestAt(at.head(), node).orElse(null);
        if (wall != null && thickest != null && wall.compareTo(thickest) > 0) {
            throw Refusal.input(
                    "wall",
                    NOT_RECORDED,
                    "The wall, " + wall.toPlainString() + " mm, is thicker than the thinner one at " + node
                            + " by the drawing, "
                            + thickest.stripTrailingZeros().toPlainString() + " mm.",
                    "Enter the thinner wall at the node. Where the drawing is wrong, call the QA lead.");
        }
    }

    private static void requireFigure(String field, String what, @Nullable BigDecimal figure, String unit) {
        if (figure == null || figure.signum() <= 0 || figure.compareTo(GREATEST) > 0 || figure.scale() > 3) {
            throw Refusal.input(
                    field,
                    NOT_RECORDED,
                    figure == null
                            ? what + " is missing."
                            : what + ", " + figure.toPlainString() + " " + unit + ", is no such figure.",
                    "Measure it, and enter it in " + unit + ".");
        }
    }

    /** The QA lead takes up what no line of the table decides: a nonconformance stands for it. */
    @Transactional
    public List<SeenNode> refer(Act act, long operationId, String node) {
        String deed = "No nonconformance was opened.";
        if (!turn.opens(act, "refer-node", operationId)) {
            return of(operationId);
        }
        crew.require(act.by(), deed, Role.QA_LEAD);
        WeldTurn.At at = turn.atHand(act, operationId, deed);
        SeenNode known = node(at, node);
        SeenNode.Look open = known.looks().stream()
                .filter(look -> look.verdict() == LookVerdict.UNDECIDED && look.nonconformance() == null)
                .reduce((before, after) -> after)
                .orElseThrow(
                        () -> Refusal.state(deed, "Nothing of " + node + " is undecided.", "Look at the sheet again."));
        SeenNode.Look referred = new SeenNode.Look(
                open.seen(),
                open.level(),
                open.limits(),
                open.limit(),
                LookVerdict.UNDECIDED,
                open.words(),
                open(act, at, node + ". " + open.words()),
                act.by(),
                act.at());
        rows.saveAndFlush(new LookRow(operationId, node, referred, act));
        return told(act, at, "node-referred", node, LookVerdict.UNDECIDED);
    }

    private List<SeenNode> told(Act act, WeldTurn.At at, String what, String node, LookVerdict verdict) {
        log.event(
                Chains.bearing(at.head().serial()),
                what,
                Map.of(
                        "operation",
                        at.line().operationId(),
                        "procedure",
                        at.procedure().id(),
                        "node",
                        node,
                        "verdict",
                        verdict.name()));
        turn.come(act, at.line().operationId());
        return of(at.line().operationId());
    }

    /** What still keeps the gate shut, in words; empty if nothing does. */
    static String wanting(List<SeenNode> nodes) {
        return nodes.stream()
                .filter(node -> !node.passes())
                .map(node -> node.node()
                        + (node.looks().isEmpty()
                                ? " was not looked at"
                                : ": "
                                        + node.looks()
                                                .get(node.looks().size() - 1)
                                                .words()
                                                .replaceAll("\\.$", "")))
                .limit(3)
                .collect(Collectors.joining("; "));
    }
}
