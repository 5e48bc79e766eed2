package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;

/** Inputs of the first frame of the invented workshop, a hardtail; other tests change one of them at a time. */
final class TrailFrame {

    private static final String[] TYPED = {
        "HEAD_ANGLE",
        "65.5",
        "SEAT_ANGLE",
        "74.5",
        "REACH",
        "458",
        "HEAD_TUBE",
        "110",
        "LOWER_STACK",
        "12",
        "FORK_LENGTH",
        "541",
        "FORK_OFFSET",
        "44",
        "SHELL_DROP",
        "58",
        "CHAINSTAY",
        "432",
        "SEAT_TUBE",
        "430",
        "FRONT_WHEEL_RADIUS",
        "370",
        "REAR_WHEEL_RADIUS",
        "370",
        "TOP_TUBE_AT_HEAD",
        "30",
        "DOWN_TUBE_AT_HEAD",
        "29",
        "TOP_TUBE_AT_SEAT",
        "45",
        "SEATSTAY_AT_SEAT",
        "55",
        "CHAINSTAY_AT_SHELL",
        "24",
        "AXLE_WIDTH",
        "148",
        "HEAD_TUBE_OUTSIDE",
        "54",
        "SHELL_OUTSIDE",
        "42",
        "DOWN_TUBE_OUTSIDE",
        "42",
        "DOWN_TUBE_WALL",
        "1.4",
        "TOP_TUBE_OUTSIDE",
        "34.9",
        "TOP_TUBE_WALL",
        "1.15",
        "SEAT_TUBE_OUTSIDE",
        "34.9",
        "SEAT_TUBE_WALL",
        "1.35",
        "CHAINSTAY_OUTSIDE",
        "22",
        "CHAINSTAY_WALL",
        "1.6",
        "SEATSTAY_OUTSIDE",
        "18",
        "SEATSTAY_WALL",
        "1.4"
    };

    private TrailFrame() {}

    static Map<GeometryInput, BigDecimal> inputs() {
        Map<GeometryInput, BigDecimal> inputs = new EnumMap<>(GeometryInput.class);
        for (int i = 0; i < TYPED.length; i += 2) {
            inputs.put(GeometryInput.valueOf(TYPED[i]), new BigDecimal(TYPED[i + 1]));
        }
        return inputs;
    }

    /** With some inputs changed, and beside them those by which the gate finds nothing red of it. */
    static Map<GeometryInput, BigDecimal> nothingRed(String changed) {
        return inputs("DOWN_TUBE_AT_HEAD 30 TOP_TUBE_OUTSIDE 31.8 DOWN_TUBE_OUTSIDE 38 " + changed);
    }

    /** The same with some inputs changed: pairs of name and number, parted by blanks; a number of "-" takes one away. */
    static Map<GeometryInput, BigDecimal> inputs(String changed) {
        Map<GeometryInput, BigDecimal> inputs = inputs();
        String[] parts = changed.isBlank() ? new String[0] : changed.strip().split("\\s+");
        for (int i = 0; i < parts.length; i += 2) {
            if (parts[i + 1].equals("-")) {
                inputs.remove(GeometryInput.valueOf(parts[i]));
            } else {
                inputs.put(GeometryInput.valueOf(parts[i]), new BigDecimal(parts[i + 1]));
            }
        }
        return inputs;
    }
}
