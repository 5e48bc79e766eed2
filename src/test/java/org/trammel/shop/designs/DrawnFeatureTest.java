package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.calc.geometry.SawRules;
import org.trammel.calc.units.Answer;
import org.trammel.shop.routes.Kinds;

/** Against frames.csv, which a script written apart from this project computed, all its digits. */
class DrawnFeatureTest {

    /** The script takes the shortest setback from points of its curve, so its blanks are a little short. */
    private static final double BLANK_MM = 5e-3;

    private static final SawRules SAWS =
            new SawRules(List.of(36.0, 40.0, 42.0, 46.4, 50.0, 54.0, 56.0), 0.2, Math.toRadians(25), 3, 3, 60);

    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void everyFeatureIsWhatTheScriptSays(DemoFrames.Row row) {
        DrawnFeature.Drawn frame = drawn(row);
        Map<String, String> said = Map.ofEntries(
                Map.entry("Jig read-back, stack", "stack"),
                Map.entry("Stack as built", "stack"),
                Map.entry("Wheelbase", "wheelbase"),
                Map.entry("Jig read-back, rear axle x", "Raxle_x"),
                Map.entry("Jig read-back, rear axle y", "Raxle_y"),
                Map.entry("Rear axle height over shell", "Raxle_y"),
                Map.entry("Front axle height over shell", "Faxle_y"),
                Map.entry("Angle down tube to head tube", "ang_DT_HT"),
                Map.entry("Angle top tube to head tube", "ang_TT_HT"),
                Map.entry("Angle top tube to seat tube", "ang_TT_ST"),
                Map.entry("Angle down tube to seat tube", "ang_DT_ST"),
                Map.entry("Down tube blank before forming", "DT_blank"),
                Map.entry("Top tube blank", "TT_blank"),
                Map.entry("Seat tube blank", "ST_blank"),
                Map.entry("Head angle as built", "head_angle_deg"),
                Map.entry("Seat angle as built", "seat_angle_deg"),
                Map.entry("Jig read-back, reach", "reach_mm"),
                Map.entry("Shell width", "shell_width_mm"),
                Map.entry("Down tube wall", "dt_wall_mm"));
        said.forEach((name, column) -> {
            String unit = name.toLowerCase(Locale.ROOT).contains("angle") ? "°" : "mm";
            DrawnFeature feature =
                    DrawnFeature.asked(Kinds.HARDTAIL, name, unit).orElseThrow();
            assertThat(feature.of(frame).orElseThrow())
                    .as(name)
                    .isCloseTo(row.number(column), within(column.endsWith("blank") ? BLANK_MM : 1e-6));
        });
    }

    /** Pivot and axle of the table of swing arms, subtracted by hand: −434,8 − 22 and 32 − 72. */
    @Test
    void aSwingArmIsMeasuredFromItsPivot() {
        DemoFrames.Row row = DemoFrames.all()
                .filter(one -> one.name().equals("O-104"))
                .findFirst()
                .orElseThrow();
        Map<String, String> typed = typed(row);
        typed.put("PIVOT_AHEAD", "22");
        typed.put("PIVOT_ABOVE", "72");
        DrawnFeature.Drawn frame = drawn(typed);
        assertThat(DrawnFeature.ARM_ALONG.of(frame).orElseThrow()).isCloseTo(-456.8, within(0.05));
        assertThat(DrawnFeature.ARM_UP.of(frame).orElseThrow()).isCloseTo(-40, within(1e-9));
    }

    /** The script's mass of the front triangle of O-104, 1344 g; of its swing arm this drawing knows nothing. */
    @Test
    void theMassOfAFrontTriangleIsNotTakenForTheSwingArms() {
        DemoFrames.Row row = DemoFrames.all()
                .filter(one -> one.name().equals("O-104"))
                .findFirst()
                .orElseThrow();
        Map<String, String> typed = typed(row);
        typed.put("PIVOT_AHEAD", "22");
        typed.put("WELD_MASS", "0.045");
        typed.put("SMALL_PARTS_MASS", "0.05");
        DrawnFeature mass =
                DrawnFeature.asked(Kinds.FRONT_TRIANGLE, "Mass uncoated", "g").orElseThrow();
        assertThat(mass.of(drawn(typed)).orElseThrow()).isCloseTo(1000 * row.number("mass_total"), within(0.01));
        assertThat(DrawnFeature.asked(Kinds.SWING_ARM, "Mass uncoated", "g")
                        .orElseThrow()
                        .of(drawn(typed)))
                .isEmpty();
    }

    @Test
    void boresArePartedByWhatTheyAreIn() {
        DemoFrames.Row row = DemoFrames.all().findFirst().orElseThrow();
        Map<String, String> typed = typed(row);
        typed.putAll(
                Map.of("ARM_BORE", "28", "PIVOT_BORE", "17", "HEAD_TUBE_SEATS", "43.95", "SEAT_TUBE_BORE", "31.6"));
        assertThat(bore(Kinds.SWING_ARM, "Pivot bores", typed)).isEqualTo(28);
        assertThat(bore(Kinds.FRONT_TRIANGLE, "Pivot bores", typed)).isEqualTo(17);
        assertThat(bore(Kinds.HARDTAIL, "Head tube seats", typed)).isEqualTo(43.95);
        assertThat(bore(Kinds.HARDTAIL, "Seat tube bore", typed)).isEqualTo(31.6);
    }

