package org.trammel.shop.handwork;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;

/** A shop with people, gauges of air and metal, and frames whose steps rest on handwork. */
@FloorTest
abstract class AtTheBrushes {

    @Autowired
    protected Floor floor;

    @Autowired
    protected Handwork handwork;

    @Autowired
    protected SerialReads serials;

    @Autowired
    protected Tools tools;

    @Autowired
    protected Bench bench;

    @Autowired
    protected GaugeRegister register;

    @Autowired
    protected TestCrew crew;

    @Autowired
    protected TestClock clock;

    protected long qa;
    protected long worker;
    protected long second;
    protected String hygrometer;
    protected String thermometer;

    @BeforeEach
    void open() {
        floor.open();
        qa = floor.hire(Role.QA_LEAD);
        worker = floor.hire(Role.STATION_WORKER);
        second = floor.hire(Role.STATION_WORKER);
        hygrometer = floor.meter("HYGRO", "°C", "%RH");
        thermometer = floor.meter("CONTACT-TEMP", "°C");
    }

    protected Floor.Frame frame(String metal, StepSheet... steps) {
        SmallRoute.Op first = op("050");
        for (StepSheet step : steps) {
            first.step(step);
        }
        RouteSheet drawn =
                SmallRoute.of(first.sheet(), op("999").step("on").sheet()).sheet();
        return floor.frame(new RouteSheet(
                0, "TEST", "test route", "A", metal, "HARDTAIL", drawn.operations(), drawn.clocks(), List.of()));
    }

    protected static StepSheet proven(String text, Proof proof) {
        return new StepSheet(text, "", false, false, null, null, null, proof);
    }

    protected static StepSheet sprayed() {
        return new StepSheet("sprayed", "", false, false, null, null, null);
    }

    protected long at(Floor.Frame frame) {
        return floor.at(frame).line().operationId();
    }

    protected void tick(Floor.Frame frame, String step, long by) {
        tick(frame, step, by, null);
    }

    protected void tick(Floor.Frame frame, String step, long by, @Nullable String lot) {
        FrameSheet.StepLine line = floor.at(frame).steps().stream()
                .filter(one -> one.text().equals(step))
                .findFirst()
                .orElseThrow();
        bench.tick(crew.act(by), List.of(line.stepId()), lot, null);
    }

    protected HandRecord measure(Floor.Frame frame, String air, String humidity, String metal) {
        return handwork.measured(
                crew.act(worker),
                at(frame),
                new MetalAir(
                        new BigDecimal(air), new BigDecimal(humidity), new BigDecimal(metal), hygrometer, thermometer));
    }

    /** A tool under a label that no other test uses. */
    protected String tool(ToolKind kind, MetalFamily family, boolean chlorinated) {
        String code = "T" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(java.util.Locale.ROOT);
        return tools.register(crew.act(qa), code, kind, "of a test", family, chlorinated)
                .code();
    }

    protected static void refused(ThrowingCallable deed, String... says) {
        assertThatThrownBy(deed).isInstanceOf(Refusal.class).satisfies(thrown -> {
            Refusal refusal = (Refusal) thrown;
            org.assertj.core.api.Assertions.assertThat(refusal.what() + " " + refusal.why() + " " + refusal.instead())
                    .contains(says);
        });
    }
}
