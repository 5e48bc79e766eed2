package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Rework;

/** Parts of one frame joined, brakes bedded, ridden by somebody named, packed with a whole record: or the gate stays shut. */
class BuildTest extends AtTheDoor {

    @Autowired
    private Holds holds;

    @Autowired
    private Rework rework;

    @Autowired
    private LotRegister lots;

    @Autowired
    private Bench bench;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private ActLog log;

    /** By hand: 0.3² + 0.3² + 0.1² + 0.2² = 0.23, its root 0.4796; the sum 0.9. */
    @Test
    void onlyThePartsOfThisFrameAreJoinedAndOnlyWhenBothAreReady() {
        Floor.Frame frame = ofTwo();
        Floor.Frame other = ofTwo();
        String front = frame.serial() + "-FT";
        String arm = frame.serial() + "-SA";
        refused(() -> join(frame, front, arm), "FT is released", "Finish it first");
        floor.tickAll(part(frame, "FT"), fitter);
        floor.tickAll(part(frame, "SA"), fitter);
        refused(() -> join(frame, front, other.serial() + "-SA"), "belongs to another frame");
        refused(() -> join(frame, frame.serial(), arm), "is the frame itself");
        refused(() -> join(frame, front, ""), "was not scanned");
        refused(() -> join(frame, front, "rubbish"), "no whole serial");
        long hold = holds.place(
                crew.act(qa),
                new Holds.Request(
                        part(frame, "SA").travellerId(),
                        HoldScope.PART,
                        null,
                        HoldReason.MATERIAL,
                        "bearing",
                        "",
                        Set.of()));
        refused(() -> join(frame, front, arm), "on hold, material missing");
        holds.lift(crew.act(fitter), hold, "came");
        floor.tickAll(frame, fitter);
        assertThat(code(frame)).isEqualTo(join);
        assertThat(why(frame)).contains("not recorded which parts were joined");
        BuildRecord record = join(frame, front, arm);
        assertThat(Objects.requireNonNull(record.joined()).rss_mm()).isEqualByComparingTo("0.48");
        assertThat(record.joined().worst_mm()).isEqualByComparingTo("0.9");
        assertThat(code(frame)).isEqualTo(check);
    }

    /** The arm was scrapped after its coat and made anew: the frame is joined with the new one, and packed with it. */
    @Test
    void aPartMadeAnewTakesThePlaceOfTheScrappedOne() {
        Floor.Frame frame = ofTwo();
        floor.tickAll(part(frame, "FT"), fitter);
        long arm = part(frame, "SA").travellerId();
        Act scrapping = crew.act(qa);
        transaction.executeWithoutResult(t -> {
            log.opens(scrapping, "scrap", "traveller:" + arm, Chains.frame(frame.serial()));
            rework.scrap(scrapping, arm, "NC-0001", false, Set.of());
        });
        String front = frame.serial() + "-FT";
        refused(() -> join(frame, front, frame.serial() + "-SA"), "SA is scrapped");
        rework.makeAnew(crew.act(qa), arm);
        refused(() -> join(frame, front, frame.serial() + "-SA"), "SA is released");
        floor.tickAll(part(frame, "SA"), fitter);
        BuildRecord record = join(frame, front, frame.serial() + "-SA");
        assertThat(record.parts()).containsExactly(front, frame.serial() + "-SA");
        floor.tickAll(frame, fitter);
        toThePacking(frame);
        assertThat(builds.of(at(frame)).missing()).containsExactly("torques: none is recorded of the whole bicycle");
    }

    private BuildRecord join(Floor.Frame frame, String first, String second) {
        return builds.join(
                crew.act(fitter),
                at(frame),
                List.of(first, second),
                shares("0.3", "0.3", "0.1", "0.2"),
                "falls by its own weight, tyre clears");
    }

