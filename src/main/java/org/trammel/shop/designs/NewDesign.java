package org.trammel.shop.designs;

import java.util.List;

/**
 * A design to begin, with what the order already says.
 *
 * @param drawnFor number of the order
 */
public record NewDesign(String drawnFor, String metal, String kind, String description, List<Component> components) {

    public NewDesign {
        components = List.copyOf(components);
    }
}
