/**
 * What was ordered, by whom, for which rider, at what price, promised when, and built to which design revision.
 *
 * <p>Invariants: an order changes state by named verbs only; every promise ever made is kept with its reason; a serial
 * is given once and never again, also after an older back-up was restored; what a customer told about themselves lies
 * in tables of its own and can be erased without touching order or log.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Orders",
        allowedDependencies = {"records", "settings", "stations", "people", "web", "designs"})
package org.trammel.shop.orders;
