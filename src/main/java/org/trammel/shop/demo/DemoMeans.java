package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;

/** Chooses the gauge or the set-up a reading of the past was taken with. */
@Component
@Profile("demo")
class DemoMeans {

    private final Gauges gauges;
    private final Settings settings;
    private final DemoClock clock;
    private final Map<List<Object>, List<Means>> serving = new ConcurrentHashMap<>();

    DemoMeans(Gauges gauges, Settings settings, DemoClock clock) {
        this.gauges = gauges;
        this.settings = settings;
        this.clock = clock;
    }

    /**
     * A gauge in date that serves the characteristic and reaches the values.
     *
     * @param preferred height gauge used at the operation, or the thermocouple of its oven; a set-up made of that
     *     height gauge is as good
     */
    String gauge(FrameSheet.CharacteristicLine c, List<BigDecimal> raw, @Nullable String preferred) {
        LocalDate day = settings.dayOf(clock.instant());
        List<Means> usable = serving.computeIfAbsent(
                List.of(c.gaugeKind(), c.unit(), day), key -> gauges.usableFor(c.gaugeKind(), c.unit(), day));
        return usable.stream()
                .filter(m -> preferred != null
                        && (m.code().equals(preferred) || m.code().endsWith(preferred.substring(2))))
                .findFirst()
                .or(() -> usable.stream()
                        .filter(m -> usable.size() == 1 || reaches(m, c, raw, day))
                        .findFirst())
                .map(Means::code)
                .orElseThrow(() -> new IllegalStateException(
                        "No gauge of the demo serves " + c.code() + " (" + c.gaugeKind() + ", " + c.unit() + ")"));
    }

    /** The thermocouple of the oven a characteristic is about; everything else is read in the tanks. */
    static String thermocouple(String operation, String characteristic) {
        if (characteristic.equals("090-1")) {
            return "TC-03";
        }
        if (operation.equals("110a")) {
            return "TC-08";
        }
        return operation.startsWith("150") ? "TC-22" : "TC-31";
    }

    private boolean reaches(Means means, FrameSheet.CharacteristicLine c, List<BigDecimal> raw, LocalDate day) {
        try {
            gauges.require(means.code(), c.gaugeKind(), c.unit(), raw, day);
            return true;
        } catch (Refusal outOfRange) {
            return false;
        }
    }
}
