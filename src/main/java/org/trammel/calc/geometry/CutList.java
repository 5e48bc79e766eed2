package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * Every tube of a frame as it is cut. A tube that cannot be cut is told beside those that can.
 *
 * @param pieces in the order of {@link FrameTube}
 * @param notCut why a tube is missing
 */
public record CutList(List<CutPiece> pieces, List<Answer.Gap> notCut) {

    public CutList {
        pieces = List.copyOf(pieces);
        notCut = List.copyOf(notCut);
    }

    /** Cuts the tubes by the shop's rules; without an answer where a number of the tubes cannot be. */
    public static Answer<CutList> of(TubeAxes axes, TubeSet tubes, SawRules rules) {
        Objections objections = rules.check()
                .length("headTubeOutside", "head tube's outside", tubes.headTubeOutside_mm())
                .length("shellOutside", "shell's outside", tubes.shellOutside_mm());
        tubes.downTube().check(objections, FrameTube.DOWN_TUBE);
        tubes.topTube().check(objections, FrameTube.TOP_TUBE);
        tubes.seatTube().check(objections, FrameTube.SEAT_TUBE);
        StaySet stays = tubes.stays();
        if (stays != null) {
            stays.chainstay().check(objections, FrameTube.CHAINSTAY);
            stays.seatstay().check(objections, FrameTube.SEATSTAY);
            stays.plate().check(objections);
        }
        tubes.formed().forEach((place, end) -> {
            TubeStock stock = tubes.stock(place.tube());
            objections.unless(
                    stock == null || Math.abs(end.round_mm() - stock.outside_mm()) < 1e-6,
                    place.input(),
                    () -> "The formed end is that of a tube of " + Objections.shown(end.round_mm()) + ", and the "
                            + place.tube().word() + " has "
                            + Objections.shown(stock == null ? 0 : stock.outside_mm()) + ".");
        });
        return objections.orElse(() -> Answer.of(cut(new TubeCuts(axes, tubes, rules), stays)));
    }

    private static CutList cut(TubeCuts cuts, @Nullable StaySet stays) {
        Stream<Answer<CutPiece>> front = Stream.of(cuts.downTube(), cuts.topTube(), cuts.seatTube());
        return gathered(
                stays == null ? front : Stream.concat(front, Stream.of(cuts.chainstay(stays), cuts.seatstay(stays))));
    }

    static CutList gathered(Stream<Answer<CutPiece>> answers) {
        List<CutPiece> pieces = new ArrayList<>();
        List<Answer.Gap> notCut = new ArrayList<>();
        answers.forEach(answer -> {
            if (answer instanceof Answer.Determined<CutPiece> there) {
                pieces.add(there.value());
            } else if (answer instanceof Answer.NotDeterminable<CutPiece> none) {
                notCut.addAll(none.gaps());
            }
        });
        return new CutList(pieces, notCut);
    }

    /** This list with the pieces of another behind its own. */
    public CutList and(CutList more) {
        return new CutList(
                Stream.concat(pieces.stream(), more.pieces.stream()).toList(),
                Stream.concat(notCut.stream(), more.notCut.stream()).toList());
    }
}
