package org.trammel.shop.crash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.SoftAssertions.assertSoftly;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.trammel.shop.TestEngine;
import org.trammel.shop.outside.RecordsAt;
import org.trammel.shop.outside.ServiceProcess;
import org.trammel.shop.outside.Tablet;
import org.trammel.shop.outside.WrittenFrames;
import org.trammel.shop.outside.WrittenRoutes;
import org.trammel.shop.outside.WrittenShop;

/**
 * A gauge fails that read thousands of figures, and the service is killed while they are judged again. What comes of each
 * frame is known beforehand: the gauge reads up to 0.18 too high, and limits are 0 ± 0.3 with g = 1.65 × 0.005, so a
 * reading of 0 is truly −0.18 at the least and stays conforming, and one of −0.2 may truly be −0.38, beyond its limit.
 */
@Tag("crash")
class KilledRejudgementTest {

    private static final Logger LOG = LoggerFactory.getLogger(TestEngine.class);

    private static final int FRAMES = 200;
    private static final int EACH = 10;

    /** So few at once that a re-judgement of so many lasts until it is killed, and some kills fall into a commit. */
    private static final Map<String, String> SMALL_PORTIONS = Map.of("TRAMMEL_REJUDGEMENT_PORTION", "20");

    private static final long PATIENCE_NS = Duration.ofSeconds(40).toNanos();

    private final Map<String, String> wanted = new TreeMap<>();
    private Tablet lead;

    @ParameterizedTest
    @ValueSource(strings = {"h2", "postgresql"})
    void aReJudgementThatWasKilledIsGoneOnWithAndComesToTheSame(String engine, @TempDir Path home) throws Exception {
        RecordsAt records = engine.equals("h2")
                ? RecordsAt.file(home)
                : RecordsAt.database(home, TestEngine.postgresql().database("killed_rejudgement"));
        Path folder = Files.createDirectories(Path.of("target", "crash", "rejudgement-" + engine));
        long seed = System.nanoTime();
        Random random = new Random(seed);
        ServiceProcess.build();
        ServiceProcess.start(records, folder.resolve("schema.log")).stop();
        write(records);
        ServiceProcess service = ServiceProcess.start(records, folder.resolve("killed.log"), SMALL_PORTIONS);
        fail(service);
        awaitJudged(service, 0);
        service.letWork(Duration.ofMillis(random.nextInt(200)));
        service.kill();
        try (Connection connection = records.connect()) {
            long reached = number(connection, "select judged from rejudgement");
            LOG.info("Killed on {}, seed {}: after {} of {} readings", engine, seed, reached, FRAMES * EACH);
            assertThat(reached).as("the kill fell into the work").isBetween(1L, (long) FRAMES * EACH - 1);
        }
        ServiceProcess last = ServiceProcess.start(records, folder.resolve("finished.log"), SMALL_PORTIONS);
        try {
            awaitJudged(last, FRAMES * EACH - 1L);
            awaitOpen(last);
        } finally {
            last.stop();
        }
        try (Connection connection = records.connect()) {
            compare(connection);
        }
        ServiceProcess.Verified verified = ServiceProcess.verify(records);
        assertThat(verified.code()).as(verified.words()).isZero();
    }

    /** Every tenth frame has a reading near its limit, and every twentieth of all has left the shop with it. */
    private void write(RecordsAt records) throws SQLException {
        try (Connection connection = records.connect()) {
            connection.setAutoCommit(false);
            Instant now = Instant.now().truncatedTo(ChronoUnit.MICROS);
            WrittenShop shop = WrittenShop.write(connection, 2, now);
            WrittenFrames frames = new WrittenFrames(connection, shop);
            for (int i = 0; i < FRAMES; i++) {
                boolean near = i % 10 == 0;
                boolean shipped = i % 20 == 0;
                String serial = frames.write(
                                WrittenRoutes.forReadings(EACH, near ? new BigDecimal("-0.2") : BigDecimal.ZERO),
                                new WrittenFrames.Reached(1, 0, shipped),
                                now.minus(Duration.ofDays(20)))
                        .serial();
                wanted.put(
                        serial,
                        (near ? shipped ? "CONTACT_OWNER" : "MEASURE_AGAIN" : "CLEARED") + " " + EACH + " "
                                + (near ? 1 : 0) + " held " + (near && !shipped ? 1 : 0));
            }
            frames.end();
            connection.commit();
            lead = new Tablet(shop.lead().token());
        }
    }

