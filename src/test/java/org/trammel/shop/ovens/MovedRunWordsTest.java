package org.trammel.shop.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.OlderDatabase;

/** Words of oven runs that were kept in their own tables before are kept where they can be erased, none is lost. */
@Tag("database")
class MovedRunWordsTest {

    private static final String LONG = "Åsa said: \"not again\",\n'touched' the wall. " + "y".repeat(900);

    @Test
    void everyTextIsMovedWithItsHashAndStandsWhereItStood() throws NoSuchAlgorithmException {
        try (OlderDatabase older = OlderDatabase.of("moved_run_words")) {
            older.migrate("257");
            JdbcClient jdbc = older.jdbc();
            plant(jdbc);
            older.migrate("258");
            assertThat(words(jdbc, "oven_run_frame", "serial"))
                    .containsExactly("AV26101H " + LONG, "AV26102K same", "AV26103L null", "AV26104M same");
            assertThat(words(jdbc, "oven_run_door", "opened"))
                    .containsExactlyInAnyOrder("true same", "false null", "true a cable was in it");
            assertThat(words(jdbc, "oven_run_quench", "delay_s"))
                    .containsExactly("7.20 film of the camera", "8.00 null", "9.10 same");
            older.requireKept(7);
            assertThat(jdbc.sql("select words from hold order by id")
                            .query(String.class)
                            .list())
                    .containsExactly(
                            "kept back from run HT-1; its sheet says why",
                            "kept back from run HT-1; its sheet says why",
                            "kept back from run HT-2: by hand",
                            "kept back from run HT-1: same");
        }
    }

    private static List<String> words(JdbcClient jdbc, String table, String of) {
        return jdbc.sql("select r." + of + ", t.words from " + table
                        + " r left join kept_words_text t on t.words_id = r.words_id order by r." + of)
                .query((row, n) ->
                        (of.equals("opened") ? row.getBoolean(1) : row.getString(1)) + " " + row.getString(2))
                .list();
    }

    private static void plant(JdbcClient jdbc) {
        // Neither oven, programme nor traveller is looked at by what moves the words.
        jdbc.sql("alter table oven_run drop constraint oven_run_oven_id_fkey").update();
        jdbc.sql("alter table oven_run drop constraint oven_run_revision_id_fkey")
                .update();
        jdbc.sql("alter table oven_run_frame drop constraint oven_run_frame_traveller_id_fkey")
                .update();
        jdbc.sql(
                        "insert into oven_run (code, oven_id, revision_id, state, hung, opened_by, opened_at, energy_source, version)"
                                + " values ('HT-1', 1, 1, 'DECIDED', 'head tube down', 7, current_timestamp, '', 0)")
                .update();
        frame(jdbc, "AV26101H", LONG);
        frame(jdbc, "AV26102K", "same");
        frame(jdbc, "AV26103L", "");
        frame(jdbc, "AV26104M", "same");
        for (String door : List.of("true, 'same'", "false, ''", "true, 'a cable was in it'")) {
            jdbc.sql("insert into oven_run_door (run_id, moved_at, by_person, at, act_id, opened, words) values"
                            + " (1, current_timestamp, 7, current_timestamp, " + act() + ", " + door + ")")
                    .update();
        }
        for (String quench : List.of("7.2, 'film of the camera'", "8, ''", "9.1, 'same'")) {
            jdbc.sql("insert into oven_run_quench (run_id, by_person, at, act_id, late, delay_s, words) values"
                            + " (1, 7, current_timestamp, " + act() + ", true, " + quench + ")")
                    .update();
        }
        for (String held : List.of(
                "'OVEN_TRACE', 'HT-1', 'kept back from run HT-1: same'",
                "'OVEN_TRACE', 'HT-1', 'kept back from run HT-1: it lives in Elm Lane 4'",
                "'OVEN_TRACE', 'by hand', 'kept back from run HT-2: by hand'",
                "'LOT_TRACE', 'HT-1', 'kept back from run HT-1: same'")) {
            jdbc.sql(
                            "insert into hold (serial, scope, placed_by, placed_at, causers, agreed_by, version, reason, source, words)"
                                    + " values ('AV26101H', 'FRAME', 0, current_timestamp, '', '', 0, " + held + ")")
                    .update();
        }
    }

    private static String act() {
        return "cast('" + UUID.randomUUID() + "' as uuid)";
    }

    private static void frame(JdbcClient jdbc, String serial, String words) {
        jdbc.sql(
                        "insert into oven_run_frame (run_id, traveller_id, serial, part, mark, metal, place, state, words, loaded_by,"
                                + " loaded_at) values (1, cast(? as integer), ?, '', 'm', 'AL6061', 'rack', 'KEPT', ?, 7,"
                                + " current_timestamp)")
                .params(Integer.valueOf(serial.substring(4, 7)), serial, words)
                .update();
    }
}
