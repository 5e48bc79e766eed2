package org.trammel.shop.web;

import java.util.stream.Stream;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.geometry.TubeAxes;

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
        return DemoFrames.all().filter(row -> row.has("seatstay_at_seat_mm")).map(DrawnFrames::drawn);
    }

    private static Drawn drawn(DemoFrames.Row row) {
        TubeAxes axes = row.axes();
        SideView.Outsides outsides = new SideView.Outsides(
                row.number("head_tube_outside_mm"),
                row.number("down_tube_outside_mm"),
                row.number("down_tube_outside_mm"),
                row.number("top_tube_outside_mm"),
                row.number("seat_tube_outside_mm"),
                22,
                16,
                row.number("shell_outside_mm"),
                row.number("shell_bore_mm"));
        return new Drawn(
                row.name(),
                SideView.rigid(axes, axes.geometry().onSeatTube(row.number("seatstay_at_seat_mm")), outsides));
    }
}
