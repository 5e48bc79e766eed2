package org.trammel.shop.ovens;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.EquivalentHours;
import org.trammel.calc.thermal.ProgrammeWorth;

/**
 * What a programme is worth to one metal.
 *
 * @param hours of its soaks at the reference temperature
 * @param source of the activation energy
 * @param published set beside it; empty for a programme that is no age
 * @param words what it may mean
 * @param refusal why the QA lead's rule refuses it, or null
 */
public record Worth(
        String metal,
        double reference_degC,
        double usual_kJPerMol,
        double low_kJPerMol,
        double high_kJPerMol,
        String source,
        EquivalentHours hours,
        List<ProgrammeWorth.Beside> published,
        String words,
        @Nullable String refusal) {

    public Worth {
        published = List.copyOf(published);
    }
}
