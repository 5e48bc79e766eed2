package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.thermal.QuenchDelay;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * How long a load took from the door to the water: tapped as it happens, or entered late by hand, which the record says.
 * The newest counts, and a record that was taken before is judged with it.
 */
@Service
public class Quenches {

    private static final String DEED = "The quench was not noted.";
    private static final BigDecimal LONGEST_S = BigDecimal.valueOf(3600);

    private final QuenchRepository rows;
    private final QuenchTapRepository taps;
    private final LogRepository logs;
    private final RunJudge judge;
    private final Programmes programmes;
    private final RunWords texts;
    private final LoadTurn turn;

    Quenches(
            QuenchRepository rows,
            QuenchTapRepository taps,
            LogRepository logs,
            RunJudge judge,
            Programmes programmes,
            RunWords texts,
            LoadTurn turn) {
        this.rows = rows;
        this.taps = taps;
        this.logs = logs;
        this.judge = judge;
        this.programmes = programmes;
        this.texts = texts;
        this.turn = turn;
    }

    /** Since when a load is out of the oven and not in the water yet; empty while it is in neither. */
    @Transactional(readOnly = true)
    public Optional<Instant> outSince(long runId) {
        return taps.findFirstByRunIdOrderByIdDesc(runId)
                .filter(tap -> tap.mark() == QuenchMark.OUT)
                .map(QuenchTapRow::at);
    }

    /** A tap as it happens. The door tapped again begins anew; the water ends it. */
    @Transactional
    public Run tap(Act act, String code, QuenchMark mark) {
        return turn.on(act, "tap-quench", code, row -> {
            requireQuench(act, row);
            QuenchTapRow last = taps.findFirstByRunIdOrderByIdDesc(row.id()).orElse(null);
            if (mark == QuenchMark.IN && (last == null || last.mark() == QuenchMark.IN)) {
                throw Refusal.state(
                        DEED,
                        "The door was not tapped before.",
                        "Enter the time late by hand, from a film or a timer, and say where it comes from.");
            }
            QuenchTapRow tapped = taps.saveAndFlush(new QuenchTapRow(row.id(), mark, act));
            if (mark == QuenchMark.IN) {
                Answer<QuenchDelay> delay = QuenchDelay.of(last.tap(), tapped.tap());
                if (!(delay instanceof Answer.Determined<QuenchDelay> there)
                        || there.value().most_s().compareTo(LONGEST_S) > 0) {
                    throw Refusal.state(
                            DEED,
                            "The two taps do not tell a time from door to water.",
                            "Enter it late by hand, from a film or a timer, and say where it comes from.");
                }
                keep(row, new QuenchRow(row.id(), there.value(), act));
            }
        });
    }

    /**
     * Enters a time that was not tapped.
     *
     * @param words where it comes from
     */
    @Transactional
    public Run late(Act act, String code, @Nullable BigDecimal delay_s, @Nullable String words) {
        return turn.on(act, "note-quench", code, row -> {
            requireQuench(act, row);
            if (delay_s == null || delay_s.signum() <= 0 || delay_s.compareTo(LONGEST_S) > 0) {
                throw Refusal.input(
                        "delay",
                        DEED,
                        delay_s == null
                                ? "The time is missing."
                                : delay_s.toPlainString() + " s is not above 0 and at most " + LONGEST_S + " s.",
                        "Enter the seconds from the door's first move until the last of the load is under water.");
            }
            keep(
                    row,
                    new QuenchRow(
                            row.id(),
                            delay_s,
                            texts.keep(
                                    Chains.SHOP,
                                    row.id(),
                                    "a quench",
                                    TypedText.line("words", "Where the time comes from", DEED, words, 400)),
                            act));
        });
    }

    private void requireQuench(Act act, RunRow row) {
        Programme programme = programmes.revision(row.revisionId());
        turn.requireLoader(act.by(), programme, DEED);
        row.requireAt("noted", RunState.RUNNING, RunState.STOPPED);
        if (programme.content().quenchDelay_s() == null) {
            throw Refusal.state(
                    DEED, "Programme " + programme.called() + " asks for no quench.", "Note it on the frame.");
        }
    }

    private void keep(RunRow row, QuenchRow quench) {
        rows.saveAndFlush(quench);
        logs.findFirstByRunIdOrderByIdDesc(row.id())
                .ifPresent(log -> row.judge(judge.judged(row, log.kept().read())));
    }
}
