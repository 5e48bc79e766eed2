package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.coating.FilmArea;
import org.trammel.calc.coating.FilmFinding;
import org.trammel.calc.coating.FilmRule;
import org.trammel.calc.coating.FilmVerdict;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;

/**
 * Judges a map by the rule of its finish. Where the doubt of the gauge counts, its error is one for the whole map: it
 * conforms if it does with every reading moved by the guard band to either side, it does not if it does at neither of these
 * nor as read, and is undecided else.
 */
final class FilmJudge {

    private FilmJudge() {}

    /** @param guard_um null where the plain rule was asked for */
    record Judged(
            CoatVerdict verdict,
            List<String> words,
            @Nullable BigDecimal guard_um) {}

    static Judged plain(List<FilmArea> areas, FilmRule rule, String deed) {
        FilmVerdict read = asRead(areas, rule, deed);
        return new Judged(read.conforming() ? CoatVerdict.CONFORMING : CoatVerdict.NOT_CONFORMING, words(read), null);
    }

    static Judged guarded(List<FilmArea> areas, FilmRule rule, BigDecimal u_um, BigDecimal factor, String deed) {
        FilmVerdict read = asRead(areas, rule, deed);
        BigDecimal guard = u_um.multiply(factor).setScale(2, RoundingMode.CEILING);
        List<Boolean> each = Stream.of(guard.negate(), BigDecimal.ZERO, guard)
                .map(by -> conforms(FilmMap.moved(areas, by), rule))
                .toList();
        CoatVerdict verdict = each.stream().allMatch(one -> one)
                ? CoatVerdict.CONFORMING
                : each.stream().noneMatch(one -> one) ? CoatVerdict.NOT_CONFORMING : CoatVerdict.UNDECIDED;
        List<String> words = new ArrayList<>(words(read));
        if (verdict == CoatVerdict.UNDECIDED) {
            words.add("Within the guard band of " + guard.toPlainString()
                    + " µm: read off by so much it would be otherwise.");
        }
        return new Judged(verdict, words, guard);
    }

    private static boolean conforms(List<FilmArea> areas, FilmRule rule) {
        return FilmVerdict.of(areas, rule) instanceof Answer.Determined<FilmVerdict> there
                && there.value().conforming();
    }

    private static FilmVerdict asRead(List<FilmArea> areas, FilmRule rule, String deed) {
        Answer<FilmVerdict> answer = FilmVerdict.of(areas, rule);
        if (answer instanceof Answer.NotDeterminable<FilmVerdict> gap) {
            throw Refusal.input("areas", deed, gap.gaps().get(0).words(), "Read it again, or complete the map.");
        }
        return ((Answer.Determined<FilmVerdict>) answer).value();
    }

    /** What is not met first; then the figures that are. */
    private static List<String> words(FilmVerdict read) {
        return Stream.concat(
                        read.findings().stream().filter(finding -> !finding.conforming()),
                        read.findings().stream().filter(FilmFinding::conforming))
                .map(FilmFinding::words)
                .limit(40)
                .toList();
    }
}
