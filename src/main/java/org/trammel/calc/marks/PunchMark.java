package org.trammel.calc.marks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A worker's punch: a dot with three short cuts out of eight places about it, counted clockwise from the top. It stands
 * beside a name and never instead of it, so two punches need not differ in more than one cut.
 *
 * @param places three places, 0 (top) to 7, rising
 */
public record PunchMark(List<Integer> places) {

    /** A free punch, or why there is none. */
    public sealed interface NextFree {

        /** May be given to the next worker. */
        record Free(PunchMark mark) implements NextFree {}

        /** All 56 are given out. */
        record NoneLeft(String reason) implements NextFree {}
    }

    /** Places about the dot. */
    public static final int PLACES = 8;

    /** Short cuts of one punch. */
    public static final int CUTS = 3;

    // Shares no factor with 56, so that workers who come one after the other do not look alike.
    private static final int STRIDE = 17;

    private static final List<PunchMark> ALL = enumerate();

    public PunchMark {
        places = List.copyOf(places);
        boolean rising = places.size() == CUTS
                && places.get(0) >= 0
                && places.get(0) < places.get(1)
                && places.get(1) < places.get(2)
                && places.get(2) < PLACES;
        if (!rising) {
            throw new IllegalArgumentException("Not a punch: " + places);
        }
    }

    /** Every punch there is, in the order they are given out. */
    public static List<PunchMark> all() {
        return ALL;
    }

    /**
     * The punch a new worker takes.
     *
     * @param inUse punches of everybody who works or worked here
     */
    public static NextFree nextFree(Collection<PunchMark> inUse) {
        return ALL.stream()
                .filter(mark -> !inUse.contains(mark))
                .findFirst()
                .<NextFree>map(NextFree.Free::new)
                .orElseGet(() -> new NextFree.NoneLeft("All " + ALL.size() + " punches are given out."));
    }

    /** Three digits, such as 036. For storing. */
    public String code() {
        return places.stream().map(String::valueOf).collect(Collectors.joining());
    }

    /**
     * The punch of a stored code.
     *
     * @throws IllegalArgumentException if it is not the code of a punch
     */
    public static PunchMark ofCode(String code) {
        return new PunchMark(code.chars().mapToObj(digit -> digit - '0').toList());
    }

    private static List<PunchMark> enumerate() {
        List<PunchMark> marks = new ArrayList<>();
        for (int first = 0; first < PLACES; first++) {
            for (int second = first + 1; second < PLACES; second++) {
                for (int third = second + 1; third < PLACES; third++) {
                    marks.add(new PunchMark(List.of(first, second, third)));
                }
            }
        }
        List<PunchMark> spread = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            spread.add(marks.get(i * STRIDE % marks.size()));
        }
        return List.copyOf(spread);
    }
}
