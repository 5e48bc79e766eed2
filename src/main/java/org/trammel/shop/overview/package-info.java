/**
 * What each of the people at a desk looks at first: the run of the shop, the QA lead's desk, the stations, a frame's whole
 * story.
 *
 * <p>Invariants: this module keeps nothing and decides nothing; it reads what the others keep, a fixed number of
 * statements for a page however much is in the shop, and every verb goes to the service that owns it.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Overview",
        allowedDependencies = {
            "travellers",
            "inspection",
            "assembly",
            "nonconformance",
            "materials",
            "gauges",
            "ovens",
            "backtraces",
            "coldstore",
            "coats",
            "welding",
            "handwork",
            "cuts",
            "orders",
            "designs",
            "routes"
        })
package org.trammel.shop.overview;
