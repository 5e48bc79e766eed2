package org.trammel.calc.thermal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.trammel.calc.units.Answer;

/** The invented workshop's oven records, and what ovens.py beside them, written apart from this project, makes of them. */
public final class OvenRuns {

    public static final ZoneId ZONE = ZoneId.of("Europe/Stockholm");

    private OvenRuns() {}

    /** A run as the script has it. */
    public record Row(String run, LocalDate day, String metal, Map<String, Double> values) {

        public double value(String name) {
            return values.get(name);
        }

        public Samples samples() {
            return read(run).samples();
        }

        @Override
        public String toString() {
            return run;
        }
    }

    public static List<Row> all() {
        try (BufferedReader in = new BufferedReader(open("/thermal/runs.csv"))) {
            List<String> lines =
                    in.lines().filter(line -> !line.startsWith("#")).toList();
            List<Row> rows = new ArrayList<>();
            String[] names = lines.get(0).split(",");
            for (String line : lines.subList(1, lines.size())) {
                String[] fields = line.split(",");
                Map<String, Double> values = new LinkedHashMap<>();
                for (int i = 3; i < names.length; i++) {
                    values.put(names[i], Double.valueOf(fields[i]));
                }
                rows.add(new Row(fields[0], LocalDate.parse(fields[1]), fields[2], values));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static ReadLog read(String run) {
        try (Reader text = open("/demo/" + run + ".csv")) {
            return ((Answer.Determined<ReadLog>) LoggerFile.read(text, LogChoices.in(ZONE))).value();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Reader open(String file) {
        return new InputStreamReader(OvenRuns.class.getResourceAsStream(file), StandardCharsets.UTF_8);
    }

    static List<Thermocouple> thermocouples() {
        return List.of(
                Thermocouple.of("TC-05", ThermocoupleRole.CONTROL),
                Thermocouple.of("TC-07", ThermocoupleRole.LOAD),
                Thermocouple.of("TC-08", ThermocoupleRole.LOAD));
    }

    static Activation activation() {
        return value(Activation.of(115, 80, 130, "setting of the invented workshop"));
    }

    static <T> T value(Answer<T> answer) {
        return ((Answer.Determined<T>) answer).value();
    }
}
