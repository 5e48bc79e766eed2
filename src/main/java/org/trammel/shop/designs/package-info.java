/**
 * A frame design as revisions: drawing, components, geometry inputs and the nominals of its characteristics, and the
 * design gate it passes before the shop may build it.
 *
 * <p>Invariants: a revision changes only while it is a draft; a released revision never changes, a change of mind is a
 * new revision with a reason; the customer approves the revision that was last sent, no other; the gate is signed by the
 * owner and by the QA lead, two people, each with their own PIN; a figure of the gate that is not met lets nothing pass
 * but a decision in writing, and an answer counts only for the inputs it was given on.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Designs",
        allowedDependencies = {"records", "settings", "stations", "people", "web", "routes"})
package org.trammel.shop.designs;
