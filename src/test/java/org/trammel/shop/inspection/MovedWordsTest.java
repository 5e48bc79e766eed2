package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.OlderDatabase;

/** Words of re-judgements that were kept in their own tables before are kept where they can be erased, none is lost. */
@Tag("database")
class MovedWordsTest {

    private static final String LONG = "Åsa Rider, Elm Lane 4;\n\"stops\" riding 'now'. " + "x".repeat(3900);

    @Test
    void everyTextIsMovedWithItsHashAndStandsWhereItStood() throws Exception {
        try (OlderDatabase older = OlderDatabase.of("moved_words")) {
            older.migrate("161");
            JdbcClient jdbc = older.jdbc();
            plant(jdbc);
            older.migrate("latest");
            assertThat(jdbc.sql("""
                            select f.serial, t.words from rejudged_frame f
                            left join kept_words_text t on t.words_id = f.result_words_id order by f.serial""")
                            .query((row, n) -> row.getString(1) + " " + row.getString(2))
                            .list())
                    .containsExactly("AV26101H same", "AV26102K same", "AV26103L " + LONG, "AV26104M null");
            assertThat(jdbc.sql("""
                            select t.words from rejudgement r
                            left join kept_words_text t on t.words_id = r.closed_words_id order by r.id""").query(String.class).list()).containsExactly("all measured", null, null);
            older.requireKept(4);
            assertThat(jdbc.sql("select lift_words from hold order by id")
                            .query(String.class)
                            .list())
                    .containsExactly("RJ-0001: measured again", "measured again: by hand", null);
            assertThat(jdbc.sql("select count(distinct next_act) from rejudgement")
                            .query(Long.class)
                            .single())
                    .isEqualTo(3);
        }
    }

    private static void plant(JdbcClient jdbc) {
        jdbc.sql("insert into gauge (code, what, setup, aid, location, state, state_reason, state_since, version)"
                        + " values ('H-1', 'height gauge', false, false, '', 'FAILED', '', current_timestamp, 0)")
                .update();
        // Closed by somebody; closed by itself, because nothing had been read; open.
        for (String end :
                List.of("'CLOSED', 7, 'all measured'", "'CLOSED', 0, 'Nothing was read.'", "'OPEN', null, null")) {
            jdbc.sql(
                            "insert into rejudgement (gauge_id, gauge_code, means, found_on, since, until, unit, equal_within_mm,"
                                    + " readings, last_reading_id, judged, reached_id, opened_by, opened_at, version, state,"
                                    + " closed_by, closed_words)"
                                    + " values (1, 'H-1', '1', date '2026-03-17', current_timestamp, current_timestamp, 'mm', 20,"
                                    + " 4, 4, 4, 4, 7, current_timestamp, 0, " + end + ")")
                    .update();
        }
        for (Map.Entry<String, String> frame : Map.of(
                        "AV26101H", "same", "AV26102K", "same", "AV26103L", LONG, "AV26104M", "")
                .entrySet()) {
            jdbc.sql(
                            "insert into rejudged_frame (rejudgement_id, serial, place, outcome, readings, to_measure, result_words,"
                                    + " result_at, version) values (1, ?, 1, 'MEASURE_AGAIN', 1, 1, nullif(?, ''),"
                                    + " current_timestamp, 0)")
                    .params(frame.getKey(), frame.getValue())
                    .update();
        }
        for (String lifted : List.of(
                "'RJ-0001', 'measured again: same'", "'by hand', 'measured again: by hand'", "'RJ-0001', null")) {
            jdbc.sql(
                            "insert into hold (serial, scope, reason, words, placed_by, placed_at, causers, agreed_by, version,"
                                    + " source, lift_words) values ('AV26101H', 'FRAME', 'GAUGE_TRACE', 'w', 0,"
                                    + " current_timestamp, '', '', 0, " + lifted + ")")
                    .update();
        }
    }
}
