package org.trammel.shop.inspection;

import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Writes judged readings as plain rows, many at a time; an entity for each of fifty thousand costs more than judging it. */
@Component
class RejudgedRows {

    private static final int AT_ONCE = 1000;

    private static final String INSERT = """
            insert into rejudged_reading
                (rejudgement_id, reading_id, place, serial, least, greatest, outcome, ground, in_doubt)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?)
            """;

    private final JdbcTemplate plain;

    RejudgedRows(JdbcTemplate plain) {
        this.plain = plain;
    }

    /** In the transaction that is open. */
    void add(List<RejudgedReading> judged) {
        plain.batchUpdate(INSERT, judged, AT_ONCE, (row, one) -> one.into(row));
    }
}
