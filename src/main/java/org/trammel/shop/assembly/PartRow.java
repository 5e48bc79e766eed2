package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** A component on the list of a frame. One that was taken off stays, with who took it off and why. */
@Entity
@Table(name = "frame_component")
class PartRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String serial;

    @Column(nullable = false)
    private String part;

    @Column(name = "sheet_id", nullable = false)
    private long sheetId;

    @Column(nullable = false)
    private String place;

    @Column(name = "given_by", nullable = false)
    private long givenBy;

    @Column(name = "given_at", nullable = false)
    private Instant givenAt;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    @Column(name = "removed_by")
    private @Nullable Long removedBy;

    @Column(name = "removed_at")
    private @Nullable Instant removedAt;

    @Column(name = "removed_words")
    private @Nullable String removedWords;

    @Version
    private long version;

    protected PartRow() {}

    PartRow(String serial, String part, long sheetId, String place, Act act) {
        this.serial = serial;
        this.part = part;
        this.sheetId = sheetId;
        this.place = place;
        this.givenBy = act.by();
        this.givenAt = act.at();
        this.actId = act.id();
    }

    void remove(Act act, String words) {
        if (removedAt != null) {
            throw Refusal.stale(
                    "The component was not taken off.", "It was taken off before.", "Look at the list as it is now.");
        }
        removedBy = act.by();
        removedAt = act.at();
        removedWords = words;
    }

    long id() {
        return id;
    }

    String serial() {
        return serial;
    }

    String part() {
        return part;
    }

    long sheetId() {
        return sheetId;
    }

    boolean standing() {
        return removedAt == null;
    }

    FramePart part(Component component) {
        return new FramePart(id, serial, part, component, place, givenBy, givenAt, removedBy, removedAt, removedWords);
    }
}
