package org.trammel.shop.designs;

/** How a check of the design gate was answered. */
public enum GateAnswer {
    /** The frame meets the rule. */
    MEETS("meets it"),
    /** It does not, or nobody can say; the owner or the QA lead decided in writing. */
    DECIDED("decided in writing"),
    /** The check says nothing about a frame like this. */
    NOT_CONCERNED("not concerned");

    private final String word;

    GateAnswer(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
