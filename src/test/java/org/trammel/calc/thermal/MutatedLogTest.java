package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.trammel.calc.units.Answer;

/** Thousands of files, written in every way and then spoiled: each is read as it means, or refused with line and reason. */
class MutatedLogTest {

    private static final int FILES = 3000;
    private static final long YEAR_MS = 366L * 86_400_000;

    @Test
    void everyFileIsReadAsItMeans() {
        for (int seed = 0; seed < FILES; seed++) {
            RandomLogs log = new RandomLogs(seed);
            String text = log.text(log.lines);
            ReadLog read = LoggerFileTest.read(text, log.choices());
            assertThat(read.samples()).as("seed %d\n%s", seed, text).isEqualTo(log.meant());
            assertThat(read.how().duplicates() + read.how().unordered()).isZero();
        }
    }

    @Test
    void rowsThatAreMovedRepeatedOrLostAreFoundOrRefused() {
        for (int seed = 0; seed < FILES; seed++) {
            RandomLogs log = new RandomLogs(seed);
            Random random = new Random(seed);
            List<String> lines = new ArrayList<>(log.lines);
            int row = random.nextInt(log.rows - 1);
            int line = log.firstRow + row;
            switch (seed % 4) {
                case 0 -> lines.add(line, lines.get(line));
                case 1 -> Collections.swap(lines, line, line + 1);
                case 2 -> lines.add(line, "");
                default -> lines.remove(line);
            }
            Answer<ReadLog> answer = LoggerFileTest.answer(log.text(lines), log.choices());
            if (answer instanceof Answer.NotDeterminable<ReadLog> refused) {
                // only in the hour that exists twice do rows that stand still or step back mean nothing certain
                assertThat(refused.gaps().get(0).words()).as("seed %d", seed).contains("which of the two hours");
                continue;
            }
            ReadLog read = ((Answer.Determined<ReadLog>) answer).value();
            Samples meant = seed % 4 == 3 ? without(log.meant(), row) : log.meant();
            assertThat(read.samples()).as("seed %d", seed).isEqualTo(meant);
            assertThat(read.how().duplicates()).as("seed %d", seed).isEqualTo(seed % 4 == 0 ? 1 : 0);
            assertThat(read.how().unordered()).as("seed %d", seed).isEqualTo(seed % 4 == 1 ? 1 : 0);
        }
    }

    private static Samples without(Samples all, int left) {
        long[] times = new long[all.rows() - 1];
        int[][] readings = new int[all.channels().size()][times.length];
        for (int row = 0; row < times.length; row++) {
            int from = row < left ? row : row + 1;
            times[row] = all.time_ms(from);
            for (int channel = 0; channel < readings.length; channel++) {
                readings[channel][row] = all.reading_mDegC(channel, from);
            }
        }
        return Samples.of(all.channels(), times, readings);
    }

    @Test
    void aRowThatIsSpoiledIsRefusedWithItsLine() {
        for (int seed = 0; seed < FILES; seed++) {
            RandomLogs log = new RandomLogs(seed);
            Random random = new Random(seed);
            int row = 1 + random.nextInt(log.rows - 1);
            int line = log.firstRow + row;
            List<String> lines = new ArrayList<>(log.lines);
            String was = lines.get(line);
            lines.set(line, spoiled(was, log, seed % 5));
            Answer.Gap gap = LoggerFileTest.refused(log.text(lines), log.choices());
            assertThat(gap.input())
                    .as("seed %d: %s, %s", seed, lines.get(line), gap.words())
                    .isEqualTo("line " + (line + 1));
            assertThat(gap.words()).startsWith("Line " + (line + 1) + ": ").endsWith(".");
        }
    }

    private static String spoiled(String line, RandomLogs log, int how) {
        int lastField = line.lastIndexOf(log.separator) + 1;
        return switch (how) {
            case 0 -> line.substring(0, lastField) + "17x,5";
            case 1 -> line.substring(0, lastField - 1) + line.substring(lastField);
            case 2 -> "x" + line;
            case 3 -> line + log.separator + "12";
            default -> line.substring(0, lastField) + "\"17";
        };
    }

    private static final Pattern STRICT = Pattern.compile(
            "(\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d\\+0[12]:00);(\\d{1,3},\\d{1,4});(\\d{1,3},\\d{1,4})");

