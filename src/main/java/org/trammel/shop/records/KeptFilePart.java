package org.trammel.shop.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

/** A part of a file's content. */
@Entity
@Table(name = "kept_file_part")
class KeptFilePart {

    /** Both engines take this in one value. */
    static final int BYTES = 512 * 1024;

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "file_sha256", nullable = false)
    private String fileSha256;

    @Column(nullable = false)
    private int part;

    @Column(nullable = false)
    private byte[] content;

    protected KeptFilePart() {}

    KeptFilePart(String fileSha256, int part, byte[] content) {
        this.fileSha256 = fileSha256;
        this.part = part;
        this.content = content;
    }

    byte[] content() {
        return content;
    }
}
