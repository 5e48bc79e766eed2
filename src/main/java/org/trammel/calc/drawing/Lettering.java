package org.trammel.calc.drawing;

import java.util.ArrayList;
import java.util.List;

/** How figures are written where the drawing is read, and how wide letters are. */
public interface Lettering {

    /** A length in millimetres, without its unit. */
    String mm(double length_mm);

    /** An angle, with its sign. */
    String degrees(double angle_rad);

    /** How much room a text of this size takes. */
    double width_mm(String words, double size_mm, boolean bold);

    /** A text in lines that are not wider than the room, where no word alone is. */
    default List<String> lines(String words, double size_mm, double room_mm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width_mm(longer, size_mm, false) > room_mm) {
                lines.add(line.toString());
                line = new StringBuilder(word);
            } else {
                line = new StringBuilder(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}
