package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.ScannedFrames;

/** Opens loads and puts frames into them; all of a load is asked once more as it is signed and as the oven starts. */
@Service
public class Loads {

    private static final int MOST_FRAMES = 100;

    private final RunRepository rows;
    private final LoadedRepository frames;
    private final WiredRepository wired;
    private final RunSignatureRepository signatures;
    private final Runs runs;
    private final Ovens ovens;
    private final Programmes programmes;
    private final Compatibility compatibility;
    private final ScannedFrames scanned;
    private final ActLog log;
    private final RunWords texts;
    private final LoadTurn turn;

    Loads(
            RunRepository rows,
            LoadedRepository frames,
            WiredRepository wired,
            RunSignatureRepository signatures,
            Runs runs,
            Ovens ovens,
            Programmes programmes,
            Compatibility compatibility,
            ScannedFrames scanned,
            ActLog log,
            RunWords texts,
            LoadTurn turn) {
        this.rows = rows;
        this.frames = frames;
        this.wired = wired;
        this.signatures = signatures;
        this.runs = runs;
        this.ovens = ovens;
        this.programmes = programmes;
        this.compatibility = compatibility;
        this.scanned = scanned;
        this.log = log;
        this.texts = texts;
        this.turn = turn;
    }

    /**
     * Opens a load in an oven that is not locked, for an approved programme. Every thermocouple in the oven is of the run.
     *
     * @param typed number of the run; the next one where it is empty
     */
    @Transactional
    public Run open(Act act, @Nullable String typed, String oven, String programme, @Nullable String hung) {
        String deed = "The load was not opened.";
        String given = typed == null || typed.isBlank() ? "" : Ovens.label(typed);
        if (!log.opens(act, "open-load", "oven:" + Ovens.label(oven), Chains.SHOP)) {
            return given.isEmpty() ? runs.page(Long.MAX_VALUE, 1).get(0) : runs.byCode(given);
        }
        String code = given.isEmpty() ? runs.nextCode() : TypedText.line("code", "The number", deed, given, 20);
        if (!code.matches("[A-Z0-9][A-Z0-9-]*")) {
            throw Refusal.input(
                    "code", deed, code + " has signs beside letters, digits and dashes.", "Write it otherwise.");
        }
        if (rows.existsByCode(code)) {
            throw Refusal.input("code", deed, "There is a load " + code + " already.", "Give it another number.");
        }
        Programme approved = programmes
                .approved(programme)
                .orElseThrow(() -> Refusal.state(
                        deed,
                        "No revision of programme " + Ovens.label(programme) + " is approved.",
                        "Let the QA lead approve it, or choose another."));
        turn.requireLoader(act.by(), approved, deed);
        Compatibility.requireNamed(approved, deed);
        Oven into = ovens.byCode(oven);
        LoadTurn.requireOpen(into, approved, deed);
        RunRow row = rows.saveAndFlush(new RunRow(
                code,
                into.id(),
                approved.revisionId(),
                Optional.ofNullable(TypedText.lineOrNone("hung", "How it hangs", deed, hung, 200))
                        .orElse(""),
                act));
        into.fitted().forEach(one -> wired.saveAndFlush(new WiredRow(row.id(), one.code(), one.role())));
        log.event(
                Chains.SHOP,
                "load-opened",
                Map.of("run", row.id(), "code", code, "oven", into.id(), "revision", approved.revisionId()));
        return runs.run(row);
    }

    /**
     * Loads frames; all of them or none.
     *
     * @param tags serials or tags with their check characters, parts too
     * @param ready what was looked at on each of them
     */
    @Transactional
    public Run load(Act act, String code, List<String> tags, Ready ready) {
        String deed = "Nothing was loaded into " + Ovens.label(code) + ".";
        List<ScannedFrames.Found> found = scanned.find(tags, deed);
        if (!turn.opens(
                act,
                "load-oven",
                code,
                found.stream().map(ScannedFrames.Found::chain).toList())) {
            return runs.byCode(code);
        }
        RunRow row = runs.row(code);
        Programme programme = programmes.revision(row.revisionId());
        turn.requireLoader(act.by(), programme, deed);
        row.requireAt("changed", RunState.LOADING);
        if (!ready.vents() || !ready.dry()) {
            throw Refusal.input(
                    ready.vents() ? "dry" : "vents",
                    deed,
                    ready.vents()
                            ? "It is not said that the frames are dry inside."
                            : "It is not said that the vents are open and clear.",
                    "Look at each frame: trapped water turns to steam. Then tick both.");
        }
        String place = TypedText.line("place", "The place in the oven", deed, ready.place(), 60);
        List<LoadedRow> before = frames.findByRunIdOrderById(row.id());
        for (ScannedFrames.Found one : found) {
            Compatibility.Fits fits =
                    compatibility.require(row, programme, one.head().travellerId(), act.at(), false);
            LoadedRow frame = before.stream()
                    .filter(there -> there.travellerId() == one.head().travellerId())
                    .findFirst()
                    .orElseGet(() -> new LoadedRow(row.id(), fits.head()));
            if (before.contains(frame) && frame.state() == FrameState.LOADED) {
                throw Refusal.stale(deed, one.head().mark() + " is in it already.", "Scan the next one.");
            }
            frame.load(fits.operationId(), place, mass(ready.mass_kg(), deed), act);
            frames.saveAndFlush(frame);
            log.event(
                    one.chain(),
                    "loaded",
                    Map.of("run", row.id(), "traveller", one.head().travellerId()));
        }
        Run now = runs.run(row);
        requireRoom(now, deed);
        return now;
    }

