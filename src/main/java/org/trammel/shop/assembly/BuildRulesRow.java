package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

@Entity
@Table(name = "build_rules")
class BuildRulesRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String letter;

    @Column(name = "join_operations", nullable = false)
    private String joinOperations;

    @Column(name = "fit_operations", nullable = false)
    private String fitOperations;

    @Column(name = "final_operations", nullable = false)
    private String finalOperations;

    @Column(name = "pack_operations", nullable = false)
    private String packOperations;

    @Column(name = "front_mm", nullable = false)
    private BigDecimal front_mm;

    @Column(name = "arm_mm", nullable = false)
    private BigDecimal arm_mm;

    @Column(name = "bearing_mm", nullable = false)
    private BigDecimal bearing_mm;

    @Column(name = "dropout_mm", nullable = false)
    private BigDecimal dropout_mm;

    @Column(name = "bedding_stops", nullable = false)
    private int beddingStops;

    @Column(name = "bedding_kmh", nullable = false)
    private BigDecimal bedding_kmh;

    @Column(name = "country_items", nullable = false)
    private String countryItems;

    @Column(nullable = false)
    private String source;

    @Column(name = "set_by", nullable = false)
    private long setBy;

    @Column(name = "set_at", nullable = false)
    private Instant setAt;

    @Column(name = "superseded_at")
    private @Nullable Instant supersededAt;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    @Version
    private long version;

    protected BuildRulesRow() {}

    /** @param content as it was checked */
    BuildRulesRow(String letter, NewBuildRules content, Act act) {
        this.letter = letter;
        this.joinOperations = String.join(" ", content.joinOperations());
        this.fitOperations = String.join(" ", content.fitOperations());
        this.finalOperations = String.join(" ", content.finalOperations());
        this.packOperations = String.join(" ", content.packOperations());
        this.front_mm = Objects.requireNonNull(content.shares().front_mm());
        this.arm_mm = Objects.requireNonNull(content.shares().arm_mm());
        this.bearing_mm = Objects.requireNonNull(content.shares().bearing_mm());
        this.dropout_mm = Objects.requireNonNull(content.shares().dropout_mm());
        this.beddingStops = content.beddingStops();
        this.bedding_kmh = Objects.requireNonNull(content.bedding_kmh());
        this.countryItems = content.countryItems().stream()
                .map(NewBuildRules.CountryItem::line)
                .collect(Collectors.joining("\n"));
        this.source = content.source();
        this.setBy = act.by();
        this.setAt = act.at();
        this.actId = act.id();
    }

    void supersede(Act act) {
        supersededAt = act.at();
    }

    boolean inForce() {
        return supersededAt == null;
    }

    BuildRules rules() {
        return new BuildRules(
                letter,
                new NewBuildRules(
                        list(joinOperations),
                        list(fitOperations),
                        list(finalOperations),
                        list(packOperations),
                        new OffsetShares(front_mm, arm_mm, bearing_mm, dropout_mm),
                        beddingStops,
                        bedding_kmh,
                        NewBuildRules.items(countryItems),
                        source),
                setBy,
                setAt);
    }

    private static List<String> list(String codes) {
        return codes.isEmpty() ? List.of() : List.of(codes.split(" "));
    }
}
