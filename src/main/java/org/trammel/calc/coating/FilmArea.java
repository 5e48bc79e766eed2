package org.trammel.calc.coating;

import java.math.BigDecimal;
import java.util.List;

/**
 * Readings on one area of a frame, such as one side of a tube.
 *
 * @param name of the area, as the map has it
 * @param spots each a place of a few centimetres with the readings taken there, in µm
 */
public record FilmArea(String name, List<List<BigDecimal>> spots) {

    public FilmArea {
        spots = spots.stream().map(List::copyOf).toList();
    }

    /** An area whose readings belong to no spots. */
    public static FilmArea of(String name, List<BigDecimal> readings_um) {
        return new FilmArea(name, readings_um.stream().map(List::of).toList());
    }

    List<BigDecimal> readings_um() {
        return spots.stream().flatMap(List::stream).toList();
    }
}
