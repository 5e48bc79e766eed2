package org.trammel.shop.materials;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Which place of the frame a piece of tube was issued to, and for which section it was taken. */
@Entity
@Table(name = "tube_issue")
class TubeIssueRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "use_id", nullable = false)
    private long useId;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(nullable = false)
    private String place;

    private @Nullable BigDecimal outside;

    private @Nullable BigDecimal wall;

    private @Nullable BigDecimal middle;

    @Column(name = "other_wall")
    private @Nullable BigDecimal otherWall;

    private @Nullable String reason;

    @Column(name = "by_person", nullable = false)
    private long by;

    protected TubeIssueRow() {}

    TubeIssueRow(
            long useId, long operationId, String place, @Nullable Section section, @Nullable String reason, long by) {
        this.useId = useId;
        this.operationId = operationId;
        this.place = place;
        this.outside = section == null ? null : section.outside_mm();
        this.wall = section == null ? null : section.wall_mm();
        this.middle = section == null ? null : section.middle_mm();
        this.otherWall = section == null ? null : section.other_mm();
        this.reason = reason;
        this.by = by;
    }
}
