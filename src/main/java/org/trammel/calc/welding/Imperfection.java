package org.trammel.calc.welding;

/** What can be wrong with a weld that is looked at; its size is measured in its unit. */
public enum Imperfection {
    CRACK("crack", "mm", true),
    LACK_OF_FUSION("lack of fusion", "mm", true),
    CRATER_CRACK("crack of an end crater", "mm", true),
    UNDERCUT("undercut", "mm", false),
    SURFACE_PORE("surface pore", "mm", false),
    SURFACE_PORE_AREA("surface pores in 100 mm", "mm²", false),
    SINGLE_PORE("single pore", "mm", false),
    UNIFORM_POROSITY("pore of uniform porosity", "mm", false),
    CLUSTER("pore of a cluster", "mm", false),
    PORE_AREA("gas in 100 mm", "mm²", false),
    CRATER_PIPE("end crater pipe", "mm", false),
    ROOT_NOT_PENETRATED("root not penetrated", "mm", false),
    EXCESS_WELD_METAL("excess weld metal", "mm", false),
    CONVEXITY("excess convexity of a fillet", "mm", false),
    EXCESS_PENETRATION("excess penetration", "mm", false),
    ROOT_CONCAVITY("root concavity", "mm", false),
    LEG_ASYMMETRY("unequal legs of a fillet", "mm", false),
    FIT_UP_GAP("gap at a fillet", "mm", false),
    MISALIGNMENT("edges out of line", "mm", false),
    OVERLAP("overlap", "mm", false);

    private final String word;
    private final String unit;
    private final boolean never;

    Imperfection(String word, String unit, boolean never) {
        this.word = word;
        this.unit = unit;
        this.never = never;
    }

    public String word() {
        return word;
    }

    public String unit() {
        return unit;
    }

    /** Whether its size is taken from the wall, so that one as large as the wall is a hole. */
    public boolean eatsWall() {
        return switch (this) {
            case UNDERCUT,
                    SURFACE_PORE,
                    SINGLE_PORE,
                    UNIFORM_POROSITY,
                    CLUSTER,
                    CRATER_PIPE,
                    ROOT_NOT_PENETRATED,
                    ROOT_CONCAVITY -> true;
            default -> false;
        };
    }

    /** Whether it conforms to no level, whatever a table says. */
    public boolean never() {
        return never;
    }
}
