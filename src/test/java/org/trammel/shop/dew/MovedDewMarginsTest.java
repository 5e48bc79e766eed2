package org.trammel.shop.dew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.OlderDatabase;

/** What two tables kept of air and metal stands in one, with every figure, act and time it had. */
@Tag("database")
class MovedDewMarginsTest {

    private static final String FIGURES = "21, 68, 17.2, 14.87, false, 2.33, 3, ";
    private static final String REST =
            ", 'setting', 'TH-1', 'IR-1', 7, timestamp with time zone '2026-03-17 08:24:00+00', ";

    @Test
    void everyMeasurementIsMovedWhole() {
        try (OlderDatabase older = OlderDatabase.of("moved_dew_margins")) {
            older.migrate("301");
            plant(older.jdbc());
            older.migrate("314");
            assertThat(older.jdbc()
                            .sql("""
                            select purpose, operation_id, air_degc, humidity_percent, metal_degc, point_degc, over_ice,
                                margin_k, wanted_k, least_degc, least_metal_degc, source, air_gauge, metal_gauge, by_person,
                                cast(act_id as varchar)
                            from dew_margin order by id""")
                            .query((row, n) -> {
                                StringBuilder all = new StringBuilder();
                                for (int i = 1; i <= 16; i++) {
                                    Object value = row.getObject(i);
                                    all.append(
                                                    value instanceof java.math.BigDecimal figure
                                                            ? figure.stripTrailingZeros()
                                                                    .toPlainString()
                                                            : String.valueOf(value))
                                            .append(' ');
                                }
                                return all.toString().strip();
                            })
                            .list())
                    .containsExactly(
                            "COAT 1 21 68 17.2 14.87 false 2.33 3 null 17.9 setting TH-1 IR-1 7"
                                    + " 00000000-0000-0000-0000-000000000001",
                            "ARC 1 21 68 17.2 14.87 false 2.33 3 15 17.9 setting TH-1 IR-1 7"
                                    + " 00000000-0000-0000-0000-000000000002");
            assertThat(older.jdbc()
                            .sql("select count(distinct at) from dew_margin")
                            .query(Integer.class)
                            .single())
                    .isEqualTo(1);
        }
    }

    private static void plant(JdbcClient jdbc) {
        // The traveller is not looked at by what moves the measurements.
        jdbc.sql("alter table operation drop constraint operation_traveller_id_fkey")
                .update();
        jdbc.sql(
                        "insert into operation (traveller_id, position, code, name, station, point, signers, together, outside,"
                                + " irreversible, joins, caution, loop_number, state, version) values (1, 1, '150', 'coat', '8',"
                                + " 'NONE', '', false, false, false, false, '', 0, 'IN_WORK', 0)")
                .update();
        jdbc.sql(
                        "insert into coat_air (operation_id, air_degc, humidity_percent, metal_degc, point_degc, over_ice, margin_k,"
                                + " wanted_k, least_metal_degc, source, air_gauge, metal_gauge, by_person, at, act_id) values (1, "
                                + FIGURES + "17.9" + REST + "cast('00000000-0000-0000-0000-000000000001' as uuid))")
                .update();
        jdbc.sql("insert into metal_air (operation_id, air_degc, humidity_percent, metal_degc, point_degc, over_ice,"
                        + " margin_k, wanted_k, least_degc, least_metal_degc, source, air_gauge, metal_gauge, by_person, at,"
                        + " act_id) values (1, " + FIGURES + "15, 17.9" + REST
                        + "cast('00000000-0000-0000-0000-000000000002' as uuid))")
                .update();
    }
}
