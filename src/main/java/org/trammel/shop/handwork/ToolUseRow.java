package org.trammel.shop.handwork;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.shop.records.Act;

/** A tool that touched the metal of a frame. */
@Entity
@Immutable
@Table(name = "metal_tool_use")
class ToolUseRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(nullable = false)
    private String tool;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private ToolKind kind;

    @Column(nullable = false)
    private String station;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected ToolUseRow() {}

    ToolUseRow(long operationId, String station, Tool tool, Act act) {
        this.operationId = operationId;
        this.tool = tool.code();
        this.kind = tool.kind();
        this.station = station;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    HandRecord.Used used() {
        return new HandRecord.Used(tool, kind, by, at);
    }
}
