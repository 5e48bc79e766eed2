package org.trammel.shop.designs;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One revision of a design, as other modules read it.
 *
 * @param drawnFor number of the order it was drawn for
 * @param letter A, B, … Z, AA, …
 * @param routeRevisionId revision of the route whose characteristics the nominals name; null until one was chosen
 * @param nominals by characteristic code; a child's codes carry its part, such as FT/080-1
 * @param geometry inputs as typed and checked, by code such as HA; plain decimals with a point
 * @param drawing SHA-256 of the drawing file, if one was added
 * @param testFamily test family that covers the frame; null where none was named
 */
public record DesignSheet(
        long revisionId,
        long designId,
        String drawnFor,
        String letter,
        DesignState state,
        String metal,
        String kind,
        String description,
        @Nullable Long routeRevisionId,
        Map<String, Nominal> nominals,
        Map<String, String> geometry,
        List<Component> components,
        @Nullable String drawing,
        @Nullable String testFamily) {

    public DesignSheet {
        nominals = Map.copyOf(nominals);
        geometry = Map.copyOf(geometry);
        components = List.copyOf(components);
    }
}
