package org.trammel.calc.thermal;

/** What a rule says of a run, least to worst. */
public enum Judged {
    CONFORMING,
    /** Neither is shown: the answer hangs on a gap of the record or on the activation energy. */
    UNDECIDED,
    NOT_CONFORMING;

    Judged worse(Judged other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
