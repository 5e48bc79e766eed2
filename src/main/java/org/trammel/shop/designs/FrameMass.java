package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.trammel.calc.geometry.ButtFit;
import org.trammel.calc.geometry.CutList;
import org.trammel.calc.geometry.CutPiece;
import org.trammel.calc.geometry.EndCut;
import org.trammel.calc.geometry.ExpectedMass;
import org.trammel.calc.geometry.FramePart;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.calc.geometry.SawRules;
import org.trammel.calc.geometry.WallProfile;
import org.trammel.calc.units.Answer;

/**
 * What a drawn frame should weigh before it is coated: of a full suspension frame its front triangle and its swing arm, each
 * by itself.
 *
 * <p>Lengths are those of the blanks, so that what a mitre leaves beyond its shortest points stands against what it takes;
 * of stays the way in space from the surface of their mate to their end before the axle. Of a butted tube the wall is
 * taken to change where it begins to thin, for nobody gives how long it thins.
 */
final class FrameMass {

    private static final String PAIR = " pair";
    private static final int DROPOUTS = 2;

    private final GivenInputs in;
    private final MassBasis.Metal metal;

    private FrameMass(GivenInputs in, MassBasis.Metal metal) {
        this.in = in;
        this.metal = metal;
    }

    /** Without an answer where the metal, the cut list or an input is missing. */
    static Answer<ExpectedMass> of(Map<String, String> typed, ComputedFrame frame, Answer<MassBasis.Metal> metal) {
        if (frame.isTandem()) {
            return ComputedFrame.notOfATandem("The mass");
        }
        return metal.then(of -> {
            FrameMass mass = new FrameMass(new GivenInputs(typed), of);
            return frame.frontCuts().then(mass::expected);
        });
    }

    /** Of a swing arm by itself; without an answer where the drawing does not know its tubes, or an input is missing. */
    static Answer<ExpectedMass> ofArm(
            Map<String, String> typed, ComputedFrame frame, SawRules rules, Answer<MassBasis.Metal> metal) {
        return metal.then(of -> {
            FrameMass mass = new FrameMass(new GivenInputs(typed), of);
            return frame.arm().then(arm -> mass.swinging(arm.cuts(rules)));
        });
    }

    private Answer<ExpectedMass> swinging(CutList cuts) {
        if (!cuts.notCut().isEmpty()) {
            return new Answer.NotDeterminable<>(cuts.notCut());
        }
        return in.all(
                        GeometryInput.ARM_BORE,
                        GeometryInput.ARM_OVER,
                        GeometryInput.DROPOUT_MASS,
                        GeometryInput.ARM_PARTS_MASS,
                        GeometryInput.ARM_WELD_MASS)
                .then(there -> ExpectedMass.of(partsOfTheArm(cuts), metal.wallHalfWidth_mm()));
    }

    private List<FramePart> partsOfTheArm(CutList cuts) {
        List<FramePart> parts = new ArrayList<>();
        parts.add(new FramePart.Bored(
                "pivot bosses",
                in.number(GeometryInput.ARM_BOSS),
                in.number(GeometryInput.ARM_BORE),
                in.number(GeometryInput.ARM_OVER) - in.number(GeometryInput.ARM_INSIDE),
                metal.density_kgPerM3()));
        cuts.pieces().forEach(piece -> parts.add(tube(piece)));
        parts.add(dropouts());
        parts.add(new FramePart.Pieces(
                "bridge, cross tube, small parts", in.number(GeometryInput.ARM_PARTS_MASS), metal.uOfParts_kg(), 1));
        parts.add(new FramePart.Weld("weld", in.number(GeometryInput.ARM_WELD_MASS), metal.uOfWeld_kg()));
        return parts;
    }

    private FramePart.Pieces dropouts() {
        return new FramePart.Pieces("dropouts", in.number(GeometryInput.DROPOUT_MASS), metal.uOfParts_kg(), DROPOUTS);
    }

