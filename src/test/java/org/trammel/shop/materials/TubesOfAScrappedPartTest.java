package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.support.TransactionTemplate;
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
}
