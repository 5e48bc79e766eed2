package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** One of several people who must lift a hold together agreed, before the last of them lifted it. */
@Entity
@Table(name = "hold_agreement")
class HoldAgreement {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "hold_id")
    private long holdId;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    private String words;

    protected HoldAgreement() {}

    HoldAgreement(long holdId, long personId, Instant at, String words) {
        this.holdId = holdId;
        this.personId = personId;
        this.at = at;
        this.words = words;
    }

    long holdId() {
        return holdId;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }

    String words() {
        return words;
    }
}
