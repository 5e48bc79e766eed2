package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;

class WayThroughTest extends AtTheBench {

    @Test
    void aFrameSentOutComesBackWithItsCertificate() {
        var frame = floor.frame(
                SmallRoute.of(op("085").outside().step("relieved").sheet()).sheet());
        long at = floor.at(frame).line().operationId();
        outside.send(floor.act(worker), at, "a heat-treatment works");
        List<Long> step = List.of(floor.at(frame).steps().get(0).stepId());
        refused(() -> bench.tick(floor.act(worker), step, null, null), "away");
        refused(() -> outside.bookBack(floor.act(worker), at, " "), "Nothing was said");
        outside.bookBack(floor.act(worker), at, "C-4711");
        bench.tick(floor.act(worker), step, null, null);
    }

    @Test
    void aFrameIsJoinedWhenBothPartsAreReadyAndNoneIsHeld() {
        var frame = floor.frame(SmallRoute.of(op("170").joins().step("join").sheet())
                .child("FT", SmallRoute.of(op("150").step("coat").sheet()))
                .child("SA", SmallRoute.of(op("150").step("coat").sheet()))
                .sheet());
        var front = part(frame, "FT");
        var arm = part(frame, "SA");
        List<Long> join = List.of(floor.at(frame).steps().get(0).stepId());
        refused(() -> bench.tick(floor.act(worker), join, null, null), "FT");
        floor.tickAll(front, worker);
        refused(() -> bench.tick(floor.act(worker), join, null, null), "SA");
        floor.tickAll(arm, worker);
        long hold = hold(arm, HoldScope.PART, HoldReason.MATERIAL, Set.of());
        refused(() -> bench.tick(floor.act(worker), join, null, null), "on hold");
        assertThat(floor.sheet(front).inTheWay()).isEmpty();
        holds.lift(floor.act(second), hold, "came");
        bench.tick(floor.act(worker), join, null, null);
    }

    @Test
    void severalFramesAreTickedTogetherAllOrNone() {
        var route = SmallRoute.of(op("140").together().step("blast").sheet()).sheet();
        var one = floor.frame(route);
        var two = floor.frame(route);
        hold(two, HoldScope.FRAME, HoldReason.PAYMENT, Set.of());
        List<Long> both = List.of(
                floor.at(one).steps().get(0).stepId(),
                floor.at(two).steps().get(0).stepId());
        refused(() -> bench.tick(floor.act(worker), both, null, null), "on hold");
        assertThat(floor.at(one).steps().get(0).ticked()).isFalse();
    }

    @Test
    void aStepThatAsksForAPhotographIsNotTickedWithoutOne() throws IOException {
        var frame = floor.frame(SmallRoute.of(op("040").photo("vents").sheet()).sheet());
        long step = floor.at(frame).steps().get(0).stepId();
        refused(() -> bench.tick(floor.act(worker), List.of(step), null, null), "photograph");
        ByteArrayOutputStream picture = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(8, 6, BufferedImage.TYPE_INT_RGB), "png", picture);
        remarks.photo(floor.act(worker), step, new Remarks.Sent(picture.toByteArray(), "image/png", "vents.png"));
        bench.tick(floor.act(worker), List.of(step), null, null);
    }

    @Test
    void aFrameIsShippedOnlyWithItsOwnSerialInTheBoxAndNothingOpen() {
        var frame = floor.frame(SmallRoute.of(op("200").step("pack").sheet()).sheet());
        refused(() -> shipping.ship(floor.act(worker), frame.travellerId(), frame.serial()), "is released");
        floor.tickAll(frame, worker);
        refused(() -> shipping.ship(floor.act(worker), frame.travellerId(), "AV26101H"), "another one");
        long hold = hold(frame, HoldScope.FRAME, HoldReason.PAYMENT, Set.of());
        refused(() -> shipping.ship(floor.act(worker), frame.travellerId(), frame.serial()), "on hold");
        holds.lift(floor.act(owner), hold, "paid");
        shipping.ship(floor.act(worker), frame.travellerId(), frame.serial());
        assertThat(floor.sheet(frame).head().state()).isEqualTo(TravellerState.SHIPPED);
        refused(() -> remarksTick(frame), "shipped");
    }

    private void remarksTick(Floor.Frame frame) {
        long step = travellers
                .operation(floor.sheet(frame).operations().get(0).operationId())
                .steps()
                .get(0)
                .stepId();
        bench.untick(floor.act(qa), step, "x");
    }

    @Test
    void workIsBrokenOffWithAReasonAndTakenUpAgain() {
        var frame =
                floor.frame(SmallRoute.of(op("070").step("a").step("b").sheet()).sheet());
        bench.tick(floor.act(worker), List.of(floor.at(frame).steps().get(0).stepId()), null, null);
        long at = floor.at(frame).line().operationId();
        refused(() -> bench.stop(floor.act(worker), at, ""), "Nothing was said");
        bench.stop(floor.act(worker), at, "purge alarm");
        List<Long> next = List.of(floor.at(frame).steps().get(1).stepId());
        refused(() -> bench.tick(floor.act(worker), next, null, null), "stopped: purge alarm");
        bench.resume(floor.act(second), at);
        bench.tick(floor.act(second), next, null, null);
    }

    @Test
    void whoReadBackSecondMaySignAsSecondAndWhoMeasuredMayNot() {
        String calliper = floor.gauge("CALLIPER", "mm", null);
        var frame = floor.frame(SmallRoute.of(op("060")
                        .step("tack")
                        .readBack("060-1", "0.3")
                        .plain("060-5", "0.2")
                        .hold(Signer.SECOND)
                        .sheet())
                .sheet());
        long other = floor.hire(Role.STATION_WORKER);
        var characteristics = floor.at(frame).characteristics();
        floor.tickAll(frame, worker);
        floor.read(worker, characteristics.get(0).characteristicId(), calliper, "0.1");
        refused(
                () -> floor.read(worker, characteristics.get(0).characteristicId(), calliper, "0.1"),
                "second time by the same person");
        floor.read(second, characteristics.get(0).characteristicId(), calliper, "0.0");
        floor.read(other, characteristics.get(1).characteristicId(), calliper, "0.1");
        long point = floor.at(frame).line().operationId();
        refused(() -> signing.sign(floor.act(other), point, other, Signer.SECOND), "ticked or measured");
        signing.sign(floor.act(second), point, second, Signer.SECOND);
        assertThat(floor.sheet(frame).head().state()).isEqualTo(TravellerState.FINISHED);
    }
}
