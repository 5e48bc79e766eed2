package org.trammel.shop.handwork;

import java.math.BigDecimal;
import java.time.Instant;

/**
 * A coupon of known stock, and how well it conducts.
 *
 * @param coupon its label
 * @param knownBy what its alloy and temper are known by, such as its certificate
 * @param percent_IACS conductivity against that of annealed copper
 */
public record Coupon(
        long id,
        String metal,
        String coupon,
        String knownBy,
        BigDecimal percent_IACS,
        String gauge,
        long by,
        Instant at) {}
