package org.trammel.calc.scheduling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The blanks of one section and alloy, in thousandths of a millimetre, and the plan for them. */
final class KindCut {

    private static final double EXACT_WORK = 1e9;

    private final TubeKind kind;
    private final List<Blank> blanks;
    private final List<TubeStock> stock;
    private final long[] needs;
    private final List<CutOffer> offers;
    private final long kerf;
    private final long keepFrom;

    KindCut(TubeKind kind, List<Blank> blanks, List<TubeStock> stock, Saw saw) {
        this.kind = kind;
        this.blanks = blanks;
        this.stock = stock;
        this.kerf = up(saw.kerf_mm());
        this.keepFrom = up(saw.keepFrom_mm());
        this.needs =
                blanks.stream().mapToLong(blank -> up(blank.length_mm()) + kerf).toArray();
        this.offers = new ArrayList<>();
        long shortest =
                blanks.stream().mapToLong(blank -> up(blank.length_mm())).min().orElse(0);
        for (int i = 0; i < stock.size(); i++) {
            TubeStock bars = stock.get(i);
            if (down(bars.length_mm()) >= shortest) {
                offers.add(new CutOffer(
                        i, down(bars.length_mm()), bars.remnant(), Math.min(bars.count(), blanks.size()), bars.lot()));
            }
        }
    }

    /** A blank counts as at least as long as asked; what is beyond a ten-millionth of a millimetre is rounding of doubles. */
    private static long up(double length_mm) {
        return (long) Math.ceil(length_mm * 1000 - 1e-4);
    }

    private static long down(double length_mm) {
        return (long) Math.floor(length_mm * 1000 + 1e-4);
    }

    private static double mm(long thousandths) {
        return thousandths / 1000.0;
    }

    /** A plan and what is known of it. */
    record Found(List<CutBar> bars, CutPlan.Share share) {}

    Optional<Found> plan() {
        long least = leastNew();
        boolean all = needs.length <= ExactCut.MOST && ExactCut.work(needs, offers, kerf) <= EXACT_WORK;
        OneLot oneLot =
                new OneLot(needs, blanks.stream().map(Blank::frame).toArray(String[]::new), offers, kerf, keepFrom);
        return (all ? exact(oneLot) : NearCut.of(needs, offers, kerf, least))
                .map(oneLot::settled)
                .map(cuts -> {
                    long fresh = cuts.stream()
                            .filter(cut -> !cut.offer().remnant())
                            .mapToLong(cut -> cut.offer().length())
                            .sum();
                    return new Found(
                            cuts.stream().map(this::bar).toList(),
                            new CutPlan.Share(kind, mm(fresh), mm(all ? fresh : least), all || fresh <= least));
                });
    }

    /** The best plan; one of a single lot, or else one that settles with the fewest split frames, where it costs the same. */
    private Optional<List<CutOffer.Cut>> exact(OneLot oneLot) {
        Optional<List<CutOffer.Cut>> best = ExactCut.of(needs, offers, kerf, this::scrap);
        if (best.isEmpty() || oneLot.splits(best.get()) == 0) {
            return best;
        }
        Set<String> lots = new TreeSet<>(offers.stream().map(CutOffer::lot).toList());
        for (String lot : lots) {
            Optional<List<CutOffer.Cut>> ofLot = ExactCut.of(
                    needs,
                    offers.stream().filter(offer -> offer.lot().equals(lot)).toList(),
                    kerf,
                    this::scrap);
            if (ofLot.isPresent() && cost(ofLot.get()).equals(cost(best.get()))) {
                return ofLot;
            }
        }
        return best;
    }

    private List<Long> cost(List<CutOffer.Cut> cuts) {
        long opened = cuts.stream().mapToLong(cut -> cut.offer().opened()).sum();
        long scrap = cuts.stream().mapToLong(cut -> scrap(offcut(cut))).sum();
        return List.of(opened, scrap);
    }

    /** What of an offcut is scrap, and one for the bar: of plans that scrap as much, the one with fewer bars. */
    private long scrap(long offcut) {
        return ((offcut < keepFrom ? offcut : 0) << 8) + 1;
    }

    private long offcut(CutOffer.Cut cut) {
        return Math.max(
                0,
                cut.offer().length()
                        - cut.blanks().stream().mapToLong(blank -> needs[blank]).sum());
    }

    /**
     * No plan opens less new stock than this:
     *
     * <pre>
     * ( Σ (l + k) − Σ (r + k) ) · min L / (L + k),  rounded up to a multiple of the greatest common divisor of all L
     * </pre>
     *
     * l blanks, r remnants, L new bars, k kerf: each bar holds blanks with their kerfs up to its length and one kerf.
     */
    long leastNew() {
        double open = 0;
        for (long need : needs) {
            open += need;
        }
        double share = 1;
        long divisor = 0;
        for (CutOffer offer : offers) {
            if (offer.remnant()) {
                open -= (double) (offer.length() + kerf) * offer.count();
            } else {
                share = Math.min(share, offer.length() / (double) (offer.length() + kerf));
                divisor = gcd(offer.length(), divisor);
            }
        }
        if (open <= 0 || divisor == 0) {
            return 0;
        }
        return (long) Math.ceil((open * share - 1) / divisor) * divisor;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    private CutBar bar(CutOffer.Cut cut) {
        TubeStock bar = stock.get(cut.offer().stock());
        long lengths =
                cut.blanks().stream().mapToLong(blank -> needs[blank] - kerf).sum();
        long beyond = cut.offer().length() - lengths;
        int cuts = cut.blanks().size() - (beyond <= kerf * (cut.blanks().size() - 1) ? 1 : 0);
        long taken = Math.min(beyond, kerf * cuts);
        long offcut = beyond - taken;
        List<Blank> inOrder = cut.blanks().stream()
                .map(blanks::get)
                .sorted(Comparator.comparingInt(Blank::urgency)
                        .thenComparing(Blank::length_mm, Comparator.reverseOrder()))
                .toList();
        return new CutBar(bar, inOrder, cuts, mm(taken), mm(offcut), offcut > 0 && offcut >= keepFrom);
    }
}
