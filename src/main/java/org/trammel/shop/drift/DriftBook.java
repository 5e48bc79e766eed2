package org.trammel.shop.drift;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.statistics.Baseline;
import org.trammel.calc.statistics.ControlChart;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.web.Formats;

/** The QA lead's verbs on drift charts: what is watched, over which base, and what was read before this program. */
@Service
public class DriftBook {

    private static final int MOST_EARLIER = 2000;
    private static final int LONGEST_SET = 120;

    private final SeriesRepository series;
    private final BaseRepository bases;
    private final HistoryRepository histories;
    private final StrikeRepository strikes;
    private final EarlierWelders welders;
    private final DriftCharts charts;
    private final KeptCharts keeper;
    private final JigCalls calls;
    private final Stations stations;
    private final Crew crew;
    private final Settings settings;
    private final Formats formats;
    private final ActLog log;

    DriftBook(
            SeriesRepository series,
            BaseRepository bases,
            HistoryRepository histories,
            StrikeRepository strikes,
            EarlierWelders welders,
            DriftCharts charts,
            KeptCharts keeper,
            JigCalls calls,
            Stations stations,
            Crew crew,
            Settings settings,
            Formats formats,
            ActLog log) {
        this.series = series;
        this.bases = bases;
        this.histories = histories;
        this.strikes = strikes;
        this.welders = welders;
        this.charts = charts;
        this.keeper = keeper;
        this.calls = calls;
        this.stations = stations;
        this.crew = crew;
        this.settings = settings;
        this.formats = formats;
        this.log = log;
    }

    /** Begins to watch an axis. */
    @Transactional
    public Series watch(Act act, NewSeries entry) {
        String not = "The axis is not watched.";
        if (!log.opens(act, "watch-axis", "axis:" + entry.code(), Chains.SHOP)) {
            return series.findByActId(act.id()).orElseThrow().series();
        }
        crew.require(act.by(), not, Role.QA_LEAD);
        NewSeries read = new NewSeries(
                entry.by(),
                followed(entry, not),
                TypedText.line("code", "The characteristic", not, entry.code(), 20),
                TypedText.line("name", "Its name", not, entry.name(), 120),
                TypedText.line("unit", "Its unit", not, entry.unit(), 20),
                entry.scaled());
        if (charts.of(read.code()).stream()
                .anyMatch(each -> each.by() == read.by() && each.of().equals(read.of()))) {
            throw Refusal.input(
                    "code",
                    not,
                    read.code() + " is watched for " + read.by().word() + " " + read.of() + " already.",
                    "Open its chart from the list.");
        }
        Series kept = series.save(new SeriesRow(act, read)).series();
        keeper.begin(kept);
        log.event(
                Chains.SHOP,
                "axis-watched",
                Map.of("series", kept.id(), "by", kept.by().name(), "code", kept.code(), "scaled", kept.scaled()));
        return kept;
    }

    private String followed(NewSeries entry, String not) {
        return switch (entry.by()) {
            case JIG ->
                stations.jig(entry.of())
                        .orElseThrow(() -> Refusal.input(
                                "jig", not, "There is no jig " + entry.of() + ".", "Choose one of the shop's jigs."))
                        .code();
            case WELDER ->
                crew.byInitials(entry.of())
                        .orElseThrow(() -> Refusal.input(
                                "welder",
                                not,
                                "Nobody here has the initials " + entry.of() + ".",
                                "Enter those of somebody who welds or did."))
                        .initials();
            case TUBE_SET -> TypedText.line("tubeSet", "The tube set", not, entry.of(), LONGEST_SET);
        };
    }

    /** Takes a base and freezes the limits made of it; the one before stays on record. */
    @Transactional
    public void base(Act act, long seriesId, NewBase entry) {
        String not = "The base was not taken.";
        keeper.hold(seriesId);
        if (!log.opens(act, "take-base", "series:" + seriesId, Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), not, Role.QA_LEAD);
        Series of = charts.required(seriesId);
        List<Base> before = charts.bases(seriesId);
        Long inForce = before.isEmpty() ? null : before.get(0).id();
        if (!Objects.equals(inForce, entry.seen())) {
            throw Refusal.stale(
                    not,
                    "Another base was taken meanwhile.",
                    "Look at the chart as it is now and take a base if it is still wrong.");
        }
        if (entry.stopsJig() && of.by() != Factor.JIG) {
            throw Refusal.input(
                    "stopsJig",
                    not,
                    "The chart follows a " + of.by().word() + ", and an alarm can stop a jig only.",
                    "Leave the box empty: an alarm calls.");
        }
        Digits.require(entry, not);
        String source = TypedText.line("source", "The source", not, entry.source(), 400);
        String reason = TypedText.words("reason", "The reason", not, entry.reason(), 1000);
        NewBase read = new NewBase(
                entry.kind(),
                entry.first(),
                entry.from(),
                entry.until(),
                entry.centre(),
                entry.sigma(),
                entry.weight(),
                entry.width(),
                entry.slack(),
                entry.decision(),
                entry.stopsJig(),
                source,
                reason,
                entry.seen());
        BaseChoice choice = BaseChoice.of(of, charts.chartable(of), read, settings.zone(), not);
        Baseline taken = value(choice.baseline(), not);
        if (BaseRow.kept(taken.sigma()).signum() == 0) {
            throw Refusal.input(
                    entry.kind() == Base.Kind.GIVEN ? "sigma" : "first",
                    not,
                    "The standard deviation is nothing within the ten digits that are kept.",
                    "Choose readings of a gauge that tells them apart, or give centre and standard deviation by hand.");
        }
        requireCharts(read, taken, not);
        Base kept = bases.save(new BaseRow(act, seriesId, read, taken, choice.starts(), choice.ends()))
                .base();
        Map<String, Object> facts = new HashMap<>();
        facts.put("series", seriesId);
        facts.put("base", kept.id());
        facts.put("kind", kept.kind().name());
        facts.put("centre", kept.centre().toPlainString());
        facts.put("sigma", kept.sigma().toPlainString());
        facts.put("readings", kept.readings());
        facts.put("stopsJig", kept.stopsJig());
        log.event(Chains.SHOP, "base-taken", facts);
        keeper.again(List.of(of));
        calls.look(act, of);
    }

