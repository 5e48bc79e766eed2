package org.trammel.calc.coating;

import java.math.BigDecimal;
import org.trammel.calc.units.Answer;

/**
 * The cross-cut test: how well a film holds where a lattice is cut through it.
 *
 * <p>Source: ISO 2409 as tables of gauge makers print it, with the grades of ASTM D3359 method B beside it. Not for films
 * above 250 µm nor for textured ones.
 *
 * @param grade 0, nothing came off, to 5
 * @param other the grade of the other standard, 5B to 0B
 */
public record CrossCut(int grade, String other) {

    private static final int[] MOST_PERCENT = {0, 5, 15, 35, 65};
    private static final BigDecimal THICKEST_UM = BigDecimal.valueOf(250);

    /**
     * The grade.
     *
     * @param flaked_percent of the lattice's area that came off
     */
    public static Answer<CrossCut> of(BigDecimal flaked_percent) {
        if (flaked_percent.signum() < 0 || flaked_percent.compareTo(BigDecimal.valueOf(100)) > 0) {
            return Answer.none(
                    "flaked",
                    "The share that came off, " + FilmVerdict.said(flaked_percent) + " %, is not from 0 to 100 %.");
        }
        int grade = 0;
        while (grade < MOST_PERCENT.length && flaked_percent.compareTo(BigDecimal.valueOf(MOST_PERCENT[grade])) > 0) {
            grade++;
        }
        return Answer.of(new CrossCut(grade, 5 - grade + "B"));
    }

    /**
     * How far apart the cuts are.
     *
     * @param film_um thickness of the film
     * @return millimetres
     */
    public static Answer<Integer> spacing_mm(BigDecimal film_um, boolean softBase) {
        if (film_um.signum() <= 0 || film_um.compareTo(THICKEST_UM) > 0) {
            return Answer.none(
                    "film",
                    "The cross-cut is for films above 0 and up to " + FilmVerdict.said(THICKEST_UM) + " µm, not for "
                            + FilmVerdict.said(film_um) + " µm.");
        }
        if (film_um.compareTo(BigDecimal.valueOf(60)) <= 0) {
            return Answer.of(softBase ? 2 : 1);
        }
        return Answer.of(film_um.compareTo(BigDecimal.valueOf(120)) <= 0 ? 2 : 3);
    }
}
