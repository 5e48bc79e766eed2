package org.trammel.calc.thermal;

import java.util.List;

/**
 * A thermocouple of a run.
 *
 * @param channel its column in the log
 * @param role what it did in this run
 * @param errors what it was found to read too high, by temperature and rising with it; empty where nothing is corrected
 */
public record Thermocouple(String channel, ThermocoupleRole role, List<ErrorPoint> errors) {

    public Thermocouple {
        errors = List.copyOf(errors);
        for (int i = 1; i < errors.size(); i++) {
            if (!(errors.get(i).degC() > errors.get(i - 1).degC())) {
                throw new IllegalArgumentException("Points of error rise in temperature: " + errors);
            }
        }
    }

    /**
     * What a comparison found.
     *
     * @param degC what the thermocouple read
     * @param error_K how much of that was too much; below 0 where it read too low
     */
    public record ErrorPoint(double degC, double error_K) {}

    /** One that reads right. */
    public static Thermocouple of(String channel, ThermocoupleRole role) {
        return new Thermocouple(channel, role, List.of());
    }

    /** The same, reading so much higher still than is known of it. */
    public Thermocouple alsoHighBy(double error_K) {
        return new Thermocouple(
                channel,
                role,
                errors.isEmpty()
                        ? List.of(new ErrorPoint(0, error_K))
                        : errors.stream()
                                .map(point -> new ErrorPoint(point.degC(), point.error_K() + error_K))
                                .toList());
    }

    /** The temperature behind a reading: errors are drawn straight between their points and kept beyond the outer ones. */
    public double corrected_degC(double reading_degC) {
        if (errors.isEmpty()) {
            return reading_degC;
        }
        int above = 0;
        while (above < errors.size() && errors.get(above).degC() < reading_degC) {
            above++;
        }
        if (above == 0 || above == errors.size()) {
            return reading_degC - errors.get(above == 0 ? 0 : above - 1).error_K();
        }
        ErrorPoint low = errors.get(above - 1);
        ErrorPoint high = errors.get(above);
        double share = (reading_degC - low.degC()) / (high.degC() - low.degC());
        return reading_degC - low.error_K() - share * (high.error_K() - low.error_K());
    }
}
