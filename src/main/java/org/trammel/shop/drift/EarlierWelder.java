package org.trammel.shop.drift;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;

/** Who welded what was read before this program: one of the crew, or a name that can be erased. Only added to. */
@Entity
@Table(name = "drift_welder")
class EarlierWelder implements Persistable<Long> {

    @Id
    @Column(name = "history_id")
    private long historyId;

    @Column(name = "person_id")
    private @Nullable Long personId;

    @Column(name = "words_id")
    private @Nullable Long wordsId;

    protected EarlierWelder() {}

    EarlierWelder(long historyId, @Nullable Long personId, @Nullable Long wordsId) {
        this.historyId = historyId;
        this.personId = personId;
        this.wordsId = wordsId;
    }

    @Override
    public Long getId() {
        return historyId;
    }

    @Override
    public boolean isNew() {
        return true;
    }

    long historyId() {
        return historyId;
    }

    @Nullable
    Long personId() {
        return personId;
    }

    @Nullable
    Long wordsId() {
        return wordsId;
    }
}
