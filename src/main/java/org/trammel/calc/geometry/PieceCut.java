package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/** One tube on its way from its ends to a piece of the cut list. */
final class PieceCut {

    private final FrameTube tube;
    private final TubeStock stock;
    private final double axisLength_mm;
    private final SawRules rules;

    private final List<Answer.Gap> gaps = new ArrayList<>();
    private final List<Caution> cautions = new ArrayList<>();
    private EndCut one = new EndCut.Square();
    private EndCut two = new EndCut.Square();
    private double phase_rad;
    private @Nullable EndFrame frameOne;
    private @Nullable Formed formedOne;
    private @Nullable Formed formedTwo;

    /**
     * An end that is formed once it was sawn.
     *
     * @param leastOfBlank_mm where the blank ends: the round tube's shortest setback, or at the node where no round one
     *     fits its mate
     */
    private record Formed(FormedEnd end, double leastOfBlank_mm) {

        static Formed from(FormedEnd end, Joint round) {
            return new Formed(
                    end,
                    MitreCurve.of(round, MitreCurve.USUAL_STATIONS) instanceof Answer.Determined<MitreCurve> there
                            ? there.value().least_mm()
                            : 0.0);
        }
    }

    PieceCut(FrameTube tube, TubeStock stock, double axisLength_mm, SawRules rules) {
        this.tube = tube;
        this.stock = stock;
        this.axisLength_mm = axisLength_mm;
        this.rules = rules;
    }

    PieceCut mitreOne(String mate, double mate_mm, EndFrame frame, SpacePoint arm, Section section) {
        frameOne = frame;
        mitre(mate, Joint.meeting(section, mate_mm, frame.along().angleTo_rad(arm)))
                .ifPresent(mitre -> one = mitred(mate, mitre, frame, frame));
        return this;
    }

    /** On a mate whose axis the tube may miss; where it misses too much of it, it is joined through a part between. */
    PieceCut mitreBeside(
            String mate, double mate_mm, EndFrame frame, SpacePoint arm, SpacePoint foot, Section section) {
        double offset = foot.dot(frame.across());
        Joint joint = new Joint(section, mate_mm, frame.along().angleTo_rad(arm), offset);
        double room = (mate_mm - section.acrossPlane_mm()) / 2;
        if (Math.abs(offset) <= room || room < 0) {
            mitre(mate, joint).ifPresent(mitre -> one = mitred(mate, mitre, frame, frame));
            return this;
        }
        cautions.add(new Caution(
                Caution.Kind.BESIDE_MATE,
                "The " + tube.word() + "'s axis passes the " + mate + "'s by " + Objections.shown(Math.abs(offset))
                        + " and could be cut on it up to " + Objections.shown(room)
                        + ": it is joined through a part between. Blank and cut are those of a tube in line with the "
                        + mate + "."));
        return mitreOne(mate, mate_mm, frame, arm, section);
    }

    PieceCut mitreTwo(String mate, double mate_mm, EndFrame frame, SpacePoint arm, Section section) {
        EndFrame first = frameOne;
        if (first != null) {
            phase_rad = phase_rad(first, frame);
        }
        mitre(mate, Joint.meeting(section, mate_mm, frame.along().angleTo_rad(arm)))
                .ifPresent(mitre -> two = mitred(mate, mitre, frame, first == null ? frame : first));
        return this;
    }

    PieceCut endOne(EndCut cut) {
        one = cut;
        return this;
    }

    PieceCut endTwo(EndCut cut) {
        two = cut;
        return this;
    }

    /** The first end was mitred as an oval that the round tube is formed to. */
    PieceCut formedOne(@Nullable FormedEnd end) {
        formedOne = end == null ? null : formed(end, one, stock.profile().wallAtOne_mm());
        return this;
    }

    /** The second end was. */
    PieceCut formedTwo(@Nullable FormedEnd end) {
        formedTwo = end == null ? null : formed(end, two, stock.profile().wallAtTwo_mm());
        return this;
    }

    private @Nullable Formed formed(FormedEnd end, EndCut cut, double wall_mm) {
        if (!(cut instanceof EndCut.Mitred mitred)) {
            return null;
        }
        if (end.zone_mm() < cut.most_mm() - cut.least_mm()) {
            cautions.add(new Caution(
                    Caution.Kind.SHORT_ZONE,
                    "At the " + mitred.mate() + " the " + tube.word() + " is formed over "
                            + Objections.shown(end.zone_mm()) + ", and the cut is "
                            + Written.mm(cut.most_mm() - cut.least_mm())
                            + " deep: form it longer, for the cut is that of the oval."));
        }
        Joint oval = mitred.mitre().curve().joint();
        return Formed.from(
                end,
                new Joint(
                        Section.round(stock.outside_mm(), wall_mm),
                        oval.mateOutside_mm(),
                        oval.includedAngle_rad(),
                        oval.offset_mm()));
    }

