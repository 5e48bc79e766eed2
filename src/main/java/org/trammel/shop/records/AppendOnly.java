package org.trammel.shop.records;

import java.sql.Connection;
import java.sql.SQLException;
import org.h2.api.Trigger;

/**
 * H2's guard of the tables that are only added to: refuses update and delete.
 *
 * <p>H2 has no role that is kept from its own file, so whoever owns the file can remove this guard. PostgreSQL refuses
 * by the rights of the application's role.
 */
public final class AppendOnly implements Trigger {

    /** What both engines say for a lack of rights. */
    private static final String INSUFFICIENT_PRIVILEGE = "42501";

    private String table = "";

    @Override
    public void init(Connection connection, String schema, String name, String table, boolean before, int type) {
        this.table = table;
    }

    @Override
    public void fire(Connection connection, Object[] before, Object[] after) throws SQLException {
        throw new SQLException("Rows of " + table + " are only added, never changed", INSUFFICIENT_PRIVILEGE);
    }
}
