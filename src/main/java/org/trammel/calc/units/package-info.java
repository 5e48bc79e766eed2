/**
 * Numbers as people type and read them, and calendar rules that count in months.
 *
 * <p>Invariants: nothing here knows the time or the locale of the machine; what cannot be read is a result with a
 * reason in words, never an exception, a null or a NaN.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.units;
