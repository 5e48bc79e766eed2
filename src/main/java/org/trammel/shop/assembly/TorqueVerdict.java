package org.trammel.shop.assembly;

import org.trammel.calc.fastening.TorqueFit;

/** What a torque was found to be. */
public enum TorqueVerdict {
    CONFORMING("conforming", "conforming"),
    NOT_CONFORMING("not conforming", "not-conforming"),
    /** With what the tool may err by it may lie on either side of a limit. */
    UNDECIDED("undecided", "undecided");

    private final String word;
    private final String mark;

    TorqueVerdict(String word, String mark) {
        this.word = word;
        this.mark = mark;
    }

    public String word() {
        return word;
    }

    public String mark() {
        return mark;
    }

    static TorqueVerdict of(TorqueFit fit) {
        return switch (fit.verdict()) {
            case INSIDE -> CONFORMING;
            case OUTSIDE -> NOT_CONFORMING;
            case EITHER -> UNDECIDED;
        };
    }
}
