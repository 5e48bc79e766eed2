package org.trammel.shop.alignment;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** How a frame lay from one moment on. Only added to. */
@Entity
@Table(name = "alignment_set_up")
class SetUpRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "sheet_id")
    private long sheetId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private TableSetUp.Datum datum;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private TableSetUp.Base base;

    @Column(name = "drive_up")
    private boolean driveUp;

    @Column(name = "seat_low_mm")
    private BigDecimal seatLow;

    @Column(name = "seat_high_mm")
    private BigDecimal seatHigh;

    @Column(name = "tube_base_mm")
    private BigDecimal tubeBase;

    @Column(name = "mandrel_base_mm")
    private BigDecimal mandrelBase;

    @Column(name = "seat_diameter_mm")
    private @Nullable BigDecimal seatDiameter;

    @Column(name = "head_diameter_mm")
    private @Nullable BigDecimal headDiameter;

    @Column(name = "mandrel_diameter_mm")
    private @Nullable BigDecimal mandrelDiameter;

    @Column(name = "both_sides")
    private boolean bothSides;

    @Column(name = "side_view")
    private boolean sideView;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    protected SetUpRow() {}

    SetUpRow(Act act, long sheetId, TableSetUp setUp) {
        this.sheetId = sheetId;
        this.datum = setUp.datum();
        this.base = setUp.base();
        this.driveUp = setUp.driveUp();
        this.seatLow = setUp.seatLow_mm();
        this.seatHigh = setUp.seatHigh_mm();
        this.tubeBase = setUp.tubeBase_mm();
        this.mandrelBase = setUp.mandrelBase_mm();
        this.seatDiameter = setUp.seatDiameter_mm();
        this.headDiameter = setUp.headDiameter_mm();
        this.mandrelDiameter = setUp.mandrelDiameter_mm();
        this.bothSides = setUp.bothSides();
        this.sideView = setUp.sideView();
        this.personId = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long id() {
        return id;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }

    TableSetUp setUp() {
        return new TableSetUp(
                datum,
                base,
                driveUp,
                seatLow,
                seatHigh,
                tubeBase,
                mandrelBase,
                seatDiameter,
                headDiameter,
                mandrelDiameter,
                bothSides,
                sideView);
    }
}
