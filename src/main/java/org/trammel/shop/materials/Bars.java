package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Bars alike on the rack, with what decides whether they may be sawn. */
public record Bars(
        long id,
        long lotId,
        String lot,
        @Nullable String metal,
        LotState state,
        @Nullable LocalDate expiresOn,
        BigDecimal outside_mm,
        BigDecimal wall_mm,
        BigDecimal length_mm,
        int count,
        boolean remnant,
        boolean butted) {

    /** Figures as they were entered, without the zeros that the column adds. */
    public Bars {
        outside_mm = plain(outside_mm);
        wall_mm = plain(wall_mm);
        length_mm = plain(length_mm);
    }

    private static BigDecimal plain(BigDecimal figure) {
        return new BigDecimal(figure.stripTrailingZeros().toPlainString());
    }

    /** Whether blanks may be laid into them: plain, of a released lot. */
    boolean open(LocalDate today) {
        return !butted && state == LotState.RELEASED && (expiresOn == null || !today.isAfter(expiresOn));
    }
}
