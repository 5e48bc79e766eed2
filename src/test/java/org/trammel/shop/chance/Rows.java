package org.trammel.shop.chance;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Rows of the tables as they are, for whoever reads them without the application. */
final class Rows {

    private final JdbcClient jdbc;

    Rows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Map<String, Object>> of(String sql, Object... values) {
        return jdbc.sql(sql).params(values).query().listOfRows();
    }

    Optional<Map<String, Object>> last(String sql, Object... values) {
        return of(sql, values).stream().reduce((a, b) -> b);
    }

    boolean any(String sql, Object... values) {
        return !of(sql, values).isEmpty();
    }

    /** The only row of a query with the frame's serial in it by name. */
    Map<String, Object> named(String sql, String serial) {
        return jdbc.sql(sql).param("serial", serial).query().singleRow();
    }

    /** Place of every act in the chain of a frame. */
    Map<UUID, Long> places(String serial) {
        Map<UUID, Long> places = new HashMap<>();
        of("select act_id, position from log_entry where chain = ?", "frame:" + serial)
                .forEach(row -> places.put((UUID) row.get("act_id"), number(row, "position")));
        return places;
    }

    static long number(Map<String, Object> row, String column) {
        return ((Number) row.get(column)).longValue();
    }

    static @Nullable Long numberOrNull(Map<String, Object> row, String column) {
        return row.get(column) == null ? null : Long.valueOf(number(row, column));
    }

    static String text(Map<String, Object> row, String column) {
        return String.valueOf(row.get(column));
    }

    static boolean yes(Map<String, Object> row, String column) {
        return Boolean.TRUE.equals(row.get(column));
    }

    static BigDecimal figure(Map<String, Object> row, String column) {
        return (BigDecimal) row.get(column);
    }
}
