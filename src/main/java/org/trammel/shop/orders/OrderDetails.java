package org.trammel.shop.orders;

import java.util.List;
import org.trammel.shop.designs.Component;

/**
 * What was ordered.
 *
 * @param metal AL6061, AL7005, STEEL or TI
 * @param kind kind of frame, as the routes name it
 * @param country two letters of ISO 3166-1, whose rules hold
 * @param countryRules what they ask for, such as bell and reflectors; may be empty
 */
public record OrderDetails(
        String description,
        String metal,
        String kind,
        Category category,
        String country,
        String countryRules,
        BrakeLever frontBrakeLever,
        RiderDetails rider,
        List<Component> components) {

    public OrderDetails {
        components = List.copyOf(components);
    }
}