    @Test
    void theFinalCheckWaitsForBothBrakesARideAndWhatTheCountryAsksFor() {
        Floor.Frame frame = atItsCheck();
        floor.tickAll(frame, fitter);
        assertThat(why(frame)).contains("front brake is not bedded");
        refused(() -> ride(frame, second, true), "not both bedded", "not on public roads");
        bed(frame, BuildRecord.Brake.FRONT, 19, "25", true);
        assertThat(why(frame)).contains("front brake is not bedded");
        bed(frame, BuildRecord.Brake.FRONT, 20, "24.9", true);
        assertThat(why(frame)).contains("front brake is not bedded");
        bed(frame, BuildRecord.Brake.FRONT, 20, "25", false);
        assertThat(why(frame)).contains("front brake is not bedded");
        bed(frame, BuildRecord.Brake.FRONT, 20, "25", true);
        assertThat(why(frame)).contains("rear brake is not bedded");
        builds.bed(
                crew.act(fitter),
                at(frame),
                new Builds.Bedding(
                        BuildRecord.Brake.REAR, 25, figure("25"), 30, figure("25"), "sheet of the pads", true));
        assertThat(why(frame)).contains("rear brake is not bedded");
        builds.bed(
                crew.act(fitter),
                at(frame),
                new Builds.Bedding(
                        BuildRecord.Brake.REAR, 30, figure("25"), 30, figure("25"), "sheet of the pads", true));
        assertThat(why(frame)).contains("Nobody is recorded to have ridden it");
        ride(frame, second, false);
        assertThat(why(frame)).contains("The ride was not good");
        ride(frame, second, true);
        assertThat(why(frame)).contains("bell, manual").doesNotContain("lights");
        tick(frame, "bell");
        refused(() -> tick(frame, "lights"), "no such thing in SE");
        tick(frame, "manual");
        assertThat(code(frame)).isEqualTo(pack);
    }

    @Test
    void whatIsOnHoldIsNeitherJoinedBeddedRiddenNorPacked() {
        Floor.Frame frame = atItsCheck();
        bed(frame, BuildRecord.Brake.FRONT, 20, "25", true);
        bed(frame, BuildRecord.Brake.REAR, 20, "25", true);
        long hold = held(frame);
        refused(() -> bed(frame, BuildRecord.Brake.FRONT, 20, "25", true), "on hold", "crack at the head tube");
        refused(() -> ride(frame, second, true), "on hold", "crack at the head tube");
        holds.lift(crew.act(qa), hold, "it is a scratch");
        holds.lift(crew.act(owner), hold, "seen");
        ride(frame, second, true);
        tick(frame, "bell");
        tick(frame, "manual");
        floor.tickAll(frame, fitter);
        assertThat(code(frame)).isEqualTo(pack);
        held(frame);
        refused(() -> packed(frame, frame.serial(), frame.serial(), frame.serial()), "on hold");
        Floor.Frame two = ofTwo();
        floor.tickAll(part(two, "FT"), fitter);
        floor.tickAll(part(two, "SA"), fitter);
        held(two);
        refused(() -> join(two, two.serial() + "-FT", two.serial() + "-SA"), "on hold");
    }

