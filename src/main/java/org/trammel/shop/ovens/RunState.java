package org.trammel.shop.ovens;

/** Where a load stands. */
public enum RunState {
    LOADING("being loaded"),
    SIGNED("load signed"),
    RUNNING("running"),
    STOPPED("stopped, to be judged"),
    DECIDED("decided"),
    CALLED_OFF("called off");

    private final String word;

    RunState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether its frames are not to be loaded elsewhere. */
    public boolean open() {
        return this == LOADING || this == SIGNED || this == RUNNING || this == STOPPED;
    }
}
