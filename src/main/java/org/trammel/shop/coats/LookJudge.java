package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** Judges cross-cut, gloss and colour plainly, each against the limit of the finish. */
record LookJudge(CoatAsked asked, String deed) {

    private static final BigDecimal MOST = BigDecimal.valueOf(2000);

    /** One sentence for each thing asked, and whether it is met. */
    Map<String, Boolean> of(Films.Seen seen) {
        Map<String, Boolean> found = new LinkedHashMap<>();
        if (asked.mostCrossCut() != null) {
            if (seen.crossCut() == null || seen.crossCut() < 0 || seen.crossCut() > 5) {
                throw Refusal.input(
                        "crossCut",
                        deed,
                        "A class of the cross-cut is 0, nothing came off, to 5.",
                        "Compare the lattice with the pictures of the standard, and enter its class.");
            }
            found.put(
                    "Cross-cut class " + seen.crossCut() + "; at most " + asked.mostCrossCut() + ".",
                    seen.crossCut() <= asked.mostCrossCut());
        }
        if (asked.gloss() != null && asked.glossWithin() != null) {
            BigDecimal gloss = figure("gloss", "The gloss", seen.gloss());
            found.put(
                    "Gloss " + said(gloss) + "; " + said(asked.gloss()) + " ± " + said(asked.glossWithin())
                            + " are asked for.",
                    gloss.subtract(asked.gloss()).abs().compareTo(asked.glossWithin()) <= 0);
        }
        if (asked.mostColourDifference() != null) {
            BigDecimal colour = figure("colour", "The colour difference", seen.colourDifference());
            found.put(
                    "Colour difference " + said(colour) + "; at most " + said(asked.mostColourDifference()) + ".",
                    colour.compareTo(asked.mostColourDifference()) <= 0);
        }
        return found;
    }

    private BigDecimal figure(String field, String what, @Nullable BigDecimal value) {
        if (value == null || value.signum() < 0 || value.compareTo(MOST) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    value == null ? what + " is missing." : what + ", " + said(value) + ", is none.",
                    "Read it again and enter what the meter shows.");
        }
        return value;
    }

    private static String said(BigDecimal figure) {
        return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
    }
}
