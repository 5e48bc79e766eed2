package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.TestPropertySource;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;

/**
 * Fifty thousand readings of two thousand frames judged again, a twentieth of the frames in doubt and held, beside the
 * bare rows: the same readings fetched and the same lines written by prepared statements in one transaction. Started by
 * {@code ops/bench/rejudge}.
 */
@TestPropertySource(properties = {"trammel.test.database=rejudge_bench", "trammel.rejudgement-watch=1d"})
class RejudgeBench extends AtTheTable {

    private static final int FRAMES = 2000;
    private static final int EACH = 25;
    private static final int IN_DOUBT = 20;

    private static final OperatingSystemMXBean WORK = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    @Autowired
    private GaugeRegister register;

    @Autowired
    private Rejudgements rejudgements;

    @Autowired
    private JdbcTemplate plain;

    @Autowired
    private TransactionTemplate transaction;

    @Test
    void fiftyThousandReadingsAreJudgedAgain() {
        String gauge = gauge("0.020");
        WholeShop.Frame pattern = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        ReadingLine read = read(worker, pattern, gauge, "0.10");
        plant(read);
        long began = System.nanoTime();
        long worked = WORK.getProcessCpuTime();
        register.fail(
                shop.act(qa),
                gauge,
                new Failure(LocalDate.of(2026, 3, 17), new BigDecimal("0.18"), "°", null, "reads high"));
        rejudgements.judgeToTheEnd();
        double whole = (System.nanoTime() - began) / 1e9;
        double work = (WORK.getProcessCpuTime() - worked) / 1e9;
        RejudgementLine done = rejudgements.open().get(rejudgements.open().size() - 1);
        assertThat(done.judged()).isEqualTo(FRAMES * EACH + 1L);
        assertThat(done.waiting()).isEqualTo(FRAMES / IN_DOUBT);
        double bare = bare(done.id());
        PrintStream out = System.out;
        out.printf(
                Locale.ROOT,
                "rejudged %d readings of %d frames, %d held: %.2f s, %.2f s of processor time; the bare rows %.2f s; ratio %.1f%n",
                done.judged(),
                done.frames(),
                done.waiting(),
                whole,
                work,
                bare,
                whole / bare);
    }

    private double bare(long id) {
        long began = System.nanoTime();
        transaction.executeWithoutResult(t -> {
            // The application may make no table of its own; one that lasts as long as its connection it may.
            plain.execute("create local temporary table bare_line as select * from rejudged_reading where 1 = 0");
            List<Object[]> lines = new ArrayList<>();
            plain.query("select * from reading where id >= 0 order by id", row -> {
                BigDecimal value = row.getBigDecimal("reading_value");
                lines.add(new Object[] {
                    id,
                    row.getLong("id"),
                    0,
                    row.getString("characteristic_code"),
                    value.subtract(new BigDecimal("0.18")),
                    value,
                    "CLEARED",
                    "STANDS",
                    true
                });
            });
            assertThat(lines).hasSizeGreaterThan(FRAMES * EACH);
            plain.batchUpdate("insert into bare_line values (?, ?, ?, ?, ?, ?, ?, ?, ?)", lines);
        });
        return (System.nanoTime() - began) / 1e9;
    }

    /** Frames like the pattern, each read so often; every twentieth has a reading near its lower limit. */
    private void plant(ReadingLine pattern) {
        long first = 10_000_000;
        List<Object[]> travellers = new ArrayList<>();
        List<Object[]> operations = new ArrayList<>();
        List<Object[]> characteristics = new ArrayList<>();
        List<Object[]> taken = new ArrayList<>();
        for (int f = 0; f < FRAMES; f++) {
            long traveller = first + f;
            String serial =
                    SerialNumber.of("B" + (char) ('A' + f / 1000), 26, f % 1000).stored();
            travellers.add(new Object[] {traveller, serial, "B-" + f, pattern.travellerId()});
            operations.add(new Object[] {traveller, traveller, pattern.operationId()});
            for (int i = 0; i < EACH; i++) {
                long one = first + (long) f * EACH + i;
                boolean near = f % IN_DOUBT == 0 && i == 0;
                characteristics.add(new Object[] {one, traveller, "C-" + i, one, pattern.characteristicId()});
                taken.add(new Object[] {
                    one,
                    one,
                    traveller,
                    traveller,
                    near ? "-0.200000" : "0.100000",
                    new BigDecimal(near ? "-0.2" : "0.1"),
                    UUID.randomUUID(),
                    pattern.readingId()
                });
            }
        }
        copy("traveller", Map.of("id", 0, "serial", 1, "order_number", 2), travellers);
        copy("operation", Map.of("id", 0, "traveller_id", 1), operations);
        copy("characteristic", Map.of("id", 0, "operation_id", 1, "code", 2, "reading_id", 3), characteristics);
        copy(
                "reading",
                Map.of(
                        "id", 0,
                        "characteristic_id", 1,
                        "operation_id", 2,
                        "traveller_id", 3,
                        "raw_values", 4,
                        "reading_value", 5,
                        "act_id", 6),
                taken);
    }

    /** Copies the pattern's row, whose id stands last, with some columns given. */
    private void copy(String table, Map<String, Integer> given, List<Object[]> rows) {
        List<String> columns = plain.queryForList(
                "select column_name from information_schema.columns where table_schema = 'public' and table_name = ?",
                String.class,
                table);
        List<String> chosen = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        for (String column : columns) {
            boolean typed = given.containsKey(column);
            chosen.add(typed ? "cast(? as " + type(column) + ")" : column);
            if (typed) {
                places.add(given.get(column));
            }
        }
        String sql = "insert into " + table + " (" + String.join(", ", columns) + ") overriding system value select "
                + String.join(", ", chosen) + " from " + table + " where id = ?";
        plain.batchUpdate(
                sql,
                rows.stream()
                        .map(row -> {
                            List<Object> values = new ArrayList<>(
                                    places.stream().map(place -> row[place]).toList());
                            values.add(row[row.length - 1]);
                            return values.toArray();
                        })
                        .toList());
        assertThat(Arrays.asList(rows.get(0))).hasSizeGreaterThan(given.size());
    }

    private static String type(String column) {
        return switch (column) {
            case "serial", "order_number", "code", "raw_values" -> "varchar";
            case "reading_value" -> "numeric(20, 12)";
            case "act_id" -> "uuid";
            default -> "bigint";
        };
    }
}