    /**
     * One character more, less or other, anywhere below the names. An independent reader, one pattern a line, says what the
     * file means if it means anything; a file it cannot read may be read, but no line may be lost on the way.
     */
    @Test
    void anyCharacterMayBeSpoiled() {
        StringBuilder good = new StringBuilder("Time;TC-07;TC-08\n");
        for (int i = 0; i < 12; i++) {
            good.append("2026-03-10T18:%02d:00+01:00;1%02d,%d;1%02d,%d\n"
                    .formatted(i, 10 + 3 * i, i % 10, 12 + 3 * i, 9 - i % 10));
        }
        String characters = "0123456789;,.:-+TZ \"xE\t\n\r°\u2212\u0000\uFEFF";
        int read = 0;
        int refused = 0;
        for (int seed = 0; seed < 4 * FILES; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder(good);
            for (int change = 0; change <= random.nextInt(3); change++) {
                int at = 17 + random.nextInt(text.length() - 17);
                switch (random.nextInt(3)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, characters.charAt(random.nextInt(characters.length())));
                    default -> text.setCharAt(at, characters.charAt(random.nextInt(characters.length())));
                }
            }
            Answer<ReadLog> answer = LoggerFileTest.answer(text.toString(), LogChoices.none());
            TreeMap<Long, List<Integer>> meant = strictly(text.toString());
            if (answer instanceof Answer.Determined<ReadLog> there) {
                read++;
                HowRead how = there.value().how();
                long lines = Arrays.stream(text.toString().split("\r\n|\n|\r"))
                        .filter(line -> !line.replaceAll("[\\s;\uFEFF]", "").isEmpty())
                        .count();
                assertThat(how.rows()
                                + how.duplicates()
                                + 1L
                                + how.notices().stream()
                                        .filter(n -> n.contains("no end"))
                                        .count())
                        .as("seed %d\n%s", seed, text)
                        .isEqualTo(lines);
                if (meant != null) {
                    assertThat(rows(there.value().samples()))
                            .as("seed %d\n%s", seed, text)
                            .isEqualTo(meant);
                }
            } else {
                refused++;
                Answer.Gap gap =
                        ((Answer.NotDeterminable<ReadLog>) answer).gaps().get(0);
                assertThat(gap.input()).matches("file|line \\d+");
                assertThat(gap.words()).endsWith(".");
                assertThat(meant)
                        .as("seed %d refused: %s\n%s", seed, gap.words(), text)
                        .isNull();
            }
        }
        assertThat(read).isGreaterThan(FILES / 3);
        assertThat(refused).isGreaterThan(FILES);
    }

    /** What the file says by one pattern a line; null if any line does not fit or two of one time differ. */
    private static TreeMap<Long, List<Integer>> strictly(String text) {
        TreeMap<Long, List<Integer>> rows = new TreeMap<>();
        String[] lines = text.split("\n", -1);
        if (!lines[lines.length - 1].isEmpty()) {
            return null;
        }
        for (int i = 1; i < lines.length - 1; i++) {
            Matcher row = STRICT.matcher(lines[i]);
            if (lines[i].isEmpty()) {
                continue;
            }
            if (!row.matches()) {
                return null;
            }
            try {
                long time = OffsetDateTime.parse(row.group(1)).toInstant().toEpochMilli();
                List<Integer> readings = List.of(thousandths(row.group(2)), thousandths(row.group(3)));
                List<Integer> before = rows.put(time, readings);
                if (before != null && !before.equals(readings)) {
                    return null;
                }
            } catch (DateTimeException noTime) {
                return null;
            }
        }
        return rows.isEmpty() || rows.lastKey() - rows.firstKey() > YEAR_MS ? null : rows;
    }

    private static int thousandths(String written) {
        return new BigDecimal(written.replace(',', '.'))
                .setScale(3, RoundingMode.HALF_UP)
                .unscaledValue()
                .intValueExact();
    }

    private static TreeMap<Long, List<Integer>> rows(Samples samples) {
        TreeMap<Long, List<Integer>> rows = new TreeMap<>();
        for (int row = 0; row < samples.rows(); row++) {
            rows.put(samples.time_ms(row), List.of(samples.reading_mDegC(0, row), samples.reading_mDegC(1, row)));
        }
        return rows;
    }

    @Test
    void aFileCutAnywhereKeepsOnlyWholeRows() {
        for (int seed = 0; seed < 40; seed++) {
            RandomLogs log = new RandomLogs(seed);
            String text = log.text(log.lines);
            for (int cut = text.length() - 1; cut > text.length() / 2; cut--) {
                if (LoggerFileTest.answer(text.substring(0, cut), log.choices())
                        instanceof Answer.Determined<ReadLog> there) {
                    Samples samples = there.value().samples();
                    for (int row = 0; row < samples.rows(); row++) {
                        for (int channel = 0; channel < log.channels; channel++) {
                            assertThat(samples.reading_mDegC(channel, row))
                                    .as("seed %d cut at %d", seed, cut)
                                    .isEqualTo(log.readings[channel][row]);
                        }
                    }
                }
            }
        }
    }
}
