package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.designs.DrawnFrames;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;

/**
 * How far to push. The history of the worked example is of the trade: a chainstay 22 × 1,6 of 6061 freshly quenched; worked
 * by hand with a table of t (4 degrees of freedom, 2,776) its line is push = 4,92 + 1,165 set, for 1,5 mm 6,66 ± 0,26.
 */
class PushAdviceTest extends OnThePlate {

    private static final List<String> SET_AND_PUSH =
            List.of("0.5 5.4", "0.8 5.9", "1.0 6.1", "1.4 6.6", "1.9 7.2", "2.3 7.5");

    @Autowired
    private PushAdvices advices;

    @Autowired
    private BendingFloor bending;

    @Autowired
    private PushesNoted noted;

    @Autowired
    private ColdSets coldSets;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    private long setter;

    @BeforeEach
    void setter() {
        setter = shop.qualified("ALIGN", NEXT_YEAR, Role.ALIGNER);
    }

    private static PushNoted push(String metal, String wall, String setAndPush) {
        String[] both = setAndPush.split(" ");
        return new PushNoted(
                Deviation.REAR_AXLE_OFFSET,
                metal,
                new BigDecimal("22"),
                new BigDecimal(wall),
                new BigDecimal(both[1]),
                new BigDecimal(both[0]),
                "bench book of a test");
    }

    /** A wall of its own for each test, since all share the shop's book. */
    private WholeShop.Frame offset(String metal, String wall, String offset_mm) {
        WholeShop.Frame frame = drawn(frame());
        jdbc.sql("update traveller set metal = ? where id = ?")
                .params(metal, frame.travellerId())
                .update();
        wall(frame, wall);
        axle(frame, offset_mm);
        return frame;
    }

    private void axle(WholeShop.Frame frame, String offset_mm) {
        // Midway between the dropouts, 148 mm apart, the middle of the shell at 150.
        BigDecimal middle = new BigDecimal("150").add(new BigDecimal(offset_mm));
        read(frame, Spot.AXLE_DRIVE, middle.add(new BigDecimal("74")).toPlainString());
        read(frame, Spot.AXLE_OTHER, middle.subtract(new BigDecimal("74")).toPlainString());
        reduce(frame);
    }

    private Optional<PushAdvice> advice(WholeShop.Frame frame) {
        return advices.of(shop.sheet(frame).head(), line(frame, "100-3"));
    }

    private PushAdvice advised(WholeShop.Frame frame) {
        return advice(frame).orElseThrow();
    }

    @Test
    void thePushComesFromTheShopsOwnHistoryAndIsBegunFromBelow() throws Exception {
        SET_AND_PUSH.forEach(one -> noted.note(shop.act(qa), push("AL6061", "1.61", one)));
        WholeShop.Frame frame = offset("AL6061", "1.61", "1.5");
        PushAdvice advice = advised(frame);
        PushAdvice.First first = Objects.requireNonNull(advice.first());
        assertThat(first.whole_mm()).isCloseTo(6.66, within(0.01));
        assertThat(first.low_mm()).isCloseTo(6.40, within(0.01));
        assertThat(first.high_mm()).isCloseTo(6.92, within(0.01));
        assertThat(first.push_mm()).isCloseTo(0.85 * 6.66, within(0.01));
        assertThat(first.leaves_mm()).isCloseTo((0.85 * 6.66 - 4.92) / 1.165, within(0.02));
        assertThat(advice.why()).isEmpty();
        for (String page : List.of(
                "/alignment/" + operation(frame) + "?axis="
                        + line(frame, "100-3").characteristicId(),
                "/station/" + shop.sheet(frame).head().tag() + "/cold-set?characteristic="
                        + line(frame, "100-3").characteristicId())) {
            assertThat(mvc.perform(get(page).with(Signed.on(crew.byId(setter))))
                            .andReturn()
                            .getResponse()
                            .getContentAsString())
                    .as(page)
                    .contains("push 5,7\u00a0mm", "6,40 to 6,92", "from 6 pushes");
        }
    }

    @Test
    void beyondTheHistoryNoneIsProposed() {
        SET_AND_PUSH.forEach(one -> noted.note(shop.act(qa), push("AL6061", "1.62", one)));
        PushAdvice advice = advised(offset("AL6061", "1.62", "-2.4"));
        assertThat(advice.first()).isNull();
        assertThat(advice.why()).contains("2,4 lies outside what was done so far", "small steps");
    }

    @Test
    void moreThanTheRouteAllowsIsNotProposed() {
        SET_AND_PUSH.forEach(one -> noted.note(shop.act(qa), push("AL6061", "1.63", one)));
        PushAdvice advice = advised(offset("AL6061", "1.63", "2.6"));
        assertThat(advice.first()).isNull();
        assertThat(advice.why()).contains("2,6", "2,5", "more than");
    }

