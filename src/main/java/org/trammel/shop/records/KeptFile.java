package org.trammel.shop.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** That a file was kept. */
@Entity
@Table(name = "kept_file")
class KeptFile {

    @Id
    private String sha256;

    @Column(name = "media_type", nullable = false)
    private String mediaType;

    @Column(nullable = false)
    private String name;

    @Column(name = "size_bytes", nullable = false)
    private long sizeBytes;

    @Column(name = "width_px")
    private @Nullable Integer widthPx;

    @Column(name = "height_px")
    private @Nullable Integer heightPx;

    @Column(name = "kept_at", nullable = false)
    private Instant keptAt;

    protected KeptFile() {}

    StoredFile stored() {
        return new StoredFile(sha256, mediaType, name, sizeBytes, widthPx, heightPx, keptAt);
    }
}
