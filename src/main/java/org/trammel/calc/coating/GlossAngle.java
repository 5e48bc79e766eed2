package org.trammel.calc.coating;

import java.math.BigDecimal;

/** At which angle gloss is read: 60° first, and by what that says once more at 20° or 85°. Source: ISO 2813, from memory. */
public enum GlossAngle {
    /** For high gloss. */
    TWENTY_DEG,
    SIXTY_DEG,
    /** For matt. */
    EIGHTY_FIVE_DEG;

    private static final BigDecimal HIGH = BigDecimal.valueOf(70);
    private static final BigDecimal MATT = BigDecimal.valueOf(10);

    /** The angle that tells most. */
    public static GlossAngle of(BigDecimal glossAt60) {
        if (glossAt60.compareTo(HIGH) > 0) {
            return TWENTY_DEG;
        }
        return glossAt60.compareTo(MATT) < 0 ? EIGHTY_FIVE_DEG : SIXTY_DEG;
    }
}
