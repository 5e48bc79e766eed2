package org.trammel.calc.geometry;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.trammel.calc.units.Answer;

/** The frames of the invented workshop, whose results were computed by a script written apart from this project. */
public final class DemoFrames {

    private DemoFrames() {}

    /** A frame: its name, and the columns that it has. */
    public record Row(String name, Map<String, String> columns) {

        public boolean has(String column) {
            return columns.containsKey(column);
        }

        public double number(String column) {
            return Double.parseDouble(Objects.requireNonNull(columns.get(column), name + " has no " + column));
        }

        public double number(String column, double usual) {
            return has(column) ? number(column) : usual;
        }

        public Point point(String columns) {
            return new Point(number(columns + "_x"), number(columns + "_y"));
        }

        public Layout layout() {
            double front = number("front_wheel_radius_mm");
            return new Layout(
                    Math.toRadians(number("head_angle_deg")),
                    Math.toRadians(number("seat_angle_deg")),
                    number("reach_mm"),
                    number("head_tube_mm"),
                    number("lower_stack_mm"),
                    number("fork_length_mm"),
                    number("fork_offset_mm"),
                    number("shell_drop_mm"),
                    number("chainstay_mm"),
                    number("seat_tube_mm"),
                    number("seat_tube_offset_mm", 0),
                    front,
                    number("rear_wheel_radius_mm", front));
        }

        public FrameGeometry geometry() {
            return ((Answer.Determined<FrameGeometry>) FrameGeometry.of(layout())).value();
        }

        public TubeAxes axes() {
            JointPlaces places = new JointPlaces(
                    number("top_tube_at_head_mm"), number("down_tube_at_head_mm"), number("top_tube_at_seat_mm"));
            return ((Answer.Determined<TubeAxes>) TubeAxes.of(geometry(), places)).value();
        }

        @Override
        public String toString() {
            return name;
        }
    }

    public static Stream<Row> all() {
        return read("/geometry/frames.csv").stream();
    }

    public static List<Row> read(String resource) {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(DemoFrames.class.getResourceAsStream(resource)), StandardCharsets.UTF_8))) {
            List<String[]> cells = lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
            String[] names = cells.get(0);
            return cells.stream().skip(1).map(row -> row(names, row)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Row row(String[] names, String[] cells) {
        Map<String, String> columns = new LinkedHashMap<>();
        for (int i = 0; i < names.length; i++) {
            if (!cells[i].isEmpty()) {
                columns.put(names[i], cells[i]);
            }
        }
        return new Row(cells[0], columns);
    }
}
