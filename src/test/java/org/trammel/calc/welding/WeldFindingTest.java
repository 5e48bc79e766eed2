package org.trammel.calc.welding;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

class WeldFindingTest {

    /** ISO 10042:1992 (EN 30042), single pore, as reprinted in Germanischer Lloyd, Rules 2000, Annex B. */
    private static final List<WeldLimit> PORES = List.of(
            line("D", Imperfection.SINGLE_PORE, null, null, "0", "0.5", WeldLimit.Size.WALL, "5.5", false),
            line("C", Imperfection.SINGLE_PORE, null, null, "0", "0.3", WeldLimit.Size.WALL, "4.5", false),
            line("B", Imperfection.SINGLE_PORE, null, null, "0", "0.25", WeldLimit.Size.WALL, "3.5", false),
            line("D", Imperfection.UNIFORM_POROSITY, null, null, "0.5", "0.035", WeldLimit.Size.WALL, "2", false),
            line("C", Imperfection.UNIFORM_POROSITY, null, null, "0.5", "0.02", WeldLimit.Size.WALL, "1.5", false),
            line("B", Imperfection.UNIFORM_POROSITY, null, null, "0.5", "0.01", WeldLimit.Size.WALL, "1", false));

    /** ISO 5817:2014, level C, lines printed in public excerpts of the table. */
    private static final List<WeldLimit> LEVEL_C = List.of(
            line("C", Imperfection.EXCESS_WELD_METAL, "0.5", null, "1", "0.15", WeldLimit.Size.WIDTH, "7", false),
            line("C", Imperfection.EXCESS_PENETRATION, "0.5", "3", "1", "0.3", WeldLimit.Size.WIDTH, null, false),
            line("C", Imperfection.EXCESS_PENETRATION, "3", null, "1", "0.6", WeldLimit.Size.WIDTH, "4", false),
            line("C", Imperfection.UNDERCUT, "0.5", "3", "0", "0.1", WeldLimit.Size.WALL, null, true),
            line("C", Imperfection.UNDERCUT, "3", null, "0", "0.1", WeldLimit.Size.WALL, "0.5", false),
            line("C", Imperfection.SURFACE_PORE, "0.5", "3", "0", "0", WeldLimit.Size.WALL, null, false));

    /** The formulas of the reprint at s = 3, 1.5 and 20 mm, worked by hand. */
    @ParameterizedTest
    @CsvSource({
        "3, 1.5, 0.9, 0.75, 0.605, 0.56, 0.53",
        "1.5, 0.75, 0.45, 0.375, 0.5525, 0.53, 0.515",
        "20, 5.5, 4.5, 3.5, 1.2, 0.9, 0.7"
    })
    void poresAreLimitedByTheThickness(
            String s, String d, String c, String b, String uniformD, String uniformC, String uniformB) {
        assertThat(limit(PORES, Imperfection.SINGLE_PORE, "D", s, null)).isEqualByComparingTo(d);
        assertThat(limit(PORES, Imperfection.SINGLE_PORE, "C", s, null)).isEqualByComparingTo(c);
        assertThat(limit(PORES, Imperfection.SINGLE_PORE, "B", s, null)).isEqualByComparingTo(b);
        assertThat(limit(PORES, Imperfection.UNIFORM_POROSITY, "D", s, null)).isEqualByComparingTo(uniformD);
        assertThat(limit(PORES, Imperfection.UNIFORM_POROSITY, "C", s, null)).isEqualByComparingTo(uniformC);
        assertThat(limit(PORES, Imperfection.UNIFORM_POROSITY, "B", s, null)).isEqualByComparingTo(uniformB);
    }

    /** t 5, b 10: excess 1 + 1.5, penetration the lesser of 1 + 6 and 4, undercut 0.5; t 1.5, b 4: 1.6, 2.2, 0.15. */
    @ParameterizedTest
    @CsvSource({"5, 10, 2.5, 4, 0.5", "1.5, 4, 1.6, 2.2, 0.15"})
    void aLimitOfTheWidthIsCapped(String t, String b, String excess, String penetration, String undercut) {
        assertThat(limit(LEVEL_C, Imperfection.EXCESS_WELD_METAL, "C", t, b)).isEqualByComparingTo(excess);
        assertThat(limit(LEVEL_C, Imperfection.EXCESS_PENETRATION, "C", t, b)).isEqualByComparingTo(penetration);
        assertThat(limit(LEVEL_C, Imperfection.UNDERCUT, "C", t, b)).isEqualByComparingTo(undercut);
    }

    @Test
    void theLimitItselfConformsAndAHairMoreDoesNot() {
        assertThat(judged(LEVEL_C, Imperfection.UNDERCUT, "0.5", false, "C", "5")
                        .conforming())
                .isTrue();
        WeldFinding more = judged(LEVEL_C, Imperfection.UNDERCUT, "0.501", false, "C", "5");
        assertThat(more.conforming()).isFalse();
        assertThat(more.words()).isEqualTo("Undercut of 0.501 mm; level C allows 0.5 mm.");
    }

    @Test
    void whereOnlyShortOnesAreAllowedALongOneDoesNotConform() {
        assertThat(judged(LEVEL_C, Imperfection.UNDERCUT, "0.1", true, "C", "1.5")
                        .conforming())
                .isTrue();
        assertThat(judged(LEVEL_C, Imperfection.UNDERCUT, "0.1", false, "C", "1.5")
                        .words())
                .isEqualTo("Undercut of 0.1 mm, not short; level C allows short ones only.");
    }

