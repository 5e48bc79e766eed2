package org.trammel.shop.drift;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.trammel.shop.records.Act;

/** An alarm somebody was called for. Only added to. */
@Entity
@Table(name = "drift_alarm")
class AlarmRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "base_id")
    private long baseId;

    private String point;
    private String words;

    @Column(name = "jig_stopped")
    private boolean jigStopped;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    protected AlarmRow() {}

    AlarmRow(Act act, long baseId, String point, String words, boolean jigStopped) {
        this.baseId = baseId;
        this.point = point;
        this.words = words;
        this.jigStopped = jigStopped;
        this.at = act.at();
        this.actId = act.id();
    }

    String point() {
        return point;
    }
}
