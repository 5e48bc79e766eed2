package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;

/** An aligner, a welder, gauges of a table, and frames that lie on it at operation 100 while their window is open. */
@ShopTest
abstract class OnThePlate {

    static final LocalDate NEXT_YEAR = LocalDate.of(2027, 1, 1);

    @Autowired
    ApplicationContext beans;

    @Autowired
    RawFigures figures;

    @Autowired
    Reductions reductions;

    @Autowired
    TurnOfSheet turns;

    WholeShop shop;
    long aligner;
    long other;
    long qa;
    String heightGauge;
    String calliper;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        aligner = shop.hire(Role.ALIGNER, Role.STATION_WORKER);
        other = shop.hire(Role.ALIGNER, Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
        // The uncertainty that a height gauge of this kind commonly has.
        heightGauge = shop.gauge("HEIGHT", "mm", "0.012", NEXT_YEAR);
        calliper = shop.gauge("LONG-CALLIPER", "mm", "0.015", NEXT_YEAR);
    }

    /** A frame of common proportions, as a drawing gives it; angles in degrees, lengths in mm. */
    static final Map<String, String> GEOMETRY = Map.ofEntries(
            Map.entry("HEAD_ANGLE", "65.5"),
            Map.entry("SEAT_ANGLE", "75"),
            Map.entry("REACH", "458"),
            Map.entry("HEAD_TUBE", "110"),
            Map.entry("LOWER_STACK", "12"),
            Map.entry("FORK_LENGTH", "541"),
            Map.entry("FORK_OFFSET", "44"),
            Map.entry("SHELL_DROP", "58"),
            Map.entry("CHAINSTAY", "432"),
            Map.entry("SEAT_TUBE", "420"),
            Map.entry("FRONT_WHEEL_RADIUS", "370"),
            Map.entry("REAR_WHEEL_RADIUS", "370"),
            Map.entry("TOP_TUBE_AT_HEAD", "30"),
            Map.entry("DOWN_TUBE_AT_HEAD", "43"),
            Map.entry("TOP_TUBE_AT_SEAT", "40"),
            Map.entry("SEATSTAY_AT_SEAT", "60"),
            Map.entry("HEAD_TUBE_OUTSIDE", "54"),
            Map.entry("DOWN_TUBE_OUTSIDE", "42"),
            Map.entry("DOWN_TUBE_WALL", "1.4"),
            Map.entry("TOP_TUBE_OUTSIDE", "34.9"),
            Map.entry("SEAT_TUBE_OUTSIDE", "34.9"),
            Map.entry("SHELL_OUTSIDE", "40"),
            Map.entry("SHELL_BORE", "34"),
            Map.entry("CHAINSTAY_OUTSIDE", "22"),
            Map.entry("CHAINSTAY_WALL", "1.6"));

    /** The same, its drawing entered. */
    WholeShop.Frame drawn(WholeShop.Frame frame) {
        JdbcClient jdbc = beans.getBean(JdbcClient.class);
        Long revision = jdbc.sql("select design_revision_id from traveller where id = ?")
                .param(frame.travellerId())
                .query(Long.class)
                .single();
        GEOMETRY.forEach(
                (input, amount) -> jdbc.sql("insert into design_geometry (revision_id, input, amount) values (?, ?, ?)")
                        .params(revision, input, new BigDecimal(amount))
                        .update());
        return frame;
    }

    static CharacteristicSheet characteristic(String code, String name, String unit, String limit, String... points) {
        return about("0", code, name, unit, limit, points);
    }

    static CharacteristicSheet about(
            String nominal, String code, String name, String unit, String limit, String... points) {
        return new CharacteristicSheet(
                code,
                name,
                unit,
                3,
                false,
                new BigDecimal(nominal),
                new BigDecimal(limit).negate(),
                new BigDecimal(limit),
                unit.equals("°") ? "TWIST" : "OFFSET",
                List.of(points),
                points.length > 1 ? Reduction.MEAN : Reduction.SINGLE,
                Rule.GUARDED,
                List.of(Signer.ALIGNER),
                true,
                false,
                false,
                true,
                "COLD-SET",
                2,
                null,
                new BigDecimal("2.5"),
                "test");
    }

    /** Twist, centre of the head tube and of the rear axle, lean of the seat tube. */
    WholeShop.Frame frame() {
        return frame(
                characteristic("100-1", "Twist, head tube against seat tube", "°", "0.30", "twist"),
                characteristic("100-2", "Head tube centre offset", "mm", "0.8", "mandrel low", "mandrel high"),
                characteristic("100-3", "Rear axle centre offset", "mm", "1.0", "dummy axle"),
                characteristic("100-9", "Lean of seat tube", "°", "0.30", "100 to 400"));
    }

    WholeShop.Frame frame(CharacteristicSheet... wanted) {
        SmallRoute.Op at = SmallRoute.op("100").at("4");
        Arrays.stream(wanted).forEach(at::characteristic);
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("090").step("quench").sheet(),
                        at.sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .window("COLD-SET", 240, "090")
                .sheet());
        shop.tickAll(frame, shop.hire(Role.STATION_WORKER));
        return frame;
    }

    long operation(WholeShop.Frame frame) {
        return shop.at(frame).line().operationId();
    }

    SheetLine sheet(WholeShop.Frame frame) {
        return turns.sheet(operation(frame), frame.travellerId());
    }

    void read(WholeShop.Frame frame, Spot spot, String mm) {
        read(aligner, frame, spot, mm, null, null);
    }

    void read(long by, WholeShop.Frame frame, Spot spot, String mm, @Nullable Long seen, @Nullable String reason) {
        figures.read(
                shop.act(by),
                operation(frame),
                new RawFigures.Typed(
                        spot, new BigDecimal(mm), spot.height() ? heightGauge : calliper, seen, reason, false));
    }

    void seatTube(WholeShop.Frame frame, String low, String high) {
        read(frame, Spot.SEAT_LOW, low);
        read(frame, Spot.SEAT_HIGH, high);
    }

    void onThe(WholeShop.Frame frame, TableSetUp.Base base) {
        figures.setUp(
                shop.act(aligner),
                operation(frame),
                turns.setUp(operation(frame)).on(base),
                figures.saidOf(operation(frame)));
    }

    List<ReadingLine> reduce(WholeShop.Frame frame) {
        return reductions.reduce(shop.act(aligner), operation(frame));
    }

    static ReadingLine of(List<ReadingLine> readings, String code) {
        return readings.stream().filter(r -> r.code().equals(code)).findFirst().orElseThrow();
    }

    FrameSheet.CharacteristicLine line(WholeShop.Frame frame, String code) {
        return shop.at(frame).characteristics().stream()
                .filter(c -> c.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    CharacteristicState state(WholeShop.Frame frame, String code) {
        return line(frame, code).state();
    }

    /** A refusal with all of its three parts. */
    static Refusal refusal(ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        assertThat(refused.what()).isNotBlank();
        assertThat(refused.why()).isNotBlank();
        assertThat(refused.instead()).isNotBlank();
        return refused;
    }
}
