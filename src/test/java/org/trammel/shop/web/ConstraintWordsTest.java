package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.records.Refusal;

/** Two people at the same instant: the later one is told what happened, in three parts, and not that a row was refused. */
@ShopTest
class ConstraintWordsTest {

    /** Written by the service itself, one after the other and in order: nobody's act can meet another's there. */
    private static final Set<String> OUT_OF_REACH = Set.of(
            "checkpoint_head_chain_position_key",
            "characteristic_operation_id_code_key",
            "frame_clock_traveller_id_code_key",
            "kept_file_part_file_sha256_part_key",
            "step_operation_id_position_key");

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private ConstraintWords words;

    @Test
    void whateverMayStandOnceOnlyHasASentenceForWhoeverComesSecond() {
        List<String> once = jdbc.sql("select lower(constraint_name) from information_schema.table_constraints"
                        + " where constraint_type = 'UNIQUE' and table_schema = 'public'")
                .query(String.class)
                .list();
        assertThat(once).hasSizeGreaterThan(40).containsAll(OUT_OF_REACH);
        assertThat(once.stream().filter(name -> told(name) == null)).containsExactlyInAnyOrderElementsOf(OUT_OF_REACH);
        assertThat(once.stream().filter(name -> told(name) != null))
                .allSatisfy(name -> assertThat(List.of(
                                told(name).what(), told(name).why(), told(name).instead()))
                        .as(name)
                        .allMatch(part -> part.endsWith(".") && part.length() > 10));
    }

    private Refusal told(String constraint) {
        return words.of(new DataIntegrityViolationException(
                        "refused", new SQLException("violates unique constraint \"" + constraint + "\"")))
                .orElse(null);
    }
}
