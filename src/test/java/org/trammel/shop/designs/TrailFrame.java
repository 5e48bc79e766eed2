package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** Inputs of the first frame of the invented workshop, a hardtail; other tests change one of them at a time. */
public final class TrailFrame {

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
        "REAR_TYRE_WIDTH",
        "25",
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

    /** All that the first frame's drawing gives, by code, for tests of other modules. */
    public static Map<String, BigDecimal> whole() {
        Map<String, BigDecimal> whole = new TreeMap<>();
        inputs().forEach((input, amount) -> whole.put(input.code(), amount));
        masses().forEach((input, amount) -> whole.put(input.code(), amount));
        return whole;
    }

    static Map<GeometryInput, BigDecimal> inputs() {
        Map<GeometryInput, BigDecimal> inputs = new EnumMap<>(GeometryInput.class);
        for (int i = 0; i < TYPED.length; i += 2) {
            inputs.put(GeometryInput.valueOf(TYPED[i]), new BigDecimal(TYPED[i + 1]));
        }
        return inputs;
    }

    /** With some inputs changed, and beside them those by which the gate finds nothing red of it. */
    static Map<GeometryInput, BigDecimal> nothingRed(String changed) {
        return inputs("DOWN_TUBE_AT_HEAD 47 TOP_TUBE_OUTSIDE 31.8 DOWN_TUBE_OUTSIDE 38 " + changed);
    }

    /** What its mass is computed from beside the tubes. */
    static Map<GeometryInput, BigDecimal> masses() {
        return Map.of(
                GeometryInput.HEAD_TUBE_BORE, new BigDecimal("44"),
                GeometryInput.SHELL_BORE, new BigDecimal("33.5"),
                GeometryInput.SHELL_WIDTH, new BigDecimal("73"),
                GeometryInput.DROPOUT_MASS, new BigDecimal("0.15"),
                GeometryInput.SMALL_PARTS_MASS, new BigDecimal("0.045"),
                GeometryInput.WELD_MASS, new BigDecimal("0.045"));
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
