package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.time.Duration;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;

/** What keeps a point shut, one thing at a time: each was taken out once to see its test turn red (ops/bench/guards). */
class PointGuardsTest extends AtTheBench {

    private static final Duration LONGER_THAN_A_WITNESS_HAS = Duration.ofHours(1);

    @Autowired
    private JdbcClient jdbc;

    @Test
    void aHoldPointIsNotSignedWhileWorkOfItIsLeft() {
        var frame = floor.frame(SmallRoute.of(
                        op("080").step("look").step("dye").hold(Signer.SECOND).sheet())
                .sheet());
        long point = floor.at(frame).line().operationId();
        refused(() -> signing.sign(floor.act(second), point, second, Signer.SECOND), "080", "waiting");
        floor.tickFirst(frame, worker);
        refused(() -> signing.sign(floor.act(second), point, second, Signer.SECOND), "080", "in work");
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.IN_WORK);
    }

    @Test
    void aPointIsSignedAsTheRouteAsksAndAsEachOnce() {
        var frame = floor.frame(SmallRoute.of(
                        op("190").step("look").hold(Signer.SECOND, Signer.QA).sheet())
                .sheet());
        floor.tickAll(frame, worker);
        long point = floor.at(frame).line().operationId();
        refused(() -> signing.sign(floor.act(owner), point, owner, Signer.OWNER), "not asked for");
        signing.sign(floor.act(second), point, second, Signer.SECOND);
        long third = floor.hire(Role.STATION_WORKER);
        refused(() -> signing.sign(floor.act(third), point, third, Signer.SECOND), "already signed");
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        assertThat(told(frame, "signed")).isOne();
    }

    @Test
    void aWitnessPointIsNotPassedWhileWorkOfItIsLeft() {
        var frame = witnessed();
        long point = floor.at(frame).line().operationId();
        clock.pass(LONGER_THAN_A_WITNESS_HAS);
        refused(() -> signing.passWitness(floor.act(worker), point), "080", "waiting");
    }

    @Test
    void aWitnessPointUnderAHoldIsNotPassedUnattended() {
        var frame = witnessed();
        floor.tickAll(frame, worker);
        long point = floor.at(frame).line().operationId();
        long hold = hold(frame, HoldScope.FRAME, HoldReason.MATERIAL, Set.of());
        clock.pass(LONGER_THAN_A_WITNESS_HAS);
        refused(() -> signing.passWitness(floor.act(worker), point), "on hold");
        holds.lift(floor.act(second), hold, "it came");
        signing.passWitness(floor.act(worker), point);
        assertThat(floor.at(frame).line().code()).isEqualTo("090");
        assertThat(told(frame, "witness point passed unattended")).isOne();
    }

    @Test
    void aWitnessPointIsNotPassedWhenAnOperationBeforeItWasOpenedAgain() {
        var frame = floor.frame(SmallRoute.of(
                        op("070").step("weld").sheet(),
                        op("080").step("look").witness().sheet(),
                        op("090").step("age").sheet())
                .sheet());
        long weld = floor.at(frame).steps().get(0).stepId();
        floor.tickAll(frame, worker);
        floor.tickAll(frame, worker);
        long point = floor.at(frame).line().operationId();
        bench.untick(floor.act(qa), weld, "a node was left out");
        clock.pass(LONGER_THAN_A_WITNESS_HAS);
        refused(() -> signing.passWitness(floor.act(worker), point), "070", "comes first");
    }

    private Floor.Frame witnessed() {
        return floor.frame(SmallRoute.of(
                        op("080").step("look").witness().sheet(),
                        op("090").step("age").sheet())
                .sheet());
    }

    /** How many records of the frame tell of it. */
    private long told(Floor.Frame frame, String what) {
        return jdbc.sql("select count(*) from log_entry where chain = :chain and payload like :what")
                .param("chain", "frame:" + frame.serial())
                .param("what", "%\"what\":\"" + what + "\"%")
                .query(Long.class)
                .single();
    }
}
