package org.trammel.shop.records;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface KeptFileRepository extends JpaRepository<KeptFile, String> {

    /** Keeps a file, unless its content is kept already or at the same moment by somebody else. */
    @Modifying
    @Query(
            nativeQuery = true,
            value = "insert into kept_file (sha256, media_type, name, size_bytes, width_px, height_px, kept_at)"
                    + " values (:sha256, :mediaType, :name, :sizeBytes, cast(:widthPx as integer),"
                    + " cast(:heightPx as integer), :keptAt)"
                    + " on conflict do nothing")
    int keep(
            String sha256,
            String mediaType,
            String name,
            long sizeBytes,
            @Nullable Integer widthPx,
            @Nullable Integer heightPx,
            Instant keptAt);
}
