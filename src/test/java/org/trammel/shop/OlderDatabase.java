package org.trammel.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/** A database as an earlier version left it, brought up to date step by step. */
public final class OlderDatabase implements AutoCloseable {

    private final TestEngine engine;
    private final TestDatabase database;
    private final DataSource source;

    private OlderDatabase(TestEngine engine, TestDatabase database, DataSource source) {
        this.engine = engine;
        this.database = database;
        this.source = source;
    }

    /** H2 checks values through the session that made the check, so there is one session that stays open. */
    public static OlderDatabase of(String name) {
        TestEngine engine = TestEngine.running();
        TestDatabase database = engine.database(name);
        DataSource source = engine.name().equals("h2")
                ? new SingleConnectionDataSource(database.url(), database.owner(), database.ownerPassword(), true)
                : new DriverManagerDataSource(database.url(), database.owner(), database.ownerPassword());
        return new OlderDatabase(engine, database, source);
    }

    public JdbcClient jdbc() {
        return JdbcClient.create(source);
    }

    public void migrate(String target) {
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration/common", "classpath:db/migration/" + engine.name())
                .placeholders(Map.of("application-role", database.user()))
                .failOnMissingLocations(false)
                .target(target)
                .load()
                .migrate();
    }

    /** So many texts are kept, each under the hash that it and its salt still give. */
    public void requireKept(int texts) throws NoSuchAlgorithmException {
        MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
        List<Map<String, Object>> kept = jdbc().sql(
                        "select k.sha256, t.salt, t.words from kept_words k join kept_words_text t on t.words_id = k.id")
                .query()
                .listOfRows();
        assertThat(kept).hasSize(texts).allSatisfy(row -> {
            assertThat((String) row.get("salt")).hasSize(64);
            byte[] salted = (row.get("salt") + "\n" + row.get("words")).getBytes(StandardCharsets.UTF_8);
            assertThat(row.get("sha256")).isEqualTo(HexFormat.of().formatHex(sha256.digest(salted)));
        });
    }

    @Override
    public void close() {
        if (source instanceof SingleConnectionDataSource one) {
            one.destroy();
        }
    }
}