    @Test
    void whereNoneIsAllowedTheSmallestDoesNotConform() {
        assertThat(judged(LEVEL_C, Imperfection.SURFACE_PORE, "0.01", false, "C", "1.5")
                        .words())
                .isEqualTo("Surface pore of 0.01 mm; level C allows none.");
    }

    @Test
    void aCrackConformsToNothingWhateverTheTableSays() {
        List<WeldLimit> generous =
                List.of(line("D", Imperfection.CRACK, null, null, "100", "0", WeldLimit.Size.WALL, null, false));
        assertThat(judged(generous, Imperfection.CRACK, "0.001", true, "D", "2").conforming())
                .isFalse();
        assertThat(judged(List.of(), Imperfection.LACK_OF_FUSION, "0.1", true, "D", "2")
                        .conforming())
                .isFalse();
    }

    @Test
    void whatTheTableDoesNotSpeakOfIsNoVerdict() {
        assertThat(gap(find(LEVEL_C, Imperfection.OVERLAP, "0.1", false, "C", "2", null)))
                .isEqualTo("The table has no line for overlap at level C in a wall of 2 mm.");
        assertThat(gap(find(LEVEL_C, Imperfection.UNDERCUT, "0.1", false, "B", "5", null)))
                .contains("level B");
        assertThat(gap(find(LEVEL_C, Imperfection.UNDERCUT, "0.01", true, "C", "0.5", null)))
                .contains("0.5 mm");
        assertThat(gap(find(LEVEL_C, Imperfection.EXCESS_WELD_METAL, "1", false, "C", "5", null)))
                .isEqualTo("The width of the weld was not measured.");
        assertThat(gap(find(LEVEL_C, Imperfection.UNDERCUT, "0", false, "C", "5", null)))
                .contains("not above 0");
    }

    /** EN 25817:1992, level C, undercut 1 mm, as its table was reprinted without a range of walls; what is left of 0.8 mm, by hand. */
    @Test
    void aLimitThatReachesThroughTheWallIsNoLimitForIt() {
        List<WeldLimit> old =
                List.of(line("C", Imperfection.UNDERCUT, null, null, "1", "0", WeldLimit.Size.WALL, null, false));
        assertThat(gap(find(old, Imperfection.UNDERCUT, "0.05", false, "C", "0.8", null)))
                .contains("allows 1 mm", "all of a wall of 0.8 mm");
        assertThat(gap(find(old, Imperfection.UNDERCUT, "1", false, "C", "1", null)))
                .contains("all of a wall of 1 mm");
        assertThat(judged(old, Imperfection.UNDERCUT, "1.01", false, "C", "0.8").conforming())
                .isFalse();
        assertThat(judged(old, Imperfection.UNDERCUT, "1", false, "C", "1.01").conforming())
                .isTrue();
        assertThat(judged(PORES, Imperfection.UNIFORM_POROSITY, "0.5", false, "C", "0.9")
                        .conforming())
                .isTrue();
    }

    @Test
    void aLineIsSaidAsATablePrintsIt() {
        assertThat(LEVEL_C.stream().map(WeldLimit::words))
                .containsExactly(
                        "1 + 0.15 b, at most 7 mm",
                        "1 + 0.3 b mm",
                        "1 + 0.6 b, at most 4 mm",
                        "short ones, 0.1 t mm",
                        "0.1 t, at most 0.5 mm",
                        "none");
    }

    private static BigDecimal limit(
            List<WeldLimit> table, Imperfection imperfection, String level, String wall, @Nullable String width) {
        return java.util.Objects.requireNonNull(
                ((Answer.Determined<WeldFinding>) find(table, imperfection, "0.01", true, level, wall, width))
                        .value()
                        .limit());
    }

    private static WeldFinding judged(
            List<WeldLimit> table, Imperfection imperfection, String size, boolean isShort, String level, String wall) {
        return ((Answer.Determined<WeldFinding>) find(table, imperfection, size, isShort, level, wall, null)).value();
    }

    private static Answer<WeldFinding> find(
            List<WeldLimit> table,
            Imperfection imperfection,
            String size,
            boolean isShort,
            String level,
            String wall,
            @Nullable String width) {
        return WeldFinding.of(
                imperfection,
                new BigDecimal(size),
                isShort,
                level,
                new WeldSizes(new BigDecimal(wall), width == null ? null : new BigDecimal(width), null),
                table);
    }

    private static String gap(Answer<?> answer) {
        return ((Answer.NotDeterminable<?>) answer).gaps().get(0).words();
    }

    private static WeldLimit line(
            String level,
            Imperfection imperfection,
            @Nullable String over,
            @Nullable String upTo,
            String offset,
            String factor,
            WeldLimit.Size of,
            @Nullable String most,
            boolean shortOnly) {
        return new WeldLimit(
                level,
                imperfection,
                over == null ? null : new BigDecimal(over),
                upTo == null ? null : new BigDecimal(upTo),
                new BigDecimal(offset),
                new BigDecimal(factor),
                of,
                most == null ? null : new BigDecimal(most),
                shortOnly);
    }
}
