package org.trammel.calc.scheduling;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.trammel.calc.units.Answer;

/**
 * Blanks of plain-gauge tube laid into bars and remnants.
 *
 * <pre>
 * n blanks fit on a bar where  Σ l + (n − 1) k ≤ L;  they leave  max(0, L − Σ l − n k)
 * </pre>
 *
 * l blank, k kerf, L bar, mm. A bar holds blanks of its own section and alloy only, and is of one lot.
 *
 * <p>Of all plans the one is taken that opens the least length of new bars; among those, the least length of remnants;
 * then the least scrap (offcuts too short to keep), then the fewest bars, then the fewest frames whose blanks of a kind
 * come from more than one lot. The last is sought by exchange and may be missed. Urgent blanks are cut first.
 *
 * <p>Validity: up to 16 blanks of a kind every plan is looked at, unless there are so many single remnants that it would
 * take more than a billion steps; beyond, a near-exact plan is sought and the least possible told beside it ({@link
 * CutPlan.Share}). Lengths count in thousandths of a millimetre, blanks rounded up, bars down. Source: cutting-stock
 * problem, L. V. Kantorovich, Management Science 6 (1960) 366 (cited from memory); methods at the classes that have them.
 */
public final class Nesting {

    private static final double LONGEST_MM = 20_000;

    private final List<Answer.Gap> gaps = new ArrayList<>();

    private Nesting() {}

    /** Plans; without an answer where a length cannot be, or the rack does not hold what is asked for. */
    public static Answer<CutPlan> of(List<Blank> blanks, List<TubeStock> stock, Saw saw) {
        Nesting nesting = new Nesting();
        nesting.ask(blanks, stock, saw);
        if (!nesting.gaps.isEmpty()) {
            return new Answer.NotDeterminable<>(nesting.gaps);
        }
        Map<TubeKind, List<Blank>> kinds = new LinkedHashMap<>();
        blanks.forEach(blank ->
                kinds.computeIfAbsent(blank.kind(), kind -> new ArrayList<>()).add(blank));
        List<CutBar> bars = new ArrayList<>();
        List<CutPlan.Share> shares = new ArrayList<>();
        kinds.forEach((kind, these) -> {
            List<TubeStock> there =
                    stock.stream().filter(each -> each.kind().equals(kind)).toList();
            nesting.askLongest(kind, these, there);
            if (nesting.gaps.isEmpty()) {
                Optional<KindCut.Found> found = new KindCut(kind, these, there, saw).plan();
                found.ifPresentOrElse(
                        plan -> {
                            bars.addAll(plan.bars());
                            shares.add(plan.share());
                        },
                        () -> nesting.doesNotSuffice(kind, these, there));
            }
        });
        if (!nesting.gaps.isEmpty()) {
            return new Answer.NotDeterminable<>(nesting.gaps);
        }
        bars.sort(Comparator.comparingInt(CutBar::urgency));
        return Answer.of(new CutPlan(bars, shares));
    }

    private void ask(List<Blank> blanks, List<TubeStock> stock, Saw saw) {
        holds(!blanks.isEmpty(), "blanks", "No blank is given: there is nothing to cut.");
        notBelow0("kerf", "kerf", saw.kerf_mm());
        notBelow0("keepFrom", "shortest remnant to keep", saw.keepFrom_mm());
        for (int i = 0; i < blanks.size(); i++) {
            length(
                    "blanks[" + i + "].length",
                    blank(blanks.get(i)),
                    blanks.get(i).length_mm());
        }
        for (int i = 0; i < stock.size(); i++) {
            TubeStock bars = stock.get(i);
            String what = (bars.remnant() ? "remnant of " : "bar of ") + bars.kind() + ", lot " + bars.lot() + ",";
            length("stock[" + i + "].length", what, bars.length_mm());
            holds(
                    bars.count() >= 1,
                    "stock[" + i + "].count",
                    "Of the " + what + " there are " + bars.count() + ": not one.");
        }
    }

    private void length(String input, String what, double length_mm) {
        if (!(Double.isFinite(length_mm) && length_mm > 0)) {
            holds(false, input, "The " + what + " has a length of " + written(length_mm) + ", which is not above 0.");
        } else {
            holds(
                    length_mm <= LONGEST_MM,
                    input,
                    "The " + what + " has a length of " + written(length_mm) + ", which is more than "
                            + written(LONGEST_MM) + ".");
        }
    }

    private void notBelow0(String input, String what, double length_mm) {
        holds(
                length_mm >= 0 && length_mm <= LONGEST_MM,
                input,
                "The " + what + ", " + written(length_mm) + ", is not between 0 and " + written(LONGEST_MM) + ".");
    }

    private void askLongest(TubeKind kind, List<Blank> blanks, List<TubeStock> stock) {
        double longest = stock.stream().mapToDouble(TubeStock::length_mm).max().orElse(0);
        if (stock.isEmpty()) {
            holds(
                    false,
                    "stock",
                    "There is no bar and no remnant of " + kind + " for the " + blank(blanks.get(0)) + ".");
            return;
        }
        for (Blank blank : blanks) {
            holds(
                    blank.length_mm() <= longest,
                    "blanks",
                    "The " + blank(blank) + ", " + written(blank.length_mm())
                            + ", is longer than every bar and remnant of " + kind + ": the longest has "
                            + written(longest) + ".");
        }
    }

    private void doesNotSuffice(TubeKind kind, List<Blank> blanks, List<TubeStock> stock) {
        double asked = blanks.stream().mapToDouble(Blank::length_mm).sum();
        double there = stock.stream()
                .mapToDouble(each -> each.length_mm() * each.count())
                .sum();
        holds(
                false,
                "stock",
                "The bars and remnants of " + kind + ", " + written(there) + " in all, were not found to suffice for "
                        + blanks.size() + (blanks.size() == 1 ? " blank of " : " blanks of ") + written(asked)
                        + " in all.");
    }

    private static String blank(Blank blank) {
        return blank.name() + " of " + blank.frame();
    }

    private static String written(double length_mm) {
        return Double.isFinite(length_mm)
                ? BigDecimal.valueOf(length_mm)
                                .setScale(3, RoundingMode.HALF_UP)
                                .stripTrailingZeros()
                                .toPlainString()
                        + " mm"
                : "no number";
    }

    private void holds(boolean met, String input, String words) {
        if (!met) {
            gaps.add(new Answer.Gap(input, words));
        }
    }
}
