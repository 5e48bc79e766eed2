package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Hash of the code that makes the first owner. */
@Entity
@Table(name = "first_owner_code")
class FirstOwnerCode {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(name = "code_hash", nullable = false)
    private String codeHash;

    @Column(name = "made_at", nullable = false)
    private Instant madeAt;

    @Column(name = "used_at")
    private @Nullable Instant usedAt;

    protected FirstOwnerCode() {}

    FirstOwnerCode(String codeHash, Instant madeAt) {
        this.codeHash = codeHash;
        this.madeAt = madeAt;
    }

    void use(Instant at) {
        usedAt = at;
    }
}
