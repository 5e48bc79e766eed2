package org.trammel.shop.designs;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.ExpectedMass;
import org.trammel.calc.units.Answer;
import org.trammel.shop.web.Formats;

/** What a frame should weigh, part by part, as the sheet shows it. */
@Component
class MassSheet {

    private static final double G_PER_KG = 1000;

    private final MassBasis basis;
    private final Formats formats;

    MassSheet(MassBasis basis, Formats formats) {
        this.basis = basis;
        this.formats = formats;
    }

    /**
     * What is shown. Masses in grams.
     *
     * @param front only the front triangle: the swing arm is weighed by itself
     * @param lines one a part; empty where the mass is not known
     * @param gaps why it is not, one sentence each
     * @param metal what it was computed with; null where it is not known
     */
    record Shown(
            boolean front,
            List<Line> lines,
            double mass_g,
            double u_g,
            List<String> gaps,
            MassBasis.@Nullable Metal metal) {}

    /** A part's share, with its standard uncertainty. */
    record Line(String name, double mass_g, double u_g) {}

    Shown of(DesignSheet sheet, ComputedFrame frame) {
        Answer<MassBasis.Metal> metal = basis.of(sheet.metal());
        Answer<Shown> shown = metal.then(of -> FrameMass.of(sheet.geometry(), frame, metal)
                .then(expected -> Answer.of(shown(front(sheet), expected, of))));
        return shown instanceof Answer.Determined<Shown> there
                ? there.value()
                : new Shown(
                        front(sheet),
                        List.of(),
                        0,
                        0,
                        ((Answer.NotDeterminable<Shown>) shown)
                                .gaps().stream()
                                        .map(Answer.Gap::words)
                                        .map(formats::sentence)
                                        .toList(),
                        null);
    }

    private static boolean front(DesignSheet sheet) {
        return sheet.geometry().containsKey(GeometryInput.PIVOT_AHEAD.code());
    }

    private static Shown shown(boolean front, ExpectedMass mass, MassBasis.Metal metal) {
        return new Shown(
                front,
                mass.lines().stream()
                        .map(line -> new Line(line.part().name(), G_PER_KG * line.mass_kg(), G_PER_KG * line.u_kg()))
                        .toList(),
                G_PER_KG * mass.mass_kg(),
                G_PER_KG * mass.u_kg(),
                List.of(),
                metal);
    }
}