    Answer<CutPiece> piece() {
        if (!gaps.isEmpty()) {
            return new Answer.NotDeterminable<>(gaps);
        }
        double trims = (one.isTrimmed() ? rules.trim_mm() : 0) + (two.isTrimmed() ? rules.trim_mm() : 0);
        double leastOne = formedOne == null ? one.least_mm() : formedOne.leastOfBlank_mm();
        double leastTwo = formedTwo == null ? two.least_mm() : formedTwo.leastOfBlank_mm();
        double blank = axisLength_mm - leastOne - leastTwo + trims;
        double trimmed = axisLength_mm - one.least_mm() - two.least_mm() + trims;
        FormedEnd ovalOne = formedOne == null ? null : formedOne.end();
        FormedEnd ovalTwo = formedTwo == null ? null : formedTwo.end();
        double zones = (ovalOne == null ? 0 : ovalOne.zone_mm()) + (ovalTwo == null ? 0 : ovalTwo.zone_mm());
        return new Objections()
                .unless(
                        Math.min(blank, trimmed) > 0,
                        tube.input("blank"),
                        () -> "Nothing is left of the " + tube.word() + ": its mates take more than its "
                                + Objections.shown(axisLength_mm) + ".")
                .unless(
                        zones <= trimmed || !(trimmed > 0),
                        tube.input("zone"),
                        () -> "The " + tube.word() + " is " + Written.mm(trimmed) + " long and would be formed over "
                                + Objections.shown(zones) + ".")
                .unless(
                        !(stock.profile() instanceof WallProfile.Butted butted) || butted.makersLength_mm() >= blank,
                        tube.input("makersLength"),
                        () -> "The " + tube.word() + " needs a blank of " + Written.mm(blank)
                                + ", longer than the tube as bought.")
                .orElse(() -> Answer.of(new CutPiece(
                        tube,
                        stock,
                        axisLength_mm,
                        one,
                        two,
                        phase_rad,
                        blank,
                        ovalOne == null && ovalTwo == null ? null : new CutPiece.Forming(ovalOne, ovalTwo, trimmed),
                        butts(blank, leastOne, leastTwo),
                        all())));
    }

    private @Nullable ButtFit butts(double blank_mm, double leastOne_mm, double leastTwo_mm) {
        if (!(stock.profile() instanceof WallProfile.Butted butted)) {
            return null;
        }
        ButtFit fit = ButtFit.of(
                butted,
                butted.makersLength_mm() - blank_mm,
                one.isTrimmed() ? one.most_mm() - leastOne_mm + rules.trim_mm() : null,
                two.isTrimmed() ? two.most_mm() - leastTwo_mm + rules.trim_mm() : null);
        if (one.isTrimmed()) {
            shortButt("first", fit.leftOne_mm());
        }
        if (two.isTrimmed()) {
            shortButt("second", fit.leftTwo_mm());
        }
        return fit;
    }

    private void shortButt(String end, double left_mm) {
        if (left_mm < rules.buttAtWeld_mm()) {
            cautions.add(new Caution(
                    Caution.Kind.SHORT_BUTT,
                    "At the " + end + " end " + Written.mm(Math.max(0, left_mm)) + " of the " + tube.word()
                            + "'s butt is left behind the weld, less than " + Written.mm(rules.buttAtWeld_mm())
                            + ": take a longer butt, turn the tube or cut more off the other end."));
        }
    }

    private List<Caution> all() {
        List<Caution> all = new ArrayList<>(one.cautions());
        all.addAll(two.cautions());
        all.addAll(cautions);
        return all;
    }

    private Optional<Mitre> mitre(String mate, Joint joint) {
        Answer<Mitre> answer = Mitre.of(joint, rules);
        if (answer instanceof Answer.Determined<Mitre> there) {
            return Optional.of(there.value());
        }
        for (Answer.Gap gap : ((Answer.NotDeterminable<Mitre>) answer).gaps()) {
            String words = Character.toUpperCase(tube.word().charAt(0))
                    + tube.word().substring(1) + " at the " + mate + ": " + gap.words();
            gaps.add(new Answer.Gap(tube.input(gap.input()), words));
        }
        return Optional.empty();
    }

    private static EndCut mitred(String mate, Mitre mitre, EndFrame frame, EndFrame first) {
        Section section = mitre.curve().joint().tube();
        return new EndCut.Mitred(
                mate,
                mitre,
                frame.stationOf_rad(SpacePoint.DRIVE_SIDE, section),
                frame.stationOf_rad(first.towards(), section));
    }

    private static double phase_rad(EndFrame first, EndFrame second) {
        SpacePoint from = first.towards();
        SpacePoint to = second.towards();
        return Math.atan2(from.cross(to).dot(first.along()), from.dot(to));
    }
}
