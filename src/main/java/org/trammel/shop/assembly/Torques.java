package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.fastening.TorqueFit;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Records bolts as they are tightened, fasteners that are begun again, and who looked at them. */
@Service
public class Torques {

    private static final String DEED = "The bolt was not recorded.";
    private static final BigDecimal MOST_DECIMALS_Nm = new BigDecimal("0.001");

    private final TorqueRepository torques;
    private final AgainRepository agains;
    private final WitnessRepository witnesses;
    private final TorqueTurn turn;
    private final TorqueTools tools;
    private final TorqueFaults faults;
    private final TorqueSheets sheets;
    private final Crew crew;
    private final ActLog log;

    Torques(
            TorqueRepository torques,
            AgainRepository agains,
            WitnessRepository witnesses,
            TorqueTurn turn,
            TorqueTools tools,
            TorqueFaults faults,
            TorqueSheets sheets,
            Crew crew,
            ActLog log) {
        this.torques = torques;
        this.agains = agains;
        this.witnesses = witnesses;
        this.turn = turn;
        this.tools = tools;
        this.faults = faults;
        this.sheets = sheets;
        this.crew = crew;
        this.log = log;
    }

    /**
     * A bolt to record.
     *
     * @param round and pass and bolt as the sheet showed them: another tablet may have recorded them, or loosened all, meanwhile
     * @param target_Nm another target than the sheet's; null for that one
     * @param reading_Nm what it reached, where it did not click at what was set
     */
    public record Tightened(
            long partId,
            long fastenerId,
            int round,
            int pass,
            int bolt,
            String gauge,
            @Nullable BigDecimal target_Nm,
            @Nullable BigDecimal reading_Nm) {}

    /** Records the next bolt of a fastener. What lies outside the band is recorded too, and opens a nonconformance. */
    @Transactional
    public TorqueSheet tighten(Act act, long operationId, Tightened entry) {
        if (!turn.opens(act, "tighten", operationId)) {
            return sheets.of(operationId);
        }
        TorqueTurn.At at = turn.atHand(act, operationId, DEED);
        TorqueSheet.Line line = at.sheet().line(entry.partId(), entry.fastenerId());
        if (at.sheet().awaitsRide()
                && !line.part().component().operation().equals(at.line().code())) {
            throw Refusal.state(
                    DEED,
                    line.called() + " is torqued again after the ride, and no good ride is signed at operation "
                            + at.line().code() + ".",
                    "Ride it first, and sign the ride; then torque what it may have loosened.");
        }
        TorqueSheet.Next next = requireNext(line, entry);
        BigDecimal target = target(line, entry);
        BigDecimal set = next.last()
                ? target
                : TorqueSheets.share(target, line.fastener().passes().get(next.pass() - 1));
        BigDecimal reading = entry.reading_Nm();
        requireFigure("target", target);
        if (reading != null) {
            requireFigure("reading", reading);
        }
        TorqueTools.Tool tool = tools.tool(entry.gauge(), reading == null ? List.of(set) : List.of(set, reading), DEED);
        if (next.last() || tools.reaches(tool.code(), target)) {
            tools.requireFits(line, target, tools.at(tool.code(), target), DEED);
        }
        TorqueVerdict verdict = verdict(line, next, reading, tool);
        String nonconformance = verdict == TorqueVerdict.NOT_CONFORMING
                ? faults.open(act, at, wrong(line, entry.bolt(), reading == null ? set : reading))
                : null;
        Bolt bolt = new Bolt(
                line.round(),
                next.pass(),
                next.bolt(),
                target,
                set,
                reading,
                line.least_Nm(),
                line.most_Nm(),
                tool.error_percent(),
                tool.code(),
                verdict,
                nonconformance,
                act.by(),
                act.at());
        torques.saveAndFlush(
                new TorqueRow(operationId, line.part().id(), line.fastener().id(), bolt, act));
        log.event(
                Chains.bearing(at.head().serial()),
                "bolt-torqued",
                Map.of(
                        "operation", operationId,
                        "part", entry.partId(),
                        "fastener", entry.fastenerId(),
                        "pass", next.pass(),
                        "bolt", next.bolt(),
                        "reached", bolt.reached_Nm().toPlainString(),
                        "verdict", verdict.name(),
                        "gauge", tool.code()));
        turn.come(act, operationId);
        return sheets.of(operationId);
    }

