/**
 * The invented workshop that the demo profile loads: its people, gauges, lots and orders, brought to where they stand
 * through the same public verbs that tablets and desks use, on a clock that tells the demo day.
 *
 * <p>Invariants: nothing here exists outside the profile; nothing is written past the services.
 *
 * <p>The workshop's tables were written as a story. Where they leave something open, or a frame would not pass our own
 * gates, the data was completed and no gate was changed: the aligned O-113 follows its ageing run, O-120 waits for the
 * reamer because its soak was over, O-119 may be cut but not welded until somebody decides about the test it lies
 * outside of, O-105 was set straight on its swing arm, O-110 stands at the stem's face plate after nine of its
 * twenty-two torques, O-109 has its first node open while the oxygen alarms. Torques of frames built before that one are
 * told by their sheets where they steer, stop and carry, and by hand for the rest. Who is in doubt for an oven, a lot or a
 * missing part is told where the last days are told.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Demo",
        allowedDependencies = {
            "travellers",
            "inspection",
            "alignment",
            "drift",
            "assembly",
            "handwork",
            "dew",
            "cuts",
            "nonconformance",
            "materials",
            "gauges",
            "ovens",
            "coats",
            "welding",
            "orders",
            "designs",
            "routes"
        })
package org.trammel.shop.demo;
