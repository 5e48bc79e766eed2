/**
 * The station sheet: one frame, one step, the one next thing; the reading, the signature, the stop. Paper that travels
 * with the frame.
 *
 * <p>Invariants: this module keeps nothing and decides nothing; every check is made by the service it calls, so that a
 * sheet, a stale sheet and a program are refused alike.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "The station sheet",
        allowedDependencies = {
            "travellers",
            "inspection",
            "alignment",
            "coats",
            "assembly",
            "welding",
            "handwork",
            "dew",
            "cuts",
            "gauges",
            "materials",
            "designs",
            "routes"
        })
package org.trammel.shop.bench;
