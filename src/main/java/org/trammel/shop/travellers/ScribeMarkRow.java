package org.trammel.shop.travellers;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import org.springframework.data.domain.Persistable;

/** A scribe mark and the frame that bears it, or bore it last. */
@Entity
@Table(name = "scribe_mark")
class ScribeMarkRow implements Persistable<String> {

    @Id
    private String code;

    private String serial;
    private Instant givenAt;

    @Version
    private Long version;

    protected ScribeMarkRow() {}

    ScribeMarkRow(String code, String serial, Instant givenAt) {
        this.code = code;
        this.serial = serial;
        this.givenAt = givenAt;
    }

    void passTo(String next, Instant at) {
        serial = next;
        givenAt = at;
    }

    String code() {
        return code;
    }

    String serial() {
        return serial;
    }

    @Override
    public String getId() {
        return code;
    }

    @Override
    public boolean isNew() {
        return version == null;
    }
}
