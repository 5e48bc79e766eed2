package org.trammel.shop.ovens;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.thermal.Judged;
import org.trammel.shop.inspection.RecordedReadings;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Travellers;

/**
 * Decides a run: which of its frames are released, which stay on hold. Ageing and solution treatment are decided by the QA
 * lead, a cure by an independent second person; by neither if they loaded, signed or started it. Nothing is released whose record is
 * not conforming.
 */
@Service
public class RunRelease {

    private final RunRepository rows;
    private final LoadedRepository frames;
    private final RunSignatureRepository signatures;
    private final Runs runs;
    private final LoadTurn turn;
    private final HasCome hasCome;
    private final Holds holds;
    private final Travellers travellers;
    private final Crew crew;
    private final RunDoubts doubts;
    private final RunJudge judge;
    private final RunGives gives;
    private final HeatFaults heat;
    private final RunWords texts;
    private final ActLog log;

    RunRelease(
            RunRepository rows,
            LoadedRepository frames,
            RunSignatureRepository signatures,
            Runs runs,
            LoadTurn turn,
            HasCome hasCome,
            Holds holds,
            Travellers travellers,
            Crew crew,
            RunDoubts doubts,
            RunJudge judge,
            RunGives gives,
            HeatFaults heat,
            RunWords texts,
            ActLog log) {
        this.rows = rows;
        this.frames = frames;
        this.signatures = signatures;
        this.runs = runs;
        this.turn = turn;
        this.hasCome = hasCome;
        this.holds = holds;
        this.travellers = travellers;
        this.crew = crew;
        this.doubts = doubts;
        this.judge = judge;
        this.gives = gives;
        this.heat = heat;
        this.texts = texts;
        this.log = log;
    }

    /**
     * Decides. The caller has checked the signer's own PIN at this moment.
     *
     * @param kept travellers that are not released
     * @param why they are not; asked for where there are any
     */
    @Transactional
    public Run decide(Act act, String code, long signerId, Set<Long> kept, @Nullable String why) {
        return turn.on(act, "decide-run", code, row -> {
            String deed = "Run " + row.code() + " was not decided.";
            row.requireAt("decided", RunState.STOPPED);
            Run now = runs.run(row);
            RunSigner as = signer(now, signerId, deed);
            Set<Long> here =
                    now.in().stream().map(Run.Loaded::travellerId).collect(java.util.stream.Collectors.toSet());
            if (!here.containsAll(kept)) {
                throw Refusal.input("kept", deed, "A frame that is kept back is not in it.", "Choose from its frames.");
            }
            if (now.programme().purpose() == Purpose.CURE) {
                runs.log(row.id()).ifPresent(record -> row.judge(judge.judged(row, record.read())));
            }
            Judged judged = row.judged();
            if (judged == null) {
                throw Refusal.state(
                        deed,
                        runs.log(row.id()).isEmpty()
                                ? "It has no record: a run is judged by what was recorded, not by the clock."
                                : "Its record does not tell the temperature of the load.",
                        "Read the logger's file in.");
            }
            if (judged != Judged.CONFORMING && !kept.containsAll(here)) {
                throw Refusal.state(
                        deed,
                        "Its record is " + word(judged) + ", and a frame is released by a conforming one alone.",
                        "Keep every frame back. A better record, another run, or a nonconformance decides what follows.");
            }
            doubts.against(row.id()).filter(trace -> !kept.containsAll(here)).ifPresent(trace -> {
                throw Refusal.state(
                        deed,
                        trace.thermocouple() + ", a thermocouple of it, was found wrong since, and " + trace.number()
                                + " waits for results of its frames.",
                        "Give them their results there first, or keep every frame back.");
            });
            String words = kept.isEmpty() ? "" : TypedText.words("reason", "Why frames are kept back", deed, why, 1000);
            signatures.save(new RunSignatureRow(row.id(), RunSignatureRow.RUN, as, signerId, act));
            row.decide(act);
            rows.saveAndFlush(row);
            List<RecordedReadings.Value> values = gives.values(row);
            for (LoadedRow frame : frames.findByRunIdOrderById(row.id())) {
                if (frame.state() == FrameState.LOADED) {
                    decide(act, row, frame, kept.contains(frame.travellerId()), words);
                    gives.give(act, signerId, row, frame, values);
                    heat.open(act, row, now.programme(), frame);
                    goesOn(act, frame);
                }
            }
        });
    }

    private void decide(Act act, RunRow row, LoadedRow frame, boolean keep, String words) {
        String chain = Chains.bearing(frame.serial());
        frame.decide(
                keep ? FrameState.KEPT : FrameState.RELEASED,
                keep ? texts.keep(chain, row.id(), "why a frame is kept back", words) : null,
                act);
        frames.saveAndFlush(frame);
        log.event(
                chain,
                keep ? "kept-back-from-run" : "released-from-run",
                Map.of("run", row.id(), "traveller", frame.travellerId()));
        if (keep && travellers.head(frame.travellerId()).state().open()) {
            holds.placeWithin(
                    act,
                    new Holds.Request(
                            frame.travellerId(),
                            frame.part().isEmpty() ? HoldScope.FRAME : HoldScope.PART,
                            null,
                            HoldReason.OVEN_TRACE,
                            "kept back from run " + row.code() + "; its sheet says why",
                            row.code(),
                            Set.of()));
        }
    }

    private void goesOn(Act act, LoadedRow frame) {
        Long operationId = frame.operationId();
        if (frame.state() == FrameState.RELEASED && operationId != null) {
            hasCome.to(act, operationId);
        }
    }

    private RunSigner signer(Run run, long signerId, String deed) {
        Person person = turn.maySign(signerId, deed);
        LoadTurn.refuseWhoTookPart(run, signerId, person, deed);
        if (run.hadAHand().contains(signerId)) {
            throw Refusal.person(
                    deed,
                    person.initials() + " signed the load; who decides the run had no hand in it.",
                    "Call somebody who neither loaded, signed nor started it.");
        }
        if (!run.programme().purpose().releasedByQa()) {
            return RunSigner.SECOND;
        }
        if (!crew.standsInForQaLead(signerId, run.hadAHand())) {
            crew.require(signerId, deed, Role.QA_LEAD);
        }
        return RunSigner.QA;
    }

    static String word(Judged judged) {
        return switch (judged) {
            case CONFORMING -> "conforming";
            case UNDECIDED -> "undecided";
            case NOT_CONFORMING -> "not conforming";
        };
    }
}
