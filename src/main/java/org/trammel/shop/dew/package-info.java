/**
 * How far the metal of a frame lies from the point at which water or ice settles on it: air, humidity and metal as they were
 * read, before the arc and before the coat.
 *
 * <p>Invariants: the margin is computed, never keyed; below 0 °C it is that over the frost point; of several places of the
 * metal the coldest judges; what is not enough is kept too. What was measured is only added to, and the newest of an
 * operation stands; a meter found wrong calls somebody to every frame it may have let pass; what is fitted in an oven reads
 * no frame outside it.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Dew",
        allowedDependencies = {"travellers", "gauges", "ovens"})
package org.trammel.shop.dew;
