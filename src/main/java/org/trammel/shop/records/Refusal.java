package org.trammel.shop.records;

import org.jspecify.annotations.Nullable;

/**
 * An act that cannot be done, said in three parts: what cannot be done, why with the facts, and what to do instead.
 *
 * <p>A screen shows all three; the API answers with a problem document (RFC 9457) of the same three.
 */
public class Refusal extends RuntimeException {

    /** Why an act was refused, as far as a caller must tell the cases apart. */
    public enum Kind {
        /** The input cannot be read or is out of its range. */
        INPUT(422),
        /** The thing is not in a state that allows the act. */
        STATE(409),
        /** Somebody else changed the thing meanwhile. */
        STALE(409),
        /** This person may not do it. */
        PERSON(403),
        /** There is no such thing. */
        MISSING(404),
        /** The act is possible but unlikely: it must be said again with a confirmation. */
        ASK(428);

        private final int status;

        Kind(int status) {
            this.status = status;
        }

        /** The HTTP status that answers this kind. */
        public int status() {
            return status;
        }
    }

    private final Kind kind;
    private final String what;
    private final String why;
    private final String instead;
    private final @Nullable String field;

    private Refusal(Kind kind, String what, String why, String instead, @Nullable String field) {
        super(what + " " + why + " " + instead, null, false, false);
        this.kind = kind;
        this.what = what;
        this.why = why;
        this.instead = instead;
        this.field = field;
    }

    public static Refusal input(String field, String what, String why, String instead) {
        return new Refusal(Kind.INPUT, what, why, instead, field);
    }

    public static Refusal state(String what, String why, String instead) {
        return new Refusal(Kind.STATE, what, why, instead, null);
    }

    public static Refusal stale(String what, String why, String instead) {
        return new Refusal(Kind.STALE, what, why, instead, null);
    }

    public static Refusal person(String what, String why, String instead) {
        return new Refusal(Kind.PERSON, what, why, instead, null);
    }

    public static Refusal missing(String what, String why, String instead) {
        return new Refusal(Kind.MISSING, what, why, instead, null);
    }

    public static Refusal ask(String field, String what, String why, String instead) {
        return new Refusal(Kind.ASK, what, why, instead, field);
    }

    /** The same refusal at a field of another name: a page with several forms must tell their fields apart. */
    public Refusal at(String otherField) {
        return new Refusal(kind, what, why, instead, otherField);
    }

    /** The same refusal of something else that was not done. */
    public Refusal saying(String otherWhat) {
        return new Refusal(kind, otherWhat, why, instead, field);
    }

    public Kind kind() {
        return kind;
    }

    public String what() {
        return what;
    }

    public String why() {
        return why;
    }

    public String instead() {
        return instead;
    }

    /** Name of the input field at fault, if one is. */
    public @Nullable String field() {
        return field;
    }
}
