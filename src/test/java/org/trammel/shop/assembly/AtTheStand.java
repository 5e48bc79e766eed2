package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.Travellers;

/** A shop with an assembly stand, components of the test's own, and a tool of 2 to 14 N·m. */
@FloorTest
abstract class AtTheStand {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    protected Floor floor;

    @Autowired
    protected Components components;

    @Autowired
    protected FrameComponents list;

    @Autowired
    protected Torques torques;

    @Autowired
    protected TorqueSheets sheets;

    @Autowired
    protected Travellers travellers;

    @Autowired
    protected GaugeRegister register;

    @Autowired
    protected TestCrew crew;

    @Autowired
    protected TestClock clock;

    protected long owner;
    protected long qa;
    protected long fitter;
    protected long second;
    protected String fit;
    protected String ride;
    protected String tool;

    @BeforeEach
    void open() {
        floor.open();
        owner = floor.hire(Role.OWNER);
        qa = floor.hire(Role.QA_LEAD);
        fitter = floor.qualified("TORQUE", Role.STATION_WORKER);
        second = floor.hire(Role.STATION_WORKER);
        int number = NUMBER.incrementAndGet();
        fit = "8" + number + "f";
        ride = "8" + number + "r";
        tool = tool("2", "14", null);
    }

    protected String tool(String from, String to, @Nullable String error) {
        return tool(from, to, error, LocalDate.of(2026, 12, 31));
    }

    protected String tool(String from, String to, @Nullable String error, LocalDate due) {
        return tool(due, range(from, to, error));
    }

    protected static GaugeRange range(String from, String to, @Nullable String error) {
        return new GaugeRange(
                "TORQUE",
                "N·m",
                figure(from),
                figure(to),
                figure("0.1"),
                null,
                figure("3"),
                "half of what ISO 6789-1 permits",
                error == null ? null : figure(error));
    }

    protected String tool(LocalDate due, GaugeRange... ranges) {
        String code = "W" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        register.register(
                crew.act(qa), code, new NewGauge("torque wrench of a test", null, "stand", false, List.of(ranges)));
        register.calibrated(crew.act(qa), code, LocalDate.of(2026, 1, 1), due, "C-1", null, "as it should be");
        return code;
    }

    /** A frame that stands at its assembly; a check after the ride follows. */
    protected Floor.Frame frame(CharacteristicSheet... characteristics) {
        SmallRoute.Op assembly =
                op(fit).qualified("TORQUE").hold(Signer.WORKER, Signer.SECOND).step("parts against the order");
        List.of(characteristics).forEach(assembly::characteristic);
        return floor.frame(SmallRoute.of(
                        assembly.sheet(),
                        op(ride).step("ridden").sheet(),
                        op("999").step("on").sheet())
                .sheet());
    }

    protected CharacteristicSheet torque(String code, String... points) {
        return new CharacteristicSheet(
                code,
                "torque " + code,
                "N·m",
                1,
                false,
                null,
                figure("4"),
                figure("6"),
                "TORQUE",
                List.of(points),
                points.length == 1 ? Reduction.SINGLE : Reduction.WORST,
                Rule.PLAIN,
                List.of(Signer.WORKER),
                false,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "test");
    }

    /** A face plate of four bolts, crosswise in two passes, 5 to 6 N·m about 5.5, M5 dry. */
    protected static NewFastener plate(@Nullable String answers) {
        return new NewFastener(
                "face plate",
                4,
                figure("5"),
                figure("5.5"),
                figure("6"),
                false,
                null,
                figure("5"),
                true,
                List.of(60, 100),
                false,
                null,
                false,
                ComponentKind.HANDLEBAR,
                answers);
    }

    /** One bolt, nobody to look at it. */
    protected static NewFastener single(String name, String least, String target, String most) {
        return new NewFastener(
                name,
                1,
                figure(least),
                figure(target),
                figure(most),
                false,
                null,
                null,
                false,
                List.of(),
                false,
                false,
                false,
                null,
                null);
    }

    protected NewComponent component(ComponentKind kind, NewFastener... fasteners) {
        return component(kind, false, null, fasteners);
    }

    protected NewComponent component(
            ComponentKind kind, boolean carbon, @Nullable String clampedMost, NewFastener... fasteners) {
        return new NewComponent(
                kind,
                kind.word() + " of a test",
                fit,
                ride,
                carbon,
                clampedMost == null ? null : figure(clampedMost),
                "its own sheet",
                "edition 2",
                List.of(fasteners));
    }

    /** Writes a sheet and puts it in force. */
    protected String inForce(NewComponent content) {
        String code = "K-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        Component draft = components.draft(crew.act(fitter), code, content);
        components.putInForce(crew.act(qa), code, draft.letter());
        return code;
    }

    protected FramePart give(Floor.Frame frame, NewComponent content, String place) {
        return list.give(crew.act(owner), frame.travellerId(), inForce(content), place);
    }

    protected long at(Floor.Frame frame) {
        return floor.at(frame).line().operationId();
    }

    protected String code(Floor.Frame frame) {
        return floor.at(frame).line().code();
    }

    protected TorqueSheet sheet(Floor.Frame frame) {
        return sheets.of(at(frame));
    }

    /** The next bolt of the first fastener that wants one. */
    protected Torques.Tightened next(
            Floor.Frame frame, String with, @Nullable String target, @Nullable String reading) {
        TorqueSheet.Line line = sheet(frame).next();
        assertThat(line).isNotNull();
        return new Torques.Tightened(
                line.part().id(),
                line.fastener().id(),
                line.round(),
                line.next().pass(),
                line.next().bolt(),
                with,
                target == null ? null : figure(target),
                reading == null ? null : figure(reading));
    }

    protected TorqueSheet tighten(Floor.Frame frame) {
        return torques.tighten(crew.act(fitter), at(frame), next(frame, tool, null, null));
    }

    protected void tightenAll(Floor.Frame frame) {
        while (sheet(frame).next() != null) {
            tighten(frame);
        }
    }

    protected void witness(Floor.Frame frame, long by) {
        torques.witness(
                crew.act(fitter),
                at(frame),
                by,
                sheet(frame).toWitness().stream()
                        .map(line -> new Torques.Seen(
                                line.part().id(), line.fastener().id(), line.round()))
                        .toList());
    }

    protected CharacteristicState state(Floor.Frame frame, String characteristic) {
        return floor.at(frame).characteristics().stream()
                .filter(c -> c.code().equals(characteristic))
                .findFirst()
                .orElseThrow()
                .state();
    }

    protected static BigDecimal figure(String text) {
        return new BigDecimal(text);
    }

    protected static void refused(ThrowingCallable deed, String... says) {
        assertThatThrownBy(deed).isInstanceOf(Refusal.class).satisfies(thrown -> {
            Refusal refusal = (Refusal) thrown;
            assertThat(refusal.what() + " " + refusal.why() + " " + refusal.instead())
                    .contains(says);
        });
    }
}
