package org.trammel.shop.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.DrawingOffice;
import org.trammel.shop.designs.DrawnFrame;
import org.trammel.shop.designs.OrderTells;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.RouteBook;

@ShopTest
class OrdersTest {

    @Autowired
    private DrawnFrame.DesignDesk desk;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TestCrew crew;

    @Autowired
    private Designs designs;

    @Autowired
    private DrawingOffice office;

    @Autowired
    private RouteBook routes;

    @Autowired
    private OrderEntry entry;

    @Autowired
    private OrderBook book;

    @Autowired
    private OrderTells tells;

    @Autowired
    private Orders orders;

    @Autowired
    private ChangeRequests changes;

    private long owner;

    @BeforeEach
    void hire() {
        owner = crew.hire(Role.OWNER);
    }

    @Test
    void anOrderTakesTheNextNumberAndTheSameActEntersOne() {
        Act act = act();
        OrderSheet first = entry.enter(act, TakenOrder.hardtail());
        assertThat(entry.enter(act, TakenOrder.hardtail()).id()).isEqualTo(first.id());
        OrderSheet second = entry.enter(act(), TakenOrder.hardtail());
        assertThat(counted(second)).isEqualTo(counted(first) + 1);
        assertThat(first.percentile()).isEqualByComparingTo("85");
    }

    @Test
    void theDesignGateIsToldOfCountryLeverAndRiderAndWhenTheRiderChanged() {
        OrderSheet order = entry.enter(act(), TakenOrder.hardtail());
        OrderTells.Told told = tells.told(order.number()).orElseThrow();
        assertThat(told.frontBrakeLever()).isEqualTo("left");
        assertThat(told.country()).isEqualTo(order.country());
        assertThat(told.inseam_mm()).isEqualByComparingTo("840");
        assertThat(told.mass_kg()).isEqualByComparingTo("78");
        book.change(act(), order.id(), null, TakenOrder.details(TakenOrder.rider("181")), true);
        assertThat(tells.told(order.number()).orElseThrow().riderEdition()).isGreaterThan(told.riderEdition());
        assertThat(tells.told("O-nobody")).isEmpty();
    }

    @Test
    void aTypedNumberLosesItsLeadingZerosAndIsTakenOnce() {
        OrderSheet typed = entry.enter(act(), TakenOrder.numbered("zz-00" + (owner % 90_000 + 1)));
        assertThat(typed.number()).isEqualTo("ZZ-" + (owner % 90_000 + 1));
        assertThat(refusal(() -> entry.enter(act(), TakenOrder.numbered(typed.number())))
                        .why())
                .contains("taken");
        assertThat(refusal(() -> entry.enter(act(), TakenOrder.numbered("O-1; drop")))
                        .field())
                .isEqualTo("number");
    }

