package org.trammel.shop.ovens;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.thermal.EquivalentHours;
import org.trammel.calc.thermal.EquivalentTime;
import org.trammel.calc.thermal.HeatLedger;
import org.trammel.calc.thermal.LoadTrace;
import org.trammel.calc.units.Answer;
import org.trammel.shop.settings.Settings;

/**
 * The heat that a frame has seen since its age. A visit is counted by its record, at the hottest load thermocouple since that
 * is as much as any part may have got; while it has none, by what its programme is worth.
 */
@Service
@Transactional(readOnly = true)
public class HeatLedgers {

    private final LoadedRepository frames;
    private final RunRepository runs;
    private final WiredRepository wired;
    private final LogRepository logs;
    private final Programmes programmes;
    private final RunDoubts doubts;
    private final Settings settings;

    HeatLedgers(
            LoadedRepository frames,
            RunRepository runs,
            WiredRepository wired,
            LogRepository logs,
            Programmes programmes,
            RunDoubts doubts,
            Settings settings) {
        this.frames = frames;
        this.runs = runs;
        this.wired = wired;
        this.logs = logs;
        this.programmes = programmes;
        this.doubts = doubts;
        this.settings = settings;
    }

    /**
     * A visit to an oven.
     *
     * @param at when it started; of one that has not, when the load was opened
     * @param byRecord whether it was counted by its record, else by its programme
     * @param ahead whether it has not started yet
     */
    public record Visit(
            String run,
            String part,
            String programme,
            Instant at,
            EquivalentHours hours,
            boolean byRecord,
            boolean ahead) {}

    /**
     * A frame's ledger.
     *
     * @param aged whether a run here aged it; else it counts from the first visit
     * @param sums in its last line with what is left
     */
    public record Sheet(
            String serial,
            String metal,
            double reference_degC,
            double age_h,
            double share,
            boolean aged,
            List<Visit> visits,
            HeatLedger sums) {

        public Sheet {
            visits = List.copyOf(visits);
        }

        public String words() {
            return sums.words(aged);
        }
    }

    /**
     * The ledger of a frame or a part of one; empty for a metal that is not aged. What a whole frame saw counts for each of
     * its parts.
     *
     * @param next a programme it is asked about, or null
     * @param but a run left out, because it is the one that is asked about
     */
    public Optional<Sheet> of(
            String serial, String part, String metal, @Nullable Programme next, @Nullable String but) {
        return MetalHeat.of(metal, settings).map(heat -> {
            Since since = new Since();
            List<Visit> visits = since.visits;
            for (LoadedRow frame : frames.findBySerialOrderById(serial)) {
                String of = frame.part();
                boolean concerns = of.equals(part) || of.isEmpty() || part.isEmpty();
                RunRow run = runs.findById(frame.runId()).orElseThrow();
                if (concerns && counts(frame, run) && !run.code().equals(but)) {
                    visit(since, of, run, heat);
                }
            }
            Answer<HeatLedger> sums = HeatLedger.of(
                    heat.age_h(),
                    heat.share(),
                    visits.stream().map(Visit::hours).toList(),
                    next == null ? null : since.beyond(next, heat.worth(next)));
            if (sums instanceof Answer.NotDeterminable<HeatLedger> none) {
                throw org.trammel.shop.records.Refusal.state(
                        "The heat of the frame is not summed up.",
                        none.gaps().get(0).words(),
                        "Let the QA lead put the settings under Heat right.");
            }
            return new Sheet(
                    serial,
                    metal,
                    heat.reference_degC(),
                    heat.age_h(),
                    heat.share(),
                    since.aged,
                    visits,
                    ((Answer.Determined<HeatLedger>) sums).value());
        });
    }

    private static boolean counts(LoadedRow frame, RunRow run) {
        return frame.state() != FrameState.TAKEN_OUT && run.state() != RunState.CALLED_OFF;
    }

    /** What came since the last age, and what that fell short of: a top-up fills that first and adds what is left of it. */
    private static final class Since {

        private final List<Visit> visits = new ArrayList<>();
        private double short_h;
        private boolean aged;

        EquivalentHours beyond(Programme programme, EquivalentHours hours) {
            if (programme.purpose() != Purpose.TOP_UP) {
                return hours;
            }
            return new EquivalentHours(
                    Math.max(0, hours.usual_h() - short_h),
                    Math.max(0, hours.lowEnergy_h() - short_h),
                    Math.max(0, hours.highEnergy_h() - short_h));
        }
    }

    private void visit(Since since, String part, RunRow run, MetalHeat heat) {
        Programme programme = programmes.revision(run.revisionId());
        Optional<EquivalentTime> recorded =
                logs.findFirstByRunIdOrderByIdDesc(run.id()).flatMap(log -> recorded(log.kept(), run, heat));
        if (!programme.purpose().addsToTheLedger()) {
            // Solution treatment and a whole age begin the life of the temper anew; what came before is undone by them.
            if (run.startedAt() != null) {
                since.visits.clear();
                since.aged = programme.purpose() == Purpose.AGEING;
                since.short_h = programme.purpose() == Purpose.AGEING ? short_h(run, programme, recorded, heat) : 0;
            }
            return;
        }
        EquivalentHours hottest = recorded.map(EquivalentTime::hottest).orElseGet(() -> heat.worth(programme));
        EquivalentHours counted = since.beyond(programme, hottest);
        if (programme.purpose() == Purpose.TOP_UP) {
            since.short_h = Math.max(0, since.short_h - hottest.usual_h());
        }
        since.visits.add(new Visit(
                run.code(),
                part,
                programme.called(),
                run.startedAt() == null
                        ? run.run("", programme, List.of(), List.of(), List.of(), List.of())
                                .openedAt()
                        : run.startedAt(),
                counted,
                recorded.isPresent(),
                run.startedAt() == null));
    }

    /** What an age fell short of: by its record, or by the worst case of a thermocouple found wrong since. */
    private double short_h(RunRow run, Programme programme, Optional<EquivalentTime> recorded, MetalHeat heat) {
        double wanted = programme.content().least_h() == null
                ? heat.worth(programme).usual_h()
                : programme.content().least_h().doubleValue();
        double missing = recorded.map(time -> wanted - time.coldest().usual_h()).orElse(0.0);
        return Math.max(Math.max(0, missing), doubts.missing_h(run.id()));
    }

    private Optional<EquivalentTime> recorded(KeptLog log, RunRow run, MetalHeat heat) {
        Answer<EquivalentTime> time = LoadTrace.of(
                        log.read(),
                        wired.findByRunIdOrderByCode(run.id()).stream()
                                .map(WiredRow::computed)
                                .toList(),
                        Duration.ofMillis(Math.round(run.gapOrUsual_min() * 60_000)))
                .then(trace -> EquivalentTime.of(trace, heat.reference_degC(), heat.activation()));
        return time instanceof Answer.Determined<EquivalentTime> there ? Optional.of(there.value()) : Optional.empty();
    }
}
