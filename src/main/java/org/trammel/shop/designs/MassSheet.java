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
    private final SawDrawer saws;
    private final Formats formats;

    MassSheet(MassBasis basis, SawDrawer saws, Formats formats) {
        this.basis = basis;
        this.saws = saws;
        this.formats = formats;
    }

    /**
     * What is shown. Masses in grams.
     *
     * @param part what is put on the scale
     * @param lines one a part; empty where the mass is not known
     * @param gaps why it is not, one sentence each
     * @param metal what it was computed with; null where it is not known
     */
    record Shown(
            WeighedPart part,
            List<Line> lines,
            double mass_g,
            double u_g,
            List<String> gaps,
            MassBasis.@Nullable Metal metal) {}

    /** A part's share, with its standard uncertainty. */
    record Line(String name, double mass_g, double u_g) {}

    /** Of the frame; of one that swings the front triangle, and the arm where the drawing is to know its tubes. */
    List<Shown> of(DesignSheet sheet, ComputedFrame frame) {
        Answer<MassBasis.Metal> metal = basis.of(sheet.metal());
        WeighedPart part = WeighedPart.of(sheet.kind(), sheet.geometry());
        Shown front = shown(part, FrameMass.of(sheet.geometry(), frame, metal), metal);
        return new RearInputs(new GivenInputs(sheet.geometry())).asksForTheArmsTubes()
                ? List.of(
                        front,
                        shown(
                                WeighedPart.SWING_ARM,
                                FrameMass.ofArm(sheet.geometry(), frame, saws.rules(), metal),
                                metal))
                : List.of(front);
    }

    private Shown shown(WeighedPart part, Answer<ExpectedMass> mass, Answer<MassBasis.Metal> metal) {
        Answer<Shown> shown = metal.then(of -> mass.then(expected -> Answer.of(shown(part, expected, of))));
        return shown instanceof Answer.Determined<Shown> there
                ? there.value()
                : new Shown(
                        part,
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

    private static Shown shown(WeighedPart part, ExpectedMass mass, MassBasis.Metal metal) {
        return new Shown(
                part,
                mass.lines().stream()
                        .map(line -> new Line(line.part().name(), G_PER_KG * line.mass_kg(), G_PER_KG * line.u_kg()))
                        .toList(),
                G_PER_KG * mass.mass_kg(),
                G_PER_KG * mass.u_kg(),
                List.of(),
                metal);
    }
}
