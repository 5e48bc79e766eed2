package org.trammel.shop.ovens;

import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.thermal.Activation;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;

/** Has a load signed by two people, and runs it: start, doors, stop. */
@Service
public class OvenRuns {

    private final RunRepository rows;
    private final LoadedRepository frames;
    private final WiredRepository wired;
    private final DoorRepository doors;
    private final RunSignatureRepository signatures;
    private final Runs runs;
    private final Ovens ovens;
    private final Programmes programmes;
    private final Compatibility compatibility;
    private final Crew crew;
    private final Settings settings;
    private final RunWords texts;
    private final LoadTurn turn;

    OvenRuns(
            RunRepository rows,
            LoadedRepository frames,
            WiredRepository wired,
            DoorRepository doors,
            RunSignatureRepository signatures,
            Runs runs,
            Ovens ovens,
            Programmes programmes,
            Compatibility compatibility,
            Crew crew,
            Settings settings,
            RunWords texts,
            LoadTurn turn) {
        this.rows = rows;
        this.frames = frames;
        this.wired = wired;
        this.doors = doors;
        this.signatures = signatures;
        this.runs = runs;
        this.ovens = ovens;
        this.programmes = programmes;
        this.compatibility = compatibility;
        this.crew = crew;
        this.settings = settings;
        this.texts = texts;
        this.turn = turn;
    }

    /** Signs the load. The caller has checked the signer's own PIN at this moment. */
    @Transactional
    public Run sign(Act act, String code, long signerId, RunSigner as) {
        return turn.on(act, "sign-load", code, row -> {
            String deed = "Load " + row.code() + " was not signed.";
            row.requireAt("signed", RunState.LOADING);
            Run now = runs.run(row);
            if (now.in().isEmpty()) {
                throw Refusal.state(deed, "Nothing is in it.", "Load a frame first.");
            }
            Person person = turn.maySign(signerId, deed);
            Set<RunSigner> before = new HashSet<>();
            for (Run.Signed signed : now.signatures()) {
                if (signed.ofLoad() && signed.counts()) {
                    before.add(signed.signer());
                    LoadTurn.refuseSame(signed.personId() == signerId, person, deed);
                }
            }
            if (as == RunSigner.QA || before.contains(as)) {
                throw Refusal.state(
                        deed,
                        as == RunSigner.QA
                                ? "A load is signed by the heat treater and an independent second."
                                : "It is signed as " + as.word() + " already.",
                        "Look at who is outstanding.");
            }
            if (as == RunSigner.HEAT_TREATER) {
                crew.require(signerId, deed, Role.HEAT_TREATER, Role.QA_LEAD);
            } else {
                LoadTurn.refuseWhoTookPart(now, signerId, person, deed);
            }
            LoadTurn.requireOpen(ovens.byId(row.ovenId()), now.programme(), deed);
            everyFrame(row, now, act, false);
            signatures.save(new RunSignatureRow(row.id(), RunSignatureRow.LOAD, as, signerId, act));
            before.add(as);
            if (before.containsAll(Set.of(RunSigner.HEAT_TREATER, RunSigner.SECOND))) {
                row.signed();
            }
        });
    }

    /** Starts the oven. Everything is asked once more; what the run is judged by is settled here. */
    @Transactional
    public Run start(Act act, String code) {
        return turn.on(act, "start-run", code, row -> {
            String deed = "Run " + row.code() + " was not started.";
            Programme programme = programmes.revision(row.revisionId());
            turn.requireLoader(act.by(), programme, deed);
            row.requireAt("started", RunState.SIGNED);
            if (programme.state() != ProgrammeState.APPROVED) {
                throw Refusal.state(
                        deed,
                        "Programme " + programme.called() + " is "
                                + programme.state().word() + ".",
                        "Call this load off and open one for the approved revision.");
            }
            LoadTurn.requireOpen(ovens.byId(row.ovenId()), programme, deed);
            if (rows.existsByOvenIdAndState(row.ovenId(), RunState.RUNNING)) {
                throw Refusal.state(deed, "Another load runs in this oven.", "Stop that one first.");
            }
            requireWiring(row, deed);
            everyFrame(row, runs.run(row), act, true);
            wired.findByRunIdOrderByCode(row.id()).forEach(one -> {
                one.readsHighBy(ovens.error_K(one.code(), act.at()));
                wired.saveAndFlush(one);
            });
            row.start(
                    activation(programme),
                    settings.number("heat.gap"),
                    programme.content().countsSurvey()
                            ? ovens.survey(row.ovenId()).orElse(null)
                            : null,
                    act);
        });
    }

    /** The thermocouples of the load as it was opened must still be the ones in the oven. */
    private void requireWiring(RunRow row, String deed) {
        Set<String> there = new HashSet<>();
        ovens.byId(row.ovenId()).fitted().forEach(one -> there.add(one.code() + one.role()));
        Set<String> entered = new HashSet<>();
        wired.findByRunIdOrderByCode(row.id()).forEach(one -> entered.add(one.code() + one.role()));
        if (!there.equals(entered)) {
            throw Refusal.state(
                    deed,
                    "Thermocouples of the oven were changed since the load was opened.",
                    "Call this load off and open another one.");
        }
    }

    private @Nullable Activation activation(Programme programme) {
        return programme.content().metals().size() == 1
                ? MetalHeat.of(programme.content().metals().get(0), settings)
                        .map(MetalHeat::activation)
                        .orElse(null)
                : null;
    }

    @Transactional
    public Run door(Act act, String code, boolean opened, @Nullable String words) {
        return turn.on(act, "note-door", code, row -> {
            String deed = "The door was not noted.";
            turn.requireLoader(act.by(), programmes.revision(row.revisionId()), deed);
            row.requireAt("noted", RunState.RUNNING);
            doors.save(new DoorRow(
                    row.id(),
                    opened,
                    texts.keep(
                            Chains.SHOP,
                            row.id(),
                            "a door",
                            TypedText.lineOrNone("words", "The note", deed, words, 400)),
                    act));
        });
    }

    /** Stops the run. What it was worth its record tells, not the clock. */
    @Transactional
    public Run stop(Act act, String code) {
        return turn.on(act, "stop-run", code, row -> {
            turn.requireLoader(
                    act.by(), programmes.revision(row.revisionId()), "Run " + row.code() + " was not stopped.");
            row.stop(act);
        });
    }

    private void everyFrame(RunRow row, Run now, Act act, boolean starting) {
        for (Run.Loaded frame : now.in()) {
            Compatibility.Fits fits =
                    compatibility.require(row, now.programme(), frame.travellerId(), act.at(), starting);
            if (!Objects.equals(fits.operationId(), frame.operationId())) {
                LoadedRow there = frames.findByRunIdAndTravellerId(row.id(), frame.travellerId())
                        .orElseThrow();
                there.load(fits.operationId(), frame.place(), frame.mass_kg(), act);
                frames.saveAndFlush(there);
            }
        }
    }
}
