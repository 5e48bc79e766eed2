package org.trammel.calc.statistics;

/** Looks for the patterns of {@link RunRule}, point after point, in one pass. */
final class Runs {

    private static final int NEVER = Integer.MIN_VALUE / 2;

    private int index = -1;
    private double last;
    private int side;
    private int onSide;
    private int direction;
    private int oneWay;
    private int inTurn;
    private int within;
    private int outside;
    private int lastAbove = NEVER;
    private int lastBelow = NEVER;
    private int aboveTwo;
    private int belowTwo;
    private int aboveOne;
    private int belowOne;

    /**
     * Takes the next point.
     *
     * @param z its distance from the centre line in standard deviations of what is plotted
     */
    void take(double z) {
        index++;
        int nowSide = (int) Math.signum(z);
        onSide = nowSide == 0 ? 0 : nowSide == side ? onSide + 1 : 1;
        side = nowSide;
        int nowDirection = index == 0 ? 0 : (int) Math.signum(z - last);
        oneWay = nowDirection == 0 ? 1 : nowDirection == direction ? oneWay + 1 : 2;
        inTurn = nowDirection == 0 ? 1 : nowDirection == -direction ? inTurn + 1 : 2;
        direction = nowDirection;
        last = z;
        within = Math.abs(z) < 1 ? within + 1 : 0;
        outside = Math.abs(z) > 1 ? outside + 1 : 0;
        lastAbove = z > 1 ? index : lastAbove;
        lastBelow = z < -1 ? index : lastBelow;
        aboveTwo = aboveTwo << 1 & 7 | (z > 2 ? 1 : 0);
        belowTwo = belowTwo << 1 & 7 | (z < -2 ? 1 : 0);
        aboveOne = aboveOne << 1 & 31 | (z > 1 ? 1 : 0);
        belowOne = belowOne << 1 & 31 | (z < -1 ? 1 : 0);
    }

    /** Whether the last point completes a pattern other than lying beyond a limit. */
    boolean completes(RunRule rule) {
        return switch (rule) {
            case BEYOND_LIMITS -> false;
            case NINE_ON_ONE_SIDE -> onSide >= 9;
            case SIX_RISING_OR_FALLING -> oneWay >= 6;
            case FOURTEEN_ALTERNATING -> inTurn >= 14;
            case TWO_OF_THREE_BEYOND_TWO -> most(aboveTwo, 2) || most(belowTwo, 2);
            case FOUR_OF_FIVE_BEYOND_ONE -> most(aboveOne, 4) || most(belowOne, 4);
            case FIFTEEN_WITHIN_ONE -> within >= 15;
            case EIGHT_OUTSIDE_ONE -> outside >= 8 && Math.min(lastAbove, lastBelow) > index - 8;
            case EIGHT_ON_ONE_SIDE -> onSide >= 8;
        };
    }

    private static boolean most(int marks, int least) {
        return (marks & 1) == 1 && Integer.bitCount(marks) >= least;
    }
}
