package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.TestPropertySource;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/**
 * All charts of the shop over a hundred thousand stored readings, beside the bare rows: the same readings fetched by plain
 * JDBC and one weighted mean of each series. Recomputed from the readings, recomputed and kept, and looked at. H2 only.
 * Started by {@code ops/bench/charts}.
 */
@ShopTest
@TestPropertySource(properties = "trammel.test.database=charts_bench")
class StoredChartsBench {

    private static final int FRAMES = 4000;
    private static final int AXES = 25;
    private static final int JIGS = 20;
    private static final int ROUNDS = 7;
    private static final long FIRST = 10_000_000;

    private static final PrintStream OUT = System.out;

    private static final OperatingSystemMXBean WORK = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private DriftBook book;

    @Autowired
    private DriftCharts charts;

    @Autowired
    private KeptCharts kept;

    @Autowired
    private SeriesPoints points;

    @Autowired
    private TransactionTemplate transactions;

    @Autowired
    private JigUses uses;

    @Autowired
    private Stations stations;

    @Autowired
    private JdbcTemplate plain;

    @Test
    void aHundredThousandStoredReadingsAreCharted() {
        plant();
        List<Series> all = charts.watched();
        assertThat(all).hasSize(AXES * JIGS);
        Map<Long, Base> bases = new HashMap<>();
        transactions.executeWithoutResult(open -> kept.again(all));
        charts.all().forEach(each -> bases.put(each.series().id(), each.base()));
        List<double[]> computed = new ArrayList<>();
        List<double[]> again = new ArrayList<>();
        List<double[]> looked = new ArrayList<>();
        List<double[]> one = new ArrayList<>();
        List<double[]> bare = new ArrayList<>();
        for (int i = 0; i < ROUNDS; i++) {
            computed.add(timed(() -> computed(all, bases)));
            again.add(timed(() -> transactions.executeWithoutResult(open -> kept.again(all))));
            looked.add(timed(() -> assertThat(charts.all().stream()
                            .mapToInt(each -> each.kept().charted())
                            .sum())
                    .isEqualTo(FRAMES * AXES)));
            one.add(timed(() -> assertThat(charts.of(all.get(0).id()).rows()).hasSize(FRAMES / JIGS)));
            bare.add(timed(this::bare));
        }
        OUT.printf(Locale.ROOT, "charted %d stored readings of %d series, seconds%n", FRAMES * AXES, AXES * JIGS);
        told("recomputed from the readings", computed, bare);
        told("recomputed and kept", again, bare);
        told("all charts looked at", looked, bare);
        told("one chart looked at", one, bare);
        told("bare rows", bare, bare);
    }

    private static void told(String what, List<double[]> rounds, List<double[]> bare) {
        OUT.printf(
                Locale.ROOT,
                "charted: %s: by the clock first %.3f, median %.3f, ratio %.2f; processor time first %.3f, median %.3f,"
                        + " ratio %.2f%n",
                what,
                rounds.get(0)[0],
                median(rounds, 0),
                median(rounds, 0) / median(bare, 0),
                rounds.get(0)[1],
                median(rounds, 1),
                median(rounds, 1) / median(bare, 1));
    }

    /** All charts with every point and alarm, from the readings as they are stored. */
    private void computed(List<Series> all, Map<Long, Base> bases) {
        Map<Long, List<Point>> read = transactions.execute(open -> points.of(all));
        int charted = 0;
        for (Series each : all) {
            charted += Continued.after(
                            each, bases.get(each.id()), KeptStand.nothing(each.id()), 1, List.of(), read.get(each.id()))
                    .stand()
                    .charted();
        }
        assertThat(charted).isEqualTo(FRAMES * AXES);
    }

    private static double[] timed(Runnable work) {
        long began = System.nanoTime();
        long worked = WORK.getProcessCpuTime();
        work.run();
        return new double[] {(System.nanoTime() - began) / 1e9, (WORK.getProcessCpuTime() - worked) / 1e9};
    }

    private static double median(List<double[]> rounds, int place) {
        return rounds.stream()
                .mapToDouble(each -> each[place])
                .sorted()
                .skip(rounds.size() / 2)
                .findFirst()
                .orElseThrow();
    }

    private void bare() {
        Map<String, double[]> means = new HashMap<>();
        plain.query(
                "select r.characteristic_code, u.jig_code, r.reading_value, r.nominal, r.lower_limit, r.upper_limit, r.at"
                        + " from reading r join jig_use u on u.traveller_id = r.traveller_id where r.id >= ? order by r.id",
                row -> {
                    double[] of = means.computeIfAbsent(row.getString(1) + row.getString(2), key -> new double[1]);
                    of[0] = 0.2
                                    * (row.getBigDecimal(3).doubleValue()
                                            - row.getBigDecimal(4).doubleValue())
                            + 0.8 * of[0];
                },
                FIRST);
        assertThat(means).hasSize(AXES * JIGS);
    }

