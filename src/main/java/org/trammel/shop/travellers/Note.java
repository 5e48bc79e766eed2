package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Something that is different on this one. */
@Entity
@Table(name = "traveller_note")
class Note {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "traveller_id")
    private long travellerId;

    @Column(name = "operation_id")
    private @Nullable Long operationId;

    private String words;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    protected Note() {}

    Note(long travellerId, @Nullable Long operationId, String words, long personId, Instant at) {
        this.travellerId = travellerId;
        this.operationId = operationId;
        this.words = words;
        this.personId = personId;
        this.at = at;
    }

    long id() {
        return id;
    }

    long travellerId() {
        return travellerId;
    }

    @Nullable
    Long operationId() {
        return operationId;
    }

    String words() {
        return words;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }
}
