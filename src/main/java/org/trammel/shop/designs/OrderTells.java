package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What an order says to the design gate. The orders stand above the designs and answer this from there. */
public interface OrderTells {

    /** What the order of this number says; empty if there is none. */
    Optional<Told> told(String number);

    /**
     * What is looked at.
     *
     * @param country two letters of ISO 3166-1
     * @param category of use, such as MOUNTAIN
     * @param frontBrakeLever left, right or none
     * @param inseam_mm inside leg of the rider
     * @param mass_kg of the rider
     * @param riderEdition changes whenever something about the rider was changed
     */
    record Told(
            String country,
            String category,
            String frontBrakeLever,
            @Nullable BigDecimal inseam_mm,
            @Nullable BigDecimal mass_kg,
            long riderEdition) {}
}