    /**
     * What was looked at.
     *
     * @param mass_kg of each frame with what it hangs on, or null where it was not weighed
     */
    public record Ready(
            @Nullable String place,
            boolean vents,
            boolean dry,
            @Nullable BigDecimal mass_kg) {}

    private static @Nullable BigDecimal mass(@Nullable BigDecimal kg, String deed) {
        if (kg != null && (kg.signum() <= 0 || kg.compareTo(BigDecimal.valueOf(1000)) > 0)) {
            throw Refusal.input(
                    "mass",
                    deed,
                    "A mass of " + kg.toPlainString() + " kg is not above 0 and at most 1000 kg.",
                    "Weigh it again.");
        }
        return kg;
    }

    private void requireRoom(Run run, String deed) {
        if (run.in().size() > MOST_FRAMES) {
            throw Refusal.state(
                    deed, run.in().size() + " frames are more than " + MOST_FRAMES + ".", "Open a second load.");
        }
        BigDecimal sum = run.in().stream()
                .map(Run.Loaded::mass_kg)
                .filter(Objects::nonNull)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        Oven oven = ovens.byCode(run.oven());
        if (sum.compareTo(oven.most_kg()) > 0) {
            throw Refusal.state(
                    deed,
                    "The load would be " + sum.toPlainString() + " kg; " + oven.code() + " takes "
                            + oven.most_kg().toPlainString() + " kg.",
                    "Take something out, or open a second load.");
        }
    }

    @Transactional
    public Run takeOut(Act act, String code, long travellerId, @Nullable String why) {
        return turn.on(act, "take-out-of-oven", code, row -> {
            String deed = "The frame was not taken out.";
            turn.requireLoader(act.by(), programmes.revision(row.revisionId()), deed);
            row.requireAt("changed", RunState.LOADING);
            LoadedRow frame = frames.findByRunIdAndTravellerId(row.id(), travellerId)
                    .filter(there -> there.state() == FrameState.LOADED)
                    .orElseThrow(() -> Refusal.stale(deed, "It is not in the load.", "Look at the load as it is now."));
            frame.takeOut(texts.keep(
                    Chains.SHOP,
                    row.id(),
                    "why it was taken out",
                    TypedText.line("reason", "The reason", deed, why, 1000)));
            frames.saveAndFlush(frame);
        });
    }

    /** Says where a load thermocouple sits and what its column in the record is called. */
    @Transactional
    public Run wire(Act act, String code, String thermocouple, @Nullable String column, @Nullable String place) {
        return turn.on(act, "place-thermocouple", code, row -> {
            String deed = "The thermocouple was not placed.";
            turn.requireLoader(act.by(), programmes.revision(row.revisionId()), deed);
            row.requireAt("wired", RunState.LOADING, RunState.SIGNED, RunState.RUNNING, RunState.STOPPED);
            List<WiredRow> all = wired.findByRunIdOrderByCode(row.id());
            WiredRow one = all.stream()
                    .filter(there -> there.code().equals(Ovens.label(thermocouple)))
                    .findFirst()
                    .orElseThrow(() -> Refusal.missing(
                            deed, thermocouple + " is not of this run.", "Choose one that is fitted in its oven."));
            String own = TypedText.line("column", "The column", deed, column, 120);
            if (all.stream().anyMatch(other -> other != one && other.logColumn().equals(own))) {
                throw Refusal.input(
                        "column", deed, "Another thermocouple of this run is the column " + own + ".", "Name its own.");
            }
            one.put(
                    own,
                    Optional.ofNullable(TypedText.lineOrNone("place", "The place", deed, place, 60))
                            .orElse(""));
            wired.saveAndFlush(one);
        });
    }

    /** Opens a signed load once more; its signatures were for another load and are asked for anew. */
    @Transactional
    public Run change(Act act, String code) {
        return turn.on(act, "change-load", code, row -> {
            turn.requireLoader(
                    act.by(), programmes.revision(row.revisionId()), "Load " + row.code() + " was not opened.");
            row.openAgain(signatures.findByRunIdOrderById(row.id()).stream()
                    .map(RunSignatureRow::id)
                    .reduce((a, b) -> b)
                    .orElse(null));
        });
    }

    @Transactional
    public Run callOff(Act act, String code, @Nullable String why) {
        return turn.on(act, "call-load-off", code, row -> {
            String deed = "Load " + row.code() + " was not called off.";
            turn.requireLoader(act.by(), programmes.revision(row.revisionId()), deed);
            String words = TypedText.line("reason", "The reason", deed, why, 1000);
            row.callOff();
            Long kept = texts.keep(Chains.SHOP, row.id(), "why it was called off", words);
            frames.findByRunIdOrderById(row.id()).stream()
                    .filter(frame -> frame.state() == FrameState.LOADED)
                    .forEach(frame -> {
                        frame.takeOut(kept);
                        frames.saveAndFlush(frame);
                    });
        });
    }
}
