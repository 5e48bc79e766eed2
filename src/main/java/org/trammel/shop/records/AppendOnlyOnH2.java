package org.trammel.shop.records;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.callback.BaseCallback;
import org.flywaydb.core.api.callback.Context;
import org.flywaydb.core.api.callback.Event;
import org.springframework.stereotype.Component;

/** Puts the guard on every table of H2 whose comment begins with "append-only", after every migration. */
@Component
class AppendOnlyOnH2 extends BaseCallback {

    private static final String MARKED = """
            select table_name from information_schema.tables
            where table_schema = schema() and remarks like 'append-only%'
            order by table_name""";

    @Override
    public boolean supports(Event event, Context context) {
        return event == Event.AFTER_MIGRATE;
    }

    @Override
    public void handle(Event event, Context context) {
        if (!isH2(context.getConnection())) {
            return;
        }
        try (Statement statement = context.getConnection().createStatement()) {
            List<String> tables = new ArrayList<>();
            try (ResultSet rows = statement.executeQuery(MARKED)) {
                while (rows.next()) {
                    tables.add(rows.getString(1));
                }
            }
            for (String table : tables) {
                statement.execute("create trigger if not exists " + table + "_append_only before update, delete on "
                        + table + " for each row call '" + AppendOnly.class.getName() + "'");
            }
        } catch (SQLException e) {
            throw new FlywayException("The append-only tables cannot be guarded", e);
        }
    }

    private static boolean isH2(Connection connection) {
        try {
            return connection.getMetaData().getDatabaseProductName().equals("H2");
        } catch (SQLException e) {
            throw new FlywayException("The database does not say what it is", e);
        }
    }
}
