/**
 * From raw readings to a verdict: reduction, plausibility, the decision by a stated rule, its probability.
 *
 * <p>Invariants: limits are judged on exact decimals; a verdict carries the limits, the guard band and the rule it was
 * given by; where there is no answer the result says why.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.metrology;
