package org.trammel.shop.handwork;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.records.Act;

/** A brush, file, cloth or cleaner. It is retired, never handed to another family. */
@Entity
@Table(name = "metal_tool")
class ToolRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private ToolKind kind;

    @Column(nullable = false)
    private String what;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private MetalFamily family;

    @Column(nullable = false)
    private boolean chlorinated;

    @Column(name = "retired_on")
    private @Nullable LocalDate retiredOn;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    @Version
    private long version;

    protected ToolRow() {}

    ToolRow(Tool tool, Act act) {
        this.code = tool.code();
        this.kind = tool.kind();
        this.what = tool.what();
        this.family = tool.family();
        this.chlorinated = tool.chlorinated();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    void retire(LocalDate day) {
        retiredOn = day;
    }

    Tool tool() {
        return new Tool(code, kind, what, family, chlorinated, retiredOn);
    }
}
