package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.Statements;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;

/** What is kept of charts is what gathering all readings and charting them from the first one on would give. */
class KeptChartsTest extends WatchedJigs {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private SeriesPoints gathered;

    @Autowired
    private KeptRows rows;

    @Autowired
    private KeptStands stands;

    @Autowired
    private KeptCharts kept;

    @Autowired
    private WithoutJig missing;

    @Autowired
    private JigUses uses;

    @Autowired
    private Statements statements;

    @Autowired
    private TransactionTemplate transactions;

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
    }

    /** What is kept of a series, beside what all of its readings, charted from the first, would be. */
    private void asFromTheFirst(Series series) {
        Standing standing = charts.standing(series.id());
        List<Point> all = gathered.of(List.of(series)).get(series.id());
        Continued whole = Continued.after(series, standing.base(), KeptStand.nothing(series.id()), 1, List.of(), all);
        List<String> is = plain.queryForList(
                "select point from drift_point where series_id = ? order by place", String.class, series.id());
        assertThat(is).isEqualTo(all.stream().map(Point::key).toList());
        assertThat(standing.kept()).isEqualTo(whole.stand());
        assertThat(rows.numbered(series, 1, Integer.MAX_VALUE).stream()
                        .map(row ->
                                List.of(row.place(), row.value(), row.state().toString()))
                        .toList())
                .isEqualTo(whole.rows().stream()
                        .filter(row -> row.after() != null)
                        .map(row ->
                                List.of(row.place(), row.value(), row.state().toString()))
                        .toList());
    }

    /** Readings from before are taken over in any order of days, struck out, and put over other bases. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void whatIsKeptIsWhatAllReadingsGive(long seed) {
        Random random = new Random(seed);
        Series series = watch(one);
        Series byTubes = book.watch(hands.act(qa), new NewSeries(Factor.TUBE_SET, "L1", code, "axle", "mm", true));
        for (int deed = 0; deed < 14; deed++) {
            List<Point> there = charts.of(series.id()).points();
            int kind = random.nextInt(6);
            if (kind < 3 || there.size() < 3) {
                LocalDate day = LocalDate.parse("2026-01-01").plusDays(random.nextInt(60));
                List<EarlierReading> lines = new ArrayList<>();
                for (int i = 0; i <= random.nextInt(12); i++) {
                    lines.add(read(
                            day.plusDays(i / 2).toString(),
                            "frame " + deed + "." + i,
                            BigDecimal.valueOf(Math.round(100 * random.nextGaussian()), 2)
                                    .toPlainString(),
                            null,
                            random.nextBoolean() ? "L1" : "L2"));
                }
                takeOver(series, lines.toArray(new EarlierReading[0]));
            } else if (kind < 5) {
                long wrong = there.get(random.nextInt(there.size())).historyId();
                book.strike(hands.act(qa), series.id(), wrong, "misread");
            } else {
                Base base = charts.standing(series.id()).base();
                NewBase given = DriftOfJigTest.given(base == null ? null : base.id(), false);
                book.base(hands.act(qa), series.id(), given);
            }
            asFromTheFirst(series);
            asFromTheFirst(byTubes);
        }
    }

    private WholeShop.Frame frame() {
        return shop.frame(SmallRoute.of(
                        SmallRoute.op("060")
                                .qualified("WELD")
                                .step("tack")
                                .step("weld")
                                .sheet(),
                        SmallRoute.op("080")
                                .plain(code, "2")
                                .plain("089-1", "2")
                                .sheet())
                .sheet());
    }

    private WholeShop.Frame welded(String jig) {
        WholeShop.Frame frame = frame();
        long welder = shop.qualified("WELD", LocalDate.of(2027, 1, 1), Role.WELDER);
        shop.tickAll(frame, welder);
        uses.setUp(shop.act(worker), frame.serial(), "", jig, null);
        shop.clock().pass(Duration.ofMinutes(1));
        return frame;
    }

    private ReadingLine read(WholeShop.Frame frame, String value) {
        long characteristic = shop.at(frame).characteristics().get(0).characteristicId();
        shop.clock().pass(Duration.ofMinutes(1));
        return shop.read(worker, characteristic, gauge, value);
    }

    @Test
    void readingsMoveGoAndChangeWithTheirPieceAndTheChartsFollow() {
        Series here = watch(one);
        Series there = watch(two);
        book.base(hands.act(qa), here.id(), DriftOfJigTest.given(null, false));
        takeOver(here, daily(List.of("0.1", "0.3", "-0.2", "0.4")).toArray(new EarlierReading[0]));
        WholeShop.Frame first = welded(one);
        ReadingLine wrong = read(first, "1.9");
        WholeShop.Frame second = welded(one);
        read(second, "0.2");
        assertThat(charts.of(here.id()).values()).endsWith(1.9, 0.2);
        correct(first, wrong, "0.19");
        assertThat(charts.of(here.id()).values()).endsWith(0.2, 0.19);
        asFromTheFirst(here);
        assertThatThrownBy(() -> uses.setUp(shop.act(worker), first.serial(), "", two, "so it was"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.PERSON));
        assertThatThrownBy(() -> uses.setUp(hands.act(qa), first.serial(), "", two, " "))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("reason"));
        uses.setUp(shop.act(worker), first.serial(), "", one, null);
        uses.setUp(hands.act(qa), first.serial(), "", two, "the welder noted the wrong one");
        assertThat(charts.of(there.id()).values()).containsExactly(0.19);
        assertThat(charts.of(here.id()).values()).endsWith(0.4, 0.2);
        asFromTheFirst(here);
        asFromTheFirst(there);
        uses.setUp(hands.act(qa), first.serial(), "", one, "it was right at first");
        asFromTheFirst(here);
        assertThat(charts.of(there.id()).points()).isEmpty();
        asFromTheFirst(there);
    }

    private void correct(WholeShop.Frame frame, ReadingLine wrong, String value) {
        shop.clock().pass(Duration.ofMinutes(1));
        beans.getBean(Readings.class)
                .correct(
                        shop.act(worker),
                        wrong.readingId(),
                        new Readings.Input(List.of(new BigDecimal(value)), gauge, null, true),
                        "a digit slipped");
    }

    @Test
    void aReadingCostsTheSameHoweverManyCameBefore() throws Exception {
        Series series = watch(one);
        book.base(hands.act(qa), series.id(), DriftOfJigTest.given(null, false));
        book.takeOver(hands.act(qa), series.id(), still(10), "notebook");
        List<WholeShop.Frame> frames = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            frames.add(welded(one));
        }
        read(frames.get(0), "0.1");
        List<String> few = statements.during(() -> read(frames.get(1), "0.1"));
        looks(series);
        List<String> fewLooks = looks(series);
        book.takeOver(hands.act(qa), series.id(), still(990), "notebook");
        assertThat(charts.standing(series.id()).kept().charted()).isEqualTo(1002);
        List<String> many = statements.during(() -> read(frames.get(2), "0.1"));
        assertThat(many).isEqualTo(few);
        assertThat(looks(series)).isEqualTo(fewLooks);
        // nothing reads the readings of other frames, and of the chart no more than a pattern reaches back to
        assertThat(many)
                .noneMatch(sql -> sql.contains(" from reading ") && !sql.contains("traveller_id in") && !byId(sql))
                .filteredOn(sql -> sql.contains(" from drift_point p where p.series_id"))
                .allMatch(sql -> sql.contains("p.read_at >= ?") || sql.contains("limit ?"));
        asFromTheFirst(series);
    }

    private static boolean byId(String sql) {
        return sql.matches("(?s).*where [^ ]*(id|characteristic_id|operation_id)( =|=| in).*");
    }

    private List<String> looks(Series series) throws Exception {
        return statements.during(() -> {
            mvc.perform(get("/qa/drift/" + series.id()).with(Signed.on(crew.byId(qa))))
                    .andExpect(status().isOk());
            return mvc.perform(get("/api/v1/drift/" + series.id()).with(Signed.on(crew.byId(qa))))
                    .andExpect(status().isOk());
        });
    }

    /** Readings that stand still about the centre. */
    private static List<EarlierReading> still(int count) {
        List<EarlierReading> lines = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            lines.add(read("2026-01-02", "still " + i, i % 2 == 0 ? "0.1" : "-0.1", null, null));
        }
        return lines;
    }

    @Test
    void aPageShowsTheNewestTwoHundredAndLeadsToEarlierOnesWhileTheChartsHoldOverAll() throws Exception {
        Series series = watch(one);
        List<EarlierReading> lines = new ArrayList<>(List.of(read("2026-01-01", "the far one", "1.9", null, null)));
        lines.addAll(still(439));
        book.takeOver(hands.act(qa), series.id(), lines, "notebook");
        book.base(hands.act(qa), series.id(), DriftOfJigTest.given(null, false));
        assertThat(page(series, ""))
                .contains("Readings 241 to 440", "of 440", "First alarm at reading 1 of 440", "until=240")
                .contains("drifted, within again")
                .doesNotContain("the far one")
                .doesNotContain(">Newest<");
        assertThat(page(series, "?until=240")).contains("Readings 41 to 240", "until=40", "until=440", ">Newest<");
        assertThat(page(series, "?until=40"))
                .contains("Readings 1 to 200", "the far one", "until=400")
                .doesNotContain("Earlier readings");
        assertThat(page(series, "?until=99999999")).contains("Readings 241 to 440");
        assertThat(page(series, "?until=-5%20or%201")).contains("Readings 241 to 440");
        Charted stretch = charts.of(series.id(), 300);
        assertThat(stretch.offset()).isEqualTo(100);
        assertThat(stretch.rows()).hasSize(200);
        // the stretch goes on from what stood before it: the charts of all readings, cut, are the same
        Charted all = whole(series);
        assertThat(stretch.charts().get(1).traces().get(0).points())
                .isEqualTo(all.charts().get(1).traces().get(0).points().subList(100, 300));
    }

    private Charted whole(Series series) {
        List<KeptRow> every = rows.numbered(series, 1, Integer.MAX_VALUE);
        Standing standing = charts.standing(series.id());
        return new Charted(
                standing,
                every,
                Continued.charts(
                        standing.base(),
                        List.of(),
                        every.stream().map(KeptRow::value).toList()),
                Map.of(),
                0,
                List.of());
    }

    private String page(Series series, String query) throws Exception {
        return mvc.perform(get("/qa/drift/" + series.id() + query).with(Signed.on(crew.byId(qa))))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void whatAnOlderVersionDidNotKeepIsMadeAtTheStart() {
        Series series = watch(one);
        book.base(hands.act(qa), series.id(), DriftOfJigTest.given(null, false));
        takeOver(series, daily(List.of("0.1", "0.3", "1.8", "0.4")).toArray(new EarlierReading[0]));
        KeptStand before = charts.standing(series.id()).kept();
        transactions.executeWithoutResult(open -> {
            rows.removeFrom(series.id(), 1);
            plain.update(
                    "update drift_stand set stale = true, charted = 0, told = null where series_id = ?", series.id());
        });
        kept.atStart();
        assertThat(charts.standing(series.id()).kept()).isEqualTo(before);
        asFromTheFirst(series);
        assertThat(stands.stale()).isEmpty();
    }

    @Test
    void whoWeldsAfterItWasReadCountsAsWell() {
        long late = shop.qualified("WELD", LocalDate.of(2027, 1, 1), Role.WELDER);
        String initials = crew.byId(late).initials();
        watch(one);
        Series byWelder = book.watch(hands.act(qa), new NewSeries(Factor.WELDER, initials, code, "axle", "mm", false));
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("040").plain(code, "2").step("lay it by").sheet(),
                        SmallRoute.op("060").qualified("WELD").step("weld").sheet())
                .sheet());
        uses.setUp(shop.act(worker), frame.serial(), "", one, null);
        read(frame, "0.1");
        assertThat(charts.of(byWelder.id()).points()).isEmpty();
        shop.tickAll(frame, worker);
        assertThat(charts.of(byWelder.id()).points()).isEmpty();
        shop.tickAll(frame, late);
        assertThat(charts.of(byWelder.id()).values()).containsExactly(0.1);
        asFromTheFirst(byWelder);
    }

    @Test
    void aFrameWhoseJigNobodyNotedIsCountedUntilSomebodyDoes() throws Exception {
        Series series = watch(one);
        WholeShop.Frame frame = frame();
        shop.tickAll(frame, shop.qualified("WELD", LocalDate.of(2027, 1, 1), Role.WELDER));
        int before = missing.of(List.of(series)).count();
        assertThat(before).isZero();
        read(frame, "0.1");
        assertThat(charts.of(series.id()).points()).isEmpty();
        assertThat(missing.of(List.of(series)).newest())
                .extracting(head -> head.serial())
                .containsExactly(frame.serial());
        assertThat(mvc.perform(get("/qa/drift").with(Signed.on(crew.byId(qa))))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("On no chart", "no jig noted", "/frames/" + frame.serial() + "/jig");
        uses.setUp(shop.act(worker), frame.serial(), "", one, null);
        assertThat(charts.of(series.id()).values()).containsExactly(0.1);
        assertThat(missing.of(List.of(series)).count()).isZero();
    }
}
