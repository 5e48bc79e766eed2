package org.trammel.calc.scheduling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.LongUnaryOperator;

/**
 * The best of all plans for a few blanks, by dynamic programming over the sets of blanks already cut.
 *
 * <pre>
 * bars of which there are few, one by one:  f_j(A) = min( f_{j−1}(A), min over B ⊆ A of f_{j−1}(A∖B) + cost of B on bar j )
 * bars of which there are enough:           h(A) = min over B that holds the lowest blank outside A of cost of B + h(A ∪ B)
 * best = min over A of f(A) + h(A)
 * </pre>
 *
 * A, B sets of blanks; the cost is compared as new stock, then remnants, then what is made of the offcuts. Work 3ⁿ for
 * each bar of which there are few. Source: Bellman's principle; over subsets as Held and Karp, J. SIAM 10 (1962) 196
 * (cited from memory).
 */
final class ExactCut {

    /** More are not looked at: 3¹⁶ is 43 million. */
    static final int MOST = 16;

    private static final long NEVER = Long.MAX_VALUE / 4;

    private final int all;
    private final long[] sum;
    private final long kerf;
    private final LongUnaryOperator offcuts;

    private ExactCut(long[] needs, long kerf, LongUnaryOperator offcuts) {
        this.all = (1 << needs.length) - 1;
        this.sum = new long[all + 1];
        for (int set = 1; set <= all; set++) {
            sum[set] = sum[set & (set - 1)] + needs[Integer.numberOfTrailingZeros(set)];
        }
        this.kerf = kerf;
        this.offcuts = offcuts;
    }

    /**
     * Finds the best plan; empty if the bars do not suffice.
     *
     * @param needs length of each blank and a kerf
     * @param offcuts cost of what is left of a bar, compared last
     */
    static Optional<List<CutOffer.Cut>> of(long[] needs, List<CutOffer> offers, long kerf, LongUnaryOperator offcuts) {
        return new ExactCut(needs, kerf, offcuts).solve(offers, needs.length);
    }

    /** Steps of the work it would be. */
    static double work(long[] needs, List<CutOffer> offers, long kerf) {
        ExactCut cut = new ExactCut(needs, kerf, offcut -> 0);
        double steps = Math.pow(3, needs.length - 1.0);
        for (CutOffer offer : offers) {
            if (offer.count() < needs.length) {
                double each = 0;
                for (int set = 1; set <= cut.all; set++) {
                    each += cut.fits(set, offer) ? 1 << (needs.length - Integer.bitCount(set)) : 0;
                }
                steps += each * offer.count();
            }
        }
        return steps;
    }

    private boolean fits(int set, CutOffer offer) {
        return sum[set] <= offer.length() + kerf;
    }

    private long left(int set, CutOffer offer) {
        return offcuts.applyAsLong(Math.max(0, offer.length() - sum[set]));
    }

    private Optional<List<CutOffer.Cut>> solve(List<CutOffer> offers, int blanks) {
        long[] opened = new long[all + 1];
        long[] left = new long[all + 1];
        Arrays.fill(opened, NEVER);
        opened[0] = 0;
        List<CutOffer> few = new ArrayList<>();
        List<int[]> picks = new ArrayList<>();
        List<CutOffer> enough = new ArrayList<>();
        for (CutOffer offer : offers) {
            if (offer.count() >= blanks) {
                enough.add(offer);
                continue;
            }
            for (int i = 0; i < offer.count(); i++) {
                long[] openedNext = opened.clone();
                long[] leftNext = left.clone();
                picks.add(oneMore(offer, opened, left, openedNext, leftNext));
                few.add(offer);
                opened = openedNext;
                left = leftNext;
            }
        }
        Rest rest = new Rest(enough);
        int best = -1;
        for (int set = 0; set <= all; set++) {
            if (opened[set] < NEVER
                    && rest.opened[set] < NEVER
                    && (best < 0
                            || less(
                                    opened[set] + rest.opened[set],
                                    left[set] + rest.left[set],
                                    opened[best] + rest.opened[best],
                                    left[best] + rest.left[best]))) {
                best = set;
            }
        }
        if (best < 0) {
            return Optional.empty();
        }
        List<CutOffer.Cut> cuts = new ArrayList<>();
        int set = best;
        for (int bar = few.size() - 1; bar >= 0; bar--) {
            int pick = picks.get(bar)[set];
            if (pick != 0) {
                cuts.add(new CutOffer.Cut(few.get(bar), blanks(pick)));
                set ^= pick;
            }
        }
        rest.addTo(cuts, best);
        return Optional.of(cuts);
    }

