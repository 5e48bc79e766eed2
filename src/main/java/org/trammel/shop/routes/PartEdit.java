package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.List;
import org.trammel.shop.records.Refusal;

/** A change to the parts a route is joined from. */
sealed interface PartEdit extends Edit {

    /** Adds a part. */
    record Add(String part, String name, String route) implements PartEdit {

        @Override
        public Draft in(Draft draft) {
            String suffix = Said.word("part", "The suffix", part);
            if (!suffix.matches("[A-Z]{1,4}")) {
                throw Said.refused("part", "The suffix of a part is one to four capitals.", "Enter one such as FT.");
            }
            if (draft.children().stream().anyMatch(child -> child.part().equals(suffix))) {
                throw Said.refused("part", "The part " + suffix + " is there already.", "Give another suffix.");
            }
            if (route.equals(draft.sheet().code())) {
                throw Said.refused("route", "A route is no part of itself.", "Choose the part's own route.");
            }
            List<RouteFile.Child> next = new ArrayList<>(draft.children());
            next.add(new RouteFile.Child(suffix, Said.line("name", "Name", name, 120), route));
            return draft.withChildren(next);
        }
    }

    /** Leaves a part out. */
    record Retire(String part) implements PartEdit {

        @Override
        public Draft in(Draft draft) {
            List<RouteFile.Child> next = new ArrayList<>(draft.children());
            if (!next.removeIf(child -> child.part().equals(part))) {
                throw Refusal.missing(
                        Said.UNCHANGED,
                        "Revision " + draft.sheet().letter() + " has no part " + part + ".",
                        "Load the page again; somebody may have retired it.");
            }
            return draft.withChildren(next);
        }
    }

    /** Suffix of the part. */
    String part();

    @Override
    default String place() {
        return part();
    }
}
