package org.trammel.shop.stations;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "jig")
class JigRow {

    @Id
    private String code;

    @Column(name = "station_code", nullable = false)
    private String stationCode;

    @Column(name = "checked_on", nullable = false)
    private LocalDate checkedOn;

    @Column(name = "due_on", nullable = false)
    private LocalDate dueOn;

    @Column(name = "stopped_at")
    private @Nullable Instant stoppedAt;

    @Column(name = "retired_at")
    private @Nullable Instant retiredAt;

    @Version
    private @Nullable Long version;

    protected JigRow() {}

    JigRow(String code, String stationCode, LocalDate checkedOn, LocalDate dueOn) {
        this.code = code;
        this.stationCode = stationCode;
        this.checkedOn = checkedOn;
        this.dueOn = dueOn;
    }

    void checked(LocalDate on, LocalDate due) {
        this.checkedOn = on;
        this.dueOn = due;
    }

    void stop(Instant at) {
        this.stoppedAt = at;
    }

    void free() {
        this.stoppedAt = null;
    }

    boolean stopped() {
        return stoppedAt != null;
    }

    Jig sheet() {
        return new Jig(code, stationCode, checkedOn, dueOn, stopped());
    }
}
