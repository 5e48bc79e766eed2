package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.sql.Timestamp;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.drift.Base;
import org.trammel.shop.drift.DriftBook;
import org.trammel.shop.drift.JigUses;
import org.trammel.shop.drift.NewBase;
import org.trammel.shop.drift.NewSeries;
import org.trammel.shop.drift.Series;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.Pieces;
import org.trammel.shop.travellers.Revising;
import org.trammel.shop.travellers.Travellers;

/** What frames read before anybody pushed them, and what it says of the jig they were set up in. */
class JigOfFramesTest extends AtTheTable {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    private PreSetReadings preSet;

    @Autowired
    private JigUses uses;

    @Autowired
    private DriftBook book;

    @Autowired
    private Stations stations;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Pieces pieces;

    @Autowired
    private Revising revising;

    @Test
    void aCorrectionCountsAndWhatIsReadAfterAPushDoesNot() {
        String code = "087-" + NUMBER.incrementAndGet();
        WholeShop.Frame frame = measured(code);
        String gauge = gauge("0.010");
        ReadingLine typed = read(worker, frame, gauge, "0.10");
        assertThat(values(code)).containsExactly("0.10");
        correct(worker, typed, gauge, "0.12");
        assertThat(values(code)).containsExactly("0.12");
        shop.clock().pass(Duration.ofMinutes(1));
        jdbc.sql(
                        "insert into cold_set (characteristic_id, operation_id, traveller_id, attempt, reading_before_id, amount,"
                                + " late, person_id, at, act_id) values (?, ?, ?, 1, ?, 0.1, false, ?, ?, ?)")
                .params(
                        characteristic(frame),
                        shop.at(frame).line().operationId(),
                        frame.travellerId(),
                        typed.readingId(),
                        worker,
                        Timestamp.from(shop.clock().instant()),
                        UUID.randomUUID())
                .update();
        shop.clock().pass(Duration.ofMinutes(1));
        read(worker, frame, gauge, "0.02");
        assertThat(values(code)).containsExactly("0.12");
    }

    @Test
    void aReadingCallsToTheJigOfItsFrameAndAStoppedJigTakesNoOther() {
        String code = "088-" + NUMBER.incrementAndGet();
        String jig = jig();
        Series series = book.watch(shop.act(qa), NewSeries.onJig(jig, code, "twist", "°", true));
        book.base(
                shop.act(qa),
                series.id(),
                new NewBase(
                        Base.Kind.GIVEN,
                        null,
                        null,
                        null,
                        BigDecimal.ZERO,
                        new BigDecimal("0.2"),
                        new BigDecimal("0.2"),
                        new BigDecimal("2.7"),
                        new BigDecimal("0.5"),
                        new BigDecimal("4.77"),
                        true,
                        "trial of the jig",
                        "begin",
                        null));
        WholeShop.Frame first = measured(code);
        uses.setUp(shop.act(worker), first.serial(), "", jig, null);
        read(worker, first, gauge("0.010"), "0.05");
        assertThat(calls(jig)).isZero();
        assertThat(stations.jig(jig).orElseThrow().stopped()).isFalse();
        WholeShop.Frame next = measured(code);
        uses.setUp(shop.act(worker), next.serial(), "", jig, null);
        read(worker, next, gauge("0.010"), "0.27");
        assertThat(calls(jig)).isEqualTo(1);
        assertThat(stations.jig(jig).orElseThrow().stopped()).isTrue();
        WholeShop.Frame third = measured(code);
        Refusal stopped = refusal(() -> uses.setUp(shop.act(worker), third.serial(), "", jig, null));
        assertThat(stopped.kind()).isEqualTo(Refusal.Kind.STATE);
        assertThat(uses.of(third.travellerId())).isEmpty();
        assertThat(refusal(() -> uses.setUp(shop.act(worker), third.serial(), "", "NONE", null))
                        .field())
                .isEqualTo("jig");
        long auditor = shop.hire(Role.AUDITOR);
        assertThat(refusal(() -> uses.setUp(shop.act(auditor), third.serial(), "", jig, null))
                        .kind())
                .isEqualTo(Refusal.Kind.PERSON);
    }

    @Test
    void aNewerRevisionKeepsTheJigOfThePieceAndCountsItOnce() {
        String code = "086-" + NUMBER.incrementAndGet();
        WholeShop.Frame frame = measured(code);
        String jig = jig();
        uses.setUp(shop.act(worker), frame.serial(), "", jig, null);
        read(worker, frame, gauge("0.010"), "0.10");
        long route = shop.sheet(frame).head().routeRevisionId();
        revising.supersede(
                shop.act(qa), frame.orderId(), shop.drawing(frame.designId(), 2, Map.of()), route, Map.of(), null);
        long now = travellers.inForce(frame.serial(), "").travellerId();
        assertThat(now).isNotEqualTo(frame.travellerId());
        assertThat(uses.of(now)).contains(jig);
        assertThat(pieces.first()).containsEntry(now, frame.travellerId());
        assertThat(pieces.same(now)).containsExactly(now, frame.travellerId());
        WholeShop.Frame fresh =
                new WholeShop.Frame(frame.orderId(), frame.designId(), frame.number(), now, frame.serial());
        read(worker, fresh, gauge("0.010"), "0.12");
        assertThat(values(code)).containsExactly("0.12");
    }

    private String jig() {
        String code = "K" + NUMBER.incrementAndGet();
        long owner = shop.hire(Role.OWNER);
        stations.add(shop.act(owner), new Station(code, "Jigs " + code, 3, new BigDecimal("30"), false));
        stations.addJig(
                shop.act(owner), "J" + code, code, LocalDate.parse("2026-01-01"), LocalDate.parse("2027-01-01"));
        return "J" + code;
    }

    /** Two are wanted, so that the frame stays at the table after the first. */
    private WholeShop.Frame measured(String code) {
        return frame(
                wanted(code, Rule.PLAIN, Reduction.SINGLE, false, "once"),
                wanted("089-1", Rule.PLAIN, Reduction.SINGLE, false, "once"));
    }

    private List<String> values(String code) {
        return preSet.of(List.of(code), pieces.first()).stream()
                .map(line -> line.value().setScale(2).toPlainString())
                .toList();
    }

    private long calls(String jig) {
        return travellers.openCalls().stream()
                .filter(call -> call.words().startsWith("Check jig " + jig + " "))
                .filter(call -> call.travellerId() != null)
                .count();
    }
}