    private int[] oneMore(CutOffer offer, long[] opened, long[] left, long[] openedNext, long[] leftNext) {
        int[] picks = new int[all + 1];
        for (int pick = 1; pick <= all; pick++) {
            if (!fits(pick, offer)) {
                continue;
            }
            long here = left(pick, offer);
            int others = all ^ pick;
            for (int set = others; ; set = (set - 1) & others) {
                if (opened[set] < NEVER
                        && less(
                                opened[set] + offer.opened(),
                                left[set] + here,
                                openedNext[set | pick],
                                leftNext[set | pick])) {
                    openedNext[set | pick] = opened[set] + offer.opened();
                    leftNext[set | pick] = left[set] + here;
                    picks[set | pick] = pick;
                }
                if (set == 0) {
                    break;
                }
            }
        }
        return picks;
    }

    private static boolean less(long opened, long left, long openedThere, long leftThere) {
        return opened < openedThere || opened == openedThere && left < leftThere;
    }

    private static List<Integer> blanks(int set) {
        List<Integer> blanks = new ArrayList<>();
        for (int rest = set; rest != 0; rest &= rest - 1) {
            blanks.add(Integer.numberOfTrailingZeros(rest));
        }
        return blanks;
    }

    /** The best way to cut what is outside a set, from bars of which there are enough. */
    private final class Rest {

        private final long[] opened = new long[all + 1];
        private final long[] left = new long[all + 1];
        private final int[] picks = new int[all + 1];
        private final CutOffer[] offers = new CutOffer[all + 1];

        private Rest(List<CutOffer> enough) {
            Arrays.fill(opened, NEVER);
            opened[all] = 0;
            long[] openedOf = new long[all + 1];
            long[] leftOf = new long[all + 1];
            Arrays.fill(openedOf, NEVER);
            CutOffer[] bestOf = new CutOffer[all + 1];
            for (CutOffer offer : enough) {
                for (int set = 1; set <= all; set++) {
                    if (fits(set, offer) && less(offer.opened(), left(set, offer), openedOf[set], leftOf[set])) {
                        openedOf[set] = offer.opened();
                        leftOf[set] = left(set, offer);
                        bestOf[set] = offer;
                    }
                }
            }
            for (int set = all - 1; set >= 0; set--) {
                int open = all ^ set;
                int lowest = open & -open;
                int others = open ^ lowest;
                for (int more = others; ; more = (more - 1) & others) {
                    int pick = more | lowest;
                    if (openedOf[pick] < NEVER
                            && opened[set | pick] < NEVER
                            && less(
                                    openedOf[pick] + opened[set | pick],
                                    leftOf[pick] + left[set | pick],
                                    opened[set],
                                    left[set])) {
                        opened[set] = openedOf[pick] + opened[set | pick];
                        left[set] = leftOf[pick] + left[set | pick];
                        picks[set] = pick;
                        offers[set] = bestOf[pick];
                    }
                    if (more == 0) {
                        break;
                    }
                }
            }
        }

        private void addTo(List<CutOffer.Cut> cuts, int from) {
            for (int set = from; set != all; set |= picks[set]) {
                cuts.add(new CutOffer.Cut(offers[set], blanks(picks[set])));
            }
        }
    }
}
