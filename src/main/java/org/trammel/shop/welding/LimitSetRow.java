package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "weld_limit_set")
class LimitSetRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Column(nullable = false)
    private String what;

    @Column(nullable = false)
    private String standard;

    @Column(nullable = false)
    private String edition;

    @Column(nullable = false)
    private String source;

    @Column(nullable = false)
    private String lines;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id")
    private @Nullable UUID actId;

    protected LimitSetRow() {}

    LimitSetRow(LimitSet set, Act act) {
        this.code = set.code();
        this.what = set.what();
        this.standard = set.standard();
        this.edition = set.edition();
        this.source = set.source();
        this.lines = LimitLines.written(set.lines());
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    LimitSet set() {
        return new LimitSet(
                code, what, standard, edition, source, LimitLines.read("The table is not read.", lines), by, at);
    }
}
