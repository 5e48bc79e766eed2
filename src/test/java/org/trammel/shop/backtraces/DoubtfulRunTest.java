package org.trammel.shop.backtraces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.thermal.HardnessMethod;
import org.trammel.shop.floor.Asked;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.ovens.Programme;
import org.trammel.shop.ovens.Run;
import org.trammel.shop.ovens.RunFigure;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;

/** What a run gave of a frame is undecided from the moment on in which the run is, and stands again with the frame's result. */
class DoubtfulRunTest extends AfterADrift {

    @Autowired
    private Travellers travellers;

    @Autowired
    private NonconformanceReads nonconformances;

    @Test
    void theGateOfWhatADoubtfulRunGaveIsShutAndTheSignatureCountsNoLonger() {
        gives();
        Floor.Frame frame = measured();
        Run run = released(frame);
        assertThat(line(frame).state()).isEqualTo(CharacteristicState.CONFORMING);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        clock.pass(Duration.ofHours(2));
        OvenTrace trace = found(oven.load(), "7");
        assertThat(line(frame).state()).isEqualTo(CharacteristicState.UNDECIDED);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.IN_WORK);
        assertThat(nonconformances.of(frame.serial())).isEmpty();
        String log = floor.gauge("OVEN-LOG", "h", null);
        refused(() -> floor.read(qa, line(frame).characteristicId(), log, "8.3"), "given by run " + run.code());
        hard(run.code(), HardnessMethod.BRINELL, "98", "95");
        settle(qa, trace, frameOf(trace, frame).id(), TraceResult.HARDNESS, "98 HB on its coupon");
        assertThat(line(frame).state()).isEqualTo(CharacteristicState.CONFORMING);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
    }

    @Test
    void aFrameThatWentOnStandsUndecidedWhereItWasAgedAndGoesOnWithItsResult() {
        gives();
        Floor.Frame frame = measured();
        Run run = released(frame);
        long aged = floor.at(frame).line().operationId();
        long third = floor.hire(Role.STATION_WORKER);
        signing.sign(crew.act(third), aged, third, Signer.SECOND);
        assertThat(floor.at(frame).line().code()).isEqualTo("999");
        clock.pass(Duration.ofHours(2));
        OvenTrace trace = found(oven.load(), "7");
        assertThat(state(aged)).isEqualTo(CharacteristicState.UNDECIDED);
        assertThat(floor.at(frame).line().code()).isEqualTo("999");
        hard(run.code(), HardnessMethod.BRINELL, "98", "95");
        settle(qa, trace, frameOf(trace, frame).id(), TraceResult.HARDNESS, "98 HB on its coupon");
        assertThat(state(aged)).isEqualTo(CharacteristicState.CONFORMING);
    }

    /** What steered the oven and was read by nobody for the verdict moves no verdict. */
    @Test
    void whatARunGaveThatIsClearedStaysAsItIs() {
        gives();
        Floor.Frame frame = measured();
        released(frame);
        clock.pass(Duration.ofHours(2));
        found(oven.control(), "7");
        assertThat(line(frame).state()).isEqualTo(CharacteristicState.CONFORMING);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
    }

    private void gives() {
        Programme now = programmes.of(programme).get(0);
        Programme drawn = programmes.draw(
                crew.act(qa), programme, null, now.content().giving(Map.of(RunFigure.IN_BAND, List.of("110-1"))));
        programmes.approve(crew.act(qa), drawn.revisionId(), drawn.version());
    }

    private Floor.Frame measured() {
        return floor.frame(SmallRoute.of(
                        op(operation)
                                .step("in the oven")
                                .hold(Signer.SECOND)
                                .characteristic(Asked.of("110-1", "h", "8", "9", "OVEN-LOG")
                                        .sheet())
                                .sheet(),
                        op("999").step("on").sheet())
                .sheet());
    }

    private FrameSheet.CharacteristicLine line(Floor.Frame frame) {
        return floor.at(frame).characteristics().get(0);
    }

    private CharacteristicState state(long operationId) {
        return travellers.operation(operationId).characteristics().get(0).state();
    }
}
