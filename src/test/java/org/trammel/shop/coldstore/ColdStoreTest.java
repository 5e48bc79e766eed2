package org.trammel.shop.coldstore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.ovens.AtTheOven;
import org.trammel.shop.ovens.Purpose;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.OperationState;

/** Clocks of a frame stand still while it lies cold enough, and nothing is done to it meanwhile. */
class ColdStoreTest extends AtTheOven {

    @Autowired
    private ColdStore store;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew people;

    @Test
    void aWindowStandsStillInTheColdAndRunsOnAfterIt() {
        Floor.Frame frame = quenched();
        Instant ends = clock(frame).endsAt();
        clock.pass(Duration.ofHours(1));
        putIn(frame, "-18");
        assertThat(clock(frame).stands()).isTrue();
        assertThat(clock(frame).endsAt()).isNull();
        assertThat(store.lying()).anySatisfy(move -> assertThat(move.serial()).isEqualTo(frame.serial()));
        clock.pass(Duration.ofHours(20));
        assertThat(clock(frame).closedAt(clock.instant())).isFalse();
        takeOut(frame, "-20");
        assertThat(clock(frame).endsAt()).isEqualTo(ends.plus(Duration.ofHours(20)));
        assertThat(store.lying()).noneSatisfy(move -> assertThat(move.serial()).isEqualTo(frame.serial()));
        clock.pass(Duration.ofHours(3).plusSeconds(1));
        assertThat(clock(frame).closedAt(clock.instant())).isTrue();
    }

    /** Nobody knows since when it was too warm: the window counts as if the frame had never lain there. */
    @Test
    void aStoreThatWasTooWarmAtTheEndHasStoppedNothing() {
        Floor.Frame frame = quenched();
        Instant ends = clock(frame).endsAt();
        putIn(frame, "-25");
        clock.pass(Duration.ofHours(5));
        assertThat(takeOut(frame, "-17.9").counts()).isFalse();
        assertThat(clock(frame).endsAt()).isEqualTo(ends);
        assertThat(clock(frame).closedAt(clock.instant())).isTrue();
    }

    @Test
    void nothingIsDoneToAFrameThatLiesInTheCold() {
        Floor.Frame frame = quenched();
        putIn(frame, "-18");
        refused(() -> floor.tickAll(frame, heat), "It lies in the cold store since");
        assertThat(floor.sheet(frame).inTheWay())
                .anySatisfy(way -> assertThat(way.why()).contains("lies in the cold store"));
        takeOut(frame, "-18");
        floor.tickAll(frame, heat);
        assertThat(floor.sheet(frame).operations())
                .allSatisfy(line -> assertThat(line.state()).isEqualTo(OperationState.DONE));
    }

    @Test
    void noOvenTakesAFrameThatLiesInTheCold() {
        Floor.Frame frame = quenched("903", "904");
        putIn(frame, "-18");
        approve("P-ANY" + NUMBER.get(), Purpose.CURE, "120", "0.5", java.util.List.of("904"));
        programme = "P-ANY" + NUMBER.get();
        refused(() -> loaded(frame), "It lies in the cold store since");
    }

    /** A window that ran out, or a clock that the setting does not name, is not brought back by the cold. */
    @Test
    void onlyAClockThatRunsAndThatTheShopNamesStandsStill() {
        Floor.Frame late = quenched();
        clock.pass(Duration.ofHours(5));
        refused(() -> putIn(late, "-20"), "No clock of");
        Floor.Frame other = frame();
        refused(() -> putIn(other, "-20"), "No clock of");
    }

    @Test
    void whatIsNoColdStoreIsRefused() {
        Floor.Frame frame = quenched();
        refused(() -> putIn(frame, "-17.9"), "clocks stand still at −18 °C or colder");
        Floor.Frame begun = floor.frame(SmallRoute.of(
                        op("901")
                                .step("in the water", "COLD-SET")
                                .step("shaken")
                                .sheet(),
                        op("902").step("set").sheet())
                .window("COLD-SET", 240, "901", "902")
                .sheet());
        floor.tickFirst(begun, heat);
        refused(() -> putIn(begun, "-20"), "is in work");
        refused(() -> putIn(frame, null), "The temperature of the store is missing");
        refused(() -> putIn(frame, "-300"), "is not -100 to 60 °C");
        refused(
                () -> store.putIn(crew.act(heat), frame.serial(), new BigDecimal("-20"), ""),
                "not said what it was read with");
        refused(() -> takeOut(frame, "-20"), "does not lie in it");
        putIn(frame, "-20");
        refused(() -> putIn(frame, "-20"), "lies in it already");
    }

    @Test
    void aFrameLeadsToItsStayInTheColdAndBack() throws Exception {
        Floor.Frame frame = quenched();
        assertThat(page("/frames/" + frame.serial())).doesNotContain("/cold-store");
        putIn(frame, "-18");
        takeOut(frame, "-17.9");
        String stay = "/cold-store?frame=" + frame.serial();
        assertThat(page("/frames/" + frame.serial())).contains("href=\"" + stay + "\"", "out, too warm");
        assertThat(page(stay)).contains("href=\"/frames/" + frame.serial() + "\"", "In and out of");
        assertThat(page("/cold-store")).contains("href=\"/frames/" + frame.serial() + "\"");
    }

    private String page(String address) throws Exception {
        return mvc.perform(get(address).with(Signed.on(people.byId(qa))))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void theSameActSentTwicePutsItInOnce() {
        Floor.Frame frame = quenched();
        String gauge = floor.gauge("THERMOCOUPLE", "°C", "0.5");
        Act act = crew.act(heat);
        store.putIn(act, frame.serial(), new BigDecimal("-20"), gauge);
        store.putIn(act, frame.serial(), new BigDecimal("-20"), gauge);
        assertThat(store.lying().stream().filter(move -> move.serial().equals(frame.serial())))
                .hasSize(1);
    }

    private ColdStore.Move putIn(Floor.Frame frame, @Nullable String degC) {
        return store.putIn(
                crew.act(heat),
                frame.serial(),
                degC == null ? null : new BigDecimal(degC),
                floor.gauge("THERMOCOUPLE", "°C", "0.5"));
    }

    private ColdStore.Move takeOut(Floor.Frame frame, String degC) {
        return store.takeOut(
                crew.act(heat), frame.serial(), new BigDecimal(degC), floor.gauge("THERMOCOUPLE", "°C", "0.5"));
    }

    private ClockView clock(Floor.Frame frame) {
        return floor.sheet(frame).clocks().get(0);
    }

    /** A window of four hours runs since its first operation, and its second is to be begun in it. */
    private Floor.Frame quenched() {
        return quenched("901", "902");
    }

    private Floor.Frame quenched(String first, String then) {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(first).step("in the water", "COLD-SET").sheet(),
                        op(then).step("set").sheet())
                .window("COLD-SET", 240, first, then)
                .sheet());
        floor.tickAll(frame, heat);
        return frame;
    }
}
