package org.trammel.calc.scheduling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * A good plan for many blanks: first fit decreasing, then a few bars at a time are cut anew in the best way.
 *
 * <p>First fit decreasing, once for each stock length taken first: longest blank first, each on the first bar opened on
 * which it fits; else the shortest unused remnant, else a new bar. Then, again and again, some bars are taken by chance
 * (of a fixed seed), every second time the emptiest among them, and what they hold is cut anew by {@link ExactCut}; among
 * plans that open as much, the one whose offcuts are most unequal is kept, so that room gathers on few bars until one of
 * them is not needed. It ends when no plan can open less, after three thousand tries in vain or a fixed amount of work.
 *
 * <p>Source: D. S. Johnson, Near-optimal bin packing algorithms, MIT 1973 (first fit decreasing opens at most 11/9 of
 * the least and a constant); large neighbourhood search, P. Shaw, CP98 (both cited from memory).
 */
final class NearCut {

    private static final int AT_ONCE = 10;
    private static final double MOST_WORK = 3e8;
    private static final int MOST_IN_VAIN = 3000;

    private final long[] needs;
    private final List<CutOffer> offers;
    private final long kerf;
    private final long leastNew;

    NearCut(long[] needs, List<CutOffer> offers, long kerf, long leastNew) {
        this.needs = needs;
        this.offers = offers;
        this.kerf = kerf;
        this.leastNew = leastNew;
    }

    /** Finds a plan; empty if none was found. */
    static Optional<List<CutOffer.Cut>> of(long[] needs, List<CutOffer> offers, long kerf, long leastNew) {
        NearCut cut = new NearCut(needs, offers, kerf, leastNew);
        return cut.firstFit().map(cut::improved);
    }

    /** First fit decreasing, the best over which stock length is opened first. */
    Optional<List<CutOffer.Cut>> firstFit() {
        List<CutOffer> fresh = offers.stream().filter(offer -> !offer.remnant()).toList();
        List<CutOffer> remnants = offers.stream()
                .filter(CutOffer::remnant)
                .sorted(Comparator.comparingLong(CutOffer::length))
                .toList();
        Optional<List<CutOffer.Cut>> best = Optional.empty();
        for (int first = 0; first < Math.max(1, fresh.size()); first++) {
            List<CutOffer> order = new ArrayList<>(remnants);
            for (int i = 0; i < fresh.size(); i++) {
                order.add(fresh.get((first + i) % fresh.size()));
            }
            Optional<List<CutOffer.Cut>> found = firstFit(order);
            if (found.isPresent() && (best.isEmpty() || opened(found.get()).compareTo(opened(best.get())) < 0)) {
                best = found;
            }
        }
        return best;
    }

    private Optional<List<CutOffer.Cut>> firstFit(List<CutOffer> order) {
        List<CutOffer> bars = new ArrayList<>();
        List<Long> rooms = new ArrayList<>();
        List<List<Integer>> blanks = new ArrayList<>();
        int[] unused = order.stream().mapToInt(CutOffer::count).toArray();
        Integer[] longestFirst = new Integer[needs.length];
        Arrays.setAll(longestFirst, i -> i);
        Arrays.sort(longestFirst, Comparator.comparingLong((Integer i) -> -needs[i]));
        for (int blank : longestFirst) {
            int bar = 0;
            while (bar < bars.size() && rooms.get(bar) < needs[blank]) {
                bar++;
            }
            if (bar == bars.size()) {
                int offer = 0;
                while (offer < unused.length
                        && (unused[offer] == 0 || order.get(offer).length() + kerf < needs[blank])) {
                    offer++;
                }
                if (offer == unused.length) {
                    return Optional.empty();
                }
                unused[offer]--;
                bars.add(order.get(offer));
                rooms.add(order.get(offer).length() + kerf);
                blanks.add(new ArrayList<>());
            }
            blanks.get(bar).add(blank);
            rooms.set(bar, rooms.get(bar) - needs[blank]);
        }
        List<CutOffer.Cut> cuts = new ArrayList<>();
        for (int bar = 0; bar < bars.size(); bar++) {
            cuts.add(new CutOffer.Cut(bars.get(bar), blanks.get(bar)));
        }
        return Optional.of(cuts);
    }

    private record Opened(long fresh, long remnants) implements Comparable<Opened> {

        @Override
        public int compareTo(Opened other) {
            int byFresh = Long.compare(fresh, other.fresh);
            return byFresh != 0 ? byFresh : Long.compare(remnants, other.remnants);
        }
    }

