package org.trammel.shop.handwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/** A serial in the metal is the frame's when somebody who did not strike it reads it so. */
class SerialReadBackTest extends AtTheBrushes {

    @Autowired
    private LotRegister lots;

    @Autowired
    private HandHistory history;

    @Autowired
    private Travellers travellers;

    private Floor.Frame marked() {
        Floor.Frame frame =
                frame("AL6061", proven("struck", Proof.SERIAL_STRUCK), proven("read back", Proof.SERIAL_READ));
        tick(frame, "struck", worker);
        return frame;
    }

    private static SerialNumber serial(Floor.Frame frame) {
        return ((SerialNumber.Result.Whole) SerialNumber.read(frame.serial())).serial();
    }

    @Test
    void theSecondPersonKeysItWholeAndTheStepOpens() {
        Floor.Frame frame = marked();
        refused(() -> tick(frame, "read back", worker), "Nobody has keyed", "Somebody who did not strike it");
        refused(
                () -> serials.readBack(
                        crew.act(worker), at(frame), serial(frame).shown()),
                "You struck it",
                "Call somebody else");
        refused(() -> tick(frame, "read back", worker), "Nobody has keyed");
        serials.readBack(crew.act(second), at(frame), serial(frame).shown().toLowerCase(java.util.Locale.ROOT));
        tick(frame, "read back", worker);
        assertThat(floor.at(frame).line().code()).isEqualTo("999");
    }

    /** ISO/IEC 7064 MOD 37,36 finds every single wrong character; a number that is right but another's is found here. */
    @Test
    void aWrongATransposedAndAnotherFramesSerialAreRefusedAndTellNothing() {
        Floor.Frame frame = marked();
        SerialNumber own = serial(frame);
        int other = (own.number() + 90) % 1000;
        String wrong = own.shop() + String.format("%02d-%03d-%c", own.year(), other, own.check());
        String anothers = SerialNumber.of(own.shop(), own.year(), other).shown();
        for (String keyed : new String[] {wrong, anothers, own.tag(), "", "HB27", "<b>"}) {
            refused(() -> serials.readBack(crew.act(second), at(frame), keyed), "The serial was not read back.");
        }
        refused(() -> serials.readBack(crew.act(second), at(frame), wrong), "ISO/IEC 7064", "call the QA lead");
        refused(() -> serials.readBack(crew.act(second), at(frame), anothers), "the serial of another frame");
        refused(() -> serials.readBack(crew.act(second), at(frame), own.tag()), "the last characters only");
        refused(() -> tick(frame, "read back", second), "Nobody has keyed");
        assertThat(handwork.of(at(frame)).misreads())
                .as("kept as they were read, by whom; of what cannot be struck nothing is kept")
                .extracting(HandRecord.Misread::readAs)
                .contains(wrong, anothers, own.tag(), "HB27", "B");
        assertThat(handwork.of(at(frame)).misreads())
                .extracting(HandRecord.Misread::by)
                .containsOnly(second);
        assertThat(history.of(List.of(at(frame))))
                .extracting(HandHistory.Told::what)
                .contains("serial read as " + anothers + ", which is not that of this frame");
    }

    /** The same act, sent twice by a tablet that heard no answer, is kept once and answered alike. */
    @Test
    void aWrongReadingSentTwiceIsKeptOnceAndRefusedAgain() {
        Floor.Frame frame = marked();
        SerialNumber own = serial(frame);
        String anothers = SerialNumber.of(own.shop(), own.year(), (own.number() + 90) % 1000)
                .shown();
        Act act = crew.act(second);
        refused(() -> serials.readBack(act, at(frame), anothers), "the serial of another frame");
        refused(() -> serials.readBack(act, at(frame), anothers), "the serial of another frame");
        assertThat(handwork.of(at(frame)).misreads()).hasSize(1);
    }

    @Test
    void twoNeighboursSwappedAreRefused() {
        Floor.Frame frame = marked();
        SerialNumber own = serial(frame);
        String whole = own.stored();
        int at = IntStream.range(2, 6)
                .filter(i -> whole.charAt(i) != whole.charAt(i + 1))
                .findFirst()
                .orElseThrow();
        String swapped = whole.substring(0, at) + whole.charAt(at + 1) + whole.charAt(at) + whole.substring(at + 2);
        refused(() -> serials.readBack(crew.act(second), at(frame), swapped), "The serial was not read back.");
    }