    private long held(Floor.Frame frame) {
        return holds.place(
                crew.act(qa),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.SAFETY,
                        "crack at the head tube",
                        "",
                        Set.of()));
    }

    @Test
    void whoMayNotSignDoesNotRideForTheShop() {
        Floor.Frame frame = atItsCheck();
        bed(frame, BuildRecord.Brake.FRONT, 20, "25", true);
        bed(frame, BuildRecord.Brake.REAR, 20, "25", true);
        long apprentice = floor.hire(Role.APPRENTICE);
        refused(() -> ride(frame, apprentice, true), "may not sign for a ride");
        long auditor = floor.hire(Role.AUDITOR);
        refused(() -> builds.ride(crew.act(auditor), at(frame), second, true, "straight"), "A reader changes nothing");
    }

    @Test
    void itIsPackedWithOneSerialAndAWholeRecordOnly() {
        Floor.Frame frame = atItsCheck();
        toThePacking(frame);
        assertThat(builds.of(at(frame)).missing()).containsExactly("torques: none is recorded of the whole bicycle");
        floor.tickAll(frame, fitter);
        assertThat(code(frame)).isEqualTo(pack);
        assertThat(why(frame)).contains("record of the build is not whole", "torques: none");
        Floor.Frame other = atItsCheck();
        refused(() -> packed(frame, frame.serial(), other.serial(), frame.serial()), "The box says " + other.serial());
        refused(() -> packed(frame, frame.serial(), frame.serial(), ""), "The paper was not scanned");
        refused(
                () -> packed(frame, frame.serial(), frame.serial(), frame.serial()),
                "It was not packed",
                "torques: none is recorded");
        assertThat(builds.of(at(frame)).packed()).isNull();
        assertThat(code(frame)).isEqualTo(pack);
    }

    /** Both arms of the frame are coated at an operation of the same code, each from a lot; that of the swing arm is gone. */
    @Test
    void aLotOfOnePartIsNoneOfAnotherAndAReadingThatIsNotSettledIsMissed() {
        SmallRoute coat = SmallRoute.of(SmallRoute.op("150")
                .lot("gas", "GAS")
                .characteristic(torque("150-1", "one"))
                .sheet());
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        SmallRoute.op(join).joins().step("joined").sheet(),
                        SmallRoute.op(pack).step("in the box").sheet())
                .child("FT", coat)
                .child("SA", coat)
                .sheet());
        String gas = gas();
        for (String one : List.of("FT", "SA")) {
            Floor.Frame part = part(frame, one);
            floor.read(fitter, floor.at(part).characteristics().get(0).characteristicId(), tool, "5");
            bench.tick(crew.act(fitter), List.of(floor.at(part).steps().get(0).stepId()), gas, null);
        }
        join(frame, frame.serial() + "-FT", frame.serial() + "-SA");
        floor.tickAll(frame, fitter);
        assertThat(code(frame)).isEqualTo(pack);
        assertThat(builds.of(at(frame)).missing()).isEmpty();
        jdbc.sql("update lot_use set scrapped = true where serial = ? and part = 'SA'")
                .param(frame.serial())
                .update();
        long read = travellers
                .whole(part(frame, "FT").travellerId())
                .get(0)
                .characteristics()
                .get(0)
                .characteristicId();
        jdbc.sql("update characteristic set state = 'UNDECIDED' where id = ?")
                .param(read)
                .update();
        assertThat(builds.of(at(frame)).missing())
                .anySatisfy(lack -> assertThat(lack).contains("150-1", "is undecided"))
                .anySatisfy(lack -> assertThat(lack).contains("SA, operation 150", "no lot is recorded"))
                .noneSatisfy(lack -> assertThat(lack).contains("FT, operation 150", "no lot is recorded"));
    }

    private String gas() {
        String lot = lots.receive(
                        crew.act(qa),
                        new NewLot(
                                "BT-"
                                        + UUID.randomUUID()
                                                .toString()
                                                .substring(0, 8)
                                                .toUpperCase(Locale.ROOT),
                                LotKind.GAS,
                                "a lot",
                                null,
                                "ARGON",
                                "",
                                "",
                                null,
                                "a supplier",
                                LocalDate.of(2025, 12, 2),
                                null,
                                null,
                                ""))
                .code();
        lots.certify(crew.act(qa), lot, "batch", "C-1", null);
        lots.release(crew.act(qa), lot);
        return lot;
    }

    /** With a torque by hand at the check, nothing is lacked. */
    @Test
    void aWholeRecordLetsItGo() {
        Floor.Frame frame = floor.frame(org.trammel.shop.floor.SmallRoute.of(
                        org.trammel.shop.floor.SmallRoute.op(check)
                                .step("looked over")
                                .characteristic(torque("c-1", "bolt"))
                                .sheet(),
                        org.trammel.shop.floor.SmallRoute.op(pack)
                                .step("in the box")
                                .sheet(),
                        org.trammel.shop.floor.SmallRoute.op("999").step("on").sheet())
                .sheet());
        floor.read(
                fitter,
                floor.at(frame).characteristics().get(0).characteristicId(),
                floor.gauge("TORQUE", "N·m", "0.1"),
                "5");
        toThePacking(frame);
        assertThat(builds.of(at(frame)).missing()).isEmpty();
        floor.tickAll(frame, fitter);
        assertThat(why(frame)).contains("not scanned together");
        packed(frame, frame.serial(), frame.serial(), frame.serial());
        assertThat(code(frame)).isEqualTo("999");
    }

    private void toThePacking(Floor.Frame frame) {
        bed(frame, BuildRecord.Brake.FRONT, 20, "25", true);
        bed(frame, BuildRecord.Brake.REAR, 20, "25", true);
        ride(frame, second, true);
        tick(frame, "bell");
        tick(frame, "manual");
        floor.tickAll(frame, fitter);
        assertThat(code(frame)).isEqualTo(pack);
    }

    private BuildRecord packed(Floor.Frame frame, String tag, String box, String paper) {
        return builds.pack(crew.act(fitter), at(frame), tag, box, paper);
    }

    @Test
    void theSameActTwiceIsOneRecord() {
        Floor.Frame frame = atItsCheck();
        Act act = crew.act(fitter);
        Builds.Bedding entry = new Builds.Bedding(BuildRecord.Brake.FRONT, 20, figure("25"), null, null, null, true);
        builds.bed(act, at(frame), entry);
        assertThat(builds.bed(act, at(frame), entry).front()).isNotNull();
    }

    @Test
    void whatCannotBeIsRefused() {
        Floor.Frame frame = atItsCheck();
        refused(() -> bed(frame, BuildRecord.Brake.FRONT, 0, "25", true), "0 stops");
        refused(() -> bed(frame, BuildRecord.Brake.FRONT, 20, "90", true), "90 km/h");
        refused(() -> bed(frame, BuildRecord.Brake.FRONT, 20, "24.96", true), "more than one decimal");
        refused(
                () -> builds.bed(
                        crew.act(fitter),
                        at(frame),
                        new Builds.Bedding(BuildRecord.Brake.FRONT, 20, figure("25"), 30, null, " ", true)),
                "sheet of the pads");
        refused(() -> builds.pack(crew.act(fitter), at(frame), "", "", ""), "do not name operation");
        refused(() -> book.putInForce(crew.act(fitter), asked()), "QA lead");
        refused(() -> NewBuildRules.items("bell"), "no stroke");
        refused(
                () -> book.putInForce(
                        crew.act(qa),
                        new NewBuildRules(
                                List.of(),
                                List.of(),
                                List.of(),
                                List.of(),
                                shares("0", "0", "0", "0"),
                                20,
                                figure("25"),
                                List.of(),
                                "x")),
                "name no operation");
    }

    /** Work that began before any rules named it goes by paper, as it was begun. */
    @Test
    void whatWasInWorkBeforeTheRulesGoesByPaper() {
        String before = check;
        check = "7late" + before;
        Floor.Frame frame = floor.frame(org.trammel.shop.floor.SmallRoute.of(
                        org.trammel.shop.floor.SmallRoute.op(check)
                                .step("looked over")
                                .step("signed")
                                .sheet(),
                        org.trammel.shop.floor.SmallRoute.op("999").step("on").sheet())
                .sheet());
        floor.tickFirst(frame, fitter);
        clock.pass(java.time.Duration.ofMinutes(5));
        book.putInForce(crew.act(qa), asked());
        floor.tickAll(frame, fitter);
        assertThat(code(frame)).isEqualTo("999");
    }
}
