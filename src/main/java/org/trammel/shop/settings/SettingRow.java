package org.trammel.shop.settings;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;

/** A value that came into force. Only added. */
@Entity
@Immutable
@Table(name = "setting")
class SettingRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Column(nullable = false)
    private String worth;

    @Column(nullable = false)
    private String source;

    @Column(nullable = false)
    private String reason;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant since;

    protected SettingRow() {}

    SettingRow(String code, String worth, String source, String reason, Act act) {
        this.code = code;
        this.worth = worth;
        this.source = source;
        this.reason = reason;
        this.by = act.by();
        this.since = act.at();
    }

    long id() {
        return id;
    }

    String code() {
        return code;
    }

    Setting setting(String unit) {
        return new Setting(id, code, worth, unit, source, reason, since, by);
    }
}
