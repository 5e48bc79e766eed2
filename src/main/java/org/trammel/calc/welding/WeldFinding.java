package org.trammel.calc.welding;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * What a look at a weld comes to.
 *
 * @param limit in the unit of the imperfection; null where it conforms to no level at all
 * @param words one sentence with the figures
 */
public record WeldFinding(boolean conforming, @Nullable BigDecimal limit, String words) {

    /**
     * Judges one imperfection plainly: the limit itself conforms.
     *
     * @param size as measured, in the unit of the imperfection
     * @param isShort as the standard of the table says what is short
     * @param table the lines of one table
     * @return no answer where the table does not speak of it, where its limit reaches through the wall, or where a size is
     *     missing
     */
    public static Answer<WeldFinding> of(
            Imperfection imperfection,
            BigDecimal size,
            boolean isShort,
            String level,
            WeldSizes sizes,
            List<WeldLimit> table) {
        if (imperfection.never()) {
            return Answer.of(new WeldFinding(
                    false, null, "A " + imperfection.word() + " conforms to no level, however small it is."));
        }
        if (size.signum() <= 0) {
            return Answer.none(
                    "size", "The size, " + WeldLimit.said(size) + " " + imperfection.unit() + ", is not above 0.");
        }
        List<WeldLimit> lines = table.stream()
                .filter(line ->
                        line.level().equals(level) && line.imperfection() == imperfection && line.covers(sizes.wall()))
                .toList();
        if (lines.isEmpty()) {
            return Answer.none(
                    "imperfection",
                    "The table has no line for " + imperfection.word() + " at level " + level + " in a wall of "
                            + WeldLimit.said(sizes.wall()) + " mm.");
        }
        return lines.get(0).at(sizes).then(limit -> {
            WeldFinding finding = judged(lines.get(0), imperfection, size, isShort, limit);
            return finding.conforming() && imperfection.eatsWall() && limit.compareTo(sizes.wall()) >= 0
                    ? Answer.none(
                            "imperfection",
                            "The line for " + imperfection.word() + " at level " + level + " allows "
                                    + WeldLimit.said(limit) + " mm, which is all of a wall of "
                                    + WeldLimit.said(sizes.wall()) + " mm: it does not speak of so thin a wall.")
                    : Answer.of(finding);
        });
    }

    private static WeldFinding judged(
            WeldLimit line, Imperfection imperfection, BigDecimal size, boolean isShort, BigDecimal limit) {
        String unit = " " + imperfection.unit();
        String found = capital(imperfection.word()) + " of " + WeldLimit.said(size) + unit;
        if (line.allowsNone()) {
            return new WeldFinding(false, limit, found + "; level " + line.level() + " allows none.");
        }
        if (line.shortOnly() && !isShort) {
            return new WeldFinding(
                    false, limit, found + ", not short; level " + line.level() + " allows short ones only.");
        }
        return new WeldFinding(
                size.compareTo(limit) <= 0,
                limit,
                found + "; level " + line.level() + " allows " + WeldLimit.said(limit) + unit + ".");
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
