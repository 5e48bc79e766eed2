package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * How hot a frame may be, and how much heat goes into its welds.
 *
 * @param mostInterpass_degC beside the last bead before the next node is begun; null where it is not asked
 * @param efficiency share of the arc that reaches the work, see {@link org.trammel.calc.welding.HeatInput}
 * @param samples nodes of an operation whose heat input is entered
 */
@Embeddable
public record HeatRules(
        @Nullable @Column(name = "most_interpass_degc") BigDecimal mostInterpass_degC,
        @Nullable @Column(name = "heat_least_kj_per_mm") BigDecimal least_kJ_per_mm,
        @Nullable @Column(name = "heat_most_kj_per_mm") BigDecimal most_kJ_per_mm,
        @Nullable @Column(name = "efficiency") BigDecimal efficiency,
        @Column(name = "heat_samples", nullable = false) int samples) {

    boolean takes(BigDecimal kJ_per_mm) {
        return (least_kJ_per_mm == null || kJ_per_mm.compareTo(least_kJ_per_mm) >= 0)
                && (most_kJ_per_mm == null || kJ_per_mm.compareTo(most_kJ_per_mm) <= 0);
    }
}
