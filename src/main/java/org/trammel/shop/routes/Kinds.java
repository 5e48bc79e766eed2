package org.trammel.shop.routes;

import java.util.List;
import java.util.Set;

/** Kinds of route and metals that the starter routes use; a shop may name others. */
public final class Kinds {

    public static final String HARDTAIL = "HARDTAIL";
    public static final String FULL_SUSPENSION = "FULL_SUSPENSION";
    public static final String FRONT_TRIANGLE = "FRONT_TRIANGLE";
    public static final String SWING_ARM = "SWING_ARM";
    public static final String STEEL_TIG = "STEEL_TIG";
    public static final String STEEL_FILLET = "STEEL_FILLET";
    public static final String TITANIUM = "TITANIUM";
    public static final String TWO_COLOUR = "TWO_COLOUR";
    public static final String REPAIR = "REPAIR";
    public static final String TANDEM = "TANDEM";
    /** Daily checks of a station: a traveller of its own that belongs to no frame. */
    public static final String STATION_CHECK = "STATION_CHECK";

    /** Routes of these are no frame's: those of its parts, and of the checks of a station. */
    public static final Set<String> NO_FRAMES = Set.of(FRONT_TRIANGLE, SWING_ARM, STATION_CHECK);

    /** Metals; ANY where no frame is meant. */
    public static final List<String> METALS = List.of("AL6061", "AL7005", "STEEL", "TI", "ANY");

    private Kinds() {}
}
