package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;

/** Ovens of a test's own. */
public final class OvenFloor {

    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static final LocalDate LATER = LocalDate.parse("2026-12-31");

    private final OvenRegister register;
    private final TestCrew crew;
    private final long qa;

    public OvenFloor(OvenRegister register, TestCrew crew) {
        this.register = register;
        this.crew = crew;
        this.qa = crew.hire(Role.QA_LEAD);
    }

    /** An oven that may be loaded, with one thermocouple for the load and one for the control. */
    public record Ready(String oven, String load, String control) {}

    public Ready ready() {
        Instant before = TestClock.START.minus(Duration.ofDays(20));
        String code = bare();
        String load = fit(code, ThermocoupleRole.LOAD);
        String control = fit(code, ThermocoupleRole.CONTROL);
        surveyAt("100", code, "-2.1", "2.8", before, LATER);
        surveyAt("540", code, "-2.1", "2.8", before, LATER);
        survey(code, "-2.1", "2.8", before, LATER);
        accuracy(code, load, "0", before, LATER);
        accuracy(code, control, "0", before, LATER);
        return new Ready(code, load, control);
    }

    public String bare() {
        String code = "OV-T" + NUMBER.incrementAndGet();
        register.register(
                crew.act(qa),
                code,
                new NewOven(
                        "of a test",
                        EnumSet.allOf(Purpose.class),
                        new BigDecimal("6"),
                        new BigDecimal("1600"),
                        new BigDecimal("900"),
                        new BigDecimal("1100"),
                        new BigDecimal("45")));
        return code;
    }

    public String fit(String oven, ThermocoupleRole role) {
        String code = "TC-T" + NUMBER.incrementAndGet();
        register.fit(crew.act(qa), oven, code, role);
        return code;
    }

    public void survey(String oven, String lowest, String highest, Instant at, @Nullable LocalDate due) {
        surveyAt("177", oven, lowest, highest, at, due);
    }

    public void surveyAt(String degC, String oven, String lowest, String highest, Instant at, @Nullable LocalDate due) {
        register.tested(
                crew.act(qa),
                oven,
                NewTest.survey(at, due, new BigDecimal(lowest), new BigDecimal(highest), new BigDecimal(degC), "R-1"));
    }

    public void accuracy(String oven, String thermocouple, String error, Instant at, @Nullable LocalDate due) {
        register.tested(
                crew.act(qa),
                oven,
                NewTest.accuracy(
                        thermocouple,
                        at,
                        due,
                        new BigDecimal(error),
                        new BigDecimal("2"),
                        new BigDecimal("177"),
                        "R-2"));
    }
}
