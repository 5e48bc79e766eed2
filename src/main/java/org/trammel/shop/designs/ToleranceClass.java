package org.trammel.shop.designs;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

/** A kind of characteristic whose limits the QA lead keeps in one place. */
@Entity
@Immutable
@Table(name = "tolerance_class")
class ToleranceClass {

    @Id
    private String code;

    private int sequence;
    private String name;
    private String explanation;
    private String unit;

    protected ToleranceClass() {}

    String code() {
        return code;
    }

    String name() {
        return name;
    }

    String explanation() {
        return explanation;
    }

    String unit() {
        return unit;
    }
}
