package org.trammel.shop.drift;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.stereotype.Component;

/**
 * Points of charts as plain rows: a hundred thousand are made anew when a base is taken or a reading struck out, and are
 * no records. Everything happens in the transaction that is open.
 */
@Component
class KeptRows {

    private static final int AT_ONCE = 1000;

    private static final String COLUMNS = """
            p.series_id, p.place, p.point, p.piece_id, p.frame, p.part, p.amount, p.nominal, p.lower_limit, p.upper_limit,
            p.read_at, p.source, p.shown, p.number, p.weighted_mean, p.sum_above, p.sum_below, p.alarms, p.drifts_since
            """;

    private final JdbcTemplate plain;

    KeptRows(JdbcTemplate plain) {
        this.plain = plain;
    }

    static @Nullable Integer integer(ResultSet row, int column) throws SQLException {
        int figure = row.getInt(column);
        return row.wasNull() ? null : figure;
    }

    private static RowMapper<KeptRow> rows(Map<Long, Series> series) {
        return (row, i) -> {
            Series of = series.get(row.getLong(1));
            Integer number = integer(row, 14);
            double shown = row.getDouble(13);
            boolean charts = !row.wasNull();
            String key = row.getString(3);
            long piece = row.getLong(4);
            Point point = new Point(
                    key,
                    row.wasNull() ? null : piece,
                    row.getString(5),
                    row.getString(6),
                    key.startsWith(Point.EARLIER),
                    row.getBigDecimal(7),
                    of.unit(),
                    row.getBigDecimal(8),
                    row.getBigDecimal(9),
                    row.getBigDecimal(10),
                    row.getTimestamp(11).toInstant(),
                    of.jig(),
                    null,
                    null,
                    row.getString(12));
            KeptRow.After after = number == null
                    ? null
                    : new KeptRow.After(
                            number,
                            row.getDouble(15),
                            row.getDouble(16),
                            row.getDouble(17),
                            row.getInt(18),
                            integer(row, 19));
            return new KeptRow(row.getInt(2), point, charts ? shown : null, after);
        };
    }

    /** What was read of a series at a moment or later, by place. */
    List<KeptRow> since(Series of, Instant moment) {
        return of(of, "p.read_at >= ? order by p.place", Timestamp.from(moment));
    }

    /** The last charted readings before a place, oldest first. */
    List<KeptRow> lastBefore(Series of, int place, int most) {
        List<KeptRow> last = new ArrayList<>(
                of(of, "p.place < ? and p.number is not null order by p.number desc limit ?", place, most));
        Collections.reverse(last);
        return last;
    }

    /** Charted readings by their numbers, the first and the last included. */
    List<KeptRow> numbered(Series of, int from, int to) {
        return of(of, "p.number between ? and ? order by p.number", from, to);
    }

    /** What cannot be charted, the newest first. */
    List<KeptRow> left(Series of, int most) {
        return of(of, "p.shown is null order by p.place desc limit ?", most);
    }

    /** All that can be charted, also what is older than the base. */
    List<KeptRow> chartable(Series of) {
        return of(of, "p.shown is not null order by p.place");
    }

    private List<KeptRow> of(Series of, String which, Object... given) {
        List<Object> all = new ArrayList<>();
        all.add(of.id());
        all.addAll(List.of(given));
        return plain.query(
                "select " + COLUMNS + " from drift_point p where p.series_id = ? and " + which,
                rows(Map.of(of.id(), of)),
                all.toArray());
    }

    /** What is needed to tell one alarm of each series: its reading and those before it that a pattern reaches back to. */
    record Told(long seriesId, KeptRow row) {}

    /** The same of many series, whatever stands for each; one statement. */
    List<Told> told(Map<Long, Series> series, int before) {
        RowMapper<KeptRow> rows = rows(series);
        return series.isEmpty()
                ? List.of()
                : plain.query(
                        "select " + COLUMNS
                                + " from drift_stand s join drift_point p on p.series_id = s.series_id"
                                + " and p.number between s.told - ? and s.told where s.series_id in ("
                                + marks(series.keySet()) + ") order by p.series_id, p.number",
                        (row, i) -> new Told(row.getLong(1), rows.mapRow(row, i)),
                        arguments(before, series.keySet()));
    }

    private static Object[] arguments(Object first, Collection<Long> others) {
        List<Object> all = new ArrayList<>();
        all.add(first);
        all.addAll(others);
        return all.toArray();
    }

    /** How many charted readings were taken up to a moment. */
    int chartedUntil(long seriesId, Instant moment) {
        Integer last = plain.queryForObject(
                "select max(number) from drift_point where series_id = ? and read_at <= ?",
                Integer.class,
                seriesId,
                Timestamp.from(moment));
        return last == null ? 0 : last;
    }

    /** Where a piece stands on charts. */
    record Standing(long seriesId, String key, Instant at) {}

    /** Where a piece stands on some charts. */
    List<Standing> ofPiece(long piece, Collection<Long> seriesIds) {
        return plain.query(
                "select series_id, point, read_at from drift_point where piece_id = ? and series_id in ("
                        + marks(seriesIds) + ")",
                (row, i) -> new Standing(
                        row.getLong(1), row.getString(2), row.getTimestamp(3).toInstant()),
                arguments(piece, seriesIds));
    }

    /** Codes of characteristics under which a frame stands on any chart. */
    List<String> codesOf(String serial) {
        return plain.queryForList("""
                select distinct s.characteristic_code from drift_point p join drift_series s on s.id = p.series_id
                where p.frame = ? and p.piece_id is not null
                """, String.class, serial);
    }

    /**
     * Numbers of the readings at which drifts began that reach to a place or beyond, and for which nobody was called yet.
     *
     * @param place of the first point that was written just now
     */
    List<Integer> uncalled(long seriesId, long baseId, int place) {
        return plain.queryForList("""
                select distinct p.drifts_since from drift_point p
                where p.series_id = ? and p.place >= ? and p.drifts_since is not null and not exists
                    (select 1 from drift_alarm a join drift_point q on q.point = a.point and q.series_id = ?
                     where a.base_id = ? and q.drifts_since = p.drifts_since)
                order by p.drifts_since
                """, Integer.class, seriesId, place, seriesId, baseId);
    }

    void removeFrom(long seriesId, int place) {
        plain.update("delete from drift_point where series_id = ? and place >= ?", seriesId, place);
    }

    void add(long seriesId, List<KeptRow> added) {
        plain.batchUpdate("""
                insert into drift_point (series_id, place, point, piece_id, frame, part, amount, nominal, lower_limit,
                    upper_limit, read_at, source, shown, number, weighted_mean, sum_above, sum_below, alarms, drifts_since)
                values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                """, added, AT_ONCE, (statement, row) -> {
            Point point = row.point();
            KeptRow.After after = row.after();
            Object[] values = {
                seriesId,
                row.place(),
                point.key(),
                point.piece(),
                point.frame(),
                point.part(),
                point.value(),
                point.nominal(),
                point.lowerLimit(),
                point.upperLimit(),
                Timestamp.from(point.at()),
                point.source(),
                row.shown(),
                after == null ? null : after.number(),
                after == null ? null : after.mean(),
                after == null ? null : after.above(),
                after == null ? null : after.below(),
                after == null ? null : after.alarms(),
                after == null ? null : after.driftsSince()
            };
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
        });
    }

    static String marks(Collection<?> all) {
        return String.join(", ", Collections.nCopies(all.size(), "?"));
    }
}
