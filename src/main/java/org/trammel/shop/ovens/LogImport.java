package org.trammel.shop.ovens;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.thermal.HowRead;
import org.trammel.calc.thermal.LogChoices;
import org.trammel.calc.thermal.LogEncoding;
import org.trammel.calc.thermal.LoggerFile;
import org.trammel.calc.thermal.ReadLog;
import org.trammel.calc.thermal.SampleEncoding;
import org.trammel.calc.thermal.Samples;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/**
 * Reads what a logger recorded of a run. A file is read whole or refused with its line; what was read is looked at before it
 * is taken, and only what is taken judges. Rows of another run of the oven are left out.
 */
@Service
public class LogImport {

    private static final int FIRST = 8192;
    private static final int LONGEST_HOW = 20_000;
    private static final Duration BEFORE = Duration.ofMinutes(30);
    private static final Duration BEHIND = Duration.ofHours(3);

    private final RunRepository rows;
    private final LogRepository logs;
    private final LogDraftRepository drafts;
    private final WiredRepository wired;
    private final Runs runs;
    private final RunJudge judge;
    private final Crew crew;
    private final Settings settings;
    private final RunDoubts doubts;
    private final Formats formats;
    private final ActLog log;

    LogImport(
            RunRepository rows,
            LogRepository logs,
            LogDraftRepository drafts,
            WiredRepository wired,
            Runs runs,
            RunJudge judge,
            Crew crew,
            Settings settings,
            RunDoubts doubts,
            Formats formats,
            ActLog log) {
        this.rows = rows;
        this.logs = logs;
        this.drafts = drafts;
        this.wired = wired;
        this.runs = runs;
        this.judge = judge;
        this.crew = crew;
        this.settings = settings;
        this.doubts = doubts;
        this.formats = formats;
        this.log = log;
    }

    /**
     * What the file does not say of itself.
     *
     * @param zone whose clock its times are, where it names none; the shop's where this is null
     * @param dayFirst whether 03/04 is 3 April, where no row shows it
     * @param countsFromStart whether it counts from its own start, which is then the start of the run
     */
    public record Choices(@Nullable ZoneId zone, @Nullable Boolean dayFirst, boolean countsFromStart) {}

    /** Reads a file and keeps it to be looked at; nothing is judged by it before it is taken. */
    @Transactional
    public Run read(Act act, String code, InputStream file, String name, Choices choices) {
        RunRow row = runs.row(code);
        String deed = "The record was not read.";
        requireMay(act.by(), deed);
        Instant started = row.startedAt();
        if (started == null || row.state() != RunState.STOPPED) {
            throw Refusal.state(
                    deed,
                    "Run " + row.code() + " is " + row.state().word() + ".",
                    "A record is read once the run is stopped and before it is decided.");
        }
        // Read first: a large file takes seconds, and nobody else waits for it.
        KeptLog kept = kept(row, started, file, name, choices, act.at(), deed);
        if (!log.opens(act, "read-record", "run:" + row.code(), Chains.SHOP)) {
            return runs.run(row);
        }
        drafts.drop(row.id());
        drafts.saveAndFlush(new LogDraftRow(row.id(), kept, act));
        log.event(Chains.SHOP, "record-read", Map.of("run", row.id(), "sha256", kept.sha256()));
        return runs.run(row);
    }

