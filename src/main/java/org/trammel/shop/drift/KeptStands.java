package org.trammel.shop.drift;

import java.util.Collection;
import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.stereotype.Component;

/** Where series stand, as plain rows beside {@link KeptRows}, in the transaction that is open. */
@Component
class KeptStands {

    private static final String STAND = """
            select series_id, charted, before_base, not_charted, alarms, drifts_since, first_of_readings, first_of_means,
                first_of_sums, stale
            from drift_stand
            """;

    private static final RowMapper<KeptStand> ROWS = (row, i) -> new KeptStand(
            row.getLong(1),
            row.getInt(2),
            row.getInt(3),
            row.getInt(4),
            row.getInt(5),
            KeptRows.integer(row, 6),
            KeptRows.integer(row, 7),
            KeptRows.integer(row, 8),
            KeptRows.integer(row, 9),
            row.getBoolean(10));

    private final JdbcTemplate plain;

    KeptStands(JdbcTemplate plain) {
        this.plain = plain;
    }

    List<KeptStand> of(Collection<Long> seriesIds) {
        return seriesIds.isEmpty()
                ? List.of()
                : plain.query(
                        STAND + " where series_id in (" + KeptRows.marks(seriesIds) + ")", ROWS, seriesIds.toArray());
    }

    /** Series whose points are still to be made. */
    List<Long> stale() {
        return plain.queryForList("select series_id from drift_stand where stale order by series_id", Long.class);
    }

    /** Begins to keep a series. */
    void begin(long seriesId) {
        plain.update(
                "insert into drift_stand (series_id, charted, before_base, not_charted, alarms, stale)"
                        + " values (?, 0, 0, 0, 0, true)",
                seriesId);
    }

    /** Has all points of a series made anew by whoever looks next. */
    void makeAnew(long seriesId) {
        plain.update("update drift_stand set stale = true where series_id = ?", seriesId);
    }

    /** Where a series stands; nobody else adds to it until this transaction ends. */
    KeptStand lock(long seriesId) {
        return plain.query(STAND + " where series_id = ? for update", ROWS, seriesId).stream()
                .findFirst()
                .orElseThrow();
    }

    /** Locks a series and all of the same characteristic. */
    void hold(long seriesId) {
        plain.queryForList("""
                select series_id from drift_stand
                where series_id in (select o.id from drift_series o join drift_series s
                    on s.characteristic_code = o.characteristic_code where s.id = ?)
                order by series_id for update
                """, Long.class, seriesId);
    }

    void keep(KeptStand now) {
        plain.update(
                """
                update drift_stand set charted = ?, before_base = ?, not_charted = ?, alarms = ?, drifts_since = ?,
                    first_of_readings = ?, first_of_means = ?, first_of_sums = ?, told = ?, stale = ?
                where series_id = ?
                """,
                now.charted(),
                now.before(),
                now.left(),
                now.alarms(),
                now.driftsSince(),
                now.firstOfReadings(),
                now.firstOfMeans(),
                now.firstOfSums(),
                now.told(),
                now.stale(),
                now.seriesId());
    }
}
