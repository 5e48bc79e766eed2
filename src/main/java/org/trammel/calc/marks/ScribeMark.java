package org.trammel.calc.marks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * Sign of one open frame: a line stepped off in four equal lengths from a punch, with a cut up, down, through or none at
 * the end of each. There are three cuts or more, some above and some below the line, not all of one kind: 174 marks.
 *
 * <p>Two open frames differ in two cuts or more, so that one cut that is overlooked or misread never names another
 * frame. Of a set in which every two marks differ so there are 48 ({@link #apart()}); new frames take from it while it
 * lasts.
 *
 * @param cuts the four steps from the punch outwards
 */
public record ScribeMark(List<Cut> cuts) {

    /** What stands at the end of a step. */
    public enum Cut {
        NONE,
        UP,
        DOWN,
        THROUGH;

        boolean isAbove() {
            return this == UP || this == THROUGH;
        }

        boolean isBelow() {
            return this == DOWN || this == THROUGH;
        }

        private char letter() {
            return this == NONE ? '-' : name().charAt(0);
        }
    }

    /** A free mark, or why there is none. */
    public sealed interface NextFree {

        /** May be given to the next frame. */
        record Free(ScribeMark mark) implements NextFree {}

        /** Every mark is too like one in use. */
        record NoneLeft(String reason) implements NextFree {}
    }

    /** Steps of the line. */
    public static final int STEPS = 4;

    /** Cuts in which two open frames differ at least. */
    public static final int LEAST_DIFFERENCE = 2;

    private static final int LEAST_CUTS = 3;

    // Neighbours in the list look alike; a stride that shares no factor with its length spreads them over the shop.
    private static final int STRIDE = 19;

    private static final List<ScribeMark> ALL = enumerate();
    private static final List<ScribeMark> APART = choose();

    public ScribeMark {
        cuts = List.copyOf(cuts);
        if (!isMark(cuts)) {
            throw new IllegalArgumentException("Not a scribe mark: " + cuts);
        }
    }

    /** Every mark there is. */
    public static List<ScribeMark> all() {
        return ALL;
    }

    /** Marks of which every two differ in two cuts or more, in the order they are given out. */
    public static List<ScribeMark> apart() {
        return APART;
    }

    /**
     * The mark a new frame takes.
     *
     * @param inUse marks of all open frames
     */
    public static NextFree nextFree(Collection<ScribeMark> inUse) {
        for (List<ScribeMark> supply : List.of(APART, ALL)) {
            for (ScribeMark mark : supply) {
                if (inUse.stream().allMatch(used -> used.difference(mark) >= LEAST_DIFFERENCE)) {
                    return new NextFree.Free(mark);
                }
            }
        }
        return new NextFree.NoneLeft("Every scribe mark is too like that of an open frame; " + inUse.size()
                + " frames are open. The number tells the frame alone.");
    }

    /** How many cuts differ. */
    public int difference(ScribeMark other) {
        int different = 0;
        for (int step = 0; step < STEPS; step++) {
            if (cuts.get(step) != other.cuts.get(step)) {
                different++;
            }
        }
        return different;
    }

    /** Four letters from the punch outwards: U up, D down, T through, - none. For storing. */
    public String code() {
        StringBuilder letters = new StringBuilder();
        cuts.forEach(cut -> letters.append(cut.letter()));
        return letters.toString();
    }

    /**
     * The mark of a stored code.
     *
     * @throws IllegalArgumentException if it is not the code of a mark
     */
    public static ScribeMark ofCode(String code) {
        return ALL.stream()
                .filter(mark -> mark.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Not the code of a scribe mark: " + code));
    }

    /** For those who hear the page read: "up, down, none, through". */
    public String words() {
        return String.join(
                ", ",
                cuts.stream().map(cut -> cut.name().toLowerCase(Locale.ROOT)).toList());
    }

    private static boolean isMark(List<Cut> cuts) {
        List<Cut> made = cuts.stream().filter(cut -> cut != Cut.NONE).toList();
        return cuts.size() == STEPS
                && made.size() >= LEAST_CUTS
                && made.stream().anyMatch(Cut::isAbove)
                && made.stream().anyMatch(Cut::isBelow)
                && made.stream().distinct().count() > 1;
    }

    private static List<ScribeMark> enumerate() {
        List<ScribeMark> marks = new ArrayList<>();
        for (Cut first : Cut.values()) {
            for (Cut second : Cut.values()) {
                for (Cut third : Cut.values()) {
                    for (Cut fourth : Cut.values()) {
                        List<Cut> cuts = List.of(first, second, third, fourth);
                        if (isMark(cuts)) {
                            marks.add(new ScribeMark(cuts));
                        }
                    }
                }
            }
        }
        return List.copyOf(marks);
    }

    private static List<ScribeMark> choose() {
        List<ScribeMark> chosen = new ArrayList<>();
        for (ScribeMark mark : ALL) {
            if (chosen.stream().allMatch(before -> before.difference(mark) >= LEAST_DIFFERENCE)) {
                chosen.add(mark);
            }
        }
        List<ScribeMark> spread = new ArrayList<>();
        for (int i = 0; i < chosen.size(); i++) {
            spread.add(chosen.get(i * STRIDE % chosen.size()));
        }
        return List.copyOf(spread);
    }
}
