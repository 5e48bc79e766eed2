package org.trammel.shop.ovens;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.trammel.shop.floor.SmallRoute.op;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Signing;

/** A shop with an oven that may be loaded, a programme that guards an operation, and who runs it. */
@FloorTest
public abstract class AtTheOven {

    protected static final AtomicInteger NUMBER = new AtomicInteger();

    /** Minutes and °C of an invented log of an age at 177 °C, coldest load thermocouple. */
    private static final double[][] LOG = {
        {0, 22},
        {15, 95},
        {30, 142},
        {45, 163},
        {60, 172},
        {75, 176},
        {90, 177},
        {300, 178},
        {480, 177},
        {555, 177},
        {570, 150},
        {600, 90}
    };

    @Autowired
    protected Floor floor;

    @Autowired
    protected Loads loads;

    @Autowired
    protected OvenRuns ovenRuns;

    @Autowired
    protected LogImport records;

    @Autowired
    protected RunRelease release;

    @Autowired
    protected Runs runs;

    @Autowired
    protected RunJudge judge;

    @Autowired
    protected OvenRegister register;

    @Autowired
    protected Programmes programmes;

    @Autowired
    protected Signing signing;

    @Autowired
    protected Holds holds;

    @Autowired
    protected Bench bench;

    @Autowired
    protected TestCrew crew;

    @Autowired
    protected TestClock clock;

    protected OvenFloor.Ready oven;
    protected long heat;

    /** Who stops a run; the heat treater where it is nobody else. */
    protected @Nullable Long stops;

    protected long second;
    protected long qa;
    protected String operation;
    protected String programme;

    @BeforeEach
    void open() {
        floor.open();
        oven = new OvenFloor(register, crew).ready();
        heat = floor.qualified("OVEN", Role.HEAT_TREATER);
        second = floor.hire(Role.STATION_WORKER);
        qa = floor.hire(Role.QA_LEAD);
        operation = "9" + NUMBER.incrementAndGet() + "a";
        programme = "P-R" + NUMBER.get();
        approve(programme, Purpose.AGEING, "177", "8", List.of(operation));
    }

    protected Run read(String code, String text) {
        return records.read(
                crew.act(heat),
                code,
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                "log.csv",
                new LogImport.Choices(ZoneId.of("UTC"), null, false));
    }

    protected Run record(String code, Instant began, double shift) {
        Run read = read(code, log(began, oven.load(), shift));
        return records.take(
                crew.act(heat), code, runs.draft(read.id()).orElseThrow().id());
    }

    protected static String log(Instant began, String column, double shift) {
        StringBuilder text = new StringBuilder("time;" + column + " °C\n");
        DateTimeFormatter time =
                DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss").withZone(ZoneId.of("UTC"));
        for (int minute = 0; minute <= 600; minute++) {
            int i = 0;
            while (i + 2 < LOG.length && LOG[i + 1][0] < minute) {
                i++;
            }
            double share = (minute - LOG[i][0]) / (LOG[i + 1][0] - LOG[i][0]);
            double degC = LOG[i][1] + share * (LOG[i + 1][1] - LOG[i][1]) + shift;
            text.append(time.format(began.plus(Duration.ofMinutes(minute))))
                    .append(';')
                    .append(String.format(java.util.Locale.GERMANY, "%.3f", degC))
                    .append('\n');
        }
        return text.toString();
    }

    protected Run loaded(Floor.Frame... frames) {
        Run run = loads.open(
                crew.act(heat),
                "R-" + UUID.randomUUID().toString().substring(0, 8),
                oven.oven(),
                programme,
                "head tube down");
        return loads.load(
                crew.act(heat),
                run.code(),
                java.util.Arrays.stream(frames).map(Floor.Frame::serial).toList(),
                ready("2.5"));
    }

    protected Run stopped(Floor.Frame... frames) {
        Run run = loaded(frames);
        ovenRuns.sign(crew.act(heat), run.code(), heat, RunSigner.HEAT_TREATER);
        ovenRuns.sign(crew.act(second), run.code(), second, RunSigner.SECOND);
        ovenRuns.start(crew.act(heat), run.code());
        for (Floor.Frame frame : frames) {
            floor.tickAll(frame, heat);
        }
        clock.pass(Duration.ofMinutes(600));
        return ovenRuns.stop(crew.act(stops == null ? heat : stops), run.code());
    }

    protected Run finished(double shift, Floor.Frame... frames) {
        Run run = stopped(frames);
        return record(run.code(), clock.instant().minus(Duration.ofMinutes(600)), shift);
    }

    protected Floor.Frame frame() {
        return floor.frame(SmallRoute.of(
                        op(operation).step("in the oven").hold(Signer.SECOND).sheet(),
                        op("999").step("on").sheet())
                .sheet());
    }

    protected static Loads.Ready ready(String kg) {
        return new Loads.Ready("upper left", true, true, kg == null ? null : new BigDecimal(kg));
    }

    protected void approve(String code, Purpose purpose, String degC, String hours, List<String> guards) {
        approve(code, purpose, "AL6061", degC, hours, guards);
    }

    protected void approve(String code, Purpose purpose, String metal, String degC, String hours, List<String> guards) {
        Programme drawn = programmes.draw(
                crew.act(qa),
                code,
                purpose,
                new NewProgramme(
                        "of a test",
                        List.of(metal),
                        guards,
                        List.of(ProgrammeStep.of(new BigDecimal(degC), new BigDecimal("5"), new BigDecimal(hours))),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        false,
                        "written for a test"));
        programmes.approve(crew.act(qa), drawn.revisionId(), drawn.version());
    }

    protected static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed, String says) {
        assertThatThrownBy(deed).isInstanceOf(Refusal.class).hasMessageContaining(says);
    }
}
