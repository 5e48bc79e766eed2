package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.travellers.Bench;

/** Steps whose route says that they rest on a record: whoever sends the tick is refused until it is there. */
class BuildProofTest extends AtTheDoor {

    @Autowired
    private Bench bench;

    @Test
    void noStepOfTheFinalCheckIsTickedBeforeItsRecord() {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(check)
                                .step(proven("bedded", Proof.BEDDED))
                                .step(proven("ridden", Proof.RIDDEN))
                                .step(proven("country", Proof.COUNTRY))
                                .characteristic(torque("c-1", "bolt"))
                                .sheet(),
                        op(pack).step(proven("one serial", Proof.PACKED)).sheet(),
                        op("999").step("on").sheet())
                .sheet());
        refused(() -> tickStep(frame, "bedded"), "“bedded” of", "was not ticked", "front brake is not bedded");
        bed(frame, BuildRecord.Brake.FRONT, 20, "25", true);
        refused(() -> tickStep(frame, "bedded"), "rear brake is not bedded");
        bed(frame, BuildRecord.Brake.REAR, 20, "25", true);
        tickStep(frame, "bedded");
        refused(() -> tickStep(frame, "ridden"), "Nobody is recorded to have ridden it");
        builds.ride(crew.act(fitter), at(frame), second, true, "tracks straight");
        tickStep(frame, "ridden");
        refused(() -> tickStep(frame, "country"), "bell, manual");
        builds.item(crew.act(fitter), at(frame), "bell", true);
        builds.item(crew.act(fitter), at(frame), "manual", true);
        tickStep(frame, "country");
        floor.read(
                fitter,
                floor.at(frame).characteristics().get(0).characteristicId(),
                floor.gauge("TORQUE", "N·m", "0.1"),
                "5");
        assertThat(code(frame)).isEqualTo(pack);
        refused(() -> tickStep(frame, "one serial"), "not scanned together");
        builds.pack(crew.act(fitter), at(frame), frame.serial(), frame.serial(), frame.serial());
        tickStep(frame, "one serial");
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void withoutRulesThatNameTheOperationNoSuchStepIsTicked() {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op("2" + check).step(proven("bedded", Proof.BEDDED)).sheet(),
                        op("999").step("on").sheet())
                .sheet());
        refused(
                () -> tickStep(frame, "bedded"),
                "rests on a record",
                "no rules in force name operation 2" + check,
                "The QA lead puts the rules");
    }

    /** The work may have begun before the rules: a step that says so goes by no paper. */
    @Test
    void noSuchStepGoesByPaper() {
        String late = "3" + check;
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(late).step("looked over")
                                .step(proven("bedded", Proof.BEDDED))
                                .sheet(),
                        op("999").step("on").sheet())
                .sheet());
        tickStep(frame, "looked over");
        clock.pass(Duration.ofMinutes(5));
        check = late;
        book.putInForce(crew.act(qa), asked());
        refused(() -> tickStep(frame, "bedded"), "front brake is not bedded");
    }

    /** An operation that began before the rules passes by paper; the bicycle does not leave on it. */
    @Test
    void whatWentByPaperIsAskedForBeforeItIsPacked() {
        String late = "4" + check;
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(late).step("looked over").step("signed").sheet(),
                        op(pack).step(proven("packed", Proof.PACKED)).sheet())
                .sheet());
        tickStep(frame, "looked over");
        clock.pass(Duration.ofMinutes(5));
        check = late;
        book.putInForce(crew.act(qa), asked());
        tickStep(frame, "signed");
        assertThat(code(frame)).isEqualTo(pack);
        refused(
                () -> tickStep(frame, "packed"),
                "The record of the build is not whole.",
                "nobody is recorded to have ridden it");
    }

    @Test
    void partsAreScannedBeforeTheirStepIsTicked() {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(join).joins()
                                .step(proven("both scanned", Proof.JOINED))
                                .sheet(),
                        op("999").step("on").sheet())
                .child("FT", SmallRoute.of(op("150").step("coat").sheet()))
                .child("SA", SmallRoute.of(op("150").step("coat").sheet()))
                .sheet());
        floor.tickAll(part(frame, "FT"), fitter);
        floor.tickAll(part(frame, "SA"), fitter);
        refused(() -> tickStep(frame, "both scanned"), "not recorded which parts were joined");
        builds.join(
                crew.act(fitter),
                at(frame),
                List.of(frame.serial() + "-FT", frame.serial() + "-SA"),
                shares("0.3", "0.3", "0.1", "0.2"),
                "falls by its own weight");
        tickStep(frame, "both scanned");
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void torquesAreWholeBeforeTheirStepIsTickedAndAgainAfterTheRide() {
        ride = check;
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(fit).step(proven("torqued", Proof.TORQUED)).sheet(),
                        op(check).step(proven("again", Proof.TORQUED_AGAIN)).sheet(),
                        op("999").step("on").sheet())
                .sheet());
        refused(() -> tickStep(frame, "torqued"), "rests on the torque sheet", "no component with a sheet in force");
        give(frame, component(ComponentKind.STEM, againAfterTheRide()), "");
        refused(() -> tickStep(frame, "torqued"), "1 of 1 fasteners of its components are outstanding");
        tightenAll(frame);
        refused(() -> tickStep(frame, "torqued"), "is to be witnessed");
        witness(frame, second);
        tickStep(frame, "torqued");
        assertThat(code(frame)).isEqualTo(check);
        refused(() -> tickStep(frame, "again"), "1 of 1 fasteners", "face plate");
        bed(frame, BuildRecord.Brake.FRONT, 20, "25", true);
        bed(frame, BuildRecord.Brake.REAR, 20, "25", true);
        ride(frame, second, true);
        tightenAll(frame);
        clock.pass(Duration.ofMinutes(1));
        ride(frame, second, true);
        refused(() -> tickStep(frame, "again"), "1 of 1 fasteners", "is to be torqued again");
        TorqueSheet.Line line = sheet(frame).lines().get(0);
        torques.again(
                crew.act(fitter), at(frame), line.part().id(), line.fastener().id(), "after the ride");
        tightenAll(frame);
        refused(() -> tickStep(frame, "again"), "is to be witnessed");
        witness(frame, second);
        tickStep(frame, "again");
    }

    private static NewFastener againAfterTheRide() {
        NewFastener p = plate(null);
        return new NewFastener(
                p.name(),
                p.bolts(),
                p.least_Nm(),
                p.target_Nm(),
                p.most_Nm(),
                false,
                null,
                p.thread_mm(),
                true,
                p.passes(),
                false,
                null,
                true,
                null,
                null);
    }

    private static StepSheet proven(String text, Proof proof) {
        return new StepSheet(text, "", false, false, null, null, null, proof);
    }

    private void tickStep(Floor.Frame frame, String text) {
        bench.tick(
                crew.act(fitter),
                List.of(floor.at(frame).steps().stream()
                        .filter(step -> step.text().equals(text))
                        .findFirst()
                        .orElseThrow()
                        .stepId()),
                null,
                null);
    }
}
