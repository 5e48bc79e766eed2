package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.trammel.shop.TestDatabase;
import org.trammel.shop.TestEngine;

/** Charts of a shop that was there before points were kept and before welders' names lay apart. */
@Tag("database")
class OlderDriftTest {

    private static final TestEngine ENGINE = TestEngine.running();
    private static final TestDatabase DATABASE = ENGINE.database("older_drift");

    /** As the service does it: the connections that migrated stay open, which H2's checks want. */
    private static final HikariDataSource POOL = pool();

    private static HikariDataSource pool() {
        HikariDataSource pool = new HikariDataSource();
        pool.setJdbcUrl(DATABASE.url());
        pool.setUsername(DATABASE.owner());
        pool.setPassword(DATABASE.ownerPassword());
        pool.setMaximumPoolSize(4);
        return pool;
    }

    @AfterAll
    static void close() {
        POOL.close();
    }

    private static void migrate(String until) {
        Flyway.configure()
                .dataSource(POOL)
                .locations("classpath:db/migration/common", "classpath:db/migration/" + ENGINE.name())
                .placeholders(Map.of("application-role", DATABASE.user()))
                .callbacks(new AppendOnlyOnH2())
                .target(until + "?")
                .failOnMissingLocations(false)
                .load()
                .migrate();
    }

    private static void run(String... all) throws SQLException {
        try (Connection connection = POOL.getConnection();
                Statement statement = connection.createStatement()) {
            for (String sql : all) {
                statement.execute(sql);
            }
        }
    }

    private static List<String> asked(String sql) throws SQLException {
        List<String> rows = new ArrayList<>();
        try (Connection connection = POOL.getConnection();
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            while (row.next()) {
                rows.add(row.getString(1));
            }
        }
        return rows;
    }

    private static String history(int place, String act, String frame, String welder) {
        return "insert into drift_history (series_id, place, frame, amount, nominal, lower_limit, upper_limit, read_at, welder,"
                + " tube_set, source, person_id, at, act_id) select s.id, " + place + ", '" + frame
                + "', 0.1, 0, -1, 1, current_timestamp, " + welder + ", null, 'notebook', 1, current_timestamp, '" + act
                + "' from drift_series s";
    }

    @Test
    void namesMoveApartAndEverySeriesIsChartedAnew() throws SQLException {
        migrate("179");
        String one = "7d444840-9dc0-11d1-b245-5ffdce74fad2";
        String two = "7d444840-9dc0-11d1-b245-5ffdce74fad3";
        run(
                "insert into person (initials, name, badge, joined_on, left_on, pin_one_time, password_one_time, version)"
                        + " values ('QX', 'Quill', 'B-QX', current_date, null, false, false, 0)",
                "insert into drift_series (jig_code, characteristic_code, name, unit, scaled, person_id, at, act_id, followed,"
                        + " subject) values (null, '080-3', 'axle', 'mm', false, 1, current_timestamp, '" + one
                        + "', 'TUBE_SET', 'L1')",
                history(1, one, "a", "'qx'"),
                history(2, one, "b", "'Arvid Quillfeather'"),
                history(3, one, "c", "'Arvid Quillfeather'"),
                history(4, one, "d", "null"),
                history(1, two, "e", "'Arvid Quillfeather'"));
        migrate("181");
        assertThat(asked("select h.frame || ' ' || coalesce(p.initials, t.words) from drift_history h"
                        + " join drift_welder w on w.history_id = h.id left join person p on p.id = w.person_id"
                        + " left join kept_words_text t on t.words_id = w.words_id order by h.frame"))
                .containsExactly("a QX", "b Arvid Quillfeather", "c Arvid Quillfeather", "e Arvid Quillfeather");
        // once for each act that wrote it, under a hash that the text and its salt still give
        assertThat(asked("select t.words from kept_words_text t")).hasSize(2);
        assertThat(
                        asked(
                                "select k.sha256 from kept_words k join kept_words_text t on t.words_id = k.id where length(k.sha256) = 64"))
                .hasSize(2);
        assertThat(asked("select column_name from information_schema.columns where lower(table_name) = 'drift_history'"
                        + " and lower(column_name) = 'welder'"))
                .isEmpty();
        assertThat(asked("select series_id from drift_stand where stale")).hasSize(1);
    }
}
