package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What else is asked of each node.
 *
 * @param mostPurge_ppm oxygen inside before an arc; null where nothing is purged
 * @param filletLeast_mm radius of a brazed fillet; null where it is not measured
 * @param colours whether the colour of each bead is entered, as of titanium
 * @param photos whether each node has a photograph
 * @param mostRepairs of one node; beyond it the QA lead decides
 */
@Embeddable
public record NodeRules(
        @Nullable @Column(name = "most_purge_ppm") BigDecimal mostPurge_ppm,
        @Nullable @Column(name = "fillet_least_mm") BigDecimal filletLeast_mm,
        @Nullable @Column(name = "fillet_most_mm") BigDecimal filletMost_mm,
        @Column(name = "colours", nullable = false) boolean colours,
        @Column(name = "photos", nullable = false) boolean photos,
        @Column(name = "most_repairs", nullable = false) int mostRepairs) {

    boolean measuresFillets() {
        return filletLeast_mm != null || filletMost_mm != null;
    }

    boolean takesFillet(BigDecimal radius_mm) {
        return (filletLeast_mm == null || radius_mm.compareTo(filletLeast_mm) >= 0)
                && (filletMost_mm == null || radius_mm.compareTo(filletMost_mm) <= 0);
    }
}
