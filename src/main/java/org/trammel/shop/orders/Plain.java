package org.trammel.shop.orders;

import java.math.BigDecimal;

/** Numbers without the zeros a column adds. */
final class Plain {

    private Plain() {}

    static BigDecimal number(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
