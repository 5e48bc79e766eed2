package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.LoadTrace;
import org.trammel.calc.thermal.Samples;
import org.trammel.calc.thermal.Thermocouple;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.web.OnlyTheseNames;

/** What the thermocouples of a run recorded. */
@OnlyTheseNames
record OvenRecord(
        @Schema(description = "since the record began, rising; 20000 at most")
        List<BigDecimal> minutes,

        @Schema(description = "16 at most") List<Recorded> thermocouples,

        @Schema(description = "between readings, beyond which time counts as not recorded; 2 if left out") @Nullable
        BigDecimal longestGapMin) {

    private static final int MOST_ROWS = 20_000;
    private static final int MOST_THERMOCOUPLES = 16;
    private static final BigDecimal MOST_MINUTES = BigDecimal.valueOf(100_000);
    private static final BigDecimal LEAST_DEG_C = BigDecimal.valueOf(-80);
    private static final BigDecimal GREATEST_DEG_C = BigDecimal.valueOf(1300);
    private static final int THOUSANDTHS = 3;
    private static final BigDecimal MS_PER_MIN = BigDecimal.valueOf(60_000);

    @OnlyTheseNames
    record Recorded(
            String name,

            @Schema(description = "LOAD if left out; runs are judged by those") @Nullable
            ThermocoupleRole role,

            @Schema(description = "a reading for each of the minutes, null where there is none")
            List<@Nullable BigDecimal> degC,

            @Schema(description = "how much too high it was found to read; 0 if left out") @Nullable
            BigDecimal readsHighByK) {}

    Duration longestGap() {
        if (longestGapMin == null) {
            return Duration.ofMinutes(2);
        }
        if (longestGapMin.signum() <= 0 || longestGapMin.compareTo(MOST_MINUTES) > 0) {
            throw NotComputed.input(
                    "record.longestGapMin",
                    "The longest gap of " + longestGapMin + " min is not above 0 and at most " + MOST_MINUTES
                            + " min.");
        }
        return Duration.ofMillis(longestGapMin.multiply(MS_PER_MIN).longValue());
    }

    List<Thermocouple> wired() {
        return thermocouples.stream().map(OvenRecord::wired).toList();
    }

    private static Thermocouple wired(Recorded recorded) {
        Thermocouple sound =
                Thermocouple.of(recorded.name(), recorded.role() == null ? ThermocoupleRole.LOAD : recorded.role());
        return recorded.readsHighByK() == null
                ? sound
                : sound.alsoHighBy(recorded.readsHighByK().doubleValue());
    }

    Samples samples() {
        NotComputed.boundedBy(MOST_ROWS, "record.minutes", minutes);
        NotComputed.boundedBy(MOST_THERMOCOUPLES, "record.thermocouples", thermocouples);
        if (minutes.isEmpty() || thermocouples.isEmpty()) {
            throw NotComputed.input("record.minutes", "The record is empty.");
        }
        long[] times = new long[minutes.size()];
        for (int row = 0; row < times.length; row++) {
            times[row] = time(row);
            if (row > 0 && times[row] <= times[row - 1]) {
                throw NotComputed.input(
                        "record.minutes[" + row + "]",
                        "The times of a record rise, and " + minutes.get(row) + " min follows " + minutes.get(row - 1)
                                + " min.");
            }
        }
        int[][] readings = new int[thermocouples.size()][];
        for (int channel = 0; channel < readings.length; channel++) {
            readings[channel] = readings(channel);
        }
        List<String> names = thermocouples.stream().map(Recorded::name).toList();
        if (names.stream().distinct().count() < names.size()) {
            throw NotComputed.input("record.thermocouples", "Two thermocouples have one name.");
        }
        return Samples.of(names, times, readings);
    }

    private long time(int row) {
        BigDecimal minute = minutes.get(row);
        if (minute.signum() < 0 || minute.compareTo(MOST_MINUTES) > 0) {
            throw NotComputed.input(
                    "record.minutes[" + row + "]", minute + " min is not from 0 to " + MOST_MINUTES + " min.");
        }
        return minute.multiply(MS_PER_MIN).setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    private int[] readings(int channel) {
        Recorded recorded = thermocouples.get(channel);
        String at = "record.thermocouples[" + channel + "].";
        NotComputed.named(recorded.name(), at + "name");
        if (recorded.degC().size() != minutes.size()) {
            throw NotComputed.input(
                    at + "degC",
                    recorded.name() + " has " + recorded.degC().size() + " readings and there are " + minutes.size()
                            + " minutes.");
        }
        int[] readings = new int[minutes.size()];
        for (int row = 0; row < readings.length; row++) {
            BigDecimal degC = recorded.degC().get(row);
            if (degC == null) {
                readings[row] = Samples.OPEN;
                continue;
            }
            if (degC.compareTo(LEAST_DEG_C) < 0 || degC.compareTo(GREATEST_DEG_C) > 0) {
                throw NotComputed.input(
                        at + "degC[" + row + "]",
                        "A reading of " + degC + " °C is not from " + LEAST_DEG_C + " to " + GREATEST_DEG_C + " °C.");
            }
            readings[row] = degC.movePointRight(THOUSANDTHS)
                    .setScale(0, RoundingMode.HALF_UP)
                    .intValueExact();
        }
        return readings;
    }

    LoadTrace trace() {
        return NotComputed.unless(LoadTrace.of(samples(), wired(), longestGap()), OvenRecord::field);
    }

    static String field(String input) {
        return input.equals("samples") ? "record" : input.equals("thermocouples") ? "record.thermocouples" : input;
    }
}
