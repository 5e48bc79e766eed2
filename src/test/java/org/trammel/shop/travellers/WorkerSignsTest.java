package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;

/** The signature of the worker is that of somebody who worked on it. */
class WorkerSignsTest extends AtTheBench {

    private long third;

    @BeforeEach
    void another() {
        third = floor.hire(Role.STATION_WORKER);
    }

    @Test
    void whoDidNothingThereDoesNotSignAsWorker() {
        Floor.Frame frame = assembly();
        long point = floor.at(frame).line().operationId();
        floor.tickAll(frame, worker);
        refused(() -> signing.sign(floor.act(second), point, second, Signer.WORKER), "did none of the work");
        signing.sign(floor.act(worker), point, worker, Signer.WORKER);
        signing.sign(floor.act(second), point, second, Signer.SECOND);
        assertThat(floor.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void anyOfThoseWhoDidItSignsAsWorker() {
        Floor.Frame frame = assembly();
        FrameSheet.OperationSheetOfFrame at = floor.at(frame);
        bench.tick(floor.act(worker), List.of(at.steps().get(0).stepId()), null, null);
        bench.tick(floor.act(third), List.of(at.steps().get(1).stepId()), null, null);
        refused(
                () -> signing.sign(floor.act(second), at.line().operationId(), second, Signer.WORKER),
                "did none of the work");
        signing.sign(floor.act(third), at.line().operationId(), third, Signer.WORKER);
        signing.sign(floor.act(second), at.line().operationId(), second, Signer.SECOND);
        assertThat(floor.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void whereNobodyWhoDidItMaySignSomebodyElseDoes() {
        long apprentice = floor.hire(Role.APPRENTICE);
        Floor.Frame frame = assembly();
        long point = floor.at(frame).line().operationId();
        floor.tickAll(frame, apprentice);
        signing.sign(floor.act(worker), point, worker, Signer.WORKER);
        signing.sign(floor.act(second), point, second, Signer.SECOND);
        assertThat(floor.at(frame).line().code()).isEqualTo("200");
    }

    private Floor.Frame assembly() {
        return floor.frame(SmallRoute.of(
                        op("180")
                                .step("brakes")
                                .step("wheels")
                                .hold(Signer.WORKER, Signer.SECOND)
                                .sheet(),
                        op("200").step("pack").sheet())
                .sheet());
    }
}
