package org.trammel.shop.assembly;

import static org.trammel.shop.floor.SmallRoute.op;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.travellers.FrameSheet;

/** A shop with rules of joining, final check and packing for operations of the test's own. */
abstract class AtTheDoor extends AtTheStand {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    protected BuildRulesBook book;

    @Autowired
    protected Builds builds;

    protected String join;
    protected String check;
    protected String pack;

    @BeforeEach
    void rules() {
        int number = NUMBER.incrementAndGet();
        join = "6" + number + "j";
        check = "6" + number + "c";
        pack = "6" + number + "p";
        book.putInForce(crew.act(qa), asked());
    }

    protected NewBuildRules asked() {
        return new NewBuildRules(
                List.of(join),
                List.of(),
                List.of(check),
                List.of(pack),
                shares("0.3", "0.3", "0.1", "0.2"),
                20,
                figure("25"),
                NewBuildRules.items("SE | bell\n* | manual\nDE | lights"),
                "written for a test");
    }

    protected static OffsetShares shares(String front, String arm, String bearing, String dropout) {
        return new OffsetShares(figure(front), figure(arm), figure(bearing), figure(dropout));
    }

    /** A frame of two parts that is joined, then checked and packed. */
    protected Floor.Frame ofTwo() {
        return floor.frame(SmallRoute.of(
                        op(join).joins().step("joined").sheet(),
                        op(check).step("looked over").sheet(),
                        op(pack).step("in the box").sheet())
                .child("FT", SmallRoute.of(op("150").step("coat").sheet()))
                .child("SA", SmallRoute.of(op("150").step("coat").sheet()))
                .sheet());
    }

    protected Floor.Frame part(Floor.Frame frame, String part) {
        return new Floor.Frame(
                frame.orderId(), travellers.inForce(frame.serial(), part).travellerId(), frame.serial());
    }

    /** A frame that stands at its final check. */
    protected Floor.Frame atItsCheck() {
        return floor.frame(SmallRoute.of(
                        op(check).step("looked over").sheet(),
                        op(pack).step("in the box").sheet(),
                        op("999").step("on").sheet())
                .sheet());
    }

    protected BuildRecord bed(Floor.Frame frame, BuildRecord.Brake brake, int stops, String kmh, boolean clear) {
        return builds.bed(
                crew.act(fitter), at(frame), new Builds.Bedding(brake, stops, figure(kmh), null, null, null, clear));
    }

    protected BuildRecord ride(Floor.Frame frame, long rider, boolean good) {
        return builds.ride(crew.act(fitter), at(frame), rider, good, "tracks straight");
    }

    protected BuildRecord tick(Floor.Frame frame, String item) {
        return builds.item(crew.act(fitter), at(frame), item, true);
    }

    protected String why(Floor.Frame frame) {
        return floor.sheet(frame).inTheWay().stream().map(way -> way.why()).reduce("", (a, b) -> a + " " + b);
    }

    protected FrameSheet.Head head(Floor.Frame frame) {
        return travellers.head(frame.travellerId());
    }
}