    private KeptLog kept(
            RunRow row, Instant started, InputStream file, String name, Choices choices, Instant now, String deed) {
        MessageDigest sha256 = sha256();
        try (BufferedInputStream in = new BufferedInputStream(new DigestInputStream(file, sha256), FIRST * 2)) {
            in.mark(FIRST + 1);
            byte[] first = in.readNBytes(FIRST);
            in.reset();
            if (first.length == 0) {
                throw Refusal.input("file", deed, "The file is empty.", "Save the record from the logger again.");
            }
            Answer<ReadLog> answer =
                    LoggerFile.read(new InputStreamReader(in, LogEncoding.of(first)), choices(row, started, choices));
            if (answer instanceof Answer.NotDeterminable<ReadLog> none) {
                Answer.Gap gap = none.gaps().get(0);
                throw Refusal.input(
                        "file",
                        deed,
                        gap.words(),
                        "Nothing of it was taken. Put the file right, or say what it does not say, and send it again.");
            }
            ReadLog read = ((Answer.Determined<ReadLog>) answer).value();
            requireChannels(row, read.samples(), deed);
            requirePast(read.samples(), now, deed);
            while (in.read() >= 0) {
                // to the end, so that the hash is of the whole file
            }
            return new KeptLog(
                    row.id(),
                    name(name),
                    HexFormat.of().formatHex(sha256.digest()),
                    SampleEncoding.encode(read.samples()),
                    how(read),
                    0,
                    started);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The run with some time around it, as far as no other run of the oven reaches into that. */
    private LogChoices choices(RunRow row, Instant started, Choices choices) {
        Instant stopped = row.stoppedAt();
        Instant until = stopped == null ? started : stopped;
        Instant from = started.minus(BEFORE);
        Instant to = until.plus(BEHIND);
        Instant before = rows.stoppedBefore(row.ovenId(), started).orElse(from);
        Instant after = rows.startedAfter(row.ovenId(), until).orElse(to);
        LogChoices said = LogChoices.in(choices.zone() == null ? settings.zone() : choices.zone());
        if (choices.dayFirst() != null) {
            said = said.dayFirst(choices.dayFirst());
        }
        if (choices.countsFromStart()) {
            said = said.startedAt(started);
        }
        return said.within(before.isAfter(from) ? before : from, after.isBefore(to) ? after : to);
    }

    private void requireChannels(RunRow row, Samples samples, String deed) {
        List<String> missing = wired.findByRunIdOrderByCode(row.id()).stream()
                .filter(one -> one.role() == org.trammel.calc.thermal.ThermocoupleRole.LOAD)
                .map(WiredRow::logColumn)
                .filter(column -> samples.channel(column) < 0)
                .toList();
        if (!missing.isEmpty()) {
            throw Refusal.input(
                    "file",
                    deed,
                    "The record has no column " + String.join(", ", missing) + "; it has "
                            + String.join(", ", samples.channels()) + ".",
                    "Say on the run which column each load thermocouple is, or send the record of this run.");
        }
    }

    /** What has not happened yet nobody recorded. */
    private void requirePast(Samples samples, Instant now, String deed) {
        if (samples.last().isAfter(now)) {
            throw Refusal.input(
                    "file",
                    deed,
                    "Its last row is of " + formats.moment(samples.last()) + ", which has not come yet.",
                    "Say whose clock its times are, or set the logger's clock; nothing of it was taken.");
        }
    }

    private static String how(ReadLog read) {
        HowRead how = read.how();
        List<String> lines = new ArrayList<>();
        lines.add("Fields are parted by " + separator(how.separator()) + ", figures have a decimal "
                + (how.decimalSign() == org.trammel.calc.units.DecimalSign.COMMA ? "comma" : "point") + ".");
        lines.add(how.times());
        lines.add(
                how.headerLine() == 0
                        ? "No line names the columns."
                        : "Line " + how.headerLine() + " names the columns.");
        how.columns()
                .forEach(column -> lines.add("Column " + column.name() + ": "
                        + switch (column.content()) {
                            case TIME -> "time.";
                            case DEG_C -> "°C, " + column.open() + " rows without a reading.";
                            case DEG_F -> "°F, turned into °C; " + column.open() + " rows without a reading.";
                            case LEFT_OUT -> "not read.";
                        }));
        lines.add(how.rows() + " rows are kept; " + how.duplicates() + " repeated another and were left out, "
                + how.unordered() + " were put in their place, " + how.outside() + " lie outside the run.");
        lines.addAll(how.notices());
        String all = String.join("\n", lines);
        return all.length() <= LONGEST_HOW ? all : all.substring(0, all.lastIndexOf('\n', LONGEST_HOW));
    }

    private static String separator(char separator) {
        return switch (separator) {
            case ',' -> "commas";
            case ';' -> "semicolons";
            default -> "tabs";
        };
    }

    /** Takes the record that was looked at; the run is judged by it from now on. */
    @Transactional
    public Run take(Act act, String code, long draftId) {
        String deed = "The record was not taken.";
        if (!log.opens(act, "take-record", "run:" + Ovens.label(code), Chains.SHOP)) {
            return runs.byCode(code);
        }
        RunRow row = runs.row(code);
        requireMay(act.by(), deed);
        row.requireAt("judged", RunState.STOPPED);
        LogDraftRow draft = drafts.findByRunId(row.id())
                .filter(one -> one.id() == draftId)
                .orElseThrow(() -> Refusal.stale(
                        deed, "Another record was read since, or it was taken.", "Look at the run as it is now."));
        KeptLog kept = draft.kept();
        LogRow taken = logs.save(new LogRow(row.id(), kept, act));
        drafts.drop(row.id());
        RunRow fresh = runs.row(code);
        fresh.judge(judge.judged(fresh, kept.read()));
        rows.saveAndFlush(fresh);
        doubts.recorded(act, fresh.id());
        log.event(
                Chains.SHOP,
                "record-taken",
                Map.of(
                        "run",
                        fresh.id(),
                        "record",
                        taken.id(),
                        "sha256",
                        kept.sha256(),
                        "judged",
                        fresh.judged() == null ? "" : fresh.judged().name()));
        return runs.run(fresh);
    }

    private void requireMay(long personId, String deed) {
        if (!crew.byId(personId).mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here reads it in.");
        }
    }

    private static String name(String typed) {
        String last = typed.replaceAll("\\p{C}", " ")
                .replaceAll(".*[/\\\\]", "")
                .replaceAll("\\s+", " ")
                .strip();
        String known = last.isEmpty() ? "record" : last;
        return known.length() <= 200 ? known : known.substring(known.length() - 200);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException(never);
        }
    }
}
