package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A photograph taken at a step; the file is kept by its content. */
@Entity
@Table(name = "traveller_photo")
class Photo {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "traveller_id")
    private long travellerId;

    @Column(name = "operation_id")
    private long operationId;

    @Column(name = "step_id")
    private @Nullable Long stepId;

    private String sha256;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    protected Photo() {}

    Photo(long travellerId, long operationId, @Nullable Long stepId, String sha256, long personId, Instant at) {
        this.travellerId = travellerId;
        this.operationId = operationId;
        this.stepId = stepId;
        this.sha256 = sha256;
        this.personId = personId;
        this.at = at;
    }

    long id() {
        return id;
    }

    long travellerId() {
        return travellerId;
    }

    long operationId() {
        return operationId;
    }

    @Nullable
    Long stepId() {
        return stepId;
    }

    String sha256() {
        return sha256;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }
}
