package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.List;
import org.hibernate.annotations.Immutable;
import org.trammel.calc.fastening.StackUp;
import org.trammel.shop.records.Act;

/** Which parts were joined. */
@Entity
@Immutable
@Table(name = "join_record")
class JoinRow extends OperationRecord {

    @Column(nullable = false)
    private String parts;

    @Column(name = "front_mm", nullable = false)
    private BigDecimal front_mm;

    @Column(name = "arm_mm", nullable = false)
    private BigDecimal arm_mm;

    @Column(name = "bearing_mm", nullable = false)
    private BigDecimal bearing_mm;

    @Column(name = "dropout_mm", nullable = false)
    private BigDecimal dropout_mm;

    @Column(name = "rss_mm", nullable = false)
    private BigDecimal rss_mm;

    @Column(name = "worst_mm", nullable = false)
    private BigDecimal worst_mm;

    @Column(nullable = false)
    private String words;

    protected JoinRow() {}

    JoinRow(long operationId, List<String> parts, OffsetShares shares, StackUp stack, String words, Act act) {
        super(operationId, act);
        this.parts = String.join(" ", parts);
        this.front_mm = shares.front_mm();
        this.arm_mm = shares.arm_mm();
        this.bearing_mm = shares.bearing_mm();
        this.dropout_mm = shares.dropout_mm();
        this.rss_mm = stack.rss();
        this.worst_mm = stack.worst();
        this.words = words;
    }

    BuildRecord.Joined joined() {
        return new BuildRecord.Joined(
                List.of(parts.split(" ")),
                new OffsetShares(front_mm, arm_mm, bearing_mm, dropout_mm),
                rss_mm,
                worst_mm,
                words,
                by(),
                at());
    }
}
