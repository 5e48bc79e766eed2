package org.trammel.shop.materials;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** What the maker's sheet of a lot says. */
@Entity
@Immutable
@Table(name = "powder_sheet")
class PowderSheetRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "lot_id", nullable = false)
    private long lotId;

    @Column(nullable = false)
    private String colour;

    @Column(name = "energy_kjpermol")
    private @Nullable BigDecimal energy_kJPerMol;

    @Column(name = "least_percent", nullable = false)
    private BigDecimal least_percent;

    @Column(name = "most_percent", nullable = false)
    private BigDecimal most_percent;

    @Column(nullable = false)
    private String source;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    @ElementCollection(fetch = FetchType.EAGER)
    @CollectionTable(name = "powder_cure_pair", joinColumns = @JoinColumn(name = "powder_sheet_id"))
    @OrderColumn(name = "line")
    private List<PowderSheet.Pair> pairs = new ArrayList<>();

    protected PowderSheetRow() {}

    PowderSheetRow(long lotId, PowderSheet sheet, Act act) {
        this.lotId = lotId;
        this.colour = sheet.colour();
        this.energy_kJPerMol = sheet.energy_kJPerMol();
        this.least_percent = sheet.least_percent();
        this.most_percent = sheet.most_percent();
        this.source = sheet.source();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
        this.pairs.addAll(sheet.pairs());
    }

    long id() {
        return id;
    }

    PowderSheet sheet() {
        return new PowderSheet(colour, pairs, energy_kJPerMol, least_percent, most_percent, source, by, at);
    }
}
