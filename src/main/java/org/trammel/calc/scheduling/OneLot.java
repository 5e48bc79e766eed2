package org.trammel.calc.scheduling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Brings the blanks of a frame to one lot where that opens no other length and leaves no more scrap: bars as long change
 * their lots, blanks change their bars, as long as fewer frames are split.
 */
final class OneLot {

    private static final int MOST_BARS = 150;

    private final long[] needs;
    private final String[] frames;
    private final List<CutOffer> offers;
    private final long kerf;
    private final long keepFrom;

    OneLot(long[] needs, String[] frames, List<CutOffer> offers, long kerf, long keepFrom) {
        this.needs = needs;
        this.frames = frames;
        this.offers = offers;
        this.kerf = kerf;
        this.keepFrom = keepFrom;
    }

    /** How many lots beyond one the frames have, all together. */
    int splits(List<CutOffer.Cut> cuts) {
        Map<String, Set<String>> lots = new HashMap<>();
        for (CutOffer.Cut cut : cuts) {
            cut.blanks()
                    .forEach(blank -> lots.computeIfAbsent(frames[blank], frame -> new HashSet<>())
                            .add(cut.offer().lot()));
        }
        return lots.values().stream().mapToInt(several -> several.size() - 1).sum();
    }

    List<CutOffer.Cut> settled(List<CutOffer.Cut> plan) {
        List<CutOffer.Cut> best = new ArrayList<>(plan);
        if (plan.size() > MOST_BARS) {
            return best;
        }
        boolean better = true;
        while (better && splits(best) > 0) {
            better = false;
            for (int one = 0; one < best.size(); one++) {
                better |= takesUnused(best, one);
                for (int two = 0; two < one; two++) {
                    better |= lotsChange(best, one, two) || blanksChange(best, one, two);
                }
            }
        }
        return best;
    }

    private boolean takesUnused(List<CutOffer.Cut> plan, int one) {
        CutOffer.Cut cut = plan.get(one);
        for (CutOffer offer : offers) {
            long used = plan.stream()
                    .filter(each -> each.offer().stock() == offer.stock())
                    .count();
            if (alike(offer, cut.offer())
                    && used < offer.count()
                    && takes(plan, one, new CutOffer.Cut(offer, cut.blanks()), one, cut)) {
                return true;
            }
        }
        return false;
    }

    private boolean lotsChange(List<CutOffer.Cut> plan, int one, int two) {
        CutOffer.Cut first = plan.get(one);
        CutOffer.Cut second = plan.get(two);
        return alike(first.offer(), second.offer())
                && takes(
                        plan,
                        one,
                        new CutOffer.Cut(second.offer(), first.blanks()),
                        two,
                        new CutOffer.Cut(first.offer(), second.blanks()));
    }

    private static boolean alike(CutOffer one, CutOffer two) {
        return one.length() == two.length()
                && one.remnant() == two.remnant()
                && !one.lot().equals(two.lot());
    }

    private boolean blanksChange(List<CutOffer.Cut> plan, int one, int two) {
        CutOffer.Cut first = plan.get(one);
        CutOffer.Cut second = plan.get(two);
        if (first.offer().lot().equals(second.offer().lot())) {
            return false;
        }
        for (int mine : first.blanks()) {
            for (int other : second.blanks()) {
                CutOffer.Cut firstThen = exchanged(first, mine, other);
                CutOffer.Cut secondThen = exchanged(second, other, mine);
                if (left(firstThen) >= 0
                        && left(secondThen) >= 0
                        && scrap(firstThen) + scrap(secondThen) <= scrap(first) + scrap(second)
                        && takes(plan, one, firstThen, two, secondThen)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static CutOffer.Cut exchanged(CutOffer.Cut cut, int gone, int come) {
        return new CutOffer.Cut(
                cut.offer(),
                cut.blanks().stream().map(blank -> blank == gone ? come : blank).toList());
    }

    private long left(CutOffer.Cut cut) {
        return cut.offer().length()
                + kerf
                - cut.blanks().stream().mapToLong(blank -> needs[blank]).sum();
    }

    private long scrap(CutOffer.Cut cut) {
        long offcut = Math.max(0, left(cut) - kerf);
        return offcut < keepFrom ? offcut : 0;
    }

    /** Puts two bars in their places if that splits fewer frames; the second place may be the first, for one bar alone. */
    private boolean takes(List<CutOffer.Cut> plan, int one, CutOffer.Cut first, int two, CutOffer.Cut second) {
        int before = splits(plan);
        CutOffer.Cut firstWas = plan.get(one);
        CutOffer.Cut secondWas = plan.get(two);
        plan.set(two, second);
        plan.set(one, first);
        if (splits(plan) < before) {
            return true;
        }
        plan.set(two, secondWas);
        plan.set(one, firstWas);
        return false;
    }
}
