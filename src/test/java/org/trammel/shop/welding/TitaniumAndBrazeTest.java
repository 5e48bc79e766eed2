package org.trammel.shop.welding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.Mockito.when;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.designs.DesignSheet;
import org.trammel.shop.designs.DesignState;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.nonconformance.Decision;

class TitaniumAndBrazeTest extends AtTheTorch {

    @Autowired
    private Designs designs;

    private String meter;

    @BeforeEach
    void titanium() {
        kind = "WELD:TI:141";
        welder = welder(held(kind, "ISO 9606-5", "0.7", "3", "BW, FW"));
        meter = gauge("OXYGEN", "ppm", "5");
    }

    /** Guard band 1.65 · 5 ppm = 8.25 ppm, so that 41.75 ppm is the last reading an arc may be struck on. */
    @Test
    void noArcAboveTheLimitOfThePurgeAndTheDoubtOfItsMeter() {
        inForce(titaniumProcedure());
        Floor.Frame frame = atTheTube();
        refused(() -> begin(frame, "Node 1", null, null), "was not read", "at most 50 ppm", "No arc");
        PurgeRecord alarm = read(frame, "180", "1.78", "8");
        assertThat(alarm.enough()).isFalse();
        // ln(209 000 / 50) = 8.34 volumes; of 1.78 L at 8 L/min in 1.9 min, worked by hand.
        assertThat(alarm.volumes()).isEqualByComparingTo("8.34");
        assertThat(alarm.minutes()).isEqualByComparingTo("1.9");
        refused(() -> begin(frame, "Node 1", null, null), "180 ppm", "at most 50 ppm", "No arc");
        assertThat(read(frame, "41.76", null, null).enough()).isFalse();
        refused(() -> begin(frame, "Node 1", null, null), "41,76 ppm", "8,25 ppm");
        assertThat(read(frame, "41.75", null, null).enough()).isTrue();
        begin(frame, "Node 1", null, null);
        end(frame, "Node 1", bead(BeadColour.SILVER));
        clock.pass(Duration.ofMinutes(31));
        refused(() -> begin(frame, "Node 2", null, null), "more than 30 min ago");
        read(frame, "20", null, null);
        begin(frame, "Node 2", null, null);
        end(frame, "Node 2", bead(BeadColour.STRAW));
        refused(() -> read(frame, "-1", null, null), "-1 ppm is no such figure");
        refused(() -> read(frame, "1000001", null, null), "it is 0 to 1000000 ppm");
        refused(() -> read(frame, null, null, null), "oxygen is missing");
        refused(() -> read(frame, "20", "0", "8"), "The volume inside, 0 L");
        refused(() -> read(frame, "20", "-5", null), "The volume inside, -5 L");
        refused(() -> read(frame, "20", null, "1000000000000"), "The flow, 1000000000000 L/min");
    }

    @ParameterizedTest
    @EnumSource(
            value = BeadColour.class,
            names = {"BROWN", "PURPLE", "BLUE", "GREY", "WHITE"})
    void aBeadThatAirReachedHoldsTheFrame(BeadColour colour) {
        inForce(titaniumProcedure());
        Floor.Frame frame = atTheTube();
        read(frame, "20", null, null);
        begin(frame, "Node 1", null, null);
        refused(() -> end(frame, "Node 1"), "colour of the bead is missing");
        end(frame, "Node 1", bead(colour));
        assertThat(record(frame, "Node 1").state()).isEqualTo(NodeRecord.State.HELD);
        assertThat(found(frame).words())
                .contains(colour.word(), colour.meaning() == BeadColour.Meaning.HELD ? "Air reached it" : "cut out");
        refused(() -> begin(frame, "Node 2", null, null, "go on"), "on hold");
        decide(frame, Decision.REWORK);
        assertThat(record(frame, "Node 1").state()).isEqualTo(NodeRecord.State.WAITING);
    }

    @Test
    void theWallsOfTheDrawingMustLieInTheProcedureAndInTheQualification() {
        inForce(titaniumProcedure());
        Floor.Frame frame = atTheTube();
        read(frame, "20", null, null);
        drawn(Map.of("DOWN_TUBE_WALL", "1.0", "TOP_TUBE_WALL", "3.5", "DOWN_TUBE_MIDDLE_WALL", "0.4"));
        refused(() -> begin(frame, "Node 1", null, null), "for walls of 0.7", "one of 3.5 mm");
        drawn(Map.of("DOWN_TUBE_WALL", "1.0", "DOWN_TUBE_WALL_AT_SHELL", "0.9", "DOWN_TUBE_MIDDLE_WALL", "0.4"));
        long right = welder;
        welder = welder(held(kind, "ISO 9606-5", "1", "3", "BW, FW"));
        refused(() -> begin(frame, "Node 1", null, null), "walls of 1 to 3 mm, and one of 0.9 mm is welded");
        welder = right;
        begin(frame, "Node 1", null, null);
    }

