package org.trammel.shop.handwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;

/** What a step rests on and its tick are one act; what was found stays, also where it is not enough. */
class ProofTickTest extends AtTheBrushes {

    @Autowired
    private ProofTicks ticks;

    @Autowired
    private ProofSheets sheets;

    private long step(Floor.Frame frame) {
        return floor.at(frame).steps().stream()
                .filter(one -> !one.ticked())
                .findFirst()
                .orElseThrow()
                .stepId();
    }

    private void tick(Act act, ProofEntry entry, Floor.Frame... frames) {
        ticks.tick(act, Arrays.stream(frames).map(this::step).toList(), entry, null, null);
    }

    private static ProofEntry tools(String... codes) {
        return new ProofEntry(List.of(codes), null, null, null);
    }

    private ProofEntry air(String metal) {
        return new ProofEntry(
                List.of(),
                new MetalAir(
                        new BigDecimal("21"), new BigDecimal("68"), new BigDecimal(metal), hygrometer, thermometer),
                null,
                null);
    }

    private @Nullable ProofSheet sheet(Floor.Frame frame) {
        FrameSheet whole = floor.sheet(frame);
        FrameSheet.OperationSheetOfFrame at = floor.at(frame);
        return sheets.of(whole.head(), at.line(), at.steps().get(0)).orElse(null);
    }

    @Test
    void cleanerAndClothAreTakenAndTheStepIsTickedByOneActSentTwice() {
        Floor.Frame frame = frame("TI", proven("wiped", Proof.CLEANED));
        String cleaner = tool(ToolKind.CLEANER, MetalFamily.TITANIUM, false);
        String cloth = tool(ToolKind.CLOTH, MetalFamily.TITANIUM, false);
        long operation = at(frame);
        long step = step(frame);
        Act act = crew.act(worker);
        ticks.tick(act, List.of(step), tools(cleaner, cloth), null, null);
        ticks.tick(act, List.of(step), tools(cleaner, cloth), null, null);
        assertThat(handwork.of(operation).used())
                .extracting(HandRecord.Used::tool)
                .containsExactly(cleaner, cloth);
        assertThat(floor.at(frame).line().code()).isEqualTo("999");
    }

    @Test
    void aCleanerAloneStaysTakenAndTheClothIsAskedForNext() {
        Floor.Frame frame = frame("TI", proven("wiped", Proof.CLEANED));
        String cleaner = tool(ToolKind.CLEANER, MetalFamily.TITANIUM, false);
        String cloth = tool(ToolKind.CLOTH, MetalFamily.TITANIUM, false);
        refused(() -> tick(crew.act(worker), tools(cleaner), frame), "“wiped”", "No cloth kept for titanium");
        assertThat(handwork.of(at(frame)).used()).hasSize(1);
        assertThat(sheet(frame).kinds()).extracting(ProofSheet.Kind::word).containsExactly("cloth");
        tick(crew.act(worker), tools(cloth), frame);
        assertThat(floor.at(frame).line().code()).isEqualTo("999");
    }

    /** Air of 21 °C and 68 % has its dew point at 14.87 °C by the Magnus form with the constants of Sonntag (1990). */
    @Test
    void dampMetalIsKeptAndNotTicked() {
        Floor.Frame frame = frame("AL6061", proven("measured", Proof.WARM_DRY));
        Act act = crew.act(worker);
        refused(() -> tick(act, air("17.2"), frame), "“measured”", "3 K are asked for");
        assertThat(handwork.of(at(frame)).air().metal_degC()).isEqualByComparingTo("17.2");
        refused(() -> tick(act, air("17.2"), frame), "3 K are asked for");
        tick(crew.act(worker), air("18.5"), frame);
        assertThat(floor.at(frame).line().code()).isEqualTo("999");
    }

    @Test
    void whatIsRefusedTakesTheRestBackAndNothingIsTicked() {
        Floor.Frame frame = frame("STEEL", proven("brushed", Proof.BRUSHED));
        String own = tool(ToolKind.BRUSH, MetalFamily.STEEL, false);
        String other = tool(ToolKind.BRUSH, MetalFamily.TITANIUM, false);
        refused(() -> tick(crew.act(worker), tools(own, other), frame), "kept for titanium");
        assertThat(handwork.of(at(frame)).used()).isEmpty();
        refused(() -> tick(crew.act(worker), tools(), frame), "No brush or file kept for steel");
    }

    @Test
    void whatWasTakenLastAtTheStationIsOfferedFirstAndWhatMayNotTouchTheMetalNever() {
        Floor.Frame before = frame("TI", proven("brushed", Proof.BRUSHED));
        Floor.Frame frame = frame("TI", proven("brushed", Proof.BRUSHED));
        String first = tool(ToolKind.BRUSH, MetalFamily.TITANIUM, false);
        String last = tool(ToolKind.FILE, MetalFamily.TITANIUM, false);
        String steel = tool(ToolKind.BRUSH, MetalFamily.STEEL, false);
        tick(crew.act(worker), tools(first), before);
        handwork.touched(crew.act(worker), at(frame("TI", proven("brushed", Proof.BRUSHED))), last);
        List<String> offered = sheet(frame).kinds().get(0).tools().stream()
                .map(ProofSheet.Choice::code)
                .toList();
        assertThat(offered.subList(0, 2)).containsExactly(last, first);
        assertThat(offered).doesNotContain(steel);
    }

    @Test
    void framesCleanedTogetherAreProvenTogetherEachWithItsOwnRecord() {
        Floor.Frame one = together();
        Floor.Frame two = together();
        String brush = tool(ToolKind.BRUSH, MetalFamily.ALUMINIUM, false);
        long atOne = at(one);
        long atTwo = at(two);
        tick(crew.act(worker), tools(brush), one, two);
        for (long operation : new long[] {atOne, atTwo}) {
            assertThat(handwork.of(operation).used())
                    .extracting(HandRecord.Used::tool)
                    .containsExactly(brush);
        }
        assertThat(floor.at(one).line().code()).isEqualTo("999");
        assertThat(floor.at(two).line().code()).isEqualTo("999");
    }

    private Floor.Frame together() {
        return floor.frame(SmallRoute.of(
                        op("050")
                                .together()
                                .step(proven("brushed", Proof.BRUSHED))
                                .sheet(),
                        op("999").step("on").sheet())
                .sheet());
    }
}
