package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.settings.Settings;

/**
 * Registers the invented gauges and the set-ups made of them. The shop's list was completed where a route asks for a gauge
 * that is not on it, and so that each range covers what the gauge is used for: an in-date long calliper, a long scale,
 * a bench hardness tester beside the one for screening, aids without uncertainty.
 */
@Component
@Profile("demo")
class DemoGauges {

    private static final String CERTIFICATE = "certificate of an invented laboratory";
    private static final String OWN_TRIAL = "own repeatability trial, invented";

    /** A calibration that came after the register was typed in. */
    private record Since(String code, LocalDate on, LocalDate due) {}

    private final GaugeRegister register;
    private final Settings settings;
    private final DemoActs acts;
    private final DemoClock clock;
    private final List<Since> since = new ArrayList<>();

    DemoGauges(GaugeRegister register, Settings settings, DemoActs acts, DemoClock clock) {
        this.register = register;
        this.settings = settings;
        this.acts = acts;
        this.clock = clock;
    }

    /** The register as it was typed in when the shop began to use it, then every calibration that came since. */
    void register() {
        Instant typed = clock.instant();
        gauge("HG-1", "Height gauge", "2025-10-06", "2026-10-06", range("HEIGHT", "mm", -200, 600, "0.01", "0.012"));
        gauge("HG-2", "Height gauge", "2025-09-17", "2026-03-17", range("HEIGHT", "mm", -200, 600, "0.01", "0.012"));
        gauge(
                "SP-1",
                "Surface plate 1500 by 1000, grade 1",
                "2024-06-01",
                "2026-06-01",
                range("PLATE", "mm", 0, 1500, null, "0.006"));
        gauge(
                "MD-1",
                "Head-tube mandrel, 300",
                "2025-11-11",
                "2026-11-11",
                range("MANDREL", "mm", 0, 300, null, "0.005"));
        gauge("DA-1", "Dummy axle set", "2025-11-11", "2026-11-11", range("MANDREL", "mm", 0, 200, null, "0.010"));
        gauge(
                "AG-1",
                "Digital protractor",
                "2025-12-01",
                "2026-12-01",
                range("PROTRACTOR", "°", 0, 180, "0.05", "0.03"));
        gauge("CA-3", "Calliper 150", "2026-01-15", "2027-01-15", range("CALLIPER", "mm", 0, 150, "0.01", "0.012"));
        gauge(
                "CA-4",
                "Calliper 300",
                "2025-03-10",
                "2026-03-10",
                range("CALLIPER", "mm", 0, 300, "0.01", "0.015"),
                range("LONG-CALLIPER", "mm", -20, 300, "0.01", "0.015"));
        gauge(
                "CA-5",
                "Calliper 300",
                "2026-02-20",
                "2027-02-20",
                range("CALLIPER", "mm", 0, 300, "0.01", "0.015"),
                range("LONG-CALLIPER", "mm", -20, 300, "0.01", "0.015"));
        gauge(
                "CA-2",
                "Calliper 300, spare",
                "2025-06-02",
                "2026-06-02",
                range("CALLIPER", "mm", 0, 300, "0.01", "0.015"),
                range("LONG-CALLIPER", "mm", -20, 300, "0.01", "0.015"));
        gauge(
                "LS-1",
                "Long scale with sliding cursor",
                "2025-10-06",
                "2026-10-06",
                range("SCALE-RULE", "mm", -2000, 2000, "0.1", "0.11"));
        gauge(
                "BM-1",
                "Ball micrometer 0 to 25",
                "2025-08-20",
                "2026-08-20",
                range("BALL-MIC", "mm", 0, 25, "0.001", "0.002"),
                range("WALL", "mm", 0, 25, "0.001", "0.002"));
        gauge("UW-1", "Ultrasonic wall gauge", "2026-02-02", "2027-02-02", range("WALL", "mm", 0, 10, "0.01", "0.015"));
        gauge("BG-1", "Bore gauge 10 to 60", "2025-09-30", "2026-09-30", range("BORE", "mm", 10, 60, "0.001", "0.002"));
        gauge(
                "EC-1",
                "Coating gauge, eddy current",
                "2026-01-08",
                "2027-01-08",
                range("FILM-EDDY", "µm", 0, 500, "1", "1.2"));
        gauge(
                "MG-1",
                "Coating gauge, magnetic",
                "2026-01-08",
                "2027-01-08",
                range("FILM-MAGNETIC", "µm", 0, 500, "1", "1.2"));
        gauge(
                "CD-1",
                "Conductivity meter",
                "2025-07-01",
                "2026-07-01",
                range("CONDUCTIVITY", "%IACS", 0, 60, "0.1", "0.4"));
        gauge(
                "HL-1",
                "Hardness, bench tester",
                "2025-12-12",
                "2026-12-12",
                range("HARDNESS", "HB", 0, 200, "1", "1.5"));
        gauge(
                "WH-1",
                "Portable hardness, for screening",
                "2025-12-12",
                "2026-06-12",
                range("HARDNESS", "div", 0, 20, "0.5", "1"));
        gauge("TW-1", "Torque wrench 2 to 14", "2025-10-20", "2026-10-20", percent("TORQUE", "N·m", 2, 14, "0.1", "3"));
        gauge(
                "TW-2",
                "Torque wrench 10 to 60",
                "2025-10-20",
                "2026-10-20",
                percent("TORQUE", "N·m", 10, 60, "0.5", "2"));
        gauge("WS-1", "Scale 30 kg", "2025-11-03", "2026-11-03", range("SCALE", "g", 0, 30000, "1", "1"));
        gauge(
                "TH-1",
                "Temperature, humidity, dew",
                "2025-12-20",
                "2026-12-20",
                range("HYGRO", "°C", -20, 60, "0.1", "0.2"),
                range("HYGRO", "%RH", 0, 100, "1", "1.5"));
        gauge("OX-1", "Purge oxygen meter", "2026-02-15", "2026-08-15", range("OXYGEN", "ppm", 0, 1000, "1", "5"));
        gauge(
                "OX-0",
                "Purge oxygen meter, spare",
                "2025-08-10",
                "2026-08-10",
                range("OXYGEN", "ppm", 0, 1000, "1", "5"));
        gauge("IR-1", "Infrared thermometer", "2025-10-10", "2026-10-10", range("IR-TEMP", "°C", -20, 400, "1", "2"));
        thermocouple("TC-01", "Control thermocouple of OV-2");
        thermocouple("TC-02", "Over-temperature thermocouple of OV-2");
        thermocouple("TC-03", "Load thermocouple of OV-2");
        thermocouple("TC-05", "Control thermocouple of OV-1");
        thermocouple("TC-07", "Load thermocouple of OV-1");
        thermocouple("TC-08", "Load thermocouple of OV-1");
        thermocouple("TC-11", "Load thermocouple of OV-1, in the place of TC-07");
        thermocouple("TC-21", "Control thermocouple of OV-3");
        thermocouple("TC-22", "Metal thermocouple of OV-3");
        thermocouple("TC-31", "Thermocouple of the tanks");
        gauge(
                "PG-1",
                "Blast pressure gauge",
                "2025-10-10",
                "2026-10-10",
                range("PRESSURE", "bar", 0, 10, "0.1", "0.05"));
        gauge("OM-1", "Earth resistance meter", "2025-10-10", "2026-10-10", range("OHM", "MΩ", 0, 100, "0.01", "0.02"));
        gauge(
                "ST-1",
                "Stop watch",
                "2025-10-10",
                "2026-10-10",
                range("TIMER", "s", 0, 86400, "0.1", "0.2"),
                range("TIMER", "min", 0, 1440, "1", "0.1"));
        aid("FE-1", "Feeler set", "FEELER", "mm");
        gauge(
                "DI-1",
                "Dial indicator on a stand",
                "2025-10-10",
                "2026-10-10",
                range("DIAL", "mm", -10, 10, "0.001", "0.003"));
        aid("LV-1", "Level on V-blocks", "LEVEL", "°");
        aid("JS-1", "Scales of the jigs", "JIG-SCALE", "mm");
        aid("JC-1", "Jig check with master bar", "JIG-CHECK", "mm");
        aid("TG-2", "Thread plugs, go and no-go", "GO-NO-GO", "yes", "2025-05-05", "2026-05-05");
        aid("TG-1", "Thread and fillet gauges, go and no-go", "GO-NO-GO", "mm", "2025-05-05", "2026-05-05");
        aid("TA-1", "Tape", "TAPE", "mm");
        aid("WM-1", "Welding current and voltage meter", "METER", "kJ/mm");
        aid("HA-1", "Hanger gauge", "HANGER", "mm");
        gauge(
                "PA-1",
                "Parallel gauge pair",
                "2025-10-10",
                "2026-10-10",
                range("PARALLEL", "mm", -10, 10, "0.01", "0.003"));
        gauge("RO-1", "Run-out stand", "2025-10-10", "2026-10-10", range("RUN-OUT", "mm", -10, 10, "0.001", "0.003"));
        register.register(
                acts.by("TR"),
                "OL-1",
                new NewGauge(
                        "Oven logs, evaluated",
                        null,
                        "Heat treat",
                        true,
                        List.of(aidRange("OVEN-LOG", "h"), aidRange("OVEN-LOG", "min"))));
        calibrate("OL-1", "2025-10-10", "2026-10-10");
        for (String height : List.of("HG-1", "HG-2")) {
            String end = height.substring(3);
            setUp(
                    "TM-" + end,
                    height + " on the mandrel, 300 apart",
                    List.of(height, "MD-1", "SP-1"),
                    range("TWIST", "°", -5, 5, "0.001", "0.020"),
                    range("LEAN", "°", -5, 5, "0.001", "0.016"),
                    range("OFFSET", "mm", -10, 10, "0.01", "0.045"));
            setUp(
                    "TS-" + end,
                    height + " on the head tube, 90 apart",
                    List.of(height, "SP-1"),
                    range("TWIST", "°", -5, 5, "0.001", "0.056"));
            setUp(
                    "AX-" + end,
                    height + " on the dummy axle",
                    List.of(height, "DA-1", "SP-1"),
                    range("AXLE-OFFSET", "mm", -10, 10, "0.01", "0.060"),
                    range("YAW", "°", -5, 5, "0.001", "0.020"));
        }
        since.stream().sorted(Comparator.comparing(Since::on)).forEach(one -> {
            clock.setTo(one.on().atTime(12, 0).atZone(DemoOrder.ZONE).toInstant());
            calibrated(one.code(), one.on(), one.due());
        });
        since.clear();
        clock.setTo(typed);
    }