    /**
     * By hand: a shell of 73 about a round seat tube of 34,9 stands 19,05 out on either side. A down tube of 42 pressed to 35
     * upright is 48,457 across (the ellipse whose perimeter is 131,95, stepped along in a script): (73 − 48,457) / 2.
     */
    @Test
    void theShellIsProudOfTheTubeThatTheCharacteristicNames() {
        Map<String, String> typed = typed(DemoFrames.all().findFirst().orElseThrow());
        typed.putAll(Map.of("SHELL_WIDTH", "73", "SHELL_OUTSIDE", "42", "SEAT_TUBE_OUTSIDE", "34.9"));
        assertThat(proud("seat", typed)).hasValueCloseTo(19.05, within(1e-9));
        typed.putAll(Map.of("FORMED_DOWN_TUBE_SHELL", "35", "FORMED_DOWN_TUBE_SHELL_ZONE", "60"));
        typed.put("DOWN_TUBE_OUTSIDE", "42");
        assertThat(proud("down", typed)).hasValueCloseTo(12.2717, within(1e-3));
        typed.put("SEAT_TUBE_OFFSET", "21");
        assertThat(proud("seat", typed))
                .as("a seat tube whose axis runs past the shell")
                .isEmpty();
        assertThat(proud("down", typed)).isPresent();
        typed.remove("SHELL_WIDTH");
        assertThat(proud("down", typed)).isEmpty();
        assertThat(DrawnFeature.asked(Kinds.HARDTAIL, "Shell proud each side", "mm"))
                .as("of which tube is not said")
                .isEmpty();
    }

    private static OptionalDouble proud(String tube, Map<String, String> typed) {
        return DrawnFeature.asked(Kinds.HARDTAIL, "Shell proud of the " + tube + " tube, each side", "mm")
                .orElseThrow()
                .of(drawn(typed));
    }

    private static double bore(String kind, String name, Map<String, String> typed) {
        return DrawnFeature.asked(kind, name, "mm")
                .orElseThrow()
                .of(drawn(typed))
                .orElseThrow();
    }

    @Test
    void aCharacteristicOfAnotherNameOrUnitIsNotKnownAndAFrameThatDoesNotCloseKnowsNothing() {
        assertThat(DrawnFeature.asked(Kinds.HARDTAIL, "wheelbase ", "mm")).contains(DrawnFeature.WHEELBASE);
        assertThat(DrawnFeature.asked(Kinds.HARDTAIL, "Wheelbase", "°")).isEmpty();
        assertThat(DrawnFeature.asked(Kinds.HARDTAIL, "Wheel base of the other bicycle", "mm"))
                .isEmpty();
        Map<String, String> typed = new TreeMap<>(Map.of("HEAD_ANGLE", "65.5", "REACH", "458"));
        DrawnFeature.Drawn frame = drawn(typed);
        for (DrawnFeature feature : DrawnFeature.values()) {
            assertThat(feature.of(frame)).as(feature.name()).isEmpty();
        }
    }

    private static DrawnFeature.Drawn drawn(DemoFrames.Row row) {
        Map<String, String> typed = typed(row);
        // The table tells no stays; a frame with a pivot is cut without them.
        typed.put("PIVOT_AHEAD", "20");
        return drawn(typed);
    }

    private static DrawnFeature.Drawn drawn(Map<String, String> typed) {
        ComputedFrame frame = ComputedFrame.of(typed, SAWS);
        Answer<MassBasis.Metal> metal = Answer.of(new MassBasis.Metal(2700, "from memory", 0.05, 0.005, 0.01));
        return new DrawnFeature.Drawn(
                new GivenInputs(typed),
                frame,
                FrameMass.of(typed, frame, metal),
                FrameMass.ofArm(typed, frame, SAWS, metal));
    }

    private static Map<String, String> typed(DemoFrames.Row row) {
        Map<String, String> typed = new TreeMap<>();
        row.columns().forEach((column, value) -> {
            String name = column.replaceAll("_(mm|deg|kg)$", "").toUpperCase(Locale.ROOT);
            name = name.replace("DT_WALL", "DOWN_TUBE_WALL")
                    .replace("TT_WALL", "TOP_TUBE_WALL")
                    .replace("ST_WALL", "SEAT_TUBE_WALL");
            if (column.matches(".*_(mm|deg|kg)") && known(name)) {
                typed.put(name, value);
            }
        });
        typed.putIfAbsent("REAR_WHEEL_RADIUS", typed.get("FRONT_WHEEL_RADIUS"));
        return typed;
    }

    private static boolean known(String name) {
        return Arrays.stream(GeometryInput.values())
                .anyMatch(input -> input.code().equals(name));
    }
}
