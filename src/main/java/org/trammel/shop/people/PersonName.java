package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A name a person had from a time on. Only added to, so that an old record shows the name of its day. */
@Entity
@Table(name = "person_name")
class PersonName {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(name = "person_id", nullable = false)
    private long personId;

    @Column(nullable = false)
    private String name;

    @Column(nullable = false)
    private Instant since;

    @Column(name = "named_by", nullable = false)
    private long namedBy;

    protected PersonName() {}

    PersonName(long personId, String name, Instant since, long namedBy) {
        this.personId = personId;
        this.name = name;
        this.since = since;
        this.namedBy = namedBy;
    }

    long id() {
        if (id == null) {
            throw new IllegalStateException("The name is not stored yet");
        }
        return id;
    }

    String name() {
        return name;
    }

    Instant since() {
        return since;
    }
}
