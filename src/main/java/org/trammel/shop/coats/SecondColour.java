package org.trammel.shop.coats;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * What a finish asks of the film that parts a second colour from the first.
 *
 * @param layOperations codes of the operations in which the film is laid
 * @param drawOperations codes of those in which it is drawn off
 * @param lines one for each edge that is measured, named by its landmark
 * @param most_min minutes from the second colour until every film is off, at most
 */
public record SecondColour(
        List<String> layOperations,
        List<String> drawOperations,
        List<String> lines,
        @Nullable Integer most_min) {

    private static final int MOST_LINES = 12;
    private static final int LONGEST_MIN = 2880;

    public SecondColour {
        layOperations = List.copyOf(layOperations);
        drawOperations = List.copyOf(drawOperations);
        lines = List.copyOf(lines);
    }

    SecondColour checked(String deed, List<String> coatOperations) {
        List<String> lay = NewFinish.codes("layOperations", deed, layOperations);
        List<String> draw = NewFinish.codes("drawOperations", deed, drawOperations);
        if (lay.isEmpty() || draw.isEmpty()) {
            throw Refusal.input(
                    lay.isEmpty() ? "layOperations" : "drawOperations",
                    deed,
                    "It names no operation in which the film of the second colour is "
                            + (lay.isEmpty() ? "laid." : "drawn off."),
                    "Enter codes such as 150.3, or leave all of the second colour empty.");
        }
        if (Stream.of(lay, draw, coatOperations)
                        .flatMap(List::stream)
                        .distinct()
                        .count()
                != lay.size() + draw.size() + coatOperations.size()) {
            throw Refusal.input(
                    "drawOperations",
                    deed,
                    "One operation is named for two of spraying, laying the film and drawing it off.",
                    "Name each once.");
        }
        List<String> read = lines.stream()
                .filter(line -> !line.isBlank())
                .map(line -> TypedText.line("lines", "A line", deed, line, 60))
                .toList();
        if (read.isEmpty()
                || read.size() > MOST_LINES
                || read.size() != Set.copyOf(read).size()) {
            throw Refusal.input(
                    "lines",
                    deed,
                    read.isEmpty()
                            ? "It names no line of the film."
                            : "It has more than " + MOST_LINES + " lines, or one twice.",
                    "Write one line to a row, by its landmark, each once.");
        }
        if (most_min == null || most_min < 1 || most_min > LONGEST_MIN) {
            throw Refusal.input(
                    "mostMin",
                    deed,
                    "The time from the second colour until the film is off is "
                            + (most_min == null ? "missing." : most_min + " min, not 1 to " + LONGEST_MIN + " min."),
                    "Enter it as the maker's sheet of the film says.");
        }
        return new SecondColour(lay, draw, read, most_min);
    }
}
