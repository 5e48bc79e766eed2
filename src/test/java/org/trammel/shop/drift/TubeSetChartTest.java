package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.people.Role;
import org.trammel.shop.travellers.Travellers;

/** A frame stands on the chart of the tubes it is made of, whenever they went into it, and leaves it with them. */
class TubeSetChartTest extends WatchedJigs {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private LotRegister register;

    @Autowired
    private Lots lots;

    @Autowired
    private JigUses uses;

    @Autowired
    private SeriesPoints gathered;

    @Autowired
    private Travellers travellers;

    @Autowired
    private JdbcTemplate plain;

    private WholeShop shop;
    private long worker;
    private String gauge;

    @BeforeEach
    void atWork() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.WELDER, Role.STATION_WORKER);
        gauge = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
        watch(one);
    }

    private String lot() {
        String lot = "TS-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        register.receive(
                shop.act(qa),
                new NewLot(
                        lot,
                        LotKind.TUBE,
                        "tube in bars",
                        "AL6061",
                        null,
                        "",
                        "5K2217",
                        null,
                        "",
                        LocalDate.of(2026, 1, 5),
                        null,
                        null,
                        ""));
        register.certify(shop.act(qa), lot, "3.1", "C-1", null);
        register.release(shop.act(qa), lot);
        return lot;
    }

    private Series follow(String tubes) {
        return book.watch(hands.act(qa), new NewSeries(Factor.TUBE_SET, tubes, code, "axle", "mm", false));
    }

    /** A frame that was set up in the jig and welded. */
    private WholeShop.Frame welded() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("060").qualified("WELD").step("weld").sheet(),
                        SmallRoute.op("080")
                                .plain(code, "2")
                                .plain("089-1", "2")
                                .sheet())
                .sheet());
        shop.tickAll(frame, shop.qualified("WELD", LocalDate.of(2027, 1, 1), Role.WELDER));
        uses.setUp(shop.act(worker), frame.serial(), "", one, null);
        return frame;
    }

    private void read(WholeShop.Frame frame, String value) {
        shop.clock().pass(Duration.ofMinutes(1));
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, value);
    }

    private long cut(WholeShop.Frame frame, String lot) {
        return lots.issue(shop.act(worker), lot, frame.serial(), "down tube", "080", null, null);
    }

    private List<Double> values(Series series) {
        List<String> kept = plain.queryForList(
                "select point from drift_point where series_id = ? order by place", String.class, series.id());
        assertThat(kept)
                .as("what is kept is what gathering all readings gives")
                .isEqualTo(gathered.of(List.of(series)).get(series.id()).stream()
                        .map(Point::key)
                        .toList());
        return charts.of(series.id()).values();
    }

    @Test
    void aFrameThatIsMadeOfOtherTubesMovesToTheirChart() {
        String first = lot();
        String second = lot();
        Series byFirst = follow(first);
        Series bySecond = follow(second);
        Series byBoth = follow(first.compareTo(second) < 0 ? first + " + " + second : second + " + " + first);
        WholeShop.Frame frame = welded();
        long piece = cut(frame, first);
        read(frame, "0.3");
        WholeShop.Frame other = welded();
        cut(other, second);
        read(other, "0.1");
        assertThat(values(byFirst)).containsExactly(0.3);
        assertThat(values(bySecond)).containsExactly(0.1);

        cut(frame, second);
        assertThat(values(byFirst)).as("made of both now").isEmpty();
        assertThat(values(byBoth)).containsExactly(0.3);

        lots.scrap(shop.act(worker), piece, "cut again of the other lot");
        assertThat(values(byBoth)).isEmpty();
        assertThat(values(byFirst)).isEmpty();
        assertThat(values(bySecond)).as("by the time it was read").containsExactly(0.3, 0.1);
    }

    /** Far above the limits of the set it moves to. */
    @Test
    void aFrameThatMovesToASetWhoseLimitItBreaksCallsSomebodyThen() {
        String first = lot();
        String second = lot();
        Series bySecond = follow(second);
        book.base(hands.act(qa), bySecond.id(), DriftOfJigTest.given(null, false));
        WholeShop.Frame frame = welded();
        long piece = cut(frame, first);
        read(frame, "1.9");
        assertThat(calls(second)).isZero();
        cut(frame, second);
        lots.scrap(shop.act(worker), piece, "cut again of the other lot");
        assertThat(values(bySecond)).containsExactly(1.9);
        assertThat(calls(second)).isEqualTo(1);
    }

    private long calls(String tubes) {
        return travellers.openCalls().stream()
                .map(Travellers.CallLine::words)
                .filter(words -> words.startsWith("Look at tubes of " + tubes + " before the next is cut."))
                .count();
    }
}
