package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
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
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;

/** A shop with a booth, a finish of the test's own, and what surface and coat are measured with. */
@FloorTest
abstract class AtTheBooth {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    protected Floor floor;

    @Autowired
    protected Finishes finishes;

    @Autowired
    protected Surfaces surfaces;

    @Autowired
    protected Bench bench;

    @Autowired
    protected GaugeRegister register;

    @Autowired
    protected LotRegister lots;

    @Autowired
    protected TestCrew crew;

    @Autowired
    protected TestClock clock;

    @Autowired
    protected org.trammel.shop.travellers.Evidence evidence;

    @Autowired
    protected SurfaceRecords records;

    protected long qa;
    protected long worker;
    protected String blast;
    protected String coat;
    protected String finish;
    protected String hygrometer;
    protected String thermometer;
    protected String pressure;
    protected String ohms;

    @BeforeEach
    void open() {
        floor.open();
        qa = floor.hire(Role.QA_LEAD);
        worker = floor.hire(Role.STATION_WORKER);
        int number = NUMBER.incrementAndGet();
        blast = "7" + number + "b";
        coat = "7" + number + "c";
        finish = "F-T" + number;
        hygrometer = floor.meter("HYGRO", "°C", "%RH");
        thermometer = floor.meter("CONTACT-TEMP", "°C");
        pressure = floor.meter("PRESSURE", "bar");
        ohms = floor.meter("OHM", "MΩ");
    }

    protected Finish inForce(String... metals) {
        return finishes.putInForce(crew.act(qa), finish, asked(metals));
    }

    protected NewFinish asked(String... metals) {
        return new NewFinish(
                "of a test",
                List.of(metals),
                List.of(blast),
                List.of(coat),
                List.of("BB threads", "ground spot"),
                new BigDecimal("2.5"),
                BigDecimal.ONE,
                "written for a test");
    }

    /** A frame that stands at its blast, in work there and at the coat after it. */
    protected Floor.Frame frame(String metal) {
        RouteSheet drawn = SmallRoute.of(
                        op(blast)
                                .step("white cloth")
                                .step(new StepSheet("blasted", "", false, true, null, "COAT-BY", null))
                                .sheet(),
                        op(coat).step("booth clean").step(sprayed()).sheet(),
                        op("999").step("on").sheet())
                .window("COAT-BY", 240, blast, coat)
                .sheet();
        return floor.frame(new RouteSheet(
                0, "TEST", "test route", "A", metal, "HARDTAIL", drawn.operations(), drawn.clocks(), List.of()));
    }

    /** A frame that stands at its coat. */
    protected Floor.Frame atTheCoat() {
        return floor.frame(SmallRoute.of(
                        op(coat).step("booth clean").step(sprayed()).sheet(),
                        op("999").step("on").sheet())
                .sheet());
    }

    private static StepSheet sprayed() {
        return new StepSheet("sprayed", "", false, true, null, null, null);
    }

    protected long at(Floor.Frame frame) {
        return floor.at(frame).line().operationId();
    }

    protected String code(Floor.Frame frame) {
        return floor.at(frame).line().code();
    }

    protected void tick(Floor.Frame frame, String step) {
        FrameSheet.StepLine line = floor.at(frame).steps().stream()
                .filter(one -> one.text().equals(step))
                .findFirst()
                .orElseThrow();
        bench.tick(crew.act(worker), List.of(line.stepId()), null, null);
    }

    protected SurfaceRecord measure(long operation, String air, String humidity, String metal) {
        return surfaces.measured(
                crew.act(worker),
                operation,
                new MetalAir(
                        new BigDecimal(air), new BigDecimal(humidity), new BigDecimal(metal), hygrometer, thermometer));
    }

    protected SurfaceRecord powder(long operation, String lot, String earth) {
        return surfaces.spraying(crew.act(worker), operation, new Surfaces.Spraying(lot, new BigDecimal(earth), ohms));
    }

    protected SurfaceRecord blasted(long operation, String lot, String bar) {
        return surfaces.blasted(
                crew.act(worker), operation, new Surfaces.Blasted(lot, new BigDecimal(bar), pressure, "cloth white"));
    }

    protected SurfaceRecord mask(long operation, String landmark, boolean fitted) {
        return surfaces.mask(crew.act(worker), operation, landmark, fitted);
    }

    protected String media(MetalFamily reserved) {
        return lot(LotKind.MEDIA, "GLASS-BEAD", reserved, null);
    }

    protected String powderLot(@Nullable LocalDate expires) {
        return lot(LotKind.POWDER, powderClass(), null, expires);
    }

    private static String powderClass() {
        return "LOW-BAKE";
    }

    private String lot(LotKind kind, String materialClass, @Nullable MetalFamily reserved, @Nullable LocalDate until) {
        String code = lots.receive(
                        crew.act(qa),
                        new NewLot(
                                "CT-"
                                        + UUID.randomUUID()
                                                .toString()
                                                .substring(0, 8)
                                                .toUpperCase(java.util.Locale.ROOT),
                                kind,
                                "a lot",
                                null,
                                materialClass,
                                "",
                                "",
                                reserved,
                                "a supplier",
                                LocalDate.of(2025, 12, 2),
                                until,
                                null,
                                ""))
                .code();
        lots.certify(crew.act(qa), code, "batch", "C-1", null);
        lots.release(crew.act(qa), code);
        return code;
    }

    protected static void refused(ThrowingCallable deed, String... says) {
        assertThatThrownBy(deed).isInstanceOf(Refusal.class).satisfies(thrown -> {
            Refusal refusal = (Refusal) thrown;
            org.assertj.core.api.Assertions.assertThat(refusal.what() + " " + refusal.why() + " " + refusal.instead())
                    .contains(says);
        });
    }
}
