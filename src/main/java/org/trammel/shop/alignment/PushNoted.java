package org.trammel.shop.alignment;

import java.math.BigDecimal;
import org.trammel.calc.metrology.Deviation;

/**
 * A push the shop noted elsewhere, as on paper before it worked with this program.
 *
 * @param deviation that was set right
 * @param metal code, such as AL6061
 * @param outside_mm of the tube that bends: a chainstay at the rear end, else the down tube
 * @param wall_mm likewise
 * @param push_mm how far it was pushed
 * @param set_mm what stayed at the same place
 */
public record PushNoted(
        Deviation deviation,
        String metal,
        BigDecimal outside_mm,
        BigDecimal wall_mm,
        BigDecimal push_mm,
        BigDecimal set_mm,
        String source) {

    boolean of(Deviation what, String ofMetal, BigDecimal outside, BigDecimal ofWall) {
        return deviation == what
                && metal.equals(ofMetal)
                && outside_mm.compareTo(outside) == 0
                && wall_mm.compareTo(ofWall) == 0;
    }
}
