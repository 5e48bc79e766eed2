package org.trammel.shop.routes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a route file says, each part with the line it stands on. */
sealed interface Tree {

    /** Where it stands: file and line, counted from 1. */
    Place place();

    record Place(String file, int line) {}

    /** A word, a number or a text. */
    record Leaf(Place place, String text) implements Tree {}

    /** A list. */
    record Row(Place place, List<Tree> items) implements Tree {}

    /** Named parts, in the order they stand. */
    record Fork(Place place, Map<String, Tree> parts) implements Tree {

        /** This with the parts of another laid over it. */
        Fork with(Map<String, Tree> over) {
            Map<String, Tree> merged = new LinkedHashMap<>(parts);
            merged.putAll(over);
            return new Fork(place, merged);
        }
    }

    /** Something in a route file that cannot be read. */
    final class Flaw extends RuntimeException {

        private final Place place;

        Flaw(Place place, String why) {
            super(place.file() + ", line " + place.line() + ": " + why, null, false, false);
            this.place = place;
        }

        Place place() {
            return place;
        }
    }
}
