package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.Keyed;

/**
 * Section of a tube.
 *
 * @param wall_mm of a plain tube, or at one end of a butted one
 * @param middle_mm between the butts; null for a plain tube
 * @param other_mm at the other end; null where both are alike
 */
public record Section(
        BigDecimal outside_mm,
        BigDecimal wall_mm,
        @Nullable BigDecimal middle_mm,
        @Nullable BigDecimal other_mm) {

    private static final Pattern BETWEEN_TUBES = Pattern.compile("[\\r\\n;·]+");
    private static final Pattern TIMES = Pattern.compile("[xX×*]");
    private static final BigDecimal WIDEST_MM = BigDecimal.valueOf(500);

    /** Without the zeros that a column adds. */
    public Section {
        outside_mm = Objects.requireNonNull(LotRow.plain(outside_mm));
        wall_mm = Objects.requireNonNull(LotRow.plain(wall_mm));
        middle_mm = LotRow.plain(middle_mm);
        other_mm = LotRow.plain(other_mm);
    }

    /** What stands in a column each, where there is one. */
    static @Nullable Section of(
            @Nullable BigDecimal outside_mm,
            @Nullable BigDecimal wall_mm,
            @Nullable BigDecimal middle_mm,
            @Nullable BigDecimal other_mm) {
        return outside_mm == null || wall_mm == null ? null : new Section(outside_mm, wall_mm, middle_mm, other_mm);
    }

    /**
     * Reads sections as people write them: 42 × 1,4, a butted one 38 × 0,9/0,6/0,9, each on a line of its own.
     *
     * @param not what is not done otherwise, as a sentence
     */
    static List<Section> read(String typed, String not) {
        List<Section> sections = new ArrayList<>();
        for (String line : BETWEEN_TUBES.split(typed)) {
            if (!line.isBlank()) {
                sections.add(one(line.strip().replace("mm", ""), not));
            }
        }
        return sections;
    }

    private static Section one(String line, String not) {
        String[] halves = TIMES.split(line);
        String[] walls = halves.length == 2 ? halves[1].split("/") : new String[0];
        if (walls.length < 1 || walls.length > 3) {
            throw Refusal.input(
                    "sections",
                    not,
                    "“" + (line.length() > 30 ? line.substring(0, 30) + "…" : line) + "” is no section.",
                    "Write outside and wall, such as 42 × 1,4; a butted tube as 38 × 0,9/0,6/0,9.");
        }
        BigDecimal outside = Keyed.figure("sections", not, halves[0]);
        List<BigDecimal> read = Arrays.stream(walls)
                .map(wall -> Keyed.figure("sections", not, wall))
                .toList();
        return new Section(
                outside, read.get(0), read.size() > 1 ? read.get(1) : null, read.size() > 2 ? read.get(2) : null);
    }

    /** Refuses what no tube can be. */
    void refuseUnlessTube(String not) {
        figure(outside_mm, not);
        for (BigDecimal wall : walls()) {
            figure(wall, not);
            if (wall.multiply(BigDecimal.valueOf(2)).compareTo(outside_mm) >= 0) {
                throw Refusal.input(
                        "sections",
                        not,
                        "A wall of " + wall.toPlainString() + " mm leaves no bore in a tube of "
                                + outside_mm.toPlainString() + " mm.",
                        "Enter outside and wall as they are written on the tube.");
            }
        }
        if (middle_mm == null && other_mm != null) {
            throw Refusal.input(
                    "sections",
                    not,
                    "A plain tube has one wall.",
                    "Enter the wall between the butts too, or leave the other end out.");
        }
    }

    private static void figure(BigDecimal figure_mm, String not) {
        if (figure_mm.signum() <= 0 || figure_mm.compareTo(WIDEST_MM) > 0 || figure_mm.scale() > 3) {
            throw Refusal.input(
                    "sections",
                    not,
                    "Outside and wall are above 0 and at most " + WIDEST_MM + " mm, with three decimals at most.",
                    "Enter them in millimetres.");
        }
    }

    /** Wall at one end, between the butts, at the other end; one for a plain tube. */
    List<BigDecimal> walls() {
        return middle_mm == null
                ? List.of(wall_mm)
                : List.of(wall_mm, middle_mm, other_mm == null ? wall_mm : other_mm);
    }

    /** Such as 42 × 1,4 mm, or 38 × 0,9/0,6/0,9 mm. */
    String words(Formats formats) {
        return formats.number(outside_mm) + " × "
                + walls().stream().map(formats::number).collect(Collectors.joining("/")) + " mm";
    }
}
