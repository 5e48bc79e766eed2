package org.trammel.shop.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Something that is tried. Who does it to what is drawn from the seed when it is done, so that a list of deeds can be
 * played again, and shortened, on another frame.
 */
record Deed(Kind kind, long seed) {

    /** What can be tried, and how often it is drawn. */
    enum Kind {
        /** What the route asks for next, by somebody who may. */
        GO_ON(100),
        /** The same by anybody. */
        GO_ON_BY_ANYBODY(14),
        TICK_ANYTHING(6),
        UNTICK(5),
        READ_ANYTHING(14),
        CORRECT(4),
        SIGN_ANYTHING(6),
        PASS_WITNESS(2),
        PLACE_HOLD(6),
        LIFT_HOLD(5),
        FREE(3),
        OPEN_NONCONFORMANCE(3),
        DECIDE(6),
        BLAME(2),
        PUSH(3),
        REDO(2),
        STOP(2),
        SEND_OUT(5),
        MAKE_ANEW(1),
        NEWER_REVISION(2),
        BLOCK_LOT(1),
        SHIP(8),
        SEND_AGAIN(5),
        PASS_TIME(9);

        private final int weight;

        Kind(int weight) {
            this.weight = weight;
        }
    }

    private static final int ALL =
            java.util.Arrays.stream(Kind.values()).mapToInt(k -> k.weight).sum();

    /** A list of deeds for a seed. */
    static List<Deed> drawn(long seed, int howMany) {
        Random chance = new Random(seed);
        List<Deed> deeds = new ArrayList<>();
        for (int i = 0; i < howMany; i++) {
            int at = chance.nextInt(ALL);
            int k = 0;
            while (at >= Kind.values()[k].weight) {
                at -= Kind.values()[k++].weight;
            }
            Kind kind = Kind.values()[k];
            deeds.add(new Deed(kind, chance.nextLong()));
            // Somebody is in a hurry: shipping is tried at the worst moments.
            int hurry = switch (kind) {
                case PASS_TIME, BLOCK_LOT -> 2;
                case READ_ANYTHING, UNTICK -> 5;
                case GO_ON -> 7;
                default -> 0;
            };
            if (hurry > 0 && chance.nextInt(hurry) == 0) {
                deeds.add(new Deed(Kind.SHIP, chance.nextLong()));
            }
        }
        return deeds;
    }

    @Override
    public String toString() {
        return kind + ":" + seed;
    }
}
