package org.trammel.shop.designs;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the inputs of a revision say to one check of the gate.
 *
 * @param figures empty where nothing can be computed
 * @param lacking which inputs are missing for a figure, one sentence each
 * @param cannot why the inputs given cannot be together, one sentence each
 * @param givenOn a hash of the inputs the check looks at
 */
record CheckFigures(List<CheckFigure> figures, List<String> lacking, List<String> cannot, String givenOn) {

    CheckFigures {
        figures = List.copyOf(figures);
        lacking = List.copyOf(lacking);
        cannot = List.copyOf(cannot);
    }

    /** A figure is not met, or the inputs contradict each other: only a decision in writing lets the frame pass. */
    public boolean red() {
        return !cannot.isEmpty() || figures.stream().anyMatch(CheckFigure::red);
    }

    /** What is not met, with value, limit and margin. */
    String whyRed() {
        return Stream.concat(
                        figures.stream().filter(CheckFigure::red).map(CheckFigure::words),
                        cannot.stream().map(sentence -> sentence.replaceFirst("\\.$", "")))
                .collect(Collectors.joining("; "));
    }
}
