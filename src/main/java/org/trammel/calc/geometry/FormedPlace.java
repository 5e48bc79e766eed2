package org.trammel.calc.geometry;

/** An end of a tube that may be formed before it is cut. */
public enum FormedPlace {
    DOWN_TUBE_AT_HEAD(FrameTube.DOWN_TUBE, "head tube"),
    DOWN_TUBE_AT_SHELL(FrameTube.DOWN_TUBE, "shell"),
    TOP_TUBE_AT_HEAD(FrameTube.TOP_TUBE, "head tube"),
    TOP_TUBE_AT_SEAT(FrameTube.TOP_TUBE, "seat tube"),
    SEAT_TUBE_AT_SHELL(FrameTube.SEAT_TUBE, "shell"),
    CHAINSTAY_AT_SHELL(FrameTube.CHAINSTAY, "shell");

    private final FrameTube tube;
    private final String mate;

    FormedPlace(FrameTube tube, String mate) {
        this.tube = tube;
        this.mate = mate;
    }

    /** Whose end it is. */
    public FrameTube tube() {
        return tube;
    }

    /** What that end is cut on, in a sentence. */
    public String mate() {
        return mate;
    }

    String input() {
        return tube.input("formedAt" + (mate.equals("shell") ? "Shell" : mate.equals("head tube") ? "Head" : "Seat"));
    }

    /** The section that is cut: the oval's, seen in the plane of both axes, or the round tube's. */
    Section section(FormedEnd end, double wall_mm) {
        return mate.equals("shell") ? end.onShell(wall_mm) : end.onTube(wall_mm);
    }
}
