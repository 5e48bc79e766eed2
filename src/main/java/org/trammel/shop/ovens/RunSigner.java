package org.trammel.shop.ovens;

/** What a signature of a load or a run stands for. */
public enum RunSigner {
    HEAT_TREATER("heat treater"),
    SECOND("independent second"),
    QA("QA lead");

    private final String word;

    RunSigner(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
