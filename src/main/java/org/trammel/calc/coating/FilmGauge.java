package org.trammel.calc.coating;

/** By what a gauge feels the metal below a film. */
public enum FilmGauge {
    /** The pull on a magnet, or a change of its field: ISO 2178. */
    MAGNETIC,
    /** Currents that an alternating field drives in the metal: ISO 2360. */
    EDDY_CURRENT;

    /** The metal below a film. */
    public enum Metal {
        ALUMINIUM,
        TITANIUM,
        STEEL
    }

    /** Whether it reads the film on a metal at all. */
    public boolean fits(Metal metal) {
        return (this == MAGNETIC) == (metal == Metal.STEEL);
    }

    /** What to mind, one sentence. */
    public String words(Metal metal) {
        String name = metal == Metal.STEEL ? "steel" : metal == Metal.TITANIUM ? "titanium" : "aluminium";
        if (!fits(metal)) {
            return this == MAGNETIC
                    ? "A magnetic gauge does not feel " + name + ": it needs an eddy-current one (ISO 2360)."
                    : "An eddy-current gauge is misled by " + name + ": it needs a magnetic one (ISO 2178).";
        }
        return metal == Metal.TITANIUM
                ? "Titanium conducts poorly: zero and adjust the gauge on a bare part of the same alloy and curve."
                : "Zero the gauge on a bare part of the same alloy and curve.";
    }
}
