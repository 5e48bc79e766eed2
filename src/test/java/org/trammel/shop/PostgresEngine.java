package org.trammel.shop;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashSet;
import java.util.Set;

/**
 * PostgreSQL, set up as a shop sets it up: one role owns the tables and runs the migrations, the application connects
 * as another that owns none.
 */
final class PostgresEngine extends TestEngine {

    private static final String OWNER = "trammel_owner";
    private static final String APPLICATION = "trammel";
    private static final String PASSWORD = "for-tests";

    private final PostgresServer server;
    private final Set<String> made = new HashSet<>();

    PostgresEngine(PostgresServer server) {
        this.server = server;
        asSuperuser(
                "create role " + OWNER + " login password '" + PASSWORD + "'",
                "create role " + APPLICATION + " login password '" + PASSWORD + "'");
    }

    @Override
    public String name() {
        return "postgresql";
    }

    @Override
    public synchronized TestDatabase database(String name) {
        if (made.add(name)) {
            asSuperuser("create database \"" + name + "\" owner " + OWNER);
        }
        return new TestDatabase(server.url(name), APPLICATION, PASSWORD, OWNER, PASSWORD);
    }

    private void asSuperuser(String... statements) {
        try (Connection connection =
                        DriverManager.getConnection(server.url("postgres"), server.superuser(), server.password());
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        } catch (SQLException e) {
            throw new IllegalStateException("PostgreSQL for the tests cannot be prepared: " + server, e);
        }
    }

    @Override
    public String toString() {
        return "PostgreSQL: " + server.where();
    }
}
