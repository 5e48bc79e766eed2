package org.trammel.shop.inspection;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Which frame of which re-judgement. */
class RejudgedFrameKey implements Serializable {

    private static final long serialVersionUID = 1;

    private long rejudgementId;
    private String serial = "";

    protected RejudgedFrameKey() {}

    RejudgedFrameKey(long rejudgementId, String serial) {
        this.rejudgementId = rejudgementId;
        this.serial = serial;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RejudgedFrameKey key && key.rejudgementId == rejudgementId && key.serial.equals(serial);
    }

    @Override
    public int hashCode() {
        return Objects.hash(rejudgementId, serial);
    }
}
