package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * A drawing at 1 : 1 on as few sheets as it takes.
 *
 * <pre>
 * sheets in a row = 1 for w ≤ W, else ⌈(w − o) / (W − o)⌉      left edge of sheet i = i (W − o)
 * </pre>
 *
 * w width of the drawing, W width free on a sheet, o how much two sheets show alike; rows likewise. Lying sheets are
 * taken where they are fewer.
 *
 * @param paper the sheet
 * @param lying whether its long side is level
 * @param sheets by rows from below, each from the left
 */
public record Tiling(Paper paper, boolean lying, List<Sheet> sheets) {

    private static final int MOST_SHEETS = 60;

    /** A drawing as wide as the sheet fits, whatever the last digit says. */
    private static final double ROUNDING_MM = 1e-9;

    public Tiling {
        sheets = List.copyOf(sheets);
    }

    /**
     * A sheet and what it shows.
     *
     * @param row from below, from 0
     * @param column from the left, from 0
     * @param left_mm of the drawing, at the sheet's left margin
     * @param bottom_mm of the drawing, at the sheet's lower margin
     * @param width_mm free on the sheet
     * @param height_mm free on the sheet
     */
    public record Sheet(int row, int column, double left_mm, double bottom_mm, double width_mm, double height_mm) {}

    /**
     * What a sheet keeps free.
     *
     * @param margin_mm on all four sides
     * @param heading_mm below the upper margin, for words and the check bar
     * @param shared_mm what neighbours show alike, for gluing
     */
    public record Frame(double margin_mm, double heading_mm, double shared_mm) {}

    /** Lays a drawing out; without an answer where a sheet has no room or there would be too many. */
    public static Answer<Tiling> of(double width_mm, double height_mm, Paper paper, Frame frame) {
        return new Objections()
                .length("width", "drawing's width", width_mm)
                .length("height", "drawing's height", height_mm)
                .lengthOrNone("margin", "sheet's margin", frame.margin_mm())
                .lengthOrNone("heading", "room for the heading", frame.heading_mm())
                .lengthOrNone("shared", "strip that two sheets share", frame.shared_mm())
                .orElse(() -> {
                    Tiling upright = laid(width_mm, height_mm, paper, false, frame);
                    Tiling lying = laid(width_mm, height_mm, paper, true, frame);
                    boolean turned = upright.sheets.isEmpty()
                            || !lying.sheets.isEmpty() && lying.sheets.size() < upright.sheets.size();
                    Tiling fewer = turned ? lying : upright;
                    return fewer.sheets.isEmpty()
                            ? Answer.none(
                                    "paper",
                                    "A drawing of " + Objections.shown(width_mm) + " by " + Objections.shown(height_mm)
                                            + " takes more than " + MOST_SHEETS
                                            + " sheets, or margin, heading and shared strip leave no room on one.")
                            : Answer.of(fewer);
                });
    }

    private static Tiling laid(double width_mm, double height_mm, Paper paper, boolean lying, Frame frame) {
        double across = (lying ? paper.height_mm() : paper.width_mm()) - 2 * frame.margin_mm();
        double up = (lying ? paper.width_mm() : paper.height_mm()) - 2 * frame.margin_mm() - frame.heading_mm();
        List<Sheet> sheets = new ArrayList<>();
        double columns = count(width_mm, across, frame.shared_mm());
        double rows = count(height_mm, up, frame.shared_mm());
        if (columns * rows <= MOST_SHEETS) {
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    sheets.add(new Sheet(
                            row,
                            column,
                            column * (across - frame.shared_mm()),
                            row * (up - frame.shared_mm()),
                            across,
                            up));
                }
            }
        }
        return new Tiling(paper, lying, sheets);
    }

    private static double count(double length_mm, double free_mm, double shared_mm) {
        if (free_mm <= shared_mm || free_mm <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        return length_mm <= free_mm + ROUNDING_MM
                ? 1
                : Math.ceil((length_mm - shared_mm - ROUNDING_MM) / (free_mm - shared_mm));
    }
}
