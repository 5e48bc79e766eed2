package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.trammel.shop.TestDatabase;
import org.trammel.shop.TestEngine;

/** The tables that are only added to refuse the rest through the application's own connection, on both engines. */
@Tag("database")
class AppendOnlyTest {

    private static final TestEngine ENGINE = TestEngine.running();
    private static final TestDatabase DATABASE = ENGINE.database("append_only");
    private static final String RECORD = """
            insert into log_entry (chain, position, act_id, at, kind, subject, payload, previous_hash, hash, place)
            values ('shop', %d, gen_random_uuid(), current_timestamp, 'k', 's', '{}', '0', '1', 0)""";

    @BeforeAll
    static void migrate() throws SQLException {
        Flyway.configure()
                .dataSource(DATABASE.url(), DATABASE.owner(), DATABASE.ownerPassword())
                .locations("classpath:db/migration/common", "classpath:db/migration/" + ENGINE.name())
                .placeholders(java.util.Map.of("application-role", DATABASE.user()))
                .callbacks(new AppendOnlyOnH2())
                .failOnMissingLocations(false)
                .load()
                .migrate();
        application(RECORD.formatted(900));
    }

    @Test
    void aRecordOfTheLogIsNeitherChangedNorTakenAway() {
        for (String act : List.of("update log_entry set payload = '{\"a\":1}'", "delete from log_entry")) {
            assertThatThrownBy(() -> application(act))
                    .as(act)
                    .isInstanceOf(SQLException.class)
                    .extracting(e -> ((SQLException) e).getSQLState())
                    .isEqualTo("42501");
        }
    }

    @Test
    void withoutItsGuardTheLogWouldChange() throws SQLException {
        String chain = "update log_entry set kind = 'changed' where position = 901";
        application(RECORD.formatted(901));
        assertThatThrownBy(() -> application(chain)).isInstanceOf(SQLException.class);
        boolean h2 = ENGINE.name().equals("h2");
        owner(h2 ? "drop trigger log_entry_append_only" : "grant update on log_entry to " + DATABASE.user());
        try {
            assertThat(application(chain)).isEqualTo(1);
        } finally {
            owner(
                    h2
                            ? "create trigger log_entry_append_only before update, delete on log_entry for each row call '"
                                    + AppendOnly.class.getName() + "'"
                            : "revoke update on log_entry from " + DATABASE.user());
        }
    }

    @Test
    void onPostgresqlTheApplicationOwnsNoTableAndEmptiesNoLog() throws SQLException {
        if (ENGINE.name().equals("h2")) {
            assertThat(DATABASE.owner()).as("H2 knows one user").isEqualTo(DATABASE.user());
            return;
        }
        assertThat(count("select count(*) from pg_tables where tableowner = current_user"))
                .isZero();
        assertThat(count("select count(*) from pg_tables where schemaname = 'public'"))
                .isPositive();
        assertThatThrownBy(() -> application("truncate log_entry")).isInstanceOf(SQLException.class);
        assertThatThrownBy(() -> application("drop table log_entry")).isInstanceOf(SQLException.class);
        assertThatThrownBy(() -> application("create table own (id int)")).isInstanceOf(SQLException.class);
        assertThatThrownBy(() -> application("delete from flyway_schema_history"))
                .isInstanceOf(SQLException.class);
    }

    private static int application(String sql) throws SQLException {
        try (Connection connection = DATABASE.connectAsApplication();
                Statement statement = connection.createStatement()) {
            return statement.executeUpdate(sql);
        }
    }

    private static void owner(String sql) throws SQLException {
        try (Connection connection = DATABASE.connectAsOwner();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private static long count(String sql) throws SQLException {
        try (Connection connection = DATABASE.connectAsApplication();
                Statement statement = connection.createStatement();
                var rows = statement.executeQuery(sql)) {
            rows.next();
            return rows.getLong(1);
        }
    }
}