    @Test
    void pushesOnOtherTubesOrMetalsTellNothing() {
        SET_AND_PUSH.forEach(one -> noted.note(shop.act(qa), push("AL6061", "1.64", one)));
        assertThat(advised(offset("AL6061", "1.65", "1.5")).why()).contains("The shop has no pushes");
        assertThat(advised(offset("AL7005", "1.64", "1.5")).why()).contains("The shop has no pushes");
        noted.note(shop.act(qa), push("STEEL", "1.64", "0.5 5.4"));
        noted.note(shop.act(qa), push("STEEL", "1.64", "1.9 7.2"));
        assertThat(advised(offset("STEEL", "1.64", "1.5")).why()).contains("There are 2 occasions");
        WholeShop.Frame undrawn = frame();
        axle(undrawn, "1.5");
        assertThat(advised(undrawn).why()).contains("gives no outside and wall of the chainstay");
    }

    @Test
    void aPushThatWasMeasuredJoinsTheHistory() {
        WholeShop.Frame frame = offset("AL6061", "1.66", "1.5");
        coldSets.push(
                shop.act(setter),
                line(frame, "100-3").characteristicId(),
                new BigDecimal("1.2"),
                new BigDecimal("5.9"));
        WholeShop.Frame next = offset("AL6061", "1.66", "-1.5");
        assertThat(advised(next).history()).as("nobody read it since").isEmpty();
        axle(frame, "0.7");
        assertThat(advised(next).history()).singleElement().satisfies(told -> {
            assertThat(told.push_mm()).isEqualTo(5.9);
            assertThat(told.set_mm()).isCloseTo(0.8, within(1e-9));
        });
        assertThat(advice(frame)).as("it conforms now").isEmpty();
    }

    /** As welded a tube wants another push than freshly quenched, whatever the characteristic is called there. */
    @Test
    void aPushAtAnotherOperationTellsNothing() {
        WholeShop.Frame frame = offset("AL6061", "1.70", "1.5");
        coldSets.push(
                shop.act(setter),
                line(frame, "100-3").characteristicId(),
                new BigDecimal("1.2"),
                new BigDecimal("5.9"));
        axle(frame, "0.7");
        assertThat(advised(offset("AL6061", "1.70", "1.5")).history()).hasSize(1);
        WholeShop.Frame asWelded =
                drawn(frame(characteristic("080-3", "Rear axle centre offset", "mm", "1.0", "dummy axle")));
        wall(asWelded, "1.70");
        axle(asWelded, "1.5");
        assertThat(advices.of(shop.sheet(asWelded).head(), line(asWelded, "080-3"))
                        .orElseThrow()
                        .history())
                .isEmpty();
    }

    private void wall(WholeShop.Frame frame, String wall) {
        jdbc.sql("update design_geometry set amount = ? where input = 'CHAINSTAY_WALL' and revision_id ="
                        + " (select design_revision_id from traveller where id = ?)")
                .params(new BigDecimal(wall), frame.travellerId())
                .update();
    }

    @Test
    void whatTwoPushesMovedTogetherTellsOfNeither() {
        WholeShop.Frame frame = offset("AL6061", "1.67", "1.5");
        long axle = line(frame, "100-3").characteristicId();
        coldSets.push(shop.act(setter), axle, new BigDecimal("1.2"), new BigDecimal("5.9"));
        shop.clock().pass(Duration.ofMinutes(3));
        seatTube(frame, "150.00", "152.00");
        reduce(frame);
        coldSets.push(
                shop.act(setter), line(frame, "100-9").characteristicId(), new BigDecimal("0.3"), new BigDecimal("4"));
        shop.clock().pass(Duration.ofMinutes(3));
        axle(frame, "0.7");
        assertThat(advised(offset("AL6061", "1.67", "1.5")).history()).isEmpty();
    }

