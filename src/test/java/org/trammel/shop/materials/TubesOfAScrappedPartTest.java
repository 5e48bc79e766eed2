package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Carry;
import org.trammel.shop.travellers.Revising;
import org.trammel.shop.travellers.Rework;
import org.trammel.shop.travellers.Travellers;

/** What a scrapped part was made of stays its own; the part that is made in its place gets every tube of its own. */
@ShopTest(properties = "trammel.test.database=tubes_of_scrapped")
class TubesOfAScrappedPartTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private TubeIssues tubes;

    @Autowired
    private Lots lots;

    @Autowired
    private TubeSets sets;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Rework rework;

    @Autowired
    private Revising revising;

    @Autowired
    private Bench bench;

    @Autowired
    private ActLog log;

    @Autowired
    private TransactionTemplate transaction;

    private WholeShop shop;
    private AtTheRack rack;
    private long lead;
    private long worker;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        lead = shop.hire(Role.QA_LEAD);
        worker = shop.hire(Role.STATION_WORKER);
        rack = new AtTheRack(beans, shop, lead);
    }

    private static SmallRoute arm() {
        return SmallRoute.of(
                SmallRoute.op("020").step(AtTheRack.everyTube()).sheet(),
                SmallRoute.op("030").lot("right tube", "TUBE").step("cut").sheet(),
                SmallRoute.op("040").step("form").sheet());
    }

    private WholeShop.Frame withArm() {
        return rack.drawn(shop.frame(
                SmallRoute.of(SmallRoute.op("170").joins().step("join").sheet())
                        .child("SA", arm())
                        .sheet()));
    }

    private WholeShop.Frame part(WholeShop.Frame whole, String part) {
        return new WholeShop.Frame(
                whole.orderId(),
                whole.designId(),
                whole.number(),
                travellers.inForce(whole.serial(), part).travellerId(),
                whole.serial());
    }

    private long at(WholeShop.Frame frame) {
        return shop.at(frame).line().operationId();
    }

    private void issueAll(WholeShop.Frame frame, String lot) {
        tubes.open(at(frame)).forEach(place -> tubes.issue(shop.act(worker), at(frame), AtTheRack.scan(place, lot)));
    }

    private void tick(WholeShop.Frame frame, String lot) {
        bench.tick(
                shop.act(worker),
                List.of(shop.at(frame).steps().stream()
                        .filter(step -> !step.ticked())
                        .findFirst()
                        .orElseThrow()
                        .stepId()),
                lot,
                null);
    }

    private void refused(WholeShop.Frame frame, String lot, String... words) {
        assertThatThrownBy(() -> tick(frame, lot))
                .isInstanceOfSatisfying(
                        Refusal.class, refused -> assertThat(refused.why()).contains(words));
    }

    private void scrap(WholeShop.Frame frame) {
        Act act = shop.act(lead);
        transaction.executeWithoutResult(t -> {
            log.opens(act, "scrap", "traveller:" + frame.travellerId(), Chains.frame(frame.serial()));
            rework.scrap(act, frame.travellerId(), "NC-0001", false, Set.of());
        });
    }

    @Test
    void aPartMadeAnewStandsWithoutATubeUntilItsOwnAreScanned() {
        WholeShop.Frame frame = withArm();
        WholeShop.Frame arm = part(frame, "SA");
        String old = rack.whole();
        issueAll(arm, old);
        long dented = lots.madeOf(frame.serial()).get(0).useId();
        lots.scrap(shop.act(worker), dented, "dented");
        issueAll(arm, old);
        tick(arm, null);
        tick(arm, old);
        tick(arm, null);
        long seat = lots.madeOf(frame.serial()).get(2).useId();
        lots.scrap(shop.act(worker), seat, "bent, and never scanned anew");
        scrap(arm);
        rework.makeAnew(shop.act(lead), arm.travellerId());

        WholeShop.Frame fresh = part(frame, "SA");
        assertThat(fresh.travellerId()).isNotEqualTo(arm.travellerId());
        assertThat(tubes.open(at(fresh))).isEqualTo(AtTheRack.places());
        refused(fresh, null, "No lot was issued for: down tube, top tube");
        String own = rack.whole();
        issueAll(fresh, own);
        tick(fresh, null);
        assertThat(shop.at(fresh).line().code())
                .as("what the scrapped part lacked is not asked of this one")
                .isEqualTo("030");
        refused(fresh, old, old + " was issued to no place of this frame; its tubes are of " + own + ".");
        tick(fresh, own);

        assertThat(lots.wentInto(old))
                .as("a bad lot is found in what was thrown away too")
                .hasSize(10)
                .allMatch(WentInto::scrapped)
                .extracting(WentInto::scrappedReason)
                .contains("dented", "with its part");
        assertThat(lots.madeOf(frame.serial()).stream()
                        .filter(made -> !made.scrapped())
                        .map(MadeOf::lot)
                        .collect(Collectors.toSet()))
                .containsExactly(own);
        assertThatThrownBy(() -> lots.scrap(
                        shop.act(worker), lots.madeOf(frame.serial()).get(5).useId(), "again"))
                .isInstanceOfSatisfying(
                        Refusal.class, refused -> assertThat(refused.why()).contains("with its part"));
        assertThat(sets.of(List.of(frame.serial())))
                .as("what was read of the scrapped part hangs on its own tubes")
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        new TubeSets.Place(frame.serial(), "SA", arm.travellerId()), old,
                        new TubeSets.Place(frame.serial(), "SA", null), own));
    }

    @Test
    void aNewerRevisionThatScrapsThePieceTakesItsTubesWithIt() {
        assertThat(afterRevision(Carry.SCRAP_PART)).isEqualTo(AtTheRack.places());
        assertThat(afterRevision(Carry.REPEAT))
                .as("the same tubes, looked at once more")
                .isEmpty();
    }

    private List<String> afterRevision(Carry verdict) {
        WholeShop.Frame frame = rack.drawn(shop.frame(arm().sheet()));
        issueAll(frame, rack.whole());
        long issuing = at(frame);
        tick(frame, null);
        revising.supersede(
                shop.act(lead),
                frame.orderId(),
                shop.drawing(frame.designId(), 2, Map.of()),
                shop.sheet(frame).head().routeRevisionId(),
                Map.of(issuing, new Revising.Said(verdict, "of the newer drawing")),
                null);
        return tubes.open(at(part(frame, "")));
    }

    private static void refusedDeed(ThrowingCallable deed, String... words) {
        assertThatThrownBy(deed)
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refused ->
                                assertThat(refused.what() + " " + refused.why()).contains(words));
    }

    /** A part that was joined has no sheet of tubes any more; the whole waits for its tube all the same. */
    @Test
    void aTubeOfAJoinedPartIsReplacedFromTheSheetOfItsLot() {
        WholeShop.Frame frame = rack.drawn(shop.frame(SmallRoute.of(
                        SmallRoute.op("170").joins().step("join").step("look").sheet(),
                        SmallRoute.op("180").step("wash").sheet())
                .child(
                        "FT",
                        SmallRoute.of(
                                SmallRoute.op("020").step(AtTheRack.everyTube()).sheet()))
                .sheet()));
        String lot = rack.whole();
        long ofPart = travellers.inForce(frame.serial(), "FT").travellerId();
        WholeShop.Frame part =
                new WholeShop.Frame(frame.orderId(), frame.designId(), frame.number(), ofPart, frame.serial());
        issueAll(part, lot);
        tick(part, null);
        tick(frame, null);
        List<MadeOf> made = lots.madeOf(frame.serial());
        lots.scrap(shop.act(worker), made.get(0).useId(), "cracked");
        lots.scrap(shop.act(worker), made.get(1).useId(), "cracked too");
        tick(frame, null);
        assertThat(shop.sheet(frame).inTheWay()).singleElement().satisfies(refused -> {
            assertThat(refused.why()).contains("scrapped (down tube)");
            assertThat(refused.instead()).contains("sheet of its lot, to FT as “down tube”");
        });
        String serial = SerialNumber.read(frame.serial()) instanceof SerialNumber.Result.Whole whole
                ? whole.serial().part("FT").stored()
                : "";
        refusedDeed(
                () -> lots.issue(shop.act(worker), rack.lot("42 × 1,6"), serial, "down tube", "170", null, null),
                "The down tube was not issued.",
                "holds 42 × 1,6 mm; the drawing asks for 35 × 1,4 mm as down tube");
        refusedDeed(
                () -> lots.issue(
                        shop.act(worker),
                        rack.lot(LotKind.TUBE, "T4", null, "35 × 1,4"),
                        serial,
                        "down tube",
                        "170",
                        null,
                        null),
                "its temper is T4");
        lots.issue(shop.act(worker), lot, serial, "some tube", "170", null, null);
        lots.issue(shop.act(worker), lot, serial, "Down tube", "170", null, null);
        assertThat(shop.at(frame).line().code()).as("one tube is not two").isEqualTo("170");
        lots.issue(shop.act(worker), lot, serial, "top tube", "170", null, null);
        assertThat(shop.at(frame).line().code()).isEqualTo("180");
    }
}
