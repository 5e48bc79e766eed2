package org.trammel.shop;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;

/**
 * A database of the running engine.
 *
 * @param user as whom the application connects
 * @param owner as whom the migrations run; the same on an engine without roles
 */
public record TestDatabase(String url, String user, String password, String owner, String ownerPassword) {

    /** The application's settings that lead here. */
    public Map<String, Object> properties() {
        Map<String, Object> properties = new HashMap<>(Map.of(
                // A server in a container is gone before the last contexts of a JVM close: they do not wait for it.
                "spring.datasource.hikari.connection-timeout", "3000",
                "spring.datasource.url", url,
                "spring.datasource.username", user,
                "spring.datasource.password", password));
        if (!owner.equals(user)) {
            properties.putAll(Map.of(
                    "spring.flyway.url", url, "spring.flyway.user", owner, "spring.flyway.password", ownerPassword));
        }
        return properties;
    }

    public Connection connectAsApplication() throws SQLException {
        return DriverManager.getConnection(url, user, password);
    }

    public Connection connectAsOwner() throws SQLException {
        return DriverManager.getConnection(url, owner, ownerPassword);
    }
}