    private TorqueSheet.Next requireNext(TorqueSheet.Line line, Tightened entry) {
        TorqueSheet.Next next = line.next();
        if (next == null) {
            throw Refusal.state(
                    DEED,
                    line.called() + " is " + line.state().word() + "."
                            + (line.lowered() == null ? "" : " " + line.lowered()),
                    switch (line.state()) {
                        case AGAIN -> "Loosen all of it and begin it again.";
                        case CLASHES -> "Call the QA lead: one of the two parts does not belong on this frame.";
                        default -> "Nothing is left to tighten here; if it was loosened, begin it again with a reason.";
                    });
        }
        if (line.round() != entry.round()) {
            throw Refusal.stale(
                    DEED,
                    line.called() + " was loosened meanwhile: its bolts are tightened for time " + line.round()
                            + ", and this was sent for time " + entry.round() + ".",
                    "Open the torque sheet again, and tighten it from its first bolt.");
        }
        if (next.pass() != entry.pass() || next.bolt() != entry.bolt()) {
            throw Refusal.stale(
                    DEED,
                    "Bolt " + next.bolt() + " of pass " + next.pass() + " is next on " + line.called() + ", not bolt "
                            + entry.bolt() + " of pass " + entry.pass() + ".",
                    "Go on in the order of the sheet.");
        }
        return next;
    }

    /** The target stays the same from the first bolt of a fastener to its last. */
    private static BigDecimal target(TorqueSheet.Line line, Tightened entry) {
        BigDecimal asked = entry.target_Nm() == null ? line.target_Nm() : entry.target_Nm();
        if (!line.bolts().isEmpty() && asked.compareTo(line.target_Nm()) != 0) {
            throw Refusal.input(
                    "target",
                    DEED,
                    "The bolts of " + line.called() + " before it went to " + NewFastener.plain(line.target_Nm())
                            + " N·m.",
                    "Keep that target, or begin the fastener again.");
        }
        return asked;
    }

    private static void requireFigure(String field, BigDecimal figure) {
        if (figure.signum() <= 0
                || figure.compareTo(BigDecimal.valueOf(1000)) > 0
                || figure.remainder(MOST_DECIMALS_Nm).signum() != 0) {
            throw Refusal.input(
                    field,
                    DEED,
                    NewFastener.plain(figure) + " N·m is no torque of a bolt.",
                    "Enter it above 0, in N·m, with three decimals at most.");
        }
    }

    /** In the passes before the last one only too much can be wrong. */
    private static TorqueVerdict verdict(
            TorqueSheet.Line line, TorqueSheet.Next next, @Nullable BigDecimal reading, TorqueTools.Tool tool) {
        if (reading == null) {
            return TorqueVerdict.CONFORMING;
        }
        BigDecimal least = next.last() ? line.least_Nm() : BigDecimal.ZERO;
        return TorqueVerdict.of(TorqueFit.of(reading, least, line.most_Nm(), tool.error_percent()));
    }

    private String wrong(TorqueSheet.Line line, int bolt, BigDecimal reached) {
        return line.called() + ", bolt " + bolt + ": " + tools.bare(reached) + " N·m; " + tools.bare(line.least_Nm())
                + " to " + tools.bare(line.most_Nm()) + " N·m are allowed.";
    }

