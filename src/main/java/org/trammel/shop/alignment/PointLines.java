package org.trammel.shop.alignment;

import java.util.ArrayList;
import java.util.List;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Keyed;

/**
 * Points as lines of text: feature, name, x, y, z in mm, parted by semicolons or tabs; by commas where every figure has a
 * point. A first line that names the columns is passed over, empty lines likewise.
 */
final class PointLines {

    private static final String NOT_KEPT = "The points are not kept.";

    private PointLines() {}

    static List<RawFigures.TypedPoint> read(String text) {
        List<RawFigures.TypedPoint> points = new ArrayList<>();
        String[] lines = text.replace("\uFEFF", "").split("\\R");
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (!line.isEmpty()
                    && !(points.isEmpty()
                            && line.toLowerCase(java.util.Locale.ROOT).startsWith("feature"))) {
                points.add(point(i + 1, line));
            }
        }
        return points;
    }

    private static RawFigures.TypedPoint point(int number, String line) {
        String[] cells = line.contains(";")
                ? line.split(";", -1)
                : line.contains("\t") ? line.split("\t", -1) : line.split(",", -1);
        if (cells.length != 5) {
            throw Refusal.input(
                    "points",
                    NOT_KEPT,
                    "Line " + number + " has " + cells.length + " columns, and a point has five.",
                    "Write feature; name; x; y; z, parted by semicolons.");
        }
        Feature feature = Feature.typed(cells[0])
                .orElseThrow(() -> Refusal.input(
                        "points",
                        NOT_KEPT,
                        "Line " + number + " names no feature of a frame: " + cells[0].strip() + ".",
                        "The features are " + Feature.all() + "."));
        String what = NOT_KEPT + " Line " + number + ".";
        return new RawFigures.TypedPoint(
                feature,
                cells[1].strip(),
                Keyed.figure("points", what, cells[2]),
                Keyed.figure("points", what, cells[3]),
                Keyed.figure("points", what, cells[4]));
    }
}
