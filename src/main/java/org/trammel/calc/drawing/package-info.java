/**
 * A frame drawn on sheets of paper, as plain shapes in millimetres of the paper: whoever shows it, on a screen or in a
 * file, only carries the shapes over, so that both are the same picture.
 *
 * <p>Axes of a sheet: x to the right, y up from its lower left corner. Third angle projection; the front of the frame is
 * to the right, so that seen from above the drive side lies below.
 *
 * <p>Line types, dimensions, scales and title block follow ISO 128, ISO 129-1, ISO 5455 and ISO 7200, from memory.
 *
 * <p>Invariants: no text of a dimension lies on another one or leaves the frame of the sheet; the scale is a standard one
 * and stands on the sheet.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.drawing;
