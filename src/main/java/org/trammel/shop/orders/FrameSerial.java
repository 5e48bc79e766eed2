package org.trammel.shop.orders;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.Table;
import jakarta.persistence.Transient;
import java.time.Instant;
import org.springframework.data.domain.Persistable;

/** A serial that was given, once and for all. */
@Entity
@Table(name = "frame_serial")
class FrameSerial implements Persistable<String> {

    @Id
    private String serial;

    private long orderId;
    private Instant givenAt;

    @Transient
    private boolean fresh;

    protected FrameSerial() {}

    FrameSerial(String serial, long orderId, Instant givenAt) {
        this.serial = serial;
        this.orderId = orderId;
        this.givenAt = givenAt;
        this.fresh = true;
    }

    @Override
    public String getId() {
        return serial;
    }

    @Override
    public boolean isNew() {
        return fresh;
    }

    @PostLoad
    @PostPersist
    void known() {
        fresh = false;
    }
}
