package org.trammel.shop.demo;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Records what the tick of a step rests on, where its route says that it rests on something. */
@Component
@Profile("demo")
class DemoProofs {

    private final DemoHandwork hands;
    private final DemoTubes tubes;
    private final DemoWelds welds;
    private final DemoTorques torques;
    private final DemoBuilds builds;
    private final Travellers travellers;

    DemoProofs(
            DemoHandwork hands,
            DemoTubes tubes,
            DemoWelds welds,
            DemoTorques torques,
            DemoBuilds builds,
            Travellers travellers) {
        this.hands = hands;
        this.tubes = tubes;
        this.welds = welds;
        this.torques = torques;
        this.builds = builds;
        this.travellers = travellers;
    }

    /** @return whether that ticked the step, as the closing of a node does */
    boolean prove(
            DemoOrder order, FrameSheet.OperationSheetOfFrame at, FrameSheet.StepLine step, Proof proof, String by) {
        long operation = at.line().operationId();
        FrameSheet.Head head = travellers.headOf(operation);
        switch (proof.sheet()) {
            case HANDWORK -> hands.prove(operation, head.metal(), head.serial() + head.part(), proof, by);
            case WELD -> welds.prove(at, step, proof, by);
            case TORQUE -> torques.prove(head.travellerId(), operation, proof);
            case BUILD -> builds.prove(operation, proof);
            case TUBES -> tubes.prove(order, operation, proof, by);
        }
        return proof == Proof.WELDED;
    }
}
