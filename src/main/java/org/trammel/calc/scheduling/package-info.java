/**
 * What is done with limited means: which blanks are cut from which bar.
 *
 * <p>Invariants: JDK and JSpecify only; lengths of tube are reckoned in whole thousandths of a millimetre, so that a plan
 * that just fits does not hang on rounding; the same question always gets the same plan; whatever has no answer is a
 * result with a reason in words that names the input.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.scheduling;
