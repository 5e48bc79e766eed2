package org.trammel.shop.designs;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A place in a frame that one tube goes to, with the section the drawing gives it.
 *
 * @param code its own within the frame
 * @param called such as "drive-side chainstay"
 * @param fitting whether it may be a part that is joined in, such as a shell, as well as a tube
 * @param outside_mm null where the drawing does not say
 * @param wall_mm at its first end; null where the drawing does not say
 * @param middle_mm between the butts; null for a plain tube
 * @param other_mm at the other end of a butted tube; null where both are alike
 */
public record TubePlace(
        String code,
        String called,
        boolean fitting,
        @Nullable BigDecimal outside_mm,
        @Nullable BigDecimal wall_mm,
        @Nullable BigDecimal middle_mm,
        @Nullable BigDecimal other_mm) {}
