package org.trammel.shop.assembly;

/** What a component is. */
public enum ComponentKind {
    STEM("stem", true),
    HANDLEBAR("handlebar", false),
    HEADSET("headset", true),
    FORK("fork", true),
    SEATPOST("seatpost", false),
    SEAT_CLAMP("seat clamp", false),
    SADDLE("saddle", false),
    SHELL_CUPS("cups of the shell", false),
    CRANKS("cranks", false),
    PEDALS("pedals", false),
    BRAKE("brake", true),
    ROTOR("brake rotor", true),
    AXLE("axle", true),
    DERAILLEUR("derailleur", false),
    SHIFTER("shifter", false),
    WHEEL("wheel", false),
    PIVOT("pivot", true),
    SHOCK("shock", true),
    OTHER("other", false);

    private final String word;
    private final boolean witnessed;

    ComponentKind(String word, boolean witnessed) {
        this.word = word;
        this.witnessed = witnessed;
    }

    public String word() {
        return word;
    }

    /** Whether a second person looks at its fasteners unless its sheet says otherwise: what steers, stops and carries. */
    public boolean witnessed() {
        return witnessed;
    }
}
