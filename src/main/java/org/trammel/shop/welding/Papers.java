package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;

/**
 * Where a procedure comes from, as the QA lead fills it in.
 *
 * @param welderStandard standard by which its welders are tested
 * @param standard standard of the procedure itself
 */
@Embeddable
public record Papers(
        @Column(name = "welder_standard", nullable = false) String welderStandard,
        @Column(name = "standard", nullable = false) String standard,
        @Column(name = "edition", nullable = false) String edition,
        @Column(name = "source", nullable = false) String source) {

    public Papers {
        welderStandard = welderStandard == null ? "" : welderStandard;
        standard = standard == null ? "" : standard;
        edition = edition == null ? "" : edition;
        source = source == null ? "" : source;
    }
}
