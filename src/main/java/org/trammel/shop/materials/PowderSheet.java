package org.trammel.shop.materials;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.CurePair;
import org.trammel.calc.thermal.CureWindow;
import org.trammel.calc.units.Answer;

/**
 * What the maker's sheet of a powder or paint says.
 *
 * @param pairs each cures it in full; empty where no heat cures it
 * @param energy_kJPerMol how cure hastens with heat, for a single pair; null where the pairs give it
 * @param least_percent of full cure from where it counts as cured
 * @param most_percent of full cure beyond which it counts as over-cured
 */
public record PowderSheet(
        String colour,
        List<Pair> pairs,
        @Nullable BigDecimal energy_kJPerMol,
        BigDecimal least_percent,
        BigDecimal most_percent,
        String source,
        long by,
        Instant at) {

    /** Minutes at a temperature of the metal. */
    @Embeddable
    public record Pair(
            BigDecimal minutes, @Column(name = "metal_degc") BigDecimal metal_degC) {

        /** As the sheet prints them: the columns keep decimals that nobody wrote. */
        Pair bare() {
            return new Pair(PowderSheet.bare(minutes), PowderSheet.bare(metal_degC));
        }
    }

    public PowderSheet {
        pairs = pairs.stream().map(Pair::bare).toList();
        energy_kJPerMol = LotRow.plain(energy_kJPerMol);
        least_percent = bare(least_percent);
        most_percent = bare(most_percent);
    }

    /** What a run is compared with; without a value where no heat cures it. */
    public Answer<CureWindow> window() {
        return window(pairs, energy_kJPerMol, least_percent, most_percent);
    }

    static Answer<CureWindow> window(
            List<Pair> pairs, @Nullable BigDecimal energy_kJPerMol, BigDecimal least_percent, BigDecimal most_percent) {
        return CureWindow.of(
                pairs.stream()
                        .map(pair -> new CurePair(
                                pair.metal_degC().doubleValue(), pair.minutes().doubleValue()))
                        .toList(),
                energy_kJPerMol == null ? null : energy_kJPerMol.doubleValue(),
                least_percent.doubleValue() / 100,
                most_percent.doubleValue() / 100);
    }

    /** Its pairs as people say them: 20 min at 160 °C or 10 min at 180 °C. */
    public String cure() {
        return pairs.stream()
                .map(pair -> pair.minutes().toPlainString() + " min at "
                        + pair.metal_degC().toPlainString() + " °C")
                .collect(Collectors.joining(" or "));
    }

    private static BigDecimal bare(BigDecimal figure) {
        return Objects.requireNonNull(LotRow.plain(figure));
    }
}
