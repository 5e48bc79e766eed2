package org.trammel.shop.travellers;

import java.math.BigDecimal;
import java.util.Optional;
import org.trammel.shop.routes.CharacteristicSheet;

/**
 * Gives limits that the shop found out itself, such as from coupons of known stock, in the place of the route's. They are
 * frozen with a traveller when it is released, as all its limits are.
 */
public interface ShopLimits {

    /** Limits, and what they rest on in a few words. */
    record Window(BigDecimal lower, BigDecimal upper, String from) {}

    /** Empty where the route's own stand. */
    Optional<Window> of(String metal, CharacteristicSheet characteristic);
}
