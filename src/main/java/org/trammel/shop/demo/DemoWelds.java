package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.welding.ArcSettings;
import org.trammel.shop.welding.BeadColour;
import org.trammel.shop.welding.GuardedOperations;
import org.trammel.shop.welding.HeatRules;
import org.trammel.shop.welding.LimitSets;
import org.trammel.shop.welding.LookRules;
import org.trammel.shop.welding.NewProcedure;
import org.trammel.shop.welding.NodeRecord;
import org.trammel.shop.welding.NodeRules;
import org.trammel.shop.welding.Papers;
import org.trammel.shop.welding.Procedures;
import org.trammel.shop.welding.Purges;
import org.trammel.shop.welding.WeldLooks;
import org.trammel.shop.welding.Welds;

/** The procedures of the invented workshop, one for each metal and way of joining, and what its crew recorded by them. */
@Component
@Profile("demo")
class DemoWelds {

    private static final Duration BEAD = Duration.ofMinutes(2);
    private static final BigDecimal THINNEST = new BigDecimal("0.7");
    private static final BigDecimal THICKEST = new BigDecimal("3");
    private static final String ARC = "141";
    private static final String BRAZED = "SHOP-BRAZE";

    private final LimitSets limits;
    private final Procedures procedures;
    private final Welds welds;
    private final Purges purges;
    private final WeldLooks looks;
    private final Travellers travellers;
    private final DemoActs acts;
    private final DemoClock clock;

    DemoWelds(
            LimitSets limits,
            Procedures procedures,
            Welds welds,
            Purges purges,
            WeldLooks looks,
            Travellers travellers,
            DemoActs acts,
            DemoClock clock) {
        this.limits = limits;
        this.procedures = procedures;
        this.welds = welds;
        this.purges = purges;
        this.looks = looks;
        this.travellers = travellers;
        this.acts = acts;
        this.clock = clock;
    }

    void putInForce() {
        limits.enter(
                acts.by("TR"),
                BRAZED,
                new LimitSets.NewLimits(
                        "brazed fillets of steel",
                        "shop rule",
                        "A",
                        "own coupons cut open, invented",
                        "C; SURFACE_PORE; ; ; 0; 0.2; t; 1;"));
        one("W-6061", "IC", aluminium("AL6061", "ER4643", 1));
        one("W-7005", "IC", aluminium("AL7005", "ER5356", 0));
        one(
                "W-STEEL",
                "PW",
                written(
                        "steel frames, TIG, invented",
                        "STEEL",
                        ARC,
                        List.of("BW", "FW"),
                        "070",
                        arc(List.of("ER70S", "ER80S"), "1.2", "DC−", 25, 75),
                        new HeatRules(null, null, null, null, 0),
                        new NodeRules(null, null, null, false, false, 2),
                        new LookRules("C", "", "ISO-5817-2014"),
                        "ISO 9606-1"));
        one(
                "W-BRAZE",
                "HS",
                written(
                        "steel frames, fillet-brazed with silver, invented",
                        "STEEL",
                        "912",
                        List.of("FW"),
                        "070F",
                        new ArcSettings(List.of("BRAZE-SILVER"), null, List.of(), null, "", "", null, null),
                        new HeatRules(null, null, null, null, 0),
                        new NodeRules(null, BigDecimal.valueOf(5), BigDecimal.valueOf(7), false, false, 2),
                        new LookRules("C", "", BRAZED),
                        "ISO 13585"));
        one(
                "W-TI",
                "HS",
                written(
                        "titanium frames, TIG under purge, invented",
                        "TI",
                        ARC,
                        List.of("BW", "FW"),
                        "070",
                        arc(List.of("TI-CP", "TI-3AL-2.5V"), "1.2", "DC−", 20, 70),
                        new HeatRules(null, null, null, null, 0),
                        new NodeRules(BigDecimal.valueOf(50), null, null, true, false, 2),
                        new LookRules("C", "", "ISO-5817-2014"),
                        "ISO 9606-5"));
    }

    private void one(String code, String drafts, NewProcedure content) {
        long version = procedures.draft(acts.by(drafts), code, content).version();
        procedures.putInForce(acts.by("TR"), code, version);
    }