    private static Opened opened(List<CutOffer.Cut> cuts) {
        long fresh = 0;
        long remnants = 0;
        for (CutOffer.Cut cut : cuts) {
            fresh += cut.offer().remnant() ? 0 : cut.offer().length();
            remnants += cut.offer().remnant() ? cut.offer().length() : 0;
        }
        return new Opened(fresh, remnants);
    }

    private List<CutOffer.Cut> improved(List<CutOffer.Cut> first) {
        List<CutOffer.Cut> cuts = new ArrayList<>(first);
        SplittableRandom chance = new SplittableRandom(1);
        double work = 0;
        int inVain = 0;
        while (work < MOST_WORK && inVain < MOST_IN_VAIN && !reached(cuts)) {
            List<CutOffer.Cut> freed = freed(cuts, chance);
            int blanks = freed.stream().mapToInt(cut -> cut.blanks().size()).sum();
            List<CutOffer.Cut> anew = blanks > ExactCut.MOST ? freed : anew(freed, cuts, chance);
            inVain = opened(anew).equals(opened(freed)) && unequal(anew) == unequal(freed) ? inVain + 1 : 0;
            cuts.addAll(anew);
            work += Math.pow(3, blanks) / 2 + 1000;
        }
        return cuts;
    }

    /** Takes some bars out of a plan. */
    private List<CutOffer.Cut> freed(List<CutOffer.Cut> cuts, SplittableRandom chance) {
        List<CutOffer.Cut> freed = new ArrayList<>();
        int blanks = 0;
        int bars = chance.nextInt(2, 6);
        for (int i = 0; i < bars && !cuts.isEmpty(); i++) {
            int which = i == 0 && chance.nextBoolean() ? emptiest(cuts) : chance.nextInt(cuts.size());
            if (i == 0 || blanks + cuts.get(which).blanks().size() <= AT_ONCE) {
                CutOffer.Cut bar = cuts.set(which, cuts.get(cuts.size() - 1));
                cuts.remove(cuts.size() - 1);
                freed.add(bar);
                blanks += bar.blanks().size();
            }
        }
        return freed;
    }

    private int emptiest(List<CutOffer.Cut> cuts) {
        int emptiest = 0;
        long most = -1;
        for (int bar = 0; bar < cuts.size(); bar++) {
            long left = offcut(cuts.get(bar));
            if (left > most) {
                most = left;
                emptiest = bar;
            }
        }
        return emptiest;
    }

    private boolean reached(List<CutOffer.Cut> cuts) {
        Opened opened = opened(cuts);
        return opened.fresh() <= leastNew && opened.remnants() == 0;
    }

    private List<CutOffer.Cut> anew(List<CutOffer.Cut> freed, List<CutOffer.Cut> others, SplittableRandom chance) {
        List<Integer> blanks =
                freed.stream().flatMap(cut -> cut.blanks().stream()).toList();
        Map<Integer, Integer> used = new LinkedHashMap<>();
        others.forEach(cut -> used.merge(cut.offer().stock(), 1, Integer::sum));
        List<CutOffer> there = new ArrayList<>();
        int more = 2;
        for (CutOffer offer : offers) {
            int unused = offer.count() - used.getOrDefault(offer.stock(), 0);
            boolean wasFreed = freed.stream().anyMatch(cut -> cut.offer().stock() == offer.stock());
            boolean taken = !offer.remnant() || wasFreed || more > 0 && chance.nextInt(4) == 0;
            if (unused > 0 && taken) {
                more -= offer.remnant() && !wasFreed ? 1 : 0;
                there.add(offer.times(Math.min(unused, blanks.size())));
            }
        }
        long[] these = blanks.stream().mapToLong(blank -> needs[blank]).toArray();
        return ExactCut.of(these, there, kerf, NearCut::unequal).stream()
                .flatMap(List::stream)
                .map(cut -> new CutOffer.Cut(
                        cut.offer(), cut.blanks().stream().map(blanks::get).toList()))
                .toList();
    }

    private long offcut(CutOffer.Cut cut) {
        long left = cut.offer().length();
        for (int blank : cut.blanks()) {
            left -= needs[blank];
        }
        return Math.max(0, left);
    }

    private long unequal(List<CutOffer.Cut> cuts) {
        return cuts.stream().mapToLong(cut -> unequal(offcut(cut))).sum();
    }

    /** Less, the more unequal the offcuts of bars that are as long together: in square millimetres, below 0. */
    private static long unequal(long offcut) {
        return -(offcut / 1000) * (offcut / 1000);
    }
}
