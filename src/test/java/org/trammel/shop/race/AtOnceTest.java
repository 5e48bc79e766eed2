package org.trammel.shop.race;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.materials.Destination;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Shipping;
import org.trammel.shop.travellers.Signing;

/** Two people, or one act sent more than once, at the very same instant: what the records say afterwards. */
@ShopTest
class AtOnceTest {

    private static final int TIMES = 20;

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Bench bench;

    @Autowired
    private Holds holds;

    @Autowired
    private Signing signing;

    @Autowired
    private Shipping shipping;

    @Autowired
    private Deciding deciding;

    @Autowired
    private Lots lots;

    @Autowired
    private LotRegister register;

    @Autowired
    private Crew crew;

    private WholeShop shop;
    private long worker;
    private long second;
    private long qa;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        second = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
    }

    @Test
    void ofTwoTabletsThatTickOneStepOneWritesTheTickAndTheOtherIsToldWho() throws Exception {
        for (FrameSheet.StepLine step : shop.at(twentySteps()).steps()) {
            List<Optional<Exception>> told = Together.all(
                    () -> bench.tick(shop.act(worker), List.of(step.stepId()), null, null),
                    () -> bench.tick(shop.act(second), List.of(step.stepId()), null, null));
            List<Long> by = jdbc.sql("select person_id from tick where step_id = ?")
                    .param(step.stepId())
                    .query(Long.class)
                    .list();
            assertThat(by).hasSize(1);
            int lost = told.get(0).isPresent() ? 0 : 1;
            assertThat(told.get(1 - lost)).isEmpty();
            assertThat(by.get(0)).isEqualTo(lost == 0 ? second : worker);
            assertThat(refusal(told.get(lost)).why())
                    .contains(crew.byId(by.get(0)).name());
        }
    }

    @Test
    void anActThatEightThreadsSendIsOneRecordAndAnswersAllAlike() throws Exception {
        for (FrameSheet.StepLine step : shop.at(twentySteps()).steps()) {
            Act act = shop.act(worker);
            Together.Deed tick = () -> bench.tick(act, List.of(step.stepId()), null, null);
            assertThat(Together.all(tick, tick, tick, tick, tick, tick, tick, tick))
                    .allMatch(Optional::isEmpty);
            assertThat(count("select count(*) from tick where step_id = ?", step.stepId()))
                    .isEqualTo(1);
            assertThat(count("select count(*) from log_entry where act_id = ?", act.id()))
                    .isEqualTo(1);
        }
    }

    @Test
    void ofTwoWhoDecideOneNonconformanceTheLaterIsToldBothDecisions() throws Exception {
        long other = shop.hire(Role.QA_LEAD);
        String gauge = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
        long route = shop.route(SmallRoute.of(
                        SmallRoute.op("080").plain("080-1", "0.3").sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
        for (int i = 0; i < TIMES; i++) {
            WholeShop.Frame frame = shop.frame(route);
            shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.5");
            long id = deciding.of(frame.serial()).get(0).id();
            List<Optional<Exception>> told = Together.all(
                    () -> deciding.propose(shop.act(qa), id, proposal(Decision.REWORK)),
                    () -> deciding.propose(shop.act(other), id, proposal(Decision.SCRAP)));
            Decision won = deciding.byId(id).decision();
            assertThat(told.get(won == Decision.REWORK ? 0 : 1)).isEmpty();
            Refusal lost = refusal(told.get(won == Decision.REWORK ? 1 : 0));
            assertThat(lost.kind()).isEqualTo(Refusal.Kind.STATE);
            assertThat(lost.what() + lost.why())
                    .contains(Decision.REWORK.word())
                    .contains(Decision.SCRAP.word());
            assertThat(count("select count(*) from nonconformance_agreement where nonconformance_id = ?", id))
                    .isEqualTo(1);
        }
    }

    @Test
    void nobodyAgreesToADecisionThatIsPutInPlaceOfTheOneTheyReadAtThatInstant() throws Exception {
        long owner = shop.hire(Role.OWNER);
        String gauge = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
        long route = shop.route(SmallRoute.of(
                        SmallRoute.op("080").plain("080-1", "0.3").sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
        for (int i = 0; i < TIMES; i++) {
            WholeShop.Frame frame = shop.frame(route);
            shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.5");
            long id = deciding.of(frame.serial()).get(0).id();
            deciding.propose(shop.act(qa), id, proposal(Decision.REPAIR));
            List<Optional<Exception>> told = Together.all(
                    () -> deciding.propose(shop.act(qa), id, concession()),
                    () -> deciding.agree(shop.act(owner), id, 1));
            int lost = told.get(0).isPresent() ? 0 : 1;
            assertThat(told.get(1 - lost)).isEmpty();
            assertThat(refusal(told.get(lost)).kind()).isEqualTo(lost == 0 ? Refusal.Kind.STATE : Refusal.Kind.STALE);
            assertThat(deciding.byId(id).decision()).isEqualTo(lost == 0 ? Decision.REPAIR : Decision.CONCESSION);
            assertThat(deciding.byId(id).agreed()).hasSize(lost == 0 ? 2 : 1);
        }
    }

    private static Proposal concession() {
        return new Proposal(
                Decision.CONCESSION,
                "looked at it",
                null,
                "this frame",
                LocalDate.of(2026, 12, 31),
                false,
                null,
                false,
                null,
                null,
                Set.of());
    }

    private static Proposal proposal(Decision decision) {
        return new Proposal(decision, "looked at it", "080", null, null, false, null, false, null, null, Set.of());
    }

    @Test
    void aGateIsNeverSignedUnderAHoldThatWasLaidBefore() throws Exception {
        long route = shop.route(SmallRoute.of(
                        SmallRoute.op("080")
                                .step("look over")
                                .hold(Signer.SECOND)
                                .sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
        for (int i = 0; i < TIMES; i++) {
            WholeShop.Frame frame = shop.frame(route);
            shop.tickAll(frame, worker);
            long operation = shop.at(frame).line().operationId();
            List<Optional<Exception>> told = Together.all(
                    () -> signing.sign(shop.act(second), operation, second, Signer.SECOND), () -> hold(frame));
            assertThat(told.get(1)).isEmpty();
            if (told.get(0).isPresent()) {
                assertThat(refusal(told.get(0)).why()).contains("on hold");
                assertThat(count("select count(*) from signature where operation_id = ?", operation))
                        .isZero();
            } else {
                assertThat(kinds(frame)).containsSubsequence("sign SECOND", "place hold");
            }
        }
    }

    @Test
    void aFrameIsNeverShippedUnderAHoldThatWasLaidBefore() throws Exception {
        long route = shop.route(
                SmallRoute.of(SmallRoute.op("200").step("pack").sheet()).sheet());
        for (int i = 0; i < TIMES; i++) {
            WholeShop.Frame frame = shop.frame(route);
            shop.tickAll(frame, worker);
            List<Optional<Exception>> told = Together.all(
                    () -> shipping.ship(shop.act(second), frame.travellerId(), frame.serial()), () -> hold(frame));
            if (told.get(0).isPresent()) {
                assertThat(told.get(1)).isEmpty();
                assertThat(refusal(told.get(0)).why()).contains("on hold");
                assertThat(count(
                                "select count(*) from traveller where id = ? and shipped_at is null",
                                frame.travellerId()))
                        .isEqualTo(1);
            } else if (told.get(1).isEmpty()) {
                assertThat(kinds(frame)).containsSubsequence("ship", "place hold");
            }
        }
    }

    @Test
    void twoFramesNeverDrawMoreOfALotThanThereIs() throws Exception {
        for (int i = 0; i < TIMES; i++) {
            String lot = lot();
            Destination[] to = {destination(), destination()};
            List<Optional<Exception>> told = Together.all(
                    () -> lots.issue(shop.act(worker), lot, to[0], LotKind.TUBE, new BigDecimal("3000"), "mm"),
                    () -> lots.issue(shop.act(second), lot, to[1], LotKind.TUBE, new BigDecimal("3000"), "mm"));
            assertThat(told.stream().filter(Optional::isEmpty)).hasSize(1);
            assertThat(lots.wentInto(lot)).hasSize(1);
            assertThat(refusal(told.get(told.get(0).isPresent() ? 0 : 1)).why()).contains("2000");
        }
    }

    private String lot() {
        String code = "RC-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(java.util.Locale.ROOT);
        register.receive(
                shop.act(qa),
                new NewLot(
                        code,
                        LotKind.TUBE,
                        "a lot",
                        "AL6061",
                        null,
                        "",
                        "5K2217",
                        null,
                        "a supplier",
                        LocalDate.of(2025, 12, 2),
                        null,
                        new BigDecimal("5000"),
                        "mm"));
        register.certify(shop.act(qa), code, "3.1", "C-1", null);
        register.release(shop.act(qa), code);
        return code;
    }

    private Destination destination() {
        WholeShop.Frame frame = shop.frame(
                SmallRoute.of(SmallRoute.op("020").step("saw").sheet()).sheet());
        return new Destination(frame.serial(), "", "AL6061", null, "020", "DT");
    }

    private void hold(WholeShop.Frame frame) {
        holds.place(
                shop.act(worker),
                new Holds.Request(
                        frame.travellerId(), HoldScope.FRAME, null, HoldReason.SAFETY, "a dent", "by hand", Set.of()));
    }

    private WholeShop.Frame twentySteps() {
        SmallRoute.Op op = SmallRoute.op("140");
        for (int i = 1; i <= TIMES; i++) {
            op.step("blast side " + i);
        }
        return shop.frame(
                SmallRoute.of(op.sheet(), SmallRoute.op("200").step("pack").sheet())
                        .sheet());
    }

    private List<String> kinds(WholeShop.Frame frame) {
        return jdbc.sql("select kind from log_entry where chain = ? order by position")
                .param("frame:" + frame.serial())
                .query(String.class)
                .list();
    }

    private long count(String sql, Object... of) {
        return jdbc.sql(sql).params(Arrays.asList(of)).query(Long.class).single();
    }

    private static Refusal refusal(Optional<Exception> told) {
        assertThat(told).isPresent();
        assertThat(told.get()).isInstanceOf(Refusal.class);
        return (Refusal) told.get();
    }
}
