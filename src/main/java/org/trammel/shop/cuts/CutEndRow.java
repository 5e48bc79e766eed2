package org.trammel.shop.cuts;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.hibernate.annotations.Immutable;

/** A mitred end as it was measured, with all its gaps. */
@Entity
@Immutable
@Table(name = "tube_cut_end")
class CutEndRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "tube_cut_id", nullable = false)
    private long cutId;

    @Column(nullable = false)
    private short place;

    @Column(nullable = false)
    private String mate;

    @Column(nullable = false)
    private String saw;

    @Column(name = "angle_deg", nullable = false)
    private BigDecimal angle_deg;

    @Column(name = "wanted_deg", nullable = false)
    private BigDecimal wanted_deg;

    @Column(name = "wall_mm", nullable = false)
    private BigDecimal wall_mm;

    @Column(name = "wanted_wall_mm", nullable = false)
    private BigDecimal wantedWall_mm;

    @Column(name = "gaps_mm", nullable = false)
    private String gaps_mm;

    protected CutEndRow() {}

    CutEndRow(long cutId, Cut.End end) {
        this.cutId = cutId;
        this.place = (short) end.place();
        this.mate = end.mate();
        this.saw = end.saw();
        this.angle_deg = end.angle_deg();
        this.wanted_deg = end.wanted_deg();
        this.wall_mm = end.wall_mm();
        this.wantedWall_mm = end.wantedWall_mm();
        this.gaps_mm = end.gaps_mm().stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" "));
    }

    long cutId() {
        return cutId;
    }

    Cut.End end() {
        return new Cut.End(
                place,
                mate,
                saw,
                angle_deg,
                wanted_deg,
                wall_mm,
                wantedWall_mm,
                Arrays.stream(gaps_mm.split(" ")).map(BigDecimal::new).toList());
    }
}