    /** Begins a fastener again from its first bolt, with a reason; whoever looked at it looks again. */
    @Transactional
    public TorqueSheet again(Act act, long operationId, long partId, long fastenerId, @Nullable String words) {
        String deed = "The fastener was not begun again.";
        if (!turn.opens(act, "torque-again", operationId)) {
            return sheets.of(operationId);
        }
        TorqueTurn.At at = turn.atHand(act, operationId, deed);
        TorqueSheet.Line line = at.sheet().line(partId, fastenerId);
        if (line.bolts().isEmpty()) {
            throw Refusal.state(deed, "No bolt of " + line.called() + " is tightened.", "Tighten the first one.");
        }
        agains.saveAndFlush(new AgainRow(
                operationId,
                new TorqueRow.Key(partId, fastenerId),
                TypedText.line("words", "The reason", deed, words, 400),
                act));
        log.event(
                Chains.bearing(at.head().serial()),
                "torque-begun-again",
                Map.of("operation", operationId, "part", partId, "fastener", fastenerId, "round", line.round() + 1));
        return sheets.of(operationId);
    }

    /**
     * A fastener that somebody looked at, by its component on the frame.
     *
     * @param round as the sheet showed it: it may have been loosened meanwhile, and torqued again
     */
    public record Seen(long partId, long fastenerId, int round) {}

    /**
     * A second person looked at fasteners. The caller has checked that person's own PIN at this moment.
     *
     * @param witnessId who looked; need not be who sends the act, and is nobody who tightened any of them
     */
    @Transactional
    public TorqueSheet witness(Act act, long operationId, long witnessId, List<Seen> seen) {
        String deed = "Nothing was witnessed.";
        if (!turn.opens(act, "witness-torque", operationId)) {
            return sheets.of(operationId);
        }
        TorqueTurn.At at = turn.of(operationId);
        turn.requireHere(at, operationId, deed);
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here sends it.");
        }
        Person person = crew.byId(witnessId);
        if (!person.active() || !person.maySign()) {
            throw Refusal.person(
                    deed, person.name() + " may not sign for what others did.", "Call a second person who may.");
        }
        List<TorqueSheet.Line> lines = new ArrayList<>();
        for (Seen one : seen.stream().distinct().toList()) {
            TorqueSheet.Line line = at.sheet().line(one.partId(), one.fastenerId());
            if (line.round() != one.round()) {
                throw Refusal.stale(
                        deed,
                        line.called() + " is torqued for time " + line.round() + ", and time " + one.round()
                                + " was looked at: it was loosened meanwhile.",
                        "Look at it again as it is now, then sign.");
            }
            if (line.state() != TorqueSheet.State.TO_WITNESS) {
                throw Refusal.stale(
                        deed,
                        line.called() + " is " + line.state().word() + ".",
                        "Open the torque sheet of the frame again.");
            }
            if (doers(line).contains(witnessId)) {
                throw Refusal.person(
                        deed,
                        person.name() + " tightened " + line.called() + "; who did it does not witness it.",
                        "Call somebody else, who looks at it without being told.");
            }
            lines.add(line);
        }
        if (lines.isEmpty()) {
            throw Refusal.input(
                    "seen", deed, "It is not said which fasteners were looked at.", "Tick each that you looked at.");
        }
        for (TorqueSheet.Line line : lines) {
            witnesses.saveAndFlush(new WitnessRow(
                    operationId,
                    new TorqueRow.Key(line.part().id(), line.fastener().id()),
                    line.round(),
                    witnessId,
                    act));
            log.event(
                    Chains.bearing(at.head().serial()),
                    "torque-witnessed",
                    Map.of(
                            "operation",
                            operationId,
                            "part",
                            line.part().id(),
                            "fastener",
                            line.fastener().id(),
                            "round",
                            line.round(),
                            "person",
                            witnessId));
        }
        turn.come(act, operationId);
        return sheets.of(operationId);
    }

    /** Whoever tightened a bolt of the fastener, in whatever round. */
    static Set<Long> doers(TorqueSheet.Line line) {
        return Stream.concat(line.bolts().stream(), line.earlier().stream())
                .map(Bolt::by)
                .collect(Collectors.toSet());
    }
}
