package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.trammel.shop.floor.SmallRoute.op;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.TestCrew;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.Floor.Frame;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Travellers;

@FloorTest
class LotsOnTheFloorTest {

    @Autowired
    private Floor floor;

    @Autowired
    private Bench bench;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Holds holds;

    @Autowired
    private Lots lots;

    @Autowired
    private LotRegister register;

    @Autowired
    private TestCrew crew;

    private long qa;
    private long worker;
    private Rack rack;

    @BeforeEach
    void open() {
        floor.open();
        qa = floor.hire(Role.QA_LEAD);
        worker = floor.hire(Role.STATION_WORKER);
        rack = new Rack(register, crew, qa);
    }

    @Test
    void aStepThatAsksForALotIsTickedOnlyWithOneThatMayGoThere() {
        Frame frame = frame();
        String steel = rack.released(Rack.tube("STEEL"));
        String rod = rack.released(Rack.classed(LotKind.FILLER, "ER4643"));
        String quarantined = rack.received(Rack.tube("AL6061"));
        for (String wrong : new String[] {null, "", steel, rod, quarantined, "NO-SUCH-LOT"}) {
            assertThatThrownBy(() -> tick(frame, wrong)).isInstanceOf(Refusal.class);
        }
        assertThat(floor.at(frame).steps().get(0).ticked()).isFalse();
        assertThat(lots.madeOf(frame.serial())).isEmpty();
        String tube = rack.released(Rack.tube("AL6061"));
        String shell = rack.released(Rack.lot(LotKind.FITTING, "AL6061", null, null, null, null, ""));
        tick(frame, tube + " " + shell);
        assertThat(floor.at(frame).steps().get(0).ticked()).isTrue();
        assertThat(lots.madeOf(frame.serial()))
                .extracting(MadeOf::lot, MadeOf::operation, MadeOf::position)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(tube, "020", "scan every tube"),
                        org.assertj.core.groups.Tuple.tuple(shell, "020", "scan every tube"));
    }

    @Test
    void manyLabelsAreScannedIntoOneField() {
        Frame frame = frame();
        List<String> tubes = java.util.stream.IntStream.range(0, 9)
                .mapToObj(i -> rack.released(Rack.tube("AL6061")))
                .toList();
        tick(frame, String.join(" ", tubes));
        assertThat(lots.madeOf(frame.serial())).extracting(MadeOf::lot).containsExactlyElementsOf(tubes);
    }

    @Test
    void aStepUntickedAndTickedAgainIsStillOnePiece() {
        Frame frame = frame();
        String tube = rack.released(Rack.tube("AL6061"));
        tick(frame, tube);
        bench.untick(floor.act(worker), floor.at(frame).steps().get(0).stepId(), null);
        tick(frame, tube);
        assertThat(lots.madeOf(frame.serial())).hasSize(1);
        register.quarantine(floor.act(qa), tube, "dented");
        bench.untick(floor.act(worker), floor.at(frame).steps().get(0).stepId(), null);
        assertThatThrownBy(() -> tick(frame, tube)).isInstanceOf(Refusal.class);
    }

    @Test
    void aCountedPieceTakenOnceIsNotTakenTwiceByTickingAgain() {
        Frame frame = frame();
        String shell = rack.released(Rack.counted("5", "pc"));
        tick(frame, shell);
        bench.untick(floor.act(worker), floor.at(frame).steps().get(0).stepId(), null);
        tick(frame, shell);
        assertThat(lots.madeOf(frame.serial())).hasSize(1);
    }

    @Test
    void blockingALotHoldsEveryFrameItWentIntoInTheSameAct() {
        Frame first = frame();
        Frame second = frame();
        Frame other = frame();
        String tube = rack.released(Rack.tube("AL6061"));
        tick(first, tube);
        tick(second, tube);
        tick(other, rack.released(Rack.tube("AL6061")));
        register.block(floor.act(qa), tube, "maker's letter");
        for (Frame frame : List.of(first, second)) {
            assertThat(travellers.holdsOf(frame.serial())).singleElement().satisfies(hold -> {
                assertThat(hold.reason()).isEqualTo(HoldReason.LOT_TRACE);
                assertThat(hold.scope()).isEqualTo(HoldScope.FRAME);
                assertThat(hold.source()).isEqualTo(tube);
                assertThat(hold.words()).contains("maker's letter");
            });
        }
        assertThat(travellers.holdsOf(other.serial())).isEmpty();
    }

    @Test
    void whoWeldedTheFrameDoesNotLiftTheTraceOfItsLot() {
        String weld = "WELD:AL:141";
        long welder = floor.qualified(weld, Role.QA_LEAD, Role.WELDER);
        Frame frame = floor.frame(SmallRoute.of(
                        op("070")
                                .qualified(weld)
                                .lot("filler scanned", "FILLER")
                                .sheet(),
                        op("080").step("look over").sheet())
                .sheet());
        String rod = rack.released(Rack.classed(LotKind.FILLER, "ER4643"));
        bench.tick(floor.act(welder), List.of(floor.at(frame).steps().get(0).stepId()), rod, null);
        register.block(floor.act(qa), rod, "maker's letter");
        long hold = travellers.holdsOf(frame.serial()).get(0).holdId();
        assertThatThrownBy(() -> holds.lift(floor.act(welder), hold, "looked at"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("took part");
        assertThat(holds.lift(floor.act(qa), hold, "penetrant clear")).isTrue();
    }

    @Test
    void whoPutABlockedLotIntoAFrameDoesNotLiftItsHold() {
        Frame frame = frame();
        long both = floor.hire(Role.QA_LEAD, Role.WELDER);
        String tube = rack.released(Rack.tube("AL6061"));
        FrameSheet.StepLine step = floor.at(frame).steps().get(0);
        bench.tick(floor.act(both), List.of(step.stepId()), tube, null);
        register.block(floor.act(qa), tube, "maker's letter");
        long hold = travellers.holdsOf(frame.serial()).get(0).holdId();
        assertThatThrownBy(() -> holds.lift(floor.act(both), hold, "spectrometer: right alloy"))
                .isInstanceOfSatisfying(
                        Refusal.class, refused -> assertThat(refused.why()).contains("took part"));
        assertThat(holds.lift(floor.act(qa), hold, "spectrometer: right alloy")).isTrue();
    }

    @Test
    void aPieceIsIssuedToTheOperationAtHandOfTheSerialTyped() {
        Frame frame = frame();
        String tube = rack.released(Rack.counted("6000", "mm"));
        String shown = frame.serial().substring(0, 4) + "-" + frame.serial().substring(4, 7) + " "
                + frame.serial().substring(7).toLowerCase(java.util.Locale.ROOT);
        lots.issue(floor.act(worker), tube, shown, "DT", null, new java.math.BigDecimal("741.2"), "mm");
        assertThat(lots.madeOf(frame.serial())).singleElement().satisfies(made -> {
            assertThat(made.operation()).isEqualTo("020");
            assertThat(made.quantity()).isEqualByComparingTo("741.2");
        });
        String steel = rack.released(Rack.tube("STEEL"));
        assertThatThrownBy(() -> lots.issue(floor.act(worker), steel, frame.serial(), "DT", null, null, null))
                .isInstanceOf(Refusal.class);
    }

    private Frame frame() {
        return floor.frame(SmallRoute.of(
                        op("020")
                                .lot("scan every tube", "TUBE")
                                .step("section measured")
                                .sheet(),
                        op("030").step("saw").sheet())
                .sheet());
    }

    private void tick(Frame frame, @Nullable String lot) {
        FrameSheet.StepLine step = floor.at(frame).steps().get(0);
        bench.tick(floor.act(worker), List.of(step.stepId()), lot, null);
    }
}
