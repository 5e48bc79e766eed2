package org.trammel.shop.welding;

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
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.welding.Imperfection;
import org.trammel.shop.records.Act;

/** Something seen of a node. */
@Entity(name = "WeldLookRow")
@Immutable
@Table(name = "weld_look")
class LookRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "node", nullable = false)
    private String node;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "imperfection")
    private @Nullable Imperfection imperfection;

    @Column(name = "size")
    private @Nullable BigDecimal size;

    @Column(name = "is_short", nullable = false)
    private boolean isShort;

    @Column(name = "wall_mm")
    private @Nullable BigDecimal wall_mm;

    @Column(name = "width_mm")
    private @Nullable BigDecimal width_mm;

    @Column(name = "throat_mm")
    private @Nullable BigDecimal throat_mm;

    @Column(name = "level", nullable = false)
    private String level;

    @Column(name = "limits", nullable = false)
    private String limits;

    @Column(name = "limit_size")
    private @Nullable BigDecimal limit;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "verdict", nullable = false)
    private LookVerdict verdict;

    @Column(name = "words", nullable = false)
    private String words;

    @Column(name = "nonconformance")
    private @Nullable String nonconformance;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected LookRow() {}

    LookRow(long operationId, String node, SeenNode.Look look, Act act) {
        this.operationId = operationId;
        this.node = node;
        this.imperfection = look.imperfection();
        this.size = look.size();
        this.isShort = look.isShort();
        this.wall_mm = look.wall_mm();
        this.width_mm = look.width_mm();
        this.throat_mm = look.throat_mm();
        this.level = look.level();
        this.limits = look.limits();
        this.limit = look.limit();
        this.verdict = look.verdict();
        this.words = look.words();
        this.nonconformance = look.nonconformance();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    String node() {
        return node;
    }

    SeenNode.Look look() {
        return new SeenNode.Look(
                imperfection,
                size,
                isShort,
                wall_mm,
                width_mm,
                throat_mm,
                level,
                limits,
                limit,
                verdict,
                words,
                nonconformance,
                by,
                at);
    }
}
