package org.trammel.shop.crash;

import static org.assertj.core.api.SoftAssertions.assertSoftly;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.trammel.shop.TestEngine;
import org.trammel.shop.outside.RecordsAt;

/** Three kills on each engine; {@code ops/bench/crash} does a hundred by hand. */
@Tag("crash")
class CrashTest {

    private static final Logger LOG = LoggerFactory.getLogger(TestEngine.class);
    private static final int KILLS = 3;

    @ParameterizedTest
    @ValueSource(strings = {"h2", "postgresql"})
    void whatWasAcknowledgedIsThereOnceAndWholeAfterEveryKill(String engine, @TempDir Path home)
            throws IOException, InterruptedException, SQLException {
        RecordsAt records = engine.equals("h2")
                ? RecordsAt.file(home)
                : RecordsAt.database(home, TestEngine.postgresql().database("crash"));
        long seed = System.nanoTime();
        Outcome outcome =
                new CrashRun(records, KILLS, Files.createDirectories(Path.of("target", "crash", engine)), seed).run();
        LOG.info("Killed on {}, seed {}: {}", engine, seed, outcome.line());
        assertSoftly(found -> {
            found.assertThat(outcome.acknowledged()).as("acts to judge by").isGreaterThan(80);
            found.assertThat(outcome.resent()).as("acts that a kill met").isPositive();
            found.assertThat(outcome.lost()).isEmpty();
            found.assertThat(outcome.twice()).isEmpty();
            found.assertThat(outcome.torn()).isEmpty();
            found.assertThat(outcome.refusals()).isEmpty();
            found.assertThat(outcome.faults()).isEmpty();
            found.assertThat(outcome.verifyCode()).as(outcome.verified()).isZero();
        });
    }
}