    /**
     * Cantilever with an end load, from the handbook: the end moves 2 σ L² / (3 E D) before the outermost fibre yields; here
     * L = 432 − 20 mm, D = 22 mm. Moduli and yields are handbook values, from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "AL6061, 4.4, Only between quench and ageing",
        "AL7005, 11.0, before it hardens",
        "STEEL, 11.3, never a brazed fillet",
        "TI, 35.5, three to four times as far as steel"
    })
    void whatOnlySpringsBackIsShownForEachMetal(String metal, double floor_mm, String note) {
        double yield = switch (metal) {
            case "AL6061" -> 60;
            case "AL7005" -> 150;
            case "STEEL" -> 450;
            default -> 725;
        };
        double modulus = metal.equals("STEEL") ? 205_000 : metal.equals("TI") ? 105_000 : 70_000;
        assertThat(2 * yield * 412 * 412 / (3 * modulus * 22)).isCloseTo(floor_mm, within(0.05));
        PushAdvice advice = advised(offset(metal, "1.68", "1.5"));
        assertThat(advice.floor())
                .startsWith("Up to " + String.valueOf(floor_mm).replace('.', ',') + "\u00a0mm at the axle")
                .contains("nothing stays");
        assertThat(advice.note()).contains(note);
    }

    /**
     * By the same handbook for a stay of 22 × 1,6 and 430 free: 2 · 60 · 430² / (3 · 70 000 · 22) = 4,80 before anything
     * stays. A width that wants 3 wants 1,5 of each stay: 1,5 + 4,80 = 6,30 at least, of which 85 in 100 are 5,36.
     */
    @Test
    void aWidthIsBroughtByBothStaysAndOfDropoutsNothingIsComputed() {
        DrawnFrames.Section stay = new DrawnFrames.Section(
                "chainstay", new BigDecimal("22"), new BigDecimal("1.6"), new BigDecimal("430"));
        assertThat(bending.floor("AL6061", Deviation.AXLE_WIDTH, stay, 3))
                .startsWith("Each stay takes half of the width. Up to 4,8\u00a0mm at the axle")
                .contains("each half wants 6,3 to", "begin with 5,4\u00a0mm.");
        assertThat(bending.floor("AL6061", Deviation.REAR_AXLE_OFFSET, stay, 1.5))
                .startsWith("Up to 4,8\u00a0mm at the axle")
                .contains("the set wants 6,3 to");
        for (Deviation turned : List.of(Deviation.DROPOUTS_FORE_AFT, Deviation.DROPOUTS_UP_DOWN, Deviation.TWIST)) {
            assertThat(bending.floor("AL6061", turned, stay, 0.5))
                    .startsWith("Nothing is computed from bending: no single tube stands for the " + turned.words())
                    .endsWith("What only springs back is not known beforehand; measure after each push.");
        }
    }

    @Test
    void anAngleIsTakenOutAtTheBar() {
        WholeShop.Frame frame = drawn(frame());
        seatTube(frame, "150.12", "150.42");
        onThe(frame, TableSetUp.Base.MANDREL);
        read(frame, Spot.MANDREL_LOW, "150.45");
        read(frame, Spot.MANDREL_HIGH, "148.95");
        reduce(frame);
        PushAdvice advice =
                advices.of(shop.sheet(frame).head(), line(frame, "100-1")).orElseThrow();
        // 250 mm · tan 0,344°
        assertThat(advice.toTakeOut()).contains("0,344", "1,5\u00a0mm at the bar, 250\u00a0mm from the axis");
        assertThat(advice.floor()).contains("no single tube stands for the twist");
    }

    @Test
    void nothingIsProposedForWhatNeedNotBeSetRight() {
        WholeShop.Frame frame = offset("AL6061", "1.69", "0.2");
        assertThat(advice(frame)).isEmpty();
    }

    @Test
    void aPushThatCannotHaveBeenIsNotNoted() {
        assertThat(refused(push("AL6061", "1.6", "5.4 5.4")).why()).contains("a tube comes back");
        assertThat(refused(push("BRASS", "1.6", "0.5 5.4")).field()).isEqualTo("metal");
        assertThat(refused(push("TI", "0", "0.5 5.4")).field()).isEqualTo("wall");
        assertThat(refused(push("TI", "1", "0.5 500")).field()).isEqualTo("push");
        assertThat(refused(new PushNoted(
                                Deviation.STACK,
                                "TI",
                                BigDecimal.TEN,
                                BigDecimal.ONE,
                                BigDecimal.TEN,
                                BigDecimal.ONE,
                                "x"))
                        .field())
                .isEqualTo("deviation");
        PushNoted good = push("TI", "1", "0.5 5.4");
        assertThat(refused(new PushNoted(
                                good.deviation(),
                                good.metal(),
                                good.outside_mm(),
                                good.wall_mm(),
                                good.push_mm(),
                                good.set_mm(),
                                " "))
                        .field())
                .isEqualTo("source");
        long worker = shop.hire(Role.STATION_WORKER);
        assertThat(refusal(() -> noted.note(shop.act(worker), good)).kind()).isEqualTo(Refusal.Kind.PERSON);
    }

    private Refusal refused(PushNoted push) {
        return refusal(() -> noted.note(shop.act(qa), push));
    }
}
