package org.trammel.shop.settings;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Tells which database engine keeps the shop's record, asked from the engine itself. */
@Component
class StorageFacts {

    private static final String WRITE_DELAY =
            "select setting_value from information_schema.settings where setting_name = 'WRITE_DELAY'";

    private final DataSource source;

    StorageFacts(DataSource source) {
        this.source = source;
    }

    /**
     * @param engine such as H2 or PostgreSQL, with its version
     * @param embedded whether it is the engine for one computer and for trying out
     * @param inMemory whether all of it is gone when the service stops
     * @param writeDelayMs how long an acknowledged act may wait before it is on disk; null where the engine never lets
     *     one wait
     */
    record Storage(
            String engine,
            boolean embedded,
            boolean inMemory,
            @Nullable Integer writeDelayMs) {

        /** Whether a power cut can take back what was acknowledged. */
        public boolean mayLose() {
            return inMemory || writeDelayMs != null && writeDelayMs > 0;
        }
    }

    Storage storage() {
        try (Connection connection = source.getConnection()) {
            DatabaseMetaData data = connection.getMetaData();
            boolean h2 = data.getDatabaseProductName().equals("H2");
            boolean memory = h2 && data.getURL().startsWith("jdbc:h2:mem:");
            return new Storage(
                    data.getDatabaseProductName() + " "
                            + data.getDatabaseProductVersion().split(" ")[0],
                    h2,
                    memory,
                    h2 && !memory ? writeDelay(connection) : null);
        } catch (SQLException e) {
            throw new IllegalStateException("The database does not say what it is", e);
        }
    }

    private static @Nullable Integer writeDelay(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(WRITE_DELAY)) {
            return row.next() ? Integer.valueOf(row.getString(1)) : null;
        }
    }
}
