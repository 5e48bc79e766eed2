package org.trammel.shop.routes;

import java.util.List;

/**
 * One revision of a route, complete.
 *
 * @param revisionId id of the revision
 * @param code the route's code, such as HT-6061
 * @param name the route's name in words
 * @param letter the revision's letter: A, B, … Z, AA, …
 * @param metal AL6061, AL7005, STEEL, TI, or ANY where no frame is meant
 * @param kind such as HARDTAIL; see {@link Kinds}
 * @param operations in the order of the work
 * @param children the parts made apart on routes of their own, joined at the operation that says {@code joins}
 */
public record RouteSheet(
        long revisionId,
        String code,
        String name,
        String letter,
        String metal,
        String kind,
        List<OperationSheet> operations,
        List<ClockSheet> clocks,
        List<ChildSheet> children) {

    public RouteSheet {
        operations = List.copyOf(operations);
        clocks = List.copyOf(clocks);
        children = List.copyOf(children);
    }
}
