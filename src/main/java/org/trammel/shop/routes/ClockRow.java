package org.trammel.shop.routes;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.PreRemove;
import jakarta.persistence.PreUpdate;
import jakarta.persistence.Table;
import java.util.List;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;

/** A clock of a revision. */
@Entity
@Table(name = "route_clock")
class ClockRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "revision_id", nullable = false)
    private RouteRevision revision;

    @Column(nullable = false)
    private int sequence;

    @Column(nullable = false)
    private String code = "";

    @Column(nullable = false)
    private String name;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private ClockKind kind;

    @Column(nullable = false)
    private long minutes;

    @Column(name = "started_by", nullable = false)
    private String startedBy;

    @Convert(converter = LineList.class)
    @Column(nullable = false)
    private List<String> gates;

    @Column(nullable = false)
    private String source;

    void becomes(RouteRevision owner, int position, ClockSheet sheet) {
        revision = owner;
        sequence = position;
        code = sheet.code();
        name = sheet.name();
        kind = sheet.kind();
        minutes = sheet.minutes();
        startedBy = sheet.startedBy();
        gates = sheet.gates();
        source = sheet.source();
    }

    @PreUpdate
    @PreRemove
    void onlyInADraft() {
        revision.guardContent();
    }

    String code() {
        return code;
    }

    ClockSheet sheet() {
        return new ClockSheet(code, name, kind, minutes, startedBy, gates, source);
    }
}
