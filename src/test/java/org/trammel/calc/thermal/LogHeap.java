package org.trammel.calc.thermal;

import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * A record of 200 MB read, stored and read back in the heap it is started with, its text made on the way and kept nowhere: in
 * order, in shuffled blocks, and the last row first. Started by {@code ops/bench/log} with several heaps; ends with 1 where the
 * heap is too small or a row is lost.
 */
final class LogHeap {

    private static final long BYTES = 200_000_000;
    private static final int BLOCK = 1000;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss");
    private static final LocalDateTime START = LocalDateTime.of(2026, 4, 10, 18, 0);

    private LogHeap() {}

    /** Where the rows of a file stand. */
    private enum Order {
        AS_TIME_GOES,
        SHUFFLED,
        LAST_FIRST;

        int row(int place, int rows) {
            int blocks = rows / BLOCK;
            return switch (this) {
                case AS_TIME_GOES -> place;
                case SHUFFLED -> (int) (place / BLOCK * 7919L % blocks) * BLOCK + place % BLOCK * 617 % BLOCK;
                case LAST_FIRST -> rows - 1 - place;
            };
        }
    }

    public static void main(String[] arguments) throws IOException {
        PrintStream out = System.out;
        int channels = Integer.parseInt(arguments[0]);
        int rows = (int) (BYTES / row(0, channels).length() / BLOCK * BLOCK);
        for (Order order : Order.values()) {
            Samples read = OvenRuns.value(LoggerFile.read(text(order, rows, channels), LogChoices.in(OvenRuns.ZONE)))
                    .samples();
            int there = read.rows();
            byte[] stored = SampleEncoding.encode(read);
            read = null;
            int back = OvenRuns.value(SampleEncoding.decode(stored)).rows();
            out.printf(
                    Locale.ROOT,
                    "%d thermocouples, %s: %d of %d rows, stored in %.1f MB%n",
                    channels,
                    order,
                    there,
                    rows,
                    stored.length / 1e6);
            if (there != rows || back != rows) {
                System.exit(1);
            }
        }
    }

    private static String row(int row, int channels) {
        StringBuilder text = new StringBuilder(TIME.format(START.plusSeconds(row)));
        for (int channel = 0; channel < channels; channel++) {
            long tenths = Math.min(1770, 220 + row / 2) + (row * 31L + channel * 17L) % 5;
            text.append(';').append(tenths / 10).append(',').append(tenths % 10);
        }
        return text.append('\n').toString();
    }

    private static Reader text(Order order, int rows, int channels) {
        List<String> names = java.util.stream.IntStream.range(0, channels)
                .mapToObj(channel -> "TC-" + channel + " °C")
                .toList();
        return new Reader() {

            private String piece = "Time;" + String.join(";", names) + "\n";
            private int at;
            private int place;

            @Override
            public int read(char[] into, int from, int length) {
                if (at == piece.length()) {
                    if (place == rows) {
                        return -1;
                    }
                    piece = row(order.row(place++, rows), channels);
                    at = 0;
                }
                int taken = Math.min(length, piece.length() - at);
                piece.getChars(at, at + taken, into, from);
                at += taken;
                return taken;
            }

            @Override
            public void close() {
                // nothing is open
            }
        };
    }
}
