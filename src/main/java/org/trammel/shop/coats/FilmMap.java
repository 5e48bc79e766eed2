package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.trammel.calc.coating.FilmArea;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;

/**
 * Readings of a film as people key them: one line to an area, spots parted by a stroke, readings by spaces. An area keeps
 * its place in the map of the finish.
 */
final class FilmMap {

    private static final int MOST_READINGS = 1000;

    private FilmMap() {}

    /** One area's line, such as {@code 72 68 81 / 77 64 59}. */
    static FilmArea area(String name, String field, String deed, String typed) {
        List<List<BigDecimal>> spots = new ArrayList<>();
        for (String spot : typed.split("[/|;]")) {
            List<BigDecimal> readings = new ArrayList<>();
            for (String figure : spot.strip().split("\\s+")) {
                if (!figure.isEmpty()) {
                    readings.add(read(name, field, deed, figure));
                }
            }
            if (!readings.isEmpty()) {
                spots.add(readings);
            }
        }
        return new FilmArea(name, spots);
    }

    private static BigDecimal read(String name, String field, String deed, String figure) {
        if (TypedNumber.of(figure) instanceof TypedNumber.Read read) {
            return read.value();
        }
        throw Refusal.input(
                field,
                deed,
                "“" + (figure.length() > 20 ? figure.substring(0, 20) + "…" : figure) + "” on " + name
                        + " is no reading.",
                "Key micrometres, spaces between readings and a stroke between spots: 72 68 81 / 77 64 59.");
    }

    static List<BigDecimal> all(List<FilmArea> areas, String deed) {
        List<BigDecimal> all = areas.stream()
                .flatMap(area -> area.spots().stream())
                .flatMap(List::stream)
                .toList();
        if (all.size() > MOST_READINGS) {
            throw Refusal.input(
                    "areas", deed, "There are more than " + MOST_READINGS + " readings.", "Key one map of the frame.");
        }
        return all;
    }

    /** The areas with every reading moved by as much as the gauge may be off. */
    static List<FilmArea> moved(List<FilmArea> areas, BigDecimal by_um) {
        return areas.stream()
                .map(area -> new FilmArea(
                        area.name(),
                        area.spots().stream()
                                .map(spot -> spot.stream()
                                        .map(reading -> reading.add(by_um))
                                        .toList())
                                .toList()))
                .toList();
    }

    static String written(List<FilmArea> areas) {
        return areas.stream()
                .map(area -> area.name() + ": "
                        + area.spots().stream()
                                .map(spot -> spot.stream()
                                        .map(reading ->
                                                reading.stripTrailingZeros().toPlainString())
                                        .collect(Collectors.joining(" ")))
                                .collect(Collectors.joining(" / ")))
                .collect(Collectors.joining("\n"));
    }
}
