package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Everything of a draft that is typed, but its nominals.
 *
 * @param routeRevisionId revision of the route whose characteristics the nominals name
 * @param testFamily test family that covers the frame; null where none does
 * @param confirmed unusual numbers were asked about and meant
 */
public record DesignDraft(
        String description,
        String metal,
        String kind,
        @Nullable Long routeRevisionId,
        @Nullable String testFamily,
        List<Component> components,
        Map<GeometryInput, BigDecimal> geometry,
        boolean confirmed) {

    public DesignDraft {
        components = List.copyOf(components);
        geometry = Map.copyOf(geometry);
    }
}
