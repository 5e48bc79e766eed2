package org.trammel.shop.ride;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is tried first at a gate, and what must come of it.
 *
 * @param operation code of the operation
 * @param characteristic which one is read wrong
 * @param readings the readings, in turn; the last is the one that is refused
 * @param way how the frame gets on from there
 * @param from rework, repair: the operation from which it is done over
 * @param words what the decision says
 */
record BadFirst(String operation, String characteristic, List<Misread> readings, Way way, String from, String words) {

    /** How a frame gets on after a reading that was refused. */
    enum Way {
        /** By the QA lead, who took no part. */
        REWORK,
        /** The QA lead read it; the owner decides in their place. */
        REWORK_BY_OWNER,
        REPAIR,
        CONCESSION,
        COLD_SET
    }

    /**
     * One wrong reading.
     *
     * @param value as it is keyed; after an n, so much more than the nominal
     * @param gauge the gauge, where it is not the finest
     * @param seen what the sheet says
     */
    record Misread(String value, @Nullable String gauge, String seen) {}

    private static Map<String, BadFirst> all(BadFirst... rows) {
        return Stream.of(rows).collect(Collectors.toMap(BadFirst::operation, Function.identity()));
    }

    private static BadFirst rework(String operation, String code, String value, String from, String words) {
        return new BadFirst(operation, code, refused(value), Way.REWORK, from, words);
    }

    private static List<Misread> refused(String value) {
        return List.of(new Misread(value, null, "not conforming"));
    }

    private static final Misread COARSE = new Misread("0.360", "TS-1", "undecided");

    /** For a whole frame, and for the front triangle of one. */
    static final Map<String, BadFirst> FRAME = all(
            rework("020", "020-4", "38.5", "020", "Wrong temper: another tube is taken and read."),
            rework("030", "030-6", "0.30", "030", "Mitre cut again on the spare tube."),
            rework("040", "040-1", "n+0.60", "040", "Formed again in the filled die."),
            rework("060", "060-1", "n+1.0", "060", "Jig set again from the drawing."),
            new BadFirst(
                    "070",
                    "070-2",
                    refused("150"),
                    Way.CONCESSION,
                    "",
                    "One bead at 150 °C; hardness after ageing decides."),
            rework("080", "080-1", "1.200", "080", "A chip lay under the shell face: measured anew."),
            rework("090", "090-3", "46", "090", "Water cooled, then loaded again."),
            rework("090a", "090-2", "14.0", "090a", "Too slow into the water: solution treated again."),
            new BadFirst(
                    "100",
                    "100-1",
                    List.of(COARSE, new Misread("0.360", null, "not conforming")),
                    Way.COLD_SET,
                    "",
                    "0.360"),
            new BadFirst("110a", "110-1", refused("7.20"), Way.REWORK_BY_OWNER, "110a", "Aged on to the full time."),
            new BadFirst("120", "120-1", refused("90"), Way.REWORK_BY_OWNER, "120", "Indents set anew on the coupon."),
            new BadFirst("120a", "120a-2", refused("1.40"), Way.REPAIR, "120a", "Mandrel seated anew, all read again."),
            rework("130", "130-2", "n+0.50", "130", "Shell faced once more."),
            rework("140", "140-1", "3.1", "140", "Pressure set back, blasted again."),
            rework("150", "150-1", "1.5", "150", "Frame was damp: dried until it is over the dew point."),
            rework("180", "180-13", "0.9", "180", "Wheel dished anew."),
            rework("190", "190-2", "0.90", "190", "Wheel trued."));

    /** Where a swing arm has other characteristics. */
    static final Map<String, BadFirst> SWING_ARM = all(
            rework("060", "060-4a", "n+1.0", "060", "Jig set again from the drawing."),
            rework("080", "080-1", "0.900", "080", "A burr stood on a bore: measured anew."),
            new BadFirst("100", "100-1", refused("0.360"), Way.COLD_SET, "", "0.360"),
            new BadFirst("120a", "120a-3", refused("0.90"), Way.REPAIR, "120a", "Axle seated anew, all read again."),
            rework("130", "130-7", "n+0.070", "130", "Sleeved and bored again."));

    /** Where a front triangle has other characteristics, and where the frame is joined. */
    static final Map<String, BadFirst> JOINED = all(rework("170", "170-2", "0.12", "170", "Shim added at the pivot."));

    /** What is tried at an operation of a frame or of one of its parts. */
    static @Nullable BadFirst at(String part, String operation) {
        return Stream.of(part.equals("SA") ? SWING_ARM : JOINED, FRAME)
                .map(rows -> rows.get(operation))
                .filter(row -> row != null)
                .findFirst()
                .orElse(null);
    }
}
