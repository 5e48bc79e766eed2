/**
 * The invented workshop that the demo profile loads: its people, gauges, lots and orders, brought to where they stand
 * through the same public verbs that tablets and desks use, on a clock that tells the demo day.
 *
 * <p>Invariants: nothing here exists outside the profile; nothing is written past the services.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Demo",
        allowedDependencies = {
            "travellers",
            "inspection",
            "nonconformance",
            "materials",
            "gauges",
            "orders",
            "designs",
            "routes"
        })
package org.trammel.shop.demo;
