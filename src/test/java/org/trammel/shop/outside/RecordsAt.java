package org.trammel.shop.outside;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.TestDatabase;

/**
 * Where a service that runs as a process of its own keeps its records.
 *
 * @param home its folder
 * @param database its database; null for the H2 file in the folder, at the address the service ships with
 * @param writeDelay false takes WRITE_DELAY=0 out of the address of the H2 file, to show what it is good for
 */
public record RecordsAt(Path home, @Nullable TestDatabase database, boolean writeDelay) {

    private static final String FILE = ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";

    /** The H2 file of a folder. */
    public static RecordsAt file(Path home) {
        return new RecordsAt(home.toAbsolutePath(), null, true);
    }

    /** The H2 file of a folder, with H2's own default for WRITE_DELAY. Nobody can set this but a test. */
    public static RecordsAt fileThatMayLose(Path home) {
        return new RecordsAt(home.toAbsolutePath(), null, false);
    }

    public static RecordsAt database(Path home, TestDatabase database) {
        return new RecordsAt(home.toAbsolutePath(), database, true);
    }

    public boolean h2() {
        return database == null;
    }

    /** Arguments that lead the service here. */
    List<String> arguments() {
        List<String> arguments = new ArrayList<>(List.of("--trammel.home=" + home));
        if (database != null) {
            database.properties().forEach((name, value) -> arguments.add("--" + name + "=" + value));
        } else if (!writeDelay) {
            arguments.add("--spring.datasource.url=" + url() + ";DB_CLOSE_ON_EXIT=FALSE");
        }
        return arguments;
    }

    private String url() {
        return "jdbc:h2:file:" + home.resolve("trammel") + FILE;
    }

    /** As the service connects: with its role, as durable, and with the cache that H2 takes in the service's memory. An H2 file can be opened only while no service has it. */
    public Connection connectAsService() throws SQLException {
        return database == null
                ? DriverManager.getConnection(
                        url() + ";IFEXISTS=TRUE;WRITE_DELAY=0;QUERY_CACHE_SIZE=128;CACHE_SIZE=32768", "trammel", "")
                : database.connectAsApplication();
    }

    /** As the owner of the tables, with room for millions of rows: H2's own cache would read its pages again and again. */
    public Connection connectToWriteMuch() throws SQLException {
        return database == null
                ? DriverManager.getConnection(url() + ";IFEXISTS=TRUE;CACHE_SIZE=600000", "trammel", "")
                : connect();
    }

    /** As the owner of the tables. An H2 file can be opened only while no service has it. */
    public Connection connect() throws SQLException {
        return database == null
                ? DriverManager.getConnection(url() + ";IFEXISTS=TRUE", "trammel", "")
                : DriverManager.getConnection(
                        database.url() + "?reWriteBatchedInserts=true", database.owner(), database.ownerPassword());
    }
}
