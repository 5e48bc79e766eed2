/**
 * Components of a frame and their fasteners: what each component's own sheet asks for, the torque of every bolt with the
 * tool that gave it, and who witnessed it. Customers' own parts in custody; the join, the final check and the packing.
 *
 * <p>Invariants: a sheet in force is never changed, only superseded; a torque is judged with all its tool may err by;
 * whoever tightened a fastener does not witness it; a component on the list of a frame keeps the gate of its operation shut
 * until each of its fasteners is torqued and, where its sheet asks, witnessed; where rules in force name an operation, it is
 * passed with their records only, and nothing is packed whose record is not whole.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Assembly",
        allowedDependencies = {"travellers", "routes", "gauges", "nonconformance", "materials", "orders", "designs"})
package org.trammel.shop.assembly;
