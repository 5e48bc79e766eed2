/**
 * What tells one frame or one worker from another: serials with their check character, scribe marks, punches.
 *
 * <p>Invariants: a serial that is read was checked; two open frames never share a mark that one misread cut would turn
 * into the other.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.marks;
