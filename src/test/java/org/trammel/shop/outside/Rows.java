package org.trammel.shop.outside;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import org.jspecify.annotations.Nullable;

/** New rows of one table, sent in batches. A table with an identity column gets its ids from here. */
final class Rows {

    private final Connection connection;
    private final String table;
    private final PreparedStatement insert;
    private final boolean identity;
    private long lastId;
    private long count;

    /** Rows of a table whose first column is its identity. */
    static Rows numbered(Connection connection, String table, String columns) throws SQLException {
        return new Rows(connection, table, "id, " + columns, true);
    }

    /** Rows of a table whose key is given. */
    static Rows keyed(Connection connection, String table, String columns) throws SQLException {
        return new Rows(connection, table, columns, false);
    }

    private Rows(Connection connection, String table, String columns, boolean identity) throws SQLException {
        this.connection = connection;
        this.table = table;
        this.identity = identity;
        int width = columns.split(",").length;
        this.insert = connection.prepareStatement("insert into " + table + " (" + columns + ")"
                + (identity ? " overriding system value" : "")
                + " values (" + String.join(", ", Collections.nCopies(width, "?")) + ")");
        if (identity) {
            try (Statement statement = connection.createStatement();
                    ResultSet row = statement.executeQuery("select coalesce(max(id), 0) from " + table)) {
                row.next();
                lastId = row.getLong(1);
            }
        }
    }

    /** Adds a row to a table with an identity; gives its id. */
    long add(@Nullable Object... values) throws SQLException {
        insert.setLong(1, ++lastId);
        set(2, values);
        return lastId;
    }

    /** Adds a row to a table whose key is given. */
    void put(@Nullable Object... values) throws SQLException {
        set(1, values);
    }

    private void set(int first, @Nullable Object[] values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            Object value = values[i];
            if (value instanceof Instant instant) {
                insert.setObject(first + i, instant.atOffset(ZoneOffset.UTC));
            } else if (value == null) {
                insert.setNull(first + i, Types.NULL);
            } else {
                insert.setObject(first + i, value);
            }
        }
        insert.addBatch();
        count++;
    }

    /** The id given last. */
    long lastId() {
        return lastId;
    }

    void send() throws SQLException {
        insert.executeBatch();
    }

    long count() {
        return count;
    }

    /** Sends what is left and lets the database go on counting where this left off. */
    void end() throws SQLException {
        send();
        insert.close();
        if (identity) {
            try (Statement statement = connection.createStatement()) {
                statement.execute("alter table " + table + " alter column id restart with " + (lastId + 1));
            }
        }
    }
}
