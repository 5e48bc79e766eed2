package org.trammel.calc.statistics;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.trammel.calc.units.Answer;

/** Published data beside the tests; each file says in its head where it comes from. */
public final class Published {

    private Published() {}

    public static List<Double> column(String file, String name) {
        List<String[]> rows = rows(file);
        int column = Arrays.asList(rows.get(0)).indexOf(name);
        return rows.stream().skip(1).map(row -> Double.parseDouble(row[column])).toList();
    }

    static List<String[]> rows(String file) {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Published.class.getResourceAsStream("/statistics/" + file), file),
                StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(","))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static <T> T value(Answer<T> answer) {
        if (answer instanceof Answer.NotDeterminable<T> none) {
            throw new AssertionError(none.gaps());
        }
        return ((Answer.Determined<T>) answer).value();
    }

    /** The reasons, each a sentence. */
    static <T> List<String> words(Answer<T> answer) {
        if (answer instanceof Answer.Determined<T> there) {
            throw new AssertionError("There is an answer: " + there.value());
        }
        return ((Answer.NotDeterminable<T>) answer)
                .gaps().stream().map(Answer.Gap::words).toList();
    }

    static double[] numbers(List<Double> readings) {
        return readings.stream().mapToDouble(each -> each).toArray();
    }
}
