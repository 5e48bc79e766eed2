package org.trammel.shop.alignment;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Act;

/** A raw figure as it was read, or that one was struck out. Only added to. */
@Entity
@Table(name = "alignment_reading")
class RawRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "sheet_id")
    private long sheetId;

    private String spot;
    private String name;
    private @Nullable BigDecimal mm;

    @Column(name = "x_mm")
    private @Nullable BigDecimal x;

    @Column(name = "y_mm")
    private @Nullable BigDecimal y;

    @Column(name = "gauge_id")
    private long gaugeId;

    @Column(name = "gauge_code")
    private String gaugeCode;

    @Column(name = "gauge_kind")
    private String gaugeKind;

    @Column(name = "gauge_due_on")
    private LocalDate gaugeDueOn;

    @Column(name = "u_mm")
    private BigDecimal u;

    @Column(name = "temperature_deg_c")
    private @Nullable BigDecimal temperatureDegC;

    @Column(name = "person_id")
    private long personId;

    @Column(name = "device_id")
    private @Nullable Long deviceId;

    private Instant at;

    @Column(name = "device_at")
    private @Nullable Instant deviceAt;

    @Column(name = "act_id")
    private UUID actId;

    private int place;

    @Column(name = "replaces_id")
    private @Nullable Long replacesId;

    private @Nullable String reason;

    protected RawRow() {}

    /**
     * What was read.
     *
     * @param x null of a figure on the plate
     * @param replaces the one it takes the place of
     */
    record Figure(
            String spot,
            String name,
            @Nullable BigDecimal mm,
            @Nullable BigDecimal x,
            @Nullable BigDecimal y,
            @Nullable Long replaces,
            @Nullable String reason) {}

    RawRow(Act act, long sheetId, Figure figure, Means means, String gaugeKind, int place) {
        this(act, sheetId, figure, place);
        this.gaugeId = means.gaugeId();
        this.gaugeCode = means.code();
        this.gaugeKind = gaugeKind;
        this.gaugeDueOn = means.dueOn();
        this.u = Objects.requireNonNull(means.u());
    }

    /** A figure that is struck out has no other in its place. */
    static RawRow struckOut(Act act, RawRow old, String reason) {
        RawRow row = new RawRow(act, old.sheetId, new Figure(old.spot, old.name, null, null, null, old.id, reason), 0);
        row.gaugeId = old.gaugeId;
        row.gaugeCode = old.gaugeCode;
        row.gaugeKind = old.gaugeKind;
        row.gaugeDueOn = old.gaugeDueOn;
        row.u = old.u;
        return row;
    }

    private RawRow(Act act, long sheetId, Figure figure, int place) {
        this.sheetId = sheetId;
        this.spot = figure.spot();
        this.name = figure.name();
        this.mm = figure.mm();
        this.x = figure.x();
        this.y = figure.y();
        this.replacesId = figure.replaces();
        this.reason = figure.reason();
        this.personId = act.by();
        this.deviceId = act.device();
        this.at = act.at();
        this.deviceAt = act.deviceAt();
        this.actId = act.id();
        this.place = place;
    }

    long id() {
        return id;
    }

    long sheetId() {
        return sheetId;
    }

    RawLine line(boolean replaced) {
        return new RawLine(
                id,
                sheetId,
                spot,
                name,
                mm,
                x,
                y,
                gaugeId,
                gaugeCode,
                gaugeKind,
                u,
                personId,
                at,
                replacesId,
                reason,
                replaced);
    }

    @Nullable
    Long replacesId() {
        return replacesId;
    }
}
