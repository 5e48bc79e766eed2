package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;

/** Brakes bedded by the count in force, then the ride, then what the ride may have loosened. */
class AfterTheRideTest extends AtTheDoor {

    /** What a ride may have loosened is torqued after it: not before, and again after another ride. */
    @Test
    void whatIsTorquedAfterTheRideIsNotTorquedBeforeIt() {
        ride = check;
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        SmallRoute.op(fit).step("fitted").sheet(),
                        SmallRoute.op(check).step("looked over").sheet(),
                        SmallRoute.op("999").step("on").sheet())
                .sheet());
        give(frame, component(ComponentKind.ROTOR, afterRide()), "");
        tighten(frame);
        floor.tickAll(frame, fitter);
        assertThat(code(frame)).isEqualTo(check);
        refused(() -> tighten(frame), "no good ride is signed", "Ride it first");
        bed(frame, BuildRecord.Brake.FRONT, 20, "25", true);
        bed(frame, BuildRecord.Brake.REAR, 20, "25", true);
        ride(frame, second, false);
        refused(() -> tighten(frame), "no good ride is signed");
        ride(frame, second, true);
        tighten(frame);
        assertThat(sheet(frame).done()).isEqualTo(1);
        clock.pass(Duration.ofMinutes(30));
        ride(frame, second, true);
        TorqueSheet.Line line = sheet(frame).lines().get(0);
        assertThat(line.state()).isEqualTo(TorqueSheet.State.AGAIN);
        tick(frame, "bell");
        tick(frame, "manual");
        floor.tickAll(frame, fitter);
        assertThat(why(frame)).contains("is to be torqued again");
        torques.again(
                crew.act(fitter), at(frame), line.part().id(), line.fastener().id(), "ridden since");
        tighten(frame);
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void fewerOrSlowerStopsThanTheRulesAskForAreTheQaLeadsToTake() {
        Floor.Frame frame = atItsCheck();
        refused(() -> less(frame, fitter, 1, "25"), "1 stops from 25 km/h are less than rules", "20 from 25 km/h");
        refused(() -> less(frame, fitter, 20, "1"), "20 stops from 1 km/h are less than rules");
        refused(() -> less(frame, owner, 1, "1"), "the QA lead enters it");
        assertThat(less(frame, qa, 10, "20").front()).isNotNull();
    }

    private BuildRecord less(Floor.Frame frame, long by, int stops, String kmh) {
        return builds.bed(
                crew.act(by),
                at(frame),
                new Builds.Bedding(
                        BuildRecord.Brake.FRONT,
                        stops,
                        figure(kmh),
                        stops,
                        figure(kmh),
                        "sheet of the pads, ceramic: more glazes them",
                        true));
    }

    private static NewFastener afterRide() {
        return new NewFastener(
                "rotor bolt",
                1,
                figure("5"),
                figure("5.5"),
                figure("6"),
                false,
                null,
                null,
                false,
                List.of(),
                false,
                false,
                true,
                null,
                null);
    }
}
