package org.trammel.shop.inspection;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.Objects;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** A gauge that read some of the figures a reading was reduced from, beside the one the reading names. Only added to. */
@Entity
@Immutable
@IdClass(ReadingGauge.Key.class)
@Table(name = "reading_gauge")
class ReadingGauge {

    @Id
    @Column(name = "gauge_id")
    private long gaugeId;

    @Id
    @Column(name = "reading_id")
    private long readingId;

    protected ReadingGauge() {}

    ReadingGauge(long gaugeId, long readingId) {
        this.gaugeId = gaugeId;
        this.readingId = readingId;
    }

    /** Which gauge of which reading. */
    static class Key implements Serializable {

        private static final long serialVersionUID = 1;

        private long gaugeId;
        private long readingId;

        protected Key() {}

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Key key && key.gaugeId == gaugeId && key.readingId == readingId;
        }

        @Override
        public int hashCode() {
            return Objects.hash(gaugeId, readingId);
        }
    }
}
