package org.trammel.shop.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** That words were kept, and their hash. */
@Entity
@Table(name = "kept_words")
class KeptWordsRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String sha256;

    @Column(name = "kept_at", nullable = false)
    private Instant keptAt;

    protected KeptWordsRow() {}

    KeptWordsRow(String sha256, Instant keptAt) {
        this.sha256 = sha256;
        this.keptAt = keptAt;
    }

    long id() {
        return id;
    }

    String sha256() {
        return sha256;
    }
}
