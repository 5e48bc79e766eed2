package org.trammel.shop.drift;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A reading from before this program. Only added to. */
@Entity
@Table(name = "drift_history")
class HistoryRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "series_id")
    private long seriesId;

    private int place;
    private String frame;
    private BigDecimal amount;
    private BigDecimal nominal;

    @Column(name = "lower_limit")
    private BigDecimal lowerLimit;

    @Column(name = "upper_limit")
    private BigDecimal upperLimit;

    @Column(name = "read_at")
    private Instant readAt;

    @Column(name = "tube_set")
    private @Nullable String tubeSet;

    private String source;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    protected HistoryRow() {}

    HistoryRow(Act act, long seriesId, int place, EarlierReading entry, Instant readAt, String source) {
        this.seriesId = seriesId;
        this.place = place;
        this.frame = entry.frame();
        this.amount = entry.value();
        this.nominal = entry.nominal();
        this.lowerLimit = entry.lowerLimit();
        this.upperLimit = entry.upperLimit();
        this.readAt = readAt;
        this.tubeSet = entry.tubeSet();
        this.source = source;
        this.personId = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long seriesId() {
        return seriesId;
    }

    long id() {
        return id;
    }

    String frame() {
        return frame;
    }

    /**
     * @param series the axis of a jig it was taken over to
     * @param welder who welded, as far as is known
     */
    Point point(Series series, @Nullable String welder) {
        return new Point(
                Point.EARLIER + id,
                null,
                frame,
                null,
                true,
                amount,
                series.unit(),
                nominal,
                lowerLimit,
                upperLimit,
                readAt,
                series.of(),
                welder,
                tubeSet,
                source);
    }
}
