/**
 * The computations of the workshop for programs that bring their own figures: values in, values out, nothing kept.
 *
 * <p>Invariants: nothing is read from the shop's records and nothing is written; units stand in the names of all figures,
 * save readings for statistics, which may be in any one unit; what cannot be computed is refused with the name of the
 * figure at fault; every list has a bound.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Calculations",
        allowedDependencies = {"records", "web"})
package org.trammel.shop.calculations;
