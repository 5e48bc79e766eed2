/**
 * What a weld is judged by: the heat put into it, the gas that flushes a closed tube, and how large an imperfection may be for
 * its size.
 *
 * <p>Invariants: figures are exact decimals and judged as they were read; a limit is data with a source, never a number in
 * code; a crack conforms to nothing; what cannot be computed is an answer without a value.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.welding;
