package org.trammel.calc.statistics;

import java.util.List;

/**
 * Readings of one thing, one for each occasion.
 *
 * @param name what was read, as a sentence goes on, such as "push"
 */
public record Column(String name, List<Double> readings) {

    public Column {
        readings = List.copyOf(readings);
    }
}
