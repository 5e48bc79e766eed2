package org.trammel.calc.thermal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.io.StringReader;
import java.lang.management.ManagementFactory;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A million rows of two thermocouples, a row a second: read, drawn, stored and judged, beside a plain loop that splits the same
 * lines and parses them by the library. Started by {@code ops/bench/log}; ends with 1 if rows are lost on the way, never for
 * being slow.
 */
final class LogBenchmark {

    private static final int ROWS = 1_000_000;
    private static final int ROUNDS = 6;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss");

    private static final List<Thermocouple> THERMOCOUPLES =
            List.of(Thermocouple.of("TC-07", ThermocoupleRole.LOAD), Thermocouple.of("TC-08", ThermocoupleRole.LOAD));

    private LogBenchmark() {}

    /** Something that takes time and tells how many rows it met. */
    private interface Work {
        int rows() throws IOException;
    }

    public static void main(String[] arguments) throws IOException {
        String text = text();
        boolean worthIt = true;
        PrintStream out = System.out;
        out.printf(
                Locale.ROOT, "%d rows of two thermocouples, %.0f MB of text; one thread%n", ROWS, text.length() / 1e6);
        for (int round = 0; round < ROUNDS; round++) {
            ReadLog[] log = new ReadLog[1];
            double[] plain = timed(() -> plainly(new StringReader(text)));
            double[] read = timed(() -> {
                log[0] = OvenRuns.value(LoggerFile.read(new StringReader(text), LogChoices.in(OvenRuns.ZONE)));
                return log[0].samples().rows();
            });
            Samples samples = log[0].samples();
            byte[][] bytes = new byte[1][];
            double[] stored = timed(() -> {
                bytes[0] = SampleEncoding.encode(samples);
                return OvenRuns.value(SampleEncoding.decode(bytes[0])).rows();
            });
            double[] drawn = timed(() -> LogDrawing.of(samples, 0, samples.first(), samples.last(), 1200, 120_000)
                            .size()
                    + LogDrawing.of(samples, 1, samples.first(), samples.last(), 1200, 120_000)
                            .size());
            double[] judged =
                    timed(() -> OvenRuns.value(RunVerdict.of(samples, THERMOCOUPLES, programme(), RunRules.usual()))
                            .steps()
                            .size());
            out.printf(
                    Locale.ROOT,
                    "round %d%s: plain loop %.0f ms, read %.0f ms = %.2f of it; stored and back %.0f ms, %.2f bytes a"
                            + " reading; drawn %.0f ms; judged %.0f ms (processor time)%n",
                    round + 1,
                    round == 0 ? " (cold)" : "",
                    plain[0],
                    read[0],
                    read[0] / plain[0],
                    stored[0],
                    bytes[0].length / (2.0 * ROWS),
                    drawn[0],
                    judged[0]);
            worthIt &= plain[1] == ROWS && read[1] == ROWS && stored[1] == ROWS && drawn[1] > 2400 && judged[1] == 1;
        }
        System.exit(worthIt ? 0 : 1);
    }

    private static double[] timed(Work work) throws IOException {
        long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        int rows = work.rows();
        return new double[] {(ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began) / 1e6, rows};
    }

    private static OvenProgramme programme() {
        return OvenRuns.value(OvenProgramme.of(
                List.of(OvenStep.of(177, 5, 8)), null, new OvenProgramme.Worth(177, OvenRuns.activation(), 8.0, null)));
    }

    private static String text() {
        StringBuilder text = new StringBuilder("Time;TC-07 °C;TC-08 °C\n");
        LocalDateTime start = LocalDateTime.of(2026, 5, 10, 18, 0);
        Random random = new Random(6);
        for (int row = 0; row < ROWS; row++) {
            double degC = Math.min(177, 22 + row / 20.0) + random.nextInt(5) / 10.0;
            text.append(TIME.format(start.plusSeconds(row)));
            tenths(text.append(';'), degC);
            tenths(text.append(';'), degC + 1.5);
            text.append('\n');
        }
        return text.toString();
    }

    private static void tenths(StringBuilder text, double degC) {
        long tenths = Math.round(degC * 10);
        text.append(tenths / 10).append(',').append(tenths % 10);
    }

    /** What anybody would write first: no checks, nothing but this one form. */
    private static int plainly(Reader text) throws IOException {
        BufferedReader lines = new BufferedReader(text);
        lines.readLine();
        long[] times = new long[ROWS];
        double[][] degC = new double[2][ROWS];
        int row = 0;
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            String[] fields = line.split(";");
            times[row] = LocalDateTime.parse(fields[0], TIME).toEpochSecond(ZoneOffset.UTC);
            degC[0][row] = Double.parseDouble(fields[1].replace(',', '.'));
            degC[1][row] = Double.parseDouble(fields[2].replace(',', '.'));
            row++;
        }
        return times[row - 1] > 0 && degC[0][row - 1] > 0 ? row : 0;
    }
}
