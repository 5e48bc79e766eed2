package org.trammel.calc.thermal;

import java.util.List;

/**
 * An age that somebody published, or that is passed on in the trade.
 *
 * @param alloy as it is called
 * @param temper that it gives
 * @param soaks one after the other
 * @param source who says so
 * @param fromMemory whether the source was not at hand when it was written down
 */
public record AgeingSchedule(String alloy, String temper, List<Soak> soaks, String source, boolean fromMemory) {

    public AgeingSchedule {
        soaks = List.copyOf(soaks);
    }

    /** So long at so much, of the metal. */
    public record Soak(double degC, double hours) {}

    private static final String SUPPLIER =
            "metal supplier's sheet on heat treatment; the same figures on 6061-T6 data sheets";
    private static final String COLUMN = "trade column on aluminium welding, 2011";

    /** Those that are known, for alloys that frames are made of. */
    public static List<AgeingSchedule> known() {
        return List.of(
                one("6061", "T6", 160.0, 18, SUPPLIER, false),
                one("6061", "T6", 176.7, 8, SUPPLIER, false),
                one("6061", "T6", 204.4, 1, COLUMN, false),
                one("6061", "T6", 176.7, 5, COLUMN, false),
                one("6061", "T6", 162.8, 8, COLUMN, false),
                one("6061", "T6", 176.7, 4, COLUMN, false),
                one("6013", "T6", 190.6, 4, "metal supplier's sheet on heat treatment", false),
                one("6069", "T6", 171.1, 16, "Aerospace Structural Metals Handbook, AL-6069, 1.5.3", false),
                one("6069", "T6", 185.0, 8, "Aerospace Structural Metals Handbook, AL-6069, 1.5.3", false),
                one("6066", "T6", 177.0, 8, "ASM Handbook, volume 4", true),
                one("6082", "T6", 175.0, 8, "practice of European extruders", true),
                two("7005", "T53", 107, 8, 149, 16, "ASM Metals Handbook, volume 2", true),
                two("7005", "as welded", 93.3, 6, 160.0, 4, "practice of builders, weak", false),
                two("7005", "as welded", 87.8, 5, 176.7, 4, "practice of builders, weak", false),
                two(
                        "7020",
                        "T6",
                        95,
                        10,
                        145,
                        20,
                        "common practice, 8 to 12 h at 90 to 100 °C and 16 to 24 h at 140 to 150 °C",
                        true),
                one("7020", "T6", 120, 24, "common practice", true),
                one("7075", "T6", 121, 24, "process notes and an encyclopaedia, weak", false));
    }

    private static AgeingSchedule one(
            String alloy, String temper, double degC, double hours, String source, boolean fromMemory) {
        return new AgeingSchedule(alloy, temper, List.of(new Soak(degC, hours)), source, fromMemory);
    }

    private static AgeingSchedule two(
            String alloy,
            String temper,
            double first_degC,
            double first_h,
            double second_degC,
            double second_h,
            String source,
            boolean fromMemory) {
        return new AgeingSchedule(
                alloy,
                temper,
                List.of(new Soak(first_degC, first_h), new Soak(second_degC, second_h)),
                source,
                fromMemory);
    }
}
