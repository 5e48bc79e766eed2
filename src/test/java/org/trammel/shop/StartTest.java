package org.trammel.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@ShopTest
class StartTest {

    @Autowired
    private Flyway flyway;

    @Autowired
    private Clock clock;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Statements statements;

    @Test
    void theApplicationStartsOnTheEngineAndEveryMigrationIsInPlace() {
        assertThat(flyway.validateWithResult().validationSuccessful).isTrue();
        assertThat(flyway.info().pending()).isEmpty();
    }

    @Test
    void migrationsTakeNoConnectionFromThePool(@Autowired DataSource source) throws SQLException {
        flyway.info();
        assertThat(source.unwrap(HikariDataSource.class).getHikariPoolMXBean().getActiveConnections())
                .as("one at most, of a clock that looks by itself")
                .isLessThanOrEqualTo(1);
    }

    @Test
    void theTestsHoldTheClock() {
        assertThat(clock.instant()).isEqualTo(TestClock.START);
    }

    @Test
    void everyStatementOfThisThreadIsCounted() throws Exception {
        List<String> sent = statements.during(() -> {
            jdbc.sql("select 1").query(Integer.class).single();
            return jdbc.sql("select 2").query(Integer.class).single();
        });
        assertThat(sent).containsExactly("select 1", "select 2");
    }
}
