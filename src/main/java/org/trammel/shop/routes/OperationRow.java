package org.trammel.shop.routes;

import jakarta.persistence.CascadeType;
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
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.PreRemove;
import jakarta.persistence.PreUpdate;
import jakarta.persistence.Table;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.annotations.BatchSize;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** An operation of a revision with its steps and characteristics. */
@Entity
@Table(name = "route_operation")
class OperationRow {

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

    @Column(name = "station_code", nullable = false)
    private String station;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private Point point;

    @Convert(converter = SignerList.class)
    @Column(nullable = false)
    private List<Signer> signers;

    private @Nullable String qualification;

    @Column(nullable = false)
    private boolean together;

    @Column(nullable = false)
    private boolean outside;

    @Column(nullable = false)
    private boolean irreversible;

    @Column(nullable = false)
    private boolean joins;

    @Column(name = "repeat_limit")
    private @Nullable Integer repeatLimit;

    @Column(nullable = false)
    private String caution;

    // A whole route and the routes of its children are read with one statement for all their steps.
    @OneToMany(mappedBy = "operation", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("sequence")
    @BatchSize(size = 100)
    private List<StepRow> steps = new ArrayList<>();

    @OneToMany(mappedBy = "operation", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("sequence")
    @BatchSize(size = 100)
    private List<CharacteristicRow> characteristics = new ArrayList<>();

    void becomes(RouteRevision owner, int position, OperationSheet sheet) {
        revision = owner;
        sequence = position;
        code = sheet.code();
        name = sheet.name();
        station = sheet.station();
        point = sheet.point();
        signers = sheet.signers();
        qualification = sheet.qualification();
        together = sheet.together();
        outside = sheet.outside();
        irreversible = sheet.irreversible();
        joins = sheet.joins();
        repeatLimit = sheet.repeatLimit();
        caution = sheet.caution();
        Rows.inOrder(steps, sheet.steps(), StepRow::new, (row, i, step) -> row.becomes(this, i, step));
        Rows.match(
                        characteristics,
                        sheet.characteristics(),
                        CharacteristicRow::code,
                        CharacteristicSheet::code,
                        CharacteristicRow::new)
                .forEach((row, wanted) ->
                        row.becomes(this, sheet.characteristics().indexOf(wanted), wanted));
    }

    @PreUpdate
    @PreRemove
    void onlyInADraft() {
        revision.guardContent();
    }

    String code() {
        return code;
    }

    RouteRevision revision() {
        return revision;
    }

    OperationSheet sheet() {
        return new OperationSheet(
                code,
                name,
                station,
                point,
                signers,
                qualification,
                together,
                outside,
                irreversible,
                joins,
                repeatLimit,
                caution,
                steps.stream().map(StepRow::sheet).toList(),
                characteristics.stream().map(CharacteristicRow::sheet).toList());
    }
}
