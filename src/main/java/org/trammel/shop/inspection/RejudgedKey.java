package org.trammel.shop.inspection;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Which reading of which re-judgement. */
class RejudgedKey implements Serializable {

    private static final long serialVersionUID = 1;

    private long rejudgementId;
    private long readingId;

    protected RejudgedKey() {}

    RejudgedKey(long rejudgementId, long readingId) {
        this.rejudgementId = rejudgementId;
        this.readingId = readingId;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RejudgedKey key && key.rejudgementId == rejudgementId && key.readingId == readingId;
    }

    @Override
    public int hashCode() {
        return Objects.hash(rejudgementId, readingId);
    }
}
