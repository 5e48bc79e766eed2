/**
 * Bolts and what they hold together: what a torque tool may err by, whether a target fits between what a sheet allows, the
 * pull it makes in the bolt, the order in which bolts are tightened, and how tolerances stack up.
 *
 * <p>Invariants: figures are exact decimals; a band that is rounded is rounded inwards, so that what is told to fit, fits.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.fastening;
