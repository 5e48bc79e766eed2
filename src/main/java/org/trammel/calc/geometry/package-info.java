/**
 * The frame as lengths, angles and points: closure of the layout, clearances, tube axes, mitre curves, formed ends,
 * expected mass and the swing of a rear end.
 *
 * <p>Axes: origin in the middle of the (front) bottom bracket shell; x ahead, y up, z to the drive side; millimetres.
 * Angles are in radians, those of head and seat tube against the ground line, rising rearward.
 *
 * <p>Invariants: JDK, JSpecify and a maths library only; whatever has no answer is a result with a reason in words that
 * names the input, never an exception, a null or a NaN.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.geometry;
