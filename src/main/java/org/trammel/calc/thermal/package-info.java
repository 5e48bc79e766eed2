/**
 * Times that open and close gates, and the air they run in: windows, waiting times, dew point. What a logger recorded of an
 * oven, from the text of its file on: {@link org.trammel.calc.thermal.LoggerFile}.
 *
 * <p>Invariants: the present moment is always an argument; a doubt about a start is kept and always counted against the
 * frame.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.thermal;