    /** A fillet brazed frame goes by a procedure of brazing, and its radius is read at each node. */
    @Test
    void theRadiusOfABrazedFilletIsReadAtEachNode() {
        NewProcedure c = Written.whole("STEEL", tack, weld, look, "BRAZE-SILVER");
        inForce(new NewProcedure(
                c.what(),
                "STEEL",
                "912",
                List.of("FW"),
                c.thicknessFrom_mm(),
                c.thicknessTo_mm(),
                c.operations(),
                new ArcSettings(List.of("BRAZE-SILVER"), null, List.of(), null, "", "", null, null),
                new HeatRules(null, null, null, null, 0),
                new NodeRules(null, BigDecimal.valueOf(5), BigDecimal.valueOf(7), false, false, 2),
                new LookRules("", "", ""),
                new Papers("ISO 13585", "shop rule", "1", "written for a test")));
        kind = "BRAZE";
        welder = welder(held(kind, "ISO 13585", "0.5", "3", "FW"));
        Floor.Frame tig = frame("STEEL");
        assertThat(procedures.guarding(floor.sheet(tig).head(), weld, null)).isEmpty();
        Floor.Frame frame = brazed();
        String rod = lot(LotKind.FILLER, "BRAZE-SILVER");
        scan(frame, "filler", rod);
        scan(frame, "gas", lot(LotKind.GAS, "ARGON"));
        begin(frame, "Node 1", null, null);
        String radius = gauge("GO-NO-GO", "mm", null);
        refused(() -> end(frame, "Node 1"), "fillet radius is missing");
        refused(() -> end(frame, "Node 1", fillet("5", "")), "not said what it was read with");
        end(frame, "Node 1", fillet("7", radius));
        begin(frame, "Node 2", null, null);
        end(frame, "Node 2", fillet("7.1", radius));
        assertThat(found(frame).words()).contains("Fillet radius 7,1 mm; 5 to 7 mm");
    }

    private Floor.Frame brazed() {
        org.trammel.shop.routes.RouteSheet drawn = route("STEEL");
        return floor.frame(new org.trammel.shop.routes.RouteSheet(
                0, "TEST", "test route", "A", "STEEL", "STEEL_FILLET", drawn.operations(), drawn.clocks(), List.of()));
    }

    private NewProcedure titaniumProcedure() {
        NewProcedure c = Written.whole("TI", tack, weld, look, "TI-CP");
        return Written.with(
                c,
                new HeatRules(null, null, null, null, 0),
                new NodeRules(BigDecimal.valueOf(50), null, null, true, false, 2),
                new LookRules("", "", ""));
    }

    private Floor.Frame atTheTube() {
        Floor.Frame frame = frame("TI");
        scan(frame, "filler", lot(LotKind.FILLER, "TI-CP"));
        scan(frame, "gas", lot(LotKind.GAS, "ARGON"));
        return frame;
    }

    private PurgeRecord read(Floor.Frame frame, @Nullable String oxygen, @Nullable String room, @Nullable String flow) {
        return purges.read(
                crew.act(welder),
                at(frame),
                new Purges.Reading(
                        oxygen == null ? null : new BigDecimal(oxygen),
                        meter,
                        room == null ? null : new BigDecimal(room),
                        flow == null ? null : new BigDecimal(flow)));
    }

    private void drawn(Map<String, String> geometry) {
        when(designs.revision(anyLong()))
                .thenReturn(new DesignSheet(
                        1,
                        1,
                        "T-1",
                        "A",
                        DesignState.RELEASED,
                        "TI",
                        "HARDTAIL",
                        "test frame",
                        null,
                        Map.of(),
                        geometry,
                        List.of(),
                        null,
                        null));
    }

    private static Welds.End bead(BeadColour colour) {
        return new Welds.End(null, null, null, null, null, null, colour, null, null);
    }

    private static Welds.End fillet(String radius, String gauge) {
        return new Welds.End(null, null, null, null, null, null, null, new BigDecimal(radius), gauge);
    }
}
