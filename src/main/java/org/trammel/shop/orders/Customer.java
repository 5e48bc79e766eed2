package org.trammel.shop.orders;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** A customer. The log carries only the salted hash of what they told; with the salt erased it says nothing. */
@Entity
@Table(name = "customer")
class Customer {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private @Nullable String name;
    private @Nullable String contact;
    private String country;
    private @Nullable LocalDate consentOn;
    private @Nullable String salt;
    private @Nullable Instant erasedAt;

    @Version
    private long version;

    protected Customer() {}

    Customer(CustomerDetails details, String salt) {
        this.salt = salt;
        tell(details);
    }

    final void tell(CustomerDetails details) {
        name = details.name();
        contact = details.contact();
        country = details.country();
        consentOn = details.consentOn();
    }

    void erase(Instant at) {
        name = null;
        contact = null;
        consentOn = null;
        salt = null;
        erasedAt = at;
    }

    /** SHA-256 over salt and data; lets whoever still has the data prove that it was not changed. */
    String seal() {
        String data = salt + '\n' + name + '\n' + contact + '\n' + country + '\n' + consentOn;
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(data.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    long id() {
        return id;
    }

    @Nullable
    String name() {
        return name;
    }

    @Nullable
    String contact() {
        return contact;
    }

    String country() {
        return country;
    }

    @Nullable
    LocalDate consentOn() {
        return consentOn;
    }

    @Nullable
    Instant erasedAt() {
        return erasedAt;
    }
}
