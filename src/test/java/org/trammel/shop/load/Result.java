package org.trammel.shop.load;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.trammel.shop.outside.ServiceProcess;

/** What a measurement came to. */
final class Result {

    private static final int SHOWN = 10;

    final Timing bareAlone = new Timing();
    final Timing wholeAlone = new Timing();
    final Timing bareTogether = new Timing();
    final Timing wholeTogether = new Timing();
    final Timing sheetAlone = new Timing();
    final Timing sheetTogether = new Timing();
    final Timing listTogether = new Timing();
    long peakMemoryMb;
    private final History history;
    private final List<Double> starts = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();

    Result(History history) {
        this.history = history;
    }

    Result with(
            List<Double> startsSorted,
            ServiceProcess.Verified verified,
            ServiceProcess.Verified verifiedBare,
            List<List<String>> rows) {
        starts.addAll(startsSorted);
        if (verified.code() != 0) {
            wrong.add("The log does not verify: " + verified.words());
        }
        if (verifiedBare.code() != 0) {
            wrong.add("The log of the bare ticks does not verify: " + verifiedBare.words());
        }
        if (rows.get(0).isEmpty() || !rows.get(0).equals(rows.get(1))) {
            List<String> only = new ArrayList<>(rows.get(0));
            only.removeAll(rows.get(1));
            List<String> onlyBare = new ArrayList<>(rows.get(1));
            onlyBare.removeAll(rows.get(0));
            wrong.add("The bare tick is not the same work. Only by the service: "
                    + only.stream().limit(SHOWN).toList() + ", only barely: "
                    + onlyBare.stream().limit(SHOWN).toList());
        }
        return this;
    }

    /** Why the figures are worth nothing; empty if they are. */
    List<String> wrong() {
        return wrong;
    }

    void print(PrintStream out, String title) {
        out.println();
        out.println(title);
        out.printf(
                Locale.ROOT,
                "history: %d rows, written in %.0f s; its log verifies%n",
                history.rows(),
                history.seconds());
        out.println("times in ms                     |      n |   least |  median |     p99 |    most |  per s");
        line(out, "bare tick, 1 client", bareAlone);
        line(out, "whole tick, 1 client", wholeAlone);
        line(out, "bare tick, 8 clients", bareTogether);
        line(out, "whole tick, 8 clients", wholeTogether);
        line(out, "station sheet, 1 client", sheetAlone);
        line(out, "station sheet, 8 clients", sheetTogether);
        line(out, "list of a station, 8 clients", listTogether);
        ratio(out, "1 client", wholeAlone, bareAlone);
        ratio(out, "8 clients", wholeTogether, bareTogether);
        out.printf(
                Locale.ROOT,
                "start till ready: %.1f s (median of %d), %.1f s (most); memory: %d MB resident at most%n",
                starts.get(starts.size() / 2),
                starts.size(),
                starts.get(starts.size() - 1),
                peakMemoryMb);
        wrong.forEach(out::println);
    }

    private static void line(PrintStream out, String what, Timing timing) {
        out.printf(Locale.ROOT, "%-31s | %s%n", what, timing.line());
    }

    private static void ratio(PrintStream out, String who, Timing whole, Timing bare) {
        double[] rounds = whole.ratiosTo(bare);
        out.printf(
                Locale.ROOT,
                "whole tick / bare tick, %s: %.2f (medians of all; by rounds %.2f to %.2f)%n",
                who,
                whole.medianMs() / bare.medianMs(),
                rounds[0],
                rounds[rounds.length - 1]);
    }
}