    @Test
    void itIsNotReadBeforeItIsStruckAndIsReadAnewAfterItIsStruckAnew() {
        Floor.Frame frame =
                frame("AL6061", proven("struck", Proof.SERIAL_STRUCK), proven("read back", Proof.SERIAL_READ));
        refused(
                () -> serials.readBack(
                        crew.act(second), at(frame), serial(frame).shown()),
                "It is not struck yet");
        tick(frame, "struck", worker);
        serials.readBack(crew.act(second), at(frame), serial(frame).shown());
        untick(frame, "struck", worker);
        refused(() -> tickFirst(frame, "read back"), "no step that strikes it is ticked");
        tick(frame, "struck", second);
        refused(() -> tick(frame, "read back", worker), "It was struck after it was read back");
        serials.readBack(
                crew.act(floor.hire(Role.STATION_WORKER)),
                at(frame),
                serial(frame).shown());
        tick(frame, "read back", worker);
        assertThat(floor.at(frame).line().code()).isEqualTo("999");
    }

    /** Out of order, with a reason. */
    private void tickFirst(Floor.Frame frame, String step) {
        bench.tick(crew.act(worker), List.of(step(frame, step)), null, "the order is another one this time");
    }

    private void untick(Floor.Frame frame, String step, long by) {
        bench.untick(crew.act(by), step(frame, step), null);
    }

    private long step(Floor.Frame frame, String text) {
        return floor.at(frame).steps().stream()
                .filter(one -> one.text().equals(text))
                .findFirst()
                .orElseThrow()
                .stepId();
    }

    /** Whoever struck it and let somebody else tick still knows what it should be. */
    @Test
    void nobodyWhoEverTickedThatItIsStruckReadsItBack() {
        Floor.Frame frame = marked();
        untick(frame, "struck", worker);
        tick(frame, "struck", second);
        for (long striker : new long[] {worker, second}) {
            refused(
                    () -> serials.readBack(
                            crew.act(striker), at(frame), serial(frame).shown()),
                    "You struck it, now or before",
                    "Call somebody else");
        }
    }

    /** What was read through the coat is gone with the blow it was read from; both readings are asked for anew. */
    @Test
    void struckAnewItIsReadAnewInLaterOperationsToo() {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op("140").step(proven("struck", Proof.SERIAL_STRUCK)).sheet(),
                        op("160").step(proven("read back", Proof.SERIAL_READ)).sheet(),
                        op("170").step("joined").step("on").sheet())
                .sheet());
        long struck = step(frame, "struck");
        tick(frame, "struck", worker);
        serials.readBack(crew.act(second), at(frame), serial(frame).shown());
        tick(frame, "read back", worker);
        tick(frame, "joined", worker);
        bench.untick(crew.act(qa), struck, "the figure 3 is not legible");
        tick(frame, "struck", worker);
        assertThat(floor.at(frame).line().code()).isEqualTo("160");
        refused(() -> tick(frame, "read back", worker), "It was struck after it was read back");
        serials.readBack(crew.act(second), at(frame), serial(frame).shown());
        tick(frame, "read back", worker);
        assertThat(floor.at(frame).line().code()).isEqualTo("170");
    }

    @Test
    void aSwingArmDoesNotPassOnTheMarkOfTheFrontTriangle() {
        Floor.Frame frame = floor.frame(SmallRoute.of(op("170").step("joined").sheet())
                .child("FT", SmallRoute.of(op("140").step("on").sheet()))
                .child("SA", marking())
                .sheet());
        Floor.Frame arm = new Floor.Frame(
                frame.orderId(), travellers.inForce(frame.serial(), "SA").travellerId(), frame.serial());
        tick(arm, "struck", worker);
        SerialNumber own = serial(frame);
        for (String other : new String[] {own.shown(), own.part("FT").shown()}) {
            refused(() -> serials.readBack(crew.act(second), at(arm), other), "of another part of this one");
        }
        serials.readBack(crew.act(second), at(arm), own.part("SA").shown());
        tick(arm, "read back", worker);
        assertThat(travellers.head(arm.travellerId()).state()).isEqualTo(TravellerState.FINISHED);
    }

    private static SmallRoute marking() {
        return SmallRoute.of(op("140")
                .step(proven("struck", Proof.SERIAL_STRUCK))
                .step(proven("read back", Proof.SERIAL_READ))
                .sheet());
    }

    @Test
    void itIsNotStruckThroughACoat() {
        String powder = powder();
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op("150").lot("sprayed", "POWDER").sheet(),
                        op("160").step(proven("struck", Proof.SERIAL_STRUCK)).sheet(),
                        op("999").step("on").sheet())
                .sheet());
        tick(frame, "sprayed", worker, powder);
        refused(() -> tick(frame, "struck", worker), "It is coated", "call the QA lead");
    }

    private String powder() {
        String code = "PW-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(java.util.Locale.ROOT);
        lots.receive(
                crew.act(qa),
                new NewLot(
                        code,
                        LotKind.POWDER,
                        "a lot",
                        null,
                        "LOW-BAKE",
                        "",
                        "",
                        null,
                        "a supplier",
                        java.time.LocalDate.of(2025, 12, 2),
                        null,
                        null,
                        ""));
        lots.certify(crew.act(qa), code, "batch", "C-1", null);
        lots.release(crew.act(qa), code);
        return code;
    }
}
