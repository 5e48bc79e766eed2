package org.trammel.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The schema as the running engine has it. */
@ShopTest
class SchemaTest {

    /** PostgreSQL cuts longer names off without a word. */
    private static final int LONGEST_NAME = 63;

    private static final Map<String, String> ENDINGS =
            Map.of("PRIMARY KEY", "_pkey", "UNIQUE", "_key", "FOREIGN KEY", "_fkey", "CHECK", "_check");

    private record Constraint(String table, String name, String type) {}

    @Autowired
    private JdbcClient jdbc;

    @Test
    void everyConstraintIsNamedByItsTableAndColumns() {
        List<Constraint> constraints = constraints();
        Map<String, String> columns = columns();
        List<String> wrong = new ArrayList<>();
        for (Constraint each : constraints) {
            String ending = ENDINGS.get(each.type());
            String exact = each.table() + "_" + columns.getOrDefault(each.name(), "") + ending;
            boolean named = each.type().equals("CHECK") || exact.length() > LONGEST_NAME
                    ? each.name().startsWith(each.table() + "_") && each.name().endsWith(ending)
                    : each.name().equals(exact);
            if (!named || each.name().length() > LONGEST_NAME) {
                wrong.add(each + " instead of " + exact);
            }
        }
        assertThat(constraints).hasSizeGreaterThan(3);
        assertThat(wrong).isEmpty();
    }

    @Test
    void namesAreShortEnoughForBothEngines() {
        assertThat(jdbc.sql("""
                        select table_name || '.' || column_name from information_schema.columns
                        where table_schema = 'public' and (length(table_name) > 63 or length(column_name) > 63)""").query(String.class).list()).isEmpty();
    }

    @Test
    void columnsUseTypesThatMeanTheSameOnBothEngines() {
        assertThat(jdbc.sql("""
                        select table_name || '.' || column_name || ' ' || data_type from information_schema.columns
                        where table_schema = 'public' and table_name <> 'flyway_schema_history'
                          and upper(data_type) in ('TEXT', 'CHARACTER LARGE OBJECT', 'BINARY LARGE OBJECT', 'OID', 'JSONB',
                              'JSON', 'TIMESTAMP', 'TIMESTAMP WITHOUT TIME ZONE', 'REAL', 'CHARACTER')""").query(String.class).list()).isEmpty();
    }

    /** Not null is a constraint too, but one that PostgreSQL names itself. */
    private List<Constraint> constraints() {
        return jdbc.sql("""
                        select table_name, constraint_name, constraint_type from information_schema.table_constraints
                        where table_schema = 'public' and table_name <> 'flyway_schema_history'
                          and not (constraint_type = 'CHECK' and constraint_name like '%\\_not\\_null')""")
                .query((row, number) -> new Constraint(row.getString(1), row.getString(2), row.getString(3)))
                .list();
    }

    private Map<String, String> columns() {
        return jdbc.sql("""
                        select constraint_name, column_name from information_schema.key_column_usage
                        where table_schema = 'public' order by constraint_name, ordinal_position""").query((row, number) -> List.of(row.getString(1), row.getString(2))).list().stream()
                .collect(Collectors.groupingBy(
                        row -> row.get(0), Collectors.mapping(row -> row.get(1), Collectors.joining("_"))));
    }
}
