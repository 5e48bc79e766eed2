package org.trammel.shop.designs;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.routes.Kinds;
import org.trammel.shop.routes.RouteSheet;

/** Metals and kinds of frame an order or a design may name, with the words people read. */
public final class FrameWords {

    private static final Map<String, String> METALS = new LinkedHashMap<>();
    private static final Map<String, String> KINDS = new LinkedHashMap<>();

    /** Kinds that are built of one metal alone. */
    private static final Map<String, String> ONLY =
            Map.of(Kinds.STEEL_TIG, "STEEL", Kinds.STEEL_FILLET, "STEEL", Kinds.TITANIUM, "TI");

    static {
        METALS.put("AL6061", "aluminium 6061");
        METALS.put("AL7005", "aluminium 7005");
        METALS.put("STEEL", "steel 25CrMo4");
        METALS.put("TI", "titanium Ti-3Al-2.5V");
        KINDS.put(Kinds.HARDTAIL, "hardtail or rigid, welded");
        KINDS.put(Kinds.FULL_SUSPENSION, "full suspension");
        KINDS.put(Kinds.STEEL_TIG, "steel, TIG welded");
        KINDS.put(Kinds.STEEL_FILLET, "steel, fillet brazed");
        KINDS.put(Kinds.TITANIUM, "titanium");
        KINDS.put(Kinds.TWO_COLOUR, "two colours");
        KINDS.put(Kinds.TANDEM, "tandem");
        KINDS.put(Kinds.REPAIR, "repair of a frame that came back");
    }

    private FrameWords() {}

    /** Code and words of every metal. */
    public static Map<String, String> metals() {
        return new LinkedHashMap<>(METALS);
    }

    /** Code and words of every kind that ships with the program. */
    public static Map<String, String> kinds() {
        return new LinkedHashMap<>(KINDS);
    }

    /** A metal the shop builds from, as it was typed. */
    public static String checkedMetal(String deed, String typed) {
        String metal = TypedText.line("metal", "Metal", deed, typed, 20);
        if (!METALS.containsKey(metal)) {
            throw Refusal.input(
                    "metal",
                    deed,
                    "The shop builds from no metal " + metal + ".",
                    "Choose one of " + String.join(", ", METALS.keySet()) + ".");
        }
        return metal;
    }

    /** A kind of frame as it was typed; one that is built of a single metal does not go with another. */
    public static String checkedKind(String deed, String metal, String typed) {
        String kind = TypedText.line("kind", "The kind of frame", deed, typed, 40);
        String only = ONLY.getOrDefault(kind, metal);
        if (!only.equals(metal)) {
            throw Refusal.input(
                    "kind",
                    deed,
                    "“" + kind(kind) + "” is built of " + metal(only) + ", and the metal is " + metal(metal) + ".",
                    "Choose the kind or the metal again.");
        }
        return kind;
    }

    /** A frame whose rear end swings is built on a route for such, and no other frame is. */
    static void refuseOtherKind(String deed, String kind, RouteSheet route) {
        boolean swings = kind.equals(Kinds.FULL_SUSPENSION);
        if (KINDS.containsKey(route.kind()) && swings != route.kind().equals(Kinds.FULL_SUSPENSION)) {
            throw Refusal.input(
                    "route",
                    deed,
                    "Route " + route.code() + " is for “" + kind(route.kind()) + "”; the design is “" + kind(kind)
                            + "”.",
                    "Choose the kind or the route again.");
        }
    }

    public static String metal(String code) {
        return METALS.getOrDefault(code, code);
    }

    public static String kind(String code) {
        return KINDS.getOrDefault(code, code.toLowerCase(Locale.ROOT).replace('_', ' '));
    }
}