    @Test
    void aRiderTypedInInchesIsAskedAbout() {
        Refusal asked = refusal(() -> entry.enter(
                act(), TakenOrder.with(new RiderDetails(new BigDecimal("70"), null, null, null, null, null), false)));
        assertThat(asked.kind()).isEqualTo(Refusal.Kind.ASK);
        assertThat(asked.instead()).contains("177,8 cm (70 inches)");
        Refusal impossible = refusal(() -> entry.enter(act(), TakenOrder.with(TakenOrder.rider("17.8"), true)));
        assertThat(impossible.kind()).isEqualTo(Refusal.Kind.INPUT);
        assertThat(impossible.instead()).contains("178 cm");
        RiderDetails exchanged = new RiderDetails(new BigDecimal("84"), new BigDecimal("90"), null, null, null, null);
        assertThat(refusal(() -> entry.enter(act(), TakenOrder.with(exchanged, true)))
                        .why())
                .contains("not shorter than the body");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "<script>alert(1)</script>",
                "Robert'); drop table shop_order;--",
                "\uD83D\uDEB2 hjul",
                "\u05D0\u05D5\u05E4\u05E0\u05D9\u05D9\u05DD"
            })
    void whatLooksLikeAFormulaMarkupOrAQueryIsKeptAsTheTextItIs(String text) {
        NewOrder usual = TakenOrder.hardtail();
        OrderDetails d = usual.details();
        OrderSheet order = entry.enter(
                act(),
                new NewOrder(
                        null,
                        null,
                        new CustomerDetails(text, text, "NO", null),
                        new OrderDetails(
                                text,
                                d.metal(),
                                d.kind(),
                                d.category(),
                                "no",
                                text,
                                d.frontBrakeLever(),
                                d.rider(),
                                d.components()),
                        usual.ownParts(),
                        null,
                        null,
                        null,
                        null,
                        false));
        assertThat(orders.byId(order.id()).description()).isEqualTo(text);
        assertThat(order.country()).isEqualTo("NO");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "two\nlines", "turned \u202E round", "nul \u0000 sign"})
    void aDescriptionThatIsEmptyOrHidesSignsIsRefused(String text) {
        assertThat(refusal(() -> describe(text)).field()).isEqualTo("description");
    }

    @Test
    void aNoteOfFourThousandCharactersIsKeptAndALongerOneRefused() {
        long order = entry.enter(act(), TakenOrder.hardtail()).id();
        changes.ask(act(), order, "x".repeat(4000));
        assertThat(refusal(() -> changes.ask(act(), order, "x".repeat(4001))).why())
                .contains("4001 characters; 4000 are kept");
    }

    @Test
    void aPromiseLiesAheadAndEveryOneIsKeptWithItsReason() {
        long order = entry.enter(act(), TakenOrder.hardtail()).id();
        assertThat(refusal(() -> book.promise(act(), order, LocalDate.of(2026, 3, 17), null, "sooner", false))
                        .why())
                .contains("is past");
        assertThat(refusal(() -> book.promise(act(), order, LocalDate.of(2062, 5, 22), null, "later", false))
                        .kind())
                .isEqualTo(Refusal.Kind.ASK);
        assertThat(refusal(() -> book.promise(act(), order, LocalDate.of(2026, 6, 1), null, "", false))
                        .field())
                .isEqualTo("reason");
        book.promise(act(), order, LocalDate.of(2028, 2, 29), new BigDecimal("90"), "customer travels", false);
        assertThat(orders.byId(order).promised()).isEqualTo(LocalDate.of(2028, 2, 29));
        assertThat(jdbc.sql("select count(*) from order_promise where order_id = ?")
                        .param(order)
                        .query(Long.class)
                        .single())
                .isEqualTo(2);
    }

    @Test
    void anOrderFollowsItsDrawing() {
        DrawnFrame frame = frame();
        OrderSheet order = entry.enter(act(), TakenOrder.hardtail());
        long a = book.beginDesign(act(), order.id()).revisionId();
        assertThat(orders.byId(order.id()).state()).isEqualTo(OrderState.DESIGNING);
        frame.approved(frame.sent(frame.drawn(a)));
        assertThat(orders.byId(order.id()).state()).isEqualTo(OrderState.APPROVED);
        assertThat(orders.byId(order.id()).designRevisionId()).isEqualTo(a);
        long b = office.revise(act(), a, "a wish").revisionId();
        office.draw(act(), b, DrawnFrame.PDF, "application/pdf", "b.pdf");
        office.send(act(), b, true);
        assertThat(orders.byId(order.id()).state()).isEqualTo(OrderState.DESIGNING);
        frame.checked(frame.approved(b));
        designs.release(act(), b, routes.revision(frame.route));
        String serial = orders.assignSerial(act(), order.id());
        OrderSheet begun = orders.began(act(), order.id(), b, "HT-6061");
        assertThat(begun.state()).isEqualTo(OrderState.IN_WORK);
        assertThat(begun.serial()).isEqualTo(serial).matches("[A-Z]{2}26\\d{3}[0-9A-Z]");
        orders.finished(act(), order.id());
        assertThat(orders.shipped(act(), order.id()).state()).isEqualTo(OrderState.SHIPPED);
        assertThat(refusal(() -> book.cancel(act(), order.id(), "too late", true))
                        .why())
                .contains("shipped");
    }

    @Test
    void cancellingTellsFirstWhatIsUnderWay() {
        DrawnFrame frame = frame();
        OrderSheet order = entry.enter(act(), TakenOrder.hardtail());
        long a = book.beginDesign(act(), order.id()).revisionId();
        frame.approved(frame.sent(frame.drawn(a)));
        orders.assignSerial(act(), order.id());
        orders.began(act(), order.id(), a, "HT-6061");
        orders.addCost(act(), order.id(), CostKind.WORK, new BigDecimal("2.5"), null, "mitring");
        Refusal asked = refusal(() -> book.cancel(act(), order.id(), "customer withdrew", false));
        assertThat(asked.kind()).isEqualTo(Refusal.Kind.ASK);
        assertThat(asked.why()).contains("drawing A is approved", "serial", "1 costs are entered");
        assertThat(orders.byId(order.id()).state()).isEqualTo(OrderState.IN_WORK);
        book.cancel(act(), order.id(), "customer withdrew", true);
        assertThat(orders.byId(order.id()).state()).isEqualTo(OrderState.CANCELLED);
        assertThat(designs.revisions(designs.revision(a).designId())
                        .get(0)
                        .state()
                        .word())
                .isEqualTo("withdrawn");
        assertThat(orders.open()).extracting(OrderSheet::id).doesNotContain(order.id());
    }

    @Test
    void anEarlyOrderIsCancelledWithoutAsking() {
        OrderSheet order = entry.enter(act(), TakenOrder.hardtail());
        assertThat(book.cancel(act(), order.id(), "customer withdrew", false).state())
                .isEqualTo(OrderState.CANCELLED);
    }

    @Test
    void aCostIsHoursOrAnAmountAndNeverNothing() {
        long order = entry.enter(act(), TakenOrder.hardtail()).id();
        assertThat(refusal(() -> orders.addCost(act(), order, CostKind.WORK, null, null, "nothing"))
                        .field())
                .isEqualTo("hours");
        assertThat(refusal(() -> orders.addCost(act(), order, CostKind.WORK, BigDecimal.ZERO, null, "nothing"))
                        .field())
                .isEqualTo("hours");
        assertThat(refusal(() -> orders.addCost(act(), order, CostKind.MATERIAL, null, new BigDecimal("1e9"), "tubes"))
                        .field())
                .isEqualTo("amount");
        orders.addCost(act(), order, CostKind.MATERIAL, null, new BigDecimal("-12.50"), "tube given back");
    }

    private OrderSheet describe(String text) {
        NewOrder usual = TakenOrder.hardtail();
        OrderDetails d = usual.details();
        return entry.enter(
                act(),
                new NewOrder(
                        null,
                        null,
                        usual.customer(),
                        new OrderDetails(
                                text,
                                d.metal(),
                                d.kind(),
                                d.category(),
                                d.country(),
                                "",
                                d.frontBrakeLever(),
                                d.rider(),
                                d.components()),
                        usual.ownParts(),
                        null,
                        null,
                        null,
                        null,
                        false));
    }

    private DrawnFrame frame() {
        return new DrawnFrame(desk);
    }

    private Act act() {
        return crew.act(owner);
    }

    private static int counted(OrderSheet order) {
        return Integer.parseInt(order.number().substring(2));
    }

    static Refusal refusal(ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        return refused;
    }
}