    private Answer<ExpectedMass> expected(CutList cuts) {
        if (!cuts.notCut().isEmpty()) {
            return new Answer.NotDeterminable<>(cuts.notCut());
        }
        boolean swings = in.has(GeometryInput.PIVOT_AHEAD);
        return in.all(
                        GeometryInput.HEAD_TUBE_BORE,
                        GeometryInput.SHELL_BORE,
                        GeometryInput.SHELL_WIDTH,
                        swings ? GeometryInput.PIVOT_MASS : GeometryInput.DROPOUT_MASS,
                        GeometryInput.SMALL_PARTS_MASS,
                        GeometryInput.WELD_MASS)
                .then(there -> ExpectedMass.of(parts(cuts, swings), metal.wallHalfWidth_mm()));
    }

    private List<FramePart> parts(CutList cuts, boolean swings) {
        List<FramePart> parts = new ArrayList<>();
        parts.add(bored(
                "head tube", GeometryInput.HEAD_TUBE_OUTSIDE, GeometryInput.HEAD_TUBE_BORE, GeometryInput.HEAD_TUBE));
        parts.add(bored("shell", GeometryInput.SHELL_OUTSIDE, GeometryInput.SHELL_BORE, GeometryInput.SHELL_WIDTH));
        cuts.pieces().forEach(piece -> parts.add(tube(piece)));
        parts.add(
                swings
                        ? new FramePart.Pieces(
                                "pivot parts", in.number(GeometryInput.PIVOT_MASS), metal.uOfParts_kg(), 1)
                        : dropouts());
        parts.add(new FramePart.Pieces("small parts", in.number(GeometryInput.SMALL_PARTS_MASS), 0, 1));
        parts.add(new FramePart.Weld("weld", in.number(GeometryInput.WELD_MASS), metal.uOfWeld_kg()));
        return parts;
    }

    private FramePart.Bored bored(String name, GeometryInput outside, GeometryInput bore, GeometryInput length) {
        return new FramePart.Bored(
                name, in.number(outside), in.number(bore), in.number(length), metal.density_kgPerM3());
    }

    private FramePart.Tube tube(CutPiece piece) {
        FrameTube tube = piece.tube();
        boolean stay = tube.count() > 1;
        double length = stay ? piece.axisLength_mm() - toSurface_mm(piece.endOne()) : piece.blank_mm();
        return new FramePart.Tube(
                stay ? tube.word() + PAIR : tube.word(),
                piece.stock().outside_mm(),
                sections(piece, length),
                metal.density_kgPerM3(),
                tube.count());
    }

    /** From the mate's axis to its surface, along the stay. */
    private static double toSurface_mm(EndCut end) {
        return end instanceof EndCut.Mitred mitred ? mitred.mitre().curve().axisSetback_mm() : 0;
    }

    /** Of a butted tube what its cut leaves of either butt, and the thin wall between them. */
    private static List<FramePart.Section> sections(CutPiece piece, double length_mm) {
        WallProfile profile = piece.stock().profile();
        ButtFit fit = piece.butts();
        if (!(profile instanceof WallProfile.Butted butted) || fit == null) {
            return List.of(new FramePart.Section(profile.wallAtOne_mm(), profile.wallAtTwo_mm(), length_mm));
        }
        double one = Math.max(0, Math.min(length_mm, butted.endOne().length_mm() - fit.cutOffOne_mm()));
        double two = Math.max(0, Math.min(length_mm - one, butted.endTwo().length_mm() - fit.cutOffTwo_mm()));
        return Stream.of(
                        section(butted.wallAtOne_mm(), one),
                        section(butted.middleWall_mm(), length_mm - one - two),
                        section(butted.wallAtTwo_mm(), two))
                .filter(section -> section.length_mm() > 0)
                .toList();
    }

    private static FramePart.Section section(double wall_mm, double length_mm) {
        return new FramePart.Section(wall_mm, wall_mm, length_mm);
    }
}
