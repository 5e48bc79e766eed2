package org.trammel.shop.routes;

import java.util.List;

/**
 * A route as a file gives it.
 *
 * @param sheet its content; revision id 0, no letter, no children
 * @param children parts with the codes of their routes
 */
record RouteFile(RouteSheet sheet, List<Child> children) {

    record Child(String part, String name, String route) {}
}
