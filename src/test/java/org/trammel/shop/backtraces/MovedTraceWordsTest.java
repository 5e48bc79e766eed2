package org.trammel.shop.backtraces;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.NoSuchAlgorithmException;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.OlderDatabase;

/** Words of oven traces that were kept in their own tables before are kept where they can be erased, none is lost. */
@Tag("database")
class MovedTraceWordsTest {

    private static final String LONG = "Åsa Rider, Elm Lane 4;\n\"stops\" riding 'now'. " + "x".repeat(3900);
    private static final String BY_ITSELF = "No run was judged, steered or watched by it since it was last right.";

    @Test
    void everyTextIsMovedWithItsHashAndStandsWhereItStood() throws NoSuchAlgorithmException {
        try (OlderDatabase older = OlderDatabase.of("moved_trace_words")) {
            older.migrate("188");
            JdbcClient jdbc = older.jdbc();
            plant(jdbc);
            older.migrate("200");
            assertThat(jdbc.sql("""
                            select f.serial, f.result, t.words from oven_trace_frame f
                            left join kept_words_text t on t.words_id = f.result_words_id order by f.serial""")
                            .query((row, n) -> row.getString(1) + " " + row.getString(2) + " " + row.getString(3))
                            .list())
                    .containsExactly(
                            "AV26101H DECIDED same",
                            "AV26102K HARDNESS same",
                            "AV26103L OWNER_CONTACTED " + LONG,
                            "AV26104M null null");
            assertThat(jdbc.sql("""
                            select c.words, w.words from oven_trace r
                            left join kept_words_text c on c.words_id = r.closed_words_id
                            left join kept_words_text w on w.words_id = r.widened_words_id order by r.id""")
                            .query((row, n) -> row.getString(1) + ", " + row.getString(2))
                            .list())
                    .containsExactly("thrown away, its bath stood still", "null, null", "null, same");
            older.requireKept(6);
            assertThat(jdbc.sql("select lift_words from hold order by id")
                            .query(String.class)
                            .list())
                    .containsExactly(
                            "OT-0001: decided otherwise",
                            "OT-0001: hardness was measured",
                            "OT-0001: aged further",
                            "OT-0001: owner contacted",
                            "aged further: by hand",
                            null);
        }
    }

    private static void plant(JdbcClient jdbc) {
        // Neither run nor traveller is looked at by what moves the words.
        jdbc.sql("alter table oven_trace_frame drop constraint oven_trace_frame_run_id_fkey")
                .update();
        jdbc.sql("alter table oven_trace_frame drop constraint oven_trace_frame_traveller_id_fkey")
                .update();
        jdbc.sql("alter table oven_trace drop constraint oven_trace_oven_id_fkey")
                .update();
        jdbc.sql("alter table oven_trace drop constraint oven_trace_test_id_fkey")
                .update();
        // Closed by somebody; closed by itself, because nothing was in doubt; open.
        int test = 0;
        for (String end : List.of(
                "'CLOSED', 7, 'thrown away', 'its bath stood still'",
                "'CLOSED', 7, '" + BY_ITSELF + "', null",
                "'OPEN', null, null, 'same'")) {
            jdbc.sql(
                            "insert into oven_trace (oven_id, test_id, thermocouple, error_k, found_at, opened_by, opened_at, version,"
                                    + " state, closed_by, closed_words, widened_words)"
                                    + " values (1, ?, 'TC-1', 7, current_timestamp, 7, current_timestamp, 0, " + end
                                    + ")")
                    .param(++test)
                    .update();
        }
        frame(jdbc, "AV26101H", "DECIDED", "same");
        frame(jdbc, "AV26102K", "HARDNESS", "same");
        frame(jdbc, "AV26103L", "OWNER_CONTACTED", LONG);
        frame(jdbc, "AV26104M", "", "");
        for (String lifted : List.of(
                "'OT-0001', 'decided otherwise: same'",
                "'OT-0001', 'hardness was measured: same'",
                "'OT-0001', 'aged further: same'",
                "'OT-0001', 'owner contacted: at Elm Lane 4'",
                "'by hand', 'aged further: by hand'",
                "'OT-0001', null")) {
            jdbc.sql(
                            "insert into hold (serial, scope, reason, words, placed_by, placed_at, causers, agreed_by, version,"
                                    + " source, lift_words) values ('AV26101H', 'FRAME', 'OVEN_TRACE', 'w', 0,"
                                    + " current_timestamp, '', '', 0, " + lifted + ")")
                    .update();
        }
    }

    private static void frame(JdbcClient jdbc, String serial, String result, String words) {
        jdbc.sql(
                        "insert into oven_trace_frame (trace_id, run_id, traveller_id, serial, part, mark, place, outcome, result,"
                                + " result_words, result_at, version) values (1, 1, cast(? as integer), ?, '', 'm', 1, 'HOLD',"
                                + " nullif(?, ''), nullif(?, ''), current_timestamp, 0)")
                .params(Integer.valueOf(serial.substring(4, 7)), serial, result, words)
                .update();
    }
}