    /** A λ above one, an h of nothing: said here, not when the next frame is read. */
    private void requireCharts(NewBase entry, Baseline taken, String not) {
        List<Double> one = List.of(taken.mean());
        value(ControlChart.weightedMean(one, taken, entry.weightedMean()), not);
        value(ControlChart.cumulativeSum(one, taken, entry.cumulativeSum()), not);
    }

    private <T> T value(Answer<T> answer, String not) {
        if (answer instanceof Answer.NotDeterminable<T> none) {
            Answer.Gap gap = none.gaps().get(0);
            throw Refusal.input(
                    gap.input().equals("readings") ? "first" : gap.input(),
                    not,
                    formats.sentence(gap.words()),
                    "Choose other readings or figures.");
        }
        return ((Answer.Determined<T>) answer).value();
    }

    /**
     * Takes over what was read before this program.
     *
     * @param source where it was written down, such as the notebook of the alignment table
     */
    @Transactional
    public void takeOver(Act act, long seriesId, List<EarlierReading> entries, String source) {
        String not = "The earlier readings were not taken over.";
        keeper.hold(seriesId);
        if (!log.opens(act, "take-over-readings", "series:" + seriesId, Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), not, Role.QA_LEAD);
        Series of = charts.required(seriesId);
        if (of.by() != Factor.JIG) {
            throw Refusal.state(
                    not,
                    "The chart follows a " + of.by().word() + ".",
                    "Take them over on the chart of their jig, with welder and tube set: they stand here then as well.");
        }
        String from = TypedText.line("source", "The source", not, source, 400);
        if (entries.isEmpty() || entries.size() > MOST_EARLIER) {
            throw Refusal.input(
                    "lines",
                    not,
                    entries.isEmpty() ? "There is no line." : "More than " + MOST_EARLIER + " lines came at once.",
                    entries.isEmpty() ? "Enter one line for each frame." : "Enter them in parts.");
        }
        LocalDate today = settings.today();
        int place = 0;
        Instant last = null;
        Map<Long, String> welded = new HashMap<>();
        for (EarlierReading entry : entries) {
            place++;
            Instant at = noon(entry, place, today, last, not);
            last = at;
            EarlierReading read = EarlierForm.checked(entry, place, of.unit(), not);
            long row = histories
                    .save(new HistoryRow(act, seriesId, place, read, at, from))
                    .id();
            if (read.welder() != null) {
                welded.put(row, read.welder());
            }
        }
        welders.keep(welded);
        log.event(Chains.SHOP, "earlier-readings-taken-over", Map.of("series", seriesId, "readings", entries.size()));
        lookAtAll(act, of);
    }

    /** Strikes out a reading from before this program that was wrong. It stays on record with the reason. */
    @Transactional
    public void strike(Act act, long seriesId, long historyId, String reason) {
        String not = "The reading was not struck out.";
        keeper.hold(seriesId);
        if (!log.opens(act, "strike-out-reading", "series:" + seriesId, Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), not, Role.QA_LEAD);
        Series of = charts.required(seriesId);
        histories
                .findById(historyId)
                .filter(row -> row.seriesId() == seriesId)
                .orElseThrow(() -> Refusal.missing(
                        not,
                        "No reading from before this program stands here under this number.",
                        "Choose it on the chart of its jig."));
        if (strikes.existsByHistoryId(historyId)) {
            throw Refusal.state(not, "It was struck out before.", "Look at the chart as it is now.");
        }
        strikes.save(new StrikeRow(act, historyId, TypedText.words("reason", "The reason", not, reason, 1000)));
        log.event(Chains.SHOP, "earlier-reading-struck-out", Map.of("series", seriesId, "reading", historyId));
        lookAtAll(act, of);
    }

    /** What stands on a jig's chart stands on those of welders and tube sets too. */
    private void lookAtAll(Act act, Series jig) {
        List<Series> all = charts.of(jig.code()).stream()
                .filter(each -> each.by() != Factor.JIG || each.id() == jig.id())
                .toList();
        keeper.again(all);
        all.forEach(each -> calls.look(act, each));
    }

    /** Lines of one day keep their order: each stands a second after the one before. */
    private Instant noon(EarlierReading entry, int place, LocalDate today, @Nullable Instant last, String not) {
        if (entry.readOn().isAfter(today)) {
            throw Refusal.input(
                    "lines",
                    not,
                    "Line " + place + " was read on " + entry.readOn() + ", which is still to come.",
                    "Enter the day it was read.");
        }
        Instant noon = entry.readOn().atTime(12, 0).atZone(settings.zone()).toInstant();
        if (last != null && last.isAfter(noon.plusSeconds(MOST_EARLIER))) {
            throw Refusal.input(
                    "lines",
                    not,
                    "Line " + place + " was read before the line above it.",
                    "Enter them in the order of time, the oldest first.");
        }
        return last == null || last.isBefore(noon) ? noon : last.plusSeconds(1);
    }
}