    private void thermocouple(String code, String what) {
        gauge(code, what, "2025-11-20", "2026-11-20", range("THERMOCOUPLE", "°C", -20, 700, "1", "1.1"));
    }

    private void gauge(String code, String what, String on, String due, GaugeRange... ranges) {
        register.register(acts.by("TR"), code, new NewGauge(what, null, "shop", false, List.of(ranges)));
        calibrate(code, on, due);
    }

    private void aid(String code, String what, String kind, String unit) {
        aid(code, what, kind, unit, "2025-10-10", "2026-10-10");
    }

    private void aid(String code, String what, String kind, String unit, String on, String due) {
        register.register(acts.by("TR"), code, new NewGauge(what, null, "shop", true, List.of(aidRange(kind, unit))));
        calibrate(code, on, due);
    }

    private void setUp(String code, String what, List<String> parts, GaugeRange... ranges) {
        register.setUp(
                acts.by("TR"),
                code,
                new NewGauge(what, null, "Alignment table", false, new ArrayList<>(Arrays.asList(ranges))),
                parts);
    }

    /** What was calibrated after the register was typed in had a calibration as long before. */
    private void calibrate(String code, String on, String due) {
        LocalDate day = LocalDate.parse(on);
        LocalDate until = LocalDate.parse(due);
        if (day.isAfter(settings.dayOf(clock.instant()))) {
            calibrated(code, day.minus(day.until(until)), day);
            since.add(new Since(code, day, until));
        } else {
            calibrated(code, day, until);
        }
    }

    private void calibrated(String code, LocalDate on, LocalDate due) {
        register.calibrated(acts.by("TR"), code, on, due, CERTIFICATE, null, "as it should be");
    }

    private static GaugeRange range(String kind, String unit, int from, int to, @Nullable String resolution, String u) {
        return new GaugeRange(
                kind,
                unit,
                BigDecimal.valueOf(from),
                BigDecimal.valueOf(to),
                resolution == null ? null : new BigDecimal(resolution),
                new BigDecimal(u),
                null,
                OWN_TRIAL);
    }

    private static GaugeRange percent(String kind, String unit, int from, int to, String resolution, String percent) {
        return new GaugeRange(
                kind,
                unit,
                BigDecimal.valueOf(from),
                BigDecimal.valueOf(to),
                new BigDecimal(resolution),
                null,
                new BigDecimal(percent),
                OWN_TRIAL);
    }

    private static GaugeRange aidRange(String kind, String unit) {
        return new GaugeRange(kind, unit, null, null, null, null, null, "");
    }
}
