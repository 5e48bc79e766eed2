/**
 * What many readings say together: control charts and their alarms, what a shift hangs on, capability and yield, lines
 * through what was done before, and how much of a spread is the gauge's.
 *
 * <p>Readings stand in the order they were taken and in one unit, any; every result is in that unit unless it says that
 * it is a ratio. Places in a list count from 0, in words from 1. Intervals are two-sided at 95 %.
 *
 * <p>Invariants: JDK, JSpecify and a maths library only; the same question always gets the same figures, drawn lots
 * included; what too few readings, no spread, mixed-up causes or a figure that is none leave open is a result with the
 * reason in words, never an exception, a null or a NaN.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.statistics;
