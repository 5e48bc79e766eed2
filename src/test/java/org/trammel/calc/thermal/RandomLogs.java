package org.trammel.calc.thermal;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A log whose meaning is known, written in one of the many ways that loggers write. */
final class RandomLogs {

    static final ZoneId ZONE = ZoneId.of("Europe/Stockholm");

    final Random random;
    final char separator;
    final char decimal;
    final String form;
    final String end;
    final int channels;
    final int rows;
    final long[] times;
    final int[][] readings;
    final List<String> lines = new ArrayList<>();
    final int firstRow;

    RandomLogs(long seed) {
        random = new Random(seed);
        separator = ";\t,".charAt(random.nextInt(3));
        decimal = separator == ',' ? '.' : ".,".charAt(random.nextInt(2));
        List<String> forms = List.of(
                "yyyy-MM-dd'T'HH:mm:ssXXX",
                "yyyy-MM-dd HH:mm:ss",
                "dd.MM.yyyy HH:mm:ss",
                "yyyy/MM/dd HH:mm:ss XX",
                "M/d/yyyy h:mm:ss a",
                "dd.MM.yyyy'#'HH:mm:ss",
                "yyyy-MM-dd HH:mm:ss.SSS");
        form = forms.get(random.nextInt(forms.size())).replace('#', separator);
        end = random.nextBoolean() ? "\n" : "\r\n";
        channels = 1 + random.nextInt(4);
        rows = 5 + random.nextInt(30);
        times = new long[rows];
        readings = new int[channels][rows];
        // through the nights on which the clock is set as well, a quarter of them
        boolean clockSet = random.nextInt(4) == 0;
        Instant start = !clockSet
                ? Instant.parse("2026-05-13T08:00:00Z").plusSeconds(random.nextInt(10_000_000))
                : Instant.parse(random.nextBoolean() ? "2026-10-24T23:50:00Z" : "2026-03-29T00:50:00Z");
        for (int row = 0; row < rows; row++) {
            times[row] = start.plusSeconds((clockSet ? 300L : 60L) * row).toEpochMilli();
            for (int channel = 0; channel < channels; channel++) {
                readings[channel][row] =
                        random.nextInt(40) == 0 ? Samples.OPEN : 100 * (random.nextInt(2000) - 50) + 100_000;
            }
        }
        if (random.nextBoolean()) {
            lines.add("Recorder 12");
        }
        lines.add(names());
        if (random.nextInt(4) == 0) {
            lines.add("");
        }
        firstRow = lines.size();
        for (int row = 0; row < rows; row++) {
            lines.add(line(row));
        }
    }

    private String names() {
        StringBuilder names = new StringBuilder(form.indexOf(separator) >= 0 ? "Date" + separator + "Time" : "Time");
        for (int channel = 0; channel < channels; channel++) {
            names.append(separator).append("TC-").append(channel).append(random.nextBoolean() ? " °C" : " [°C]");
        }
        return names.toString();
    }

    String line(int row) {
        StringBuilder line = new StringBuilder(time(times[row]));
        for (int channel = 0; channel < channels; channel++) {
            line.append(separator).append(figure(readings[channel][row]));
        }
        return line.toString();
    }

    String time(long time_ms) {
        return DateTimeFormatter.ofPattern(form, Locale.ENGLISH)
                .format(Instant.ofEpochMilli(time_ms).atZone(ZONE));
    }

    String figure(int reading) {
        if (reading == Samples.OPEN) {
            return random.nextBoolean() ? "OPEN" : "---";
        }
        String plain =
                BigDecimal.valueOf(reading, 3).setScale(1).toPlainString().replace('.', decimal);
        return random.nextInt(10) == 0 ? '"' + plain + '"' : plain;
    }

    /** The date alone does not tell day and month; the program that reads is told. */
    LogChoices choices() {
        return LogChoices.in(ZONE).dayFirst(false);
    }

    Samples meant() {
        List<String> names = new ArrayList<>();
        for (int channel = 0; channel < channels; channel++) {
            names.add("TC-" + channel);
        }
        return Samples.of(names, times, readings);
    }

    String text(List<String> written) {
        return (random.nextInt(3) == 0 ? "\uFEFF" : "") + String.join(end, written) + end;
    }
}
