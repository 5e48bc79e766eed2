package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedDay;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;

/**
 * The fields of the register's forms as they were typed.
 *
 * @param not what is not done if one cannot be read, as a sentence
 */
record GaugeForm(Map<String, String> fields, String not) {

    /** Ranges one form has room for. */
    static final int RANGES = 3;

    NewGauge gauge() {
        List<GaugeRange> ranges = new ArrayList<>();
        IntStream.rangeClosed(1, RANGES)
                .filter(i -> !text("kind" + i).isEmpty())
                .forEach(i -> ranges.add(new GaugeRange(
                        text("kind" + i),
                        text("unit" + i),
                        figure("lowest" + i),
                        figure("highest" + i),
                        figure("resolution" + i),
                        figure("u" + i),
                        figure("uPercent" + i),
                        text("uSource" + i),
                        figure("errorPercent" + i))));
        return new NewGauge(text("what"), text("makerNumber"), text("location"), fields.containsKey("aid"), ranges);
    }

    /** A calibration; it is due on no day where it says that the gauge is wrong. */
    NewCalibration calibration() {
        return new NewCalibration(
                day("calibratedOn"),
                text("dueOn").isEmpty() ? null : day("dueOn"),
                text("certificate"),
                text("makerNumber"),
                text("asFound"),
                text("pointUnit"),
                CalibrationEntry.points(text("points"), figure("permissible")),
                fields.containsKey("putRight"),
                text("asLeft"));
    }

    List<String> parts() {
        return Stream.of(text("parts").split("[\\s,;]+"))
                .filter(part -> !part.isEmpty())
                .toList();
    }

    String text(String field) {
        return fields.getOrDefault(field, "").strip();
    }

    @Nullable
    BigDecimal figure(String field) {
        if (text(field).isEmpty()) {
            return null;
        }
        TypedNumber number = TypedNumber.of(text(field));
        if (number instanceof TypedNumber.Read read) {
            return read.value();
        }
        throw Refusal.input(field, not, ((TypedNumber.Unreadable) number).reason(), "Type it again.");
    }

    LocalDate day(String field) {
        TypedDay typed = TypedDay.of(text(field));
        if (typed instanceof TypedDay.Read read) {
            return read.day();
        }
        throw Refusal.input(field, not, ((TypedDay.Unreadable) typed).reason(), "Enter the day as 2026-03-18.");
    }
}
