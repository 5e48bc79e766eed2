package org.trammel.shop.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.springframework.data.domain.Persistable;

/** That words or a file were erased, by which act; what they said is gone. */
@Entity
@Table(name = "erasure")
class Erasure implements Persistable<String> {

    private static final String WORDS = "words:";

    @Id
    private String thing;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    @Column(name = "by_person", nullable = false)
    private long byPerson;

    @Column(name = "at", nullable = false)
    private Instant at;

    protected Erasure() {}

    Erasure(String thing, Act act) {
        this.thing = thing;
        this.actId = act.id();
        this.byPerson = act.by();
        this.at = act.at();
    }

    static String words(long id) {
        return WORDS + id;
    }

    static long wordsId(String thing) {
        return Long.parseLong(thing.substring(WORDS.length()));
    }

    static String file(String sha256) {
        return "file:" + sha256;
    }

    String thing() {
        return thing;
    }

    Instant at() {
        return at;
    }

    @Override
    public String getId() {
        return thing;
    }

    /** An erasure is only ever added. */
    @Override
    public boolean isNew() {
        return true;
    }
}
