package org.trammel.shop.routes;

/**
 * A part made apart on a route of its own.
 *
 * @param part suffix of its serial, such as FT or SA
 * @param name in words, such as front triangle
 * @param route the child's own route, the revision that was in force when the parent was released
 */
public record ChildSheet(String part, String name, RouteSheet route) {}
