package org.trammel.shop.inspection;

import java.math.BigDecimal;

/**
 * Where a reduced value may truly have lain while its gauge may have been wrong.
 *
 * @param least in the unit of the reading
 * @param greatest in the unit of the reading, no less than {@code least}
 */
public record TrueSpan(BigDecimal least, BigDecimal greatest) {

    public TrueSpan {
        if (least.compareTo(greatest) > 0) {
            throw new IllegalArgumentException("A span begins with its least value");
        }
    }
}
