package org.trammel.shop.routes;

import java.math.BigDecimal;

/** Numbers of a route in one form: no trailing zeros, no exponent. */
final class Figures {

    private Figures() {}

    static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
