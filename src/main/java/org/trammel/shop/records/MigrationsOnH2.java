package org.trammel.shop.records;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.sql.DataSource;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.boot.flyway.autoconfigure.FlywayConfigurationCustomizer;
import org.springframework.jdbc.datasource.DelegatingDataSource;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.stereotype.Component;

/**
 * Keeps the sessions that migrated an H2 database open for as long as the service runs.
 *
 * <p>H2 2.4 compares the values of a check such as {@code state in ('OPEN', 'DONE')} through the session that created
 * it. Once that session is closed, every insert into the table fails with error 23514 until the database itself is
 * opened anew.
 */
@Component
class MigrationsOnH2 implements FlywayConfigurationCustomizer, DisposableBean {

    private final List<Connection> open = new CopyOnWriteArrayList<>();

    @Override
    public void customize(FluentConfiguration configuration) {
        DataSource given = configuration.getDataSource();
        if (isH2(given)) {
            configuration.dataSource(new KeptOpen(outsideThePool(given)));
        }
    }

    @Override
    public void destroy() throws SQLException {
        for (Connection connection : open) {
            connection.close();
        }
    }

    private static boolean isH2(DataSource source) {
        try (Connection connection = source.getConnection()) {
            return connection.getMetaData().getDatabaseProductName().equals("H2");
        } catch (SQLException e) {
            throw new IllegalStateException("The database does not say what it is", e);
        }
    }

    /** Sessions that stay open must not be taken from the application's pool. */
    private static DataSource outsideThePool(DataSource given) {
        try {
            if (given.isWrapperFor(HikariDataSource.class)) {
                HikariDataSource pool = given.unwrap(HikariDataSource.class);
                return new DriverManagerDataSource(pool.getJdbcUrl(), pool.getUsername(), pool.getPassword());
            }
        } catch (SQLException e) {
            throw new IllegalStateException("The source of connections does not say what it wraps", e);
        }
        return given;
    }

    private final class KeptOpen extends DelegatingDataSource {

        KeptOpen(DataSource own) {
            super(own);
        }

        @Override
        public Connection getConnection() throws SQLException {
            Connection connection = super.getConnection();
            open.add(connection);
            return new Unclosed(connection).proxy();
        }
    }
}
