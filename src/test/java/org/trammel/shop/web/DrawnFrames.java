package org.trammel.shop.web;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.JointPlaces;
import org.trammel.calc.geometry.Layout;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.geometry.TubeAxes;
import org.trammel.calc.units.Answer;

/** Side views of the invented workshop's frames with stays. */
final class DrawnFrames {

    /** A frame and its view. */
    record Drawn(String name, SideView side) {

        @Override
        public String toString() {
            return name;
        }
    }

    private DrawnFrames() {}

    static Stream<Drawn> all() {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(DrawnFrames.class.getResourceAsStream("/geometry/frames.csv")),
                StandardCharsets.UTF_8))) {
            List<String[]> rows = lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
            return rows.stream()
                    .skip(1)
                    .map(row -> columns(rows.get(0), row))
                    .filter(columns -> columns.containsKey("seatstay_at_seat_mm"))
                    .map(DrawnFrames::drawn);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> columns(String[] names, String[] row) {
        Map<String, String> columns = new HashMap<>();
        for (int i = 0; i < names.length; i++) {
            if (!row[i].isEmpty()) {
                columns.put(names[i], row[i]);
            }
        }
        return columns;
    }

    private static Drawn drawn(Map<String, String> row) {
        Layout layout = new Layout(
                Math.toRadians(number(row, "head_angle_deg")),
                Math.toRadians(number(row, "seat_angle_deg")),
                number(row, "reach_mm"),
                number(row, "head_tube_mm"),
                number(row, "lower_stack_mm"),
                number(row, "fork_length_mm"),
                number(row, "fork_offset_mm"),
                number(row, "shell_drop_mm"),
                number(row, "chainstay_mm"),
                number(row, "seat_tube_mm"),
                0,
                number(row, "front_wheel_radius_mm"),
                number(row, "front_wheel_radius_mm"));
        TubeAxes axes = value(FrameGeometry.of(layout)
                .then(geometry -> TubeAxes.of(
                        geometry,
                        new JointPlaces(
                                number(row, "top_tube_at_head_mm"),
                                number(row, "down_tube_at_head_mm"),
                                number(row, "top_tube_at_seat_mm")))));
        SideView.Outsides outsides = new SideView.Outsides(
                number(row, "head_tube_outside_mm"),
                number(row, "down_tube_outside_mm"),
                number(row, "down_tube_outside_mm"),
                number(row, "top_tube_outside_mm"),
                number(row, "seat_tube_outside_mm"),
                22,
                16,
                number(row, "shell_outside_mm"),
                number(row, "shell_bore_mm"));
        return new Drawn(
                Objects.requireNonNull(row.get("frame")),
                SideView.rigid(axes, axes.geometry().onSeatTube(number(row, "seatstay_at_seat_mm")), outsides));
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(Objects.requireNonNull(row.get(column), column));
    }

    private static <T> T value(Answer<T> answer) {
        return ((Answer.Determined<T>) answer).value();
    }
}
