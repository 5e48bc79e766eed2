package org.trammel.shop.materials;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;

@Entity
@Immutable
@Table(name = "material_class")
class MaterialClassRow {

    @Id
    private String code;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private LotKind kind;

    @Column(nullable = false)
    private String name;

    @Column(nullable = false)
    private String family;

    protected MaterialClassRow() {}

    MaterialClass materialClass() {
        return new MaterialClass(code, kind, name, family.equals("ANY") ? null : MetalFamily.valueOf(family));
    }
}
