package org.trammel.shop.handwork;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.materials.MetalFamily;

/**
 * Something kept for one family of metals.
 *
 * @param code as on its label
 * @param chlorinated a cleaner with chlorinated solvent in it, by its data sheet
 * @param retiredOn from then on it is not taken any more; null while it is in use
 */
public record Tool(
        String code,
        ToolKind kind,
        String what,
        MetalFamily family,
        boolean chlorinated,
        @Nullable LocalDate retiredOn) {}
