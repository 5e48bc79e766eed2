package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Signing;

/** A tube is judged by what its lot says now; a frame that holds one of a lot that was corrected is held. */
@ShopTest(properties = "trammel.test.database=corrected_lot")
class CorrectedLotTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private TubeIssues tubes;

    @Autowired
    private LotSections sections;

    @Autowired
    private LotRegister register;

    @Autowired
    private Lots lots;

    @Autowired
    private Bench bench;

    @Autowired
    private Signing signing;

    @Autowired
    private JdbcClient jdbc;

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

    private long at(WholeShop.Frame frame) {
        return shop.at(frame).line().operationId();
    }

    private void issueAll(WholeShop.Frame frame, String lot) {
        tubes.open(at(frame)).forEach(place -> tubes.issue(shop.act(worker), at(frame), AtTheRack.scan(place, lot)));
    }

    private void tick(WholeShop.Frame frame) {
        bench.tick(
                shop.act(worker),
                List.of(shop.at(frame).steps().stream()
                        .filter(step -> !step.ticked())
                        .findFirst()
                        .orElseThrow()
                        .stepId()),
                null,
                null);
    }

    private void restate(String lot, String section) {
        sections.state(shop.act(lead), lot, Section.read(section, "Not read."));
    }

    private List<String> held(WholeShop.Frame frame) {
        return jdbc.sql("select words from hold where serial = ? and lifted_at is null and reason = 'LOT_TRACE'")
                .param(frame.serial())
                .query(String.class)
                .list();
    }

    private void lift(WholeShop.Frame frame) {
        jdbc.sql("update hold set lifted_at = placed_at, lifted_by = placed_by where serial = ?")
                .param(frame.serial())
                .update();
    }

    private static void refused(ThrowingCallable deed, String... words) {
        assertThatThrownBy(deed)
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refused -> assertThat(refused.what() + " " + refused.why() + " " + refused.instead())
                                .contains(words));
    }

    @Test
    void aSectionThatIsCorrectedHoldsTheFrameAndShutsItsGate() {
        WholeShop.Frame frame = rack.frame();
        String down = rack.lot("35 × 1,4");
        tubes.issue(shop.act(worker), at(frame), AtTheRack.scan("DOWN_TUBE", down));
        issueAll(frame, rack.whole());
        WholeShop.Frame other = rack.frame();
        issueAll(other, rack.whole());
        restate(down, "35 × 1,4 · 42 × 1,6");
        assertThat(held(frame)).as("what was taken lies in it still").isEmpty();
        restate(down, "35 × 1,2");
        assertThat(held(frame))
                .singleElement()
                .satisfies(
                        words -> assertThat(words)
                                .isEqualTo(
                                        "Lot " + down + " was corrected after it was issued. down tube: " + down
                                                + " holds 35 × 1,2 mm by now; it was taken as 35 × 1,4 mm, and the drawing asks for 35 × 1,4 mm."));
        assertThat(held(other)).isEmpty();
        restate(down, "35 × 1,25");
        assertThat(held(frame)).as("held once").hasSize(1);
        lift(frame);
        refused(() -> tick(frame), "The down tube cannot stay as it was issued", "holds 35 × 1,25 mm by now");
        restate(down, "35 × 1,4");
        tick(frame);
        restate(down, "35 × 1,2");
        lift(frame);
        tick(frame);
        assertThat(shop.at(frame).line().code()).isEqualTo("020");
        assertThat(shop.sheet(frame).inTheWay())
                .singleElement()
                .satisfies(refused -> assertThat(refused.why()).contains("The down tube cannot stay"));
        restate(down, "35 × 1,4");
        assertThat(shop.at(frame).line().code())
                .as("the lot was all it waited for")
                .isEqualTo("030");
    }

    @Test
    void aTemperThatIsCorrectedHoldsTheFrameAndShutsItsGate() {
        WholeShop.Frame frame = rack.frame();
        String lot = rack.whole();
        issueAll(frame, lot);
        register.quarantine(shop.act(worker), lot, "certificate read again");
        correct(lot, "AL6061", "EN AW-6061 T6, drawn");
        assertThat(held(frame)).isEmpty();
        correct(lot, "AL6061", "EN AW-6061 T4");
        assertThat(held(frame))
                .singleElement()
                .satisfies(words -> assertThat(words).contains("Of " + lot + " its temper is T4, and T6 is asked for"));
        register.release(shop.act(lead), lot);
        lift(frame);
        refused(() -> tick(frame), "cannot stay as it was issued", "its temper is T4");
        register.quarantine(shop.act(worker), lot, "certificate read again");
        correct(lot, "AL7005", "EN AW-7005 T6");
        register.release(shop.act(lead), lot);
        refused(() -> tick(frame), "cannot stay as it was issued", "the frame is");
    }

    private void correct(String code, String metal, String grade) {
        Lot lot = lots.byCode(code).orElseThrow();
        register.correct(
                shop.act(worker),
                code,
                lot.version(),
                new NewLot(
                        code,
                        lot.kind(),
                        lot.what(),
                        metal,
                        null,
                        grade,
                        lot.heat(),
                        null,
                        lot.supplier(),
                        lot.receivedOn(),
                        null,
                        null,
                        ""));
    }

    @Test
    void whoeverIssuedATubeIsNoSecond() {
        WholeShop.Frame frame = rack.drawn(shop.frame(SmallRoute.of(
                        SmallRoute.op("020")
                                .step(AtTheRack.everyTube())
                                .hold(Signer.SECOND)
                                .sheet(),
                        SmallRoute.op("030").step("cut").sheet())
                .sheet()));
        long issuing = at(frame);
        issueAll(frame, rack.whole());
        bench.tick(shop.act(lead), List.of(shop.at(frame).steps().get(0).stepId()), null, null);
        refused(() -> signing.sign(shop.act(worker), issuing, worker, Signer.SECOND), "took no part");
        long second = shop.hire(Role.STATION_WORKER);
        signing.sign(shop.act(second), issuing, second, Signer.SECOND);
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
    }
}