    private void fail(ServiceProcess service) throws Exception {
        String today = Instant.now().toString().substring(0, 10);
        Tablet.Answer answer = lead.post(
                service.port(),
                "/api/v1/gauges/" + WrittenShop.GAUGE + "/failures",
                "{\"actId\":\"" + UUID.randomUUID() + "\",\"foundOn\":\"" + today
                        + "\",\"error\":0.18,\"unit\":\"mm\",\"note\":\"reads high\"}");
        assertThat(answer.done()).as(answer.body()).isTrue();
    }

    private String state(ServiceProcess service) throws Exception {
        Tablet.Answer answer = lead.get(service.port(), "/api/v1/rejudgements?limit=1");
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        return answer.body();
    }

    private void awaitJudged(ServiceProcess service, long more) throws Exception {
        long until = System.nanoTime() + PATIENCE_NS;
        while (judged(state(service)) <= more) {
            assertThat(System.nanoTime()).as("it goes on\n" + service.said()).isLessThan(until);
            service.letWork(Duration.ofMillis(5));
        }
    }

    private void awaitOpen(ServiceProcess service) throws Exception {
        long until = System.nanoTime() + PATIENCE_NS;
        while (!state(service).contains("\"state\":\"OPEN\"")) {
            assertThat(System.nanoTime())
                    .as("it comes to its end\n" + service.said())
                    .isLessThan(until);
            service.letWork(Duration.ofMillis(20));
        }
    }

    private static long judged(String lines) {
        return Long.parseLong(lines.replaceAll(".*\"judged\":(\\d+).*", "$1"));
    }

    private void compare(Connection connection) throws SQLException {
        Map<String, String> found = new TreeMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(
                        "select f.serial, f.outcome, f.readings, f.to_measure, (select count(*) from hold h"
                                + " where h.serial = f.serial and h.lifted_at is null and h.source like 'RJ-%')"
                                + " from rejudged_frame f")) {
            while (row.next()) {
                found.put(
                        row.getString(1),
                        row.getString(2) + " " + row.getLong(3) + " " + row.getLong(4) + " held " + row.getLong(5));
            }
        }
        long all = (long) FRAMES * EACH;
        assertSoftly(after -> {
            after.assertThat(found).isEqualTo(wanted);
            after.assertThat(count(connection, "rejudgement")).isEqualTo(1);
            after.assertThat(count(connection, "rejudgement where judged = readings and readings = " + all))
                    .isEqualTo(1);
            after.assertThat(count(connection, "rejudged_reading")).as("lines").isEqualTo(all);
            after.assertThat(count(
                            connection,
                            "reading r where not exists (select 1 from rejudged_reading j where j.reading_id = r.id)"))
                    .as("readings without a line")
                    .isZero();
            after.assertThat(count(connection, "rejudged_reading where outcome = 'MEASURE_AGAIN' and in_doubt"))
                    .isEqualTo(FRAMES / 10);
            after.assertThat(count(connection, "log_entry where chain = 'shop' and kind = 'judge readings again'"))
                    .as("an act for each portion and one for the end")
                    .isEqualTo(all / 20 + 1);
            after.assertThat(count(
                            connection,
                            "(select subject from log_entry where chain = 'shop' and kind = 'judge readings again'"
                                    + " group by subject having count(*) > 1) twice"))
                    .as("portions that were kept twice")
                    .isZero();
        });
    }

    private static long count(Connection connection, String of) {
        try {
            return number(connection, "select count(*) from " + of);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static long number(Connection connection, String query) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            row.next();
            return row.getLong(1);
        }
    }
}