    private void plant() {
        WholeShop shop = new WholeShop(beans);
        long worker = shop.hire(Role.STATION_WORKER);
        long qa = shop.hire(Role.QA_LEAD);
        long owner = shop.hire(Role.OWNER);
        stations.add(shop.act(owner), new Station("BENCH", "Jigs of the bench", 3, new BigDecimal("30"), false));
        for (int j = 0; j < JIGS; j++) {
            stations.addJig(
                    shop.act(owner), "BJ" + j, "BENCH", LocalDate.parse("2026-01-01"), LocalDate.parse("2027-01-01"));
        }
        Series first = book.watch(shop.act(qa), NewSeries.onJig("BJ0", "C-0", "axis", "mm", false));
        book.base(shop.act(qa), first.id(), DriftOfJigTest.given(null, false));
        series(first);
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("080")
                                .plain("080-1", "0.3")
                                .plain("080-2", "0.3")
                                .sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
        uses.setUp(shop.act(worker), frame.serial(), "", "BJ0", null);
        long characteristic = shop.at(frame).characteristics().get(0).characteristicId();
        long operation = shop.at(frame).line().operationId();
        long reading = shop.read(
                        worker, characteristic, shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1)), "0.1")
                .readingId();
        long use = plain.queryForObject("select max(id) from jig_use", Long.class);
        String frameOf = FIRST + " + n.x / " + AXES;
        multiply(
                "traveller",
                frame.travellerId(),
                FRAMES,
                Map.of("id", FIRST + " + n.x", "serial", "'B' || lpad(n.x, 7, '0')", "order_number", "'B-' || n.x"));
        multiply("operation", operation, FRAMES, Map.of("id", FIRST + " + n.x", "traveller_id", FIRST + " + n.x"));
        multiply(
                "characteristic",
                characteristic,
                FRAMES * AXES,
                Map.of(
                        "id", FIRST + " + n.x",
                        "operation_id", frameOf,
                        "code", "'C-' || mod(n.x, " + AXES + ")",
                        "reading_id", FIRST + " + n.x"));
        multiply(
                "reading",
                reading,
                FRAMES * AXES,
                Map.of(
                        "id",
                        FIRST + " + n.x",
                        "characteristic_id",
                        FIRST + " + n.x",
                        "operation_id",
                        frameOf,
                        "traveller_id",
                        frameOf,
                        "characteristic_code",
                        "'C-' || mod(n.x, " + AXES + ")",
                        "reading_value",
                        "cast(mod(n.x * 7919, 2003) - 1001 as numeric(20, 12)) / 1000",
                        "act_id",
                        "random_uuid()"));
        multiply(
                "jig_use",
                use,
                FRAMES,
                Map.of(
                        "id", FIRST + " + n.x",
                        "traveller_id", FIRST + " + n.x",
                        "serial", "'B' || lpad(n.x, 7, '0')",
                        "jig_code", "'BJ' || mod(n.x, " + JIGS + ")",
                        "act_id", "random_uuid()"));
    }

    /** The rows that taking up the other axes and giving them their bases would write. */
    private void series(Series first) {
        int others = AXES * JIGS - 1;
        String number = "(n.x + 1)";
        multiply(
                "drift_series",
                first.id(),
                others,
                Map.of(
                        "id", FIRST + " + n.x",
                        "jig_code", "'BJ' || mod(" + number + ", " + JIGS + ")",
                        "characteristic_code", "'C-' || (" + number + " / " + JIGS + ")",
                        "act_id", "random_uuid()"));
        long base = plain.queryForObject("select max(id) from drift_base", Long.class);
        multiply(
                "drift_base",
                base,
                others,
                Map.of("id", FIRST + " + n.x", "series_id", FIRST + " + n.x", "act_id", "random_uuid()"));
        plain.update("insert into drift_stand (series_id, charted, before_base, not_charted, alarms, stale)"
                + " select id, 0, 0, 0, 0, true from drift_series where id >= " + FIRST);
    }

    /** Copies the row of that id so often, some columns as expressions over n.x, which counts from 0. */
    private void multiply(String table, long pattern, int count, Map<String, String> given) {
        List<String> columns = plain.queryForList(
                "select column_name from information_schema.columns where table_schema = 'public' and table_name = ?",
                String.class,
                table);
        List<String> chosen = columns.stream()
                .map(column -> given.getOrDefault(column, "p." + column))
                .toList();
        String sql = "insert into " + table + " (" + String.join(", ", columns) + ") overriding system value select "
                + String.join(", ", chosen) + " from " + table + " p cross join system_range(0, " + (count - 1)
                + ") n where p.id = " + pattern;
        int made = plain.update(sql.replace("n.x", "n.\"X\""));
        assertThat(made).isEqualTo(count);
    }
}