    private static NewProcedure aluminium(String metal, String filler, int samples) {
        return written(
                metal.substring(2) + " frames, TIG with alternating current, invented",
                metal,
                ARC,
                List.of("BW", "FW"),
                "070",
                arc(List.of(filler), "1.6", "AC", 50, 140),
                new HeatRules(
                        BigDecimal.valueOf(120),
                        new BigDecimal("0.22"),
                        new BigDecimal("0.40"),
                        new BigDecimal("0.6"),
                        samples),
                new NodeRules(null, null, null, false, false, 2),
                new LookRules("C", "B: head tube, shell", "ISO-10042-1992"),
                "ISO 9606-2");
    }

    private static ArcSettings arc(List<String> fillers, String filler_mm, String polarity, int from, int to) {
        return new ArcSettings(
                fillers,
                new BigDecimal(filler_mm),
                List.of("ARGON"),
                BigDecimal.valueOf(8),
                "1.6 mm, ground to a long point",
                polarity,
                BigDecimal.valueOf(from),
                BigDecimal.valueOf(to));
    }

    private static NewProcedure written(
            String what,
            String metal,
            String process,
            List<String> joints,
            String weld,
            ArcSettings arc,
            HeatRules heat,
            NodeRules nodes,
            LookRules look,
            String welders) {
        boolean brazes = !process.equals(ARC);
        return new NewProcedure(
                what,
                metal,
                process,
                joints,
                brazes ? new BigDecimal("0.5") : THINNEST,
                THICKEST,
                new GuardedOperations(List.of(), List.of(weld), List.of("080")),
                arc,
                heat,
                nodes,
                look,
                new Papers(
                        welders,
                        brazes ? "shop rule" : "ISO 15609-1",
                        "edition to be filled in",
                        "coupons of our own, invented"));
    }

    /** What a step that rests on a weld rests on; where a node is closed, that ticks its step. */
    void prove(FrameSheet.OperationSheetOfFrame at, FrameSheet.StepLine step, Proof proof, String by) {
        long operation = at.line().operationId();
        if (proof == Proof.WELDED) {
            node(operation, step, by);
            return;
        }
        looks.of(operation).stream()
                .filter(node -> node.looks().isEmpty())
                .forEach(node -> looks.see(acts.by(by), operation, node.node(), WeldLooks.Sighting.nothing()));
    }

    private void node(long operation, FrameSheet.StepLine step, String by) {
        // The node was ticked when the bead was done: it began that much earlier.
        clock.pass(BEAD.negated());
        FrameSheet.Head head = travellers.headOf(operation);
        List<NodeRecord> nodes = welds.of(operation).nodes();
        boolean first = nodes.stream().allMatch(node -> node.opened() == null);
        boolean titanium = head.metal().equals("TI");
        if (titanium) {
            purge(operation, by, "20");
        }
        open(operation, step, by, !first && head.metal().startsWith("AL"));
        clock.pass(BEAD);
        boolean sample = first && head.metal().equals("AL6061");
        boolean brazed = head.kind().equals("STEEL_FILLET");
        welds.close(
                acts.by(by),
                operation,
                step.stepId(),
                new Welds.End(
                        null,
                        null,
                        sample ? BigDecimal.valueOf(14) : null,
                        sample ? BigDecimal.valueOf(95) : null,
                        sample ? BigDecimal.valueOf(150) : null,
                        sample ? BigDecimal.valueOf(60) : null,
                        titanium ? BeadColour.SILVER : null,
                        brazed ? new BigDecimal("6") : null,
                        brazed ? "TG-1" : null));
    }

    private void open(long operation, FrameSheet.StepLine step, String by, boolean hot) {
        welds.open(
                acts.by(by),
                operation,
                step.stepId(),
                new Welds.Begin(hot ? BigDecimal.valueOf(80) : null, hot ? "IR-1" : null, null));
    }

    private void purge(long operation, String by, String oxygen) {
        purges.read(
                acts.by(by),
                operation,
                new Purges.Reading(new BigDecimal(oxygen), "OX-1", new BigDecimal("1.78"), BigDecimal.valueOf(8)));
    }

    /** Opens the first node of a frame under purge. */
    void strike(FrameSheet.OperationSheetOfFrame at, String by) {
        long operation = at.line().operationId();
        purge(operation, by, "20");
        clock.pass(BEAD);
        FrameSheet.StepLine first = at.steps().stream()
                .filter(FrameSheet.StepLine::irreversible)
                .findFirst()
                .orElseThrow();
        open(operation, first, by, false);
    }

    /** The meter alarms: no arc until the oxygen is out again. */
    void alarm(long operation, String by) {
        purge(operation, by, "180");
    }
}
