package org.trammel.shop.settings;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

@Entity
@Immutable
@Table(name = "setting_definition")
class DefinitionRow {

    @Id
    private String code;

    @Column(nullable = false)
    private String place;

    @Column(nullable = false)
    private int sequence;

    @Column(nullable = false)
    private String name;

    @Column(nullable = false)
    private String explanation;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private Definition.Kind kind;

    @Column(nullable = false)
    private String unit;

    private @Nullable BigDecimal lowest;

    private @Nullable BigDecimal highest;

    protected DefinitionRow() {}

    Definition definition() {
        return new Definition(code, place, name, explanation, kind, unit, lowest, highest);
    }
}
