/**
 * From raw readings to a verdict: reduction, plausibility, the decision by a stated rule, its probability; a frame's
 * alignment with its uncertainty, what would decide it, and what a failed gauge makes of it; how far a tube springs back.
 *
 * <p>Invariants: limits are judged on exact decimals; a verdict carries the limits, the guard band and the rule it was
 * given by; where there is no answer the result says why.
 *
 * <h2>How the alignment is used</h2>
 *
 * <ol>
 *   <li>Make the readings: {@link org.trammel.calc.metrology.PlateReadings} of a frame on the surface plate or
 *       {@link org.trammel.calc.metrology.PointReadings} of points in space. Each
 *       {@link org.trammel.calc.metrology.RawReading} is a figure as it was read, with the gauge's id and its
 *       {@link org.trammel.calc.metrology.Contribution causes of doubt}; what several readings have in common carries one
 *       name, such as the gauge's id or the clamping. Whatever was not read is null or an empty list. Store the readings,
 *       never the results.
 *   <li>{@link org.trammel.calc.metrology.Alignment#of(AlignmentReadings)} reduces them. No answer: a sentence for each
 *       reading at fault, its input named as the record's component. An answer: the fit of the datum with its own
 *       judgement, all deviations with their budgets, and what each of the others needs.
 *   <li>{@link org.trammel.calc.metrology.Judging} gives the verdict on one of them; limits of angles are in degrees.
 *       Where it is undecided, {@link org.trammel.calc.metrology.BetterBase} proposes what to measure it with.
 *   <li>When a gauge fails its calibration, {@link org.trammel.calc.metrology.DeviationSpan} takes the stored
 *       readings of each frame, and {@link org.trammel.calc.metrology.ReadingSpan} those of other characteristics, over
 *       the span of the possible error. Whether a verdict stands over it, and what becomes of the frame, is not for
 *       computation to say.
 *   <li>{@link org.trammel.calc.metrology.ElasticFloor} tells what a cold-set has to overcome.
 * </ol>
 *
 * <p>All of it is stateless records, lists, enums, strings and numbers; sealed types are told apart by which of their
 * components are there.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.metrology;
