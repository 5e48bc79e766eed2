package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.geometry.CutList;
import org.trammel.calc.geometry.CutPiece;
import org.trammel.calc.geometry.EndCut;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.calc.units.Answer;
import org.trammel.shop.routes.Kinds;

/** The pieces of a drawing as they leave saw and mitre, one by one, for whoever measures them. */
@Service
public class CutTubes {

    private final Designs designs;
    private final FramePage page;

    CutTubes(Designs designs, FramePage page) {
        this.designs = designs;
        this.page = page;
    }

    /**
     * One piece.
     *
     * @param code its own within the frame
     * @param called such as “drive-side chainstay”
     * @param tube its name in the cut list, that of its mirror image too
     * @param blank_mm length to saw, before any end is formed
     * @param ends those that are mitred
     */
    public record Piece(String code, String called, String tube, BigDecimal blank_mm, List<End> ends) {

        /** Whether both its cuts must stand in phase. */
        public boolean phased() {
            return ends.size() == 2;
        }
    }

    /**
     * A mitred end.
     *
     * @param place 1 for the first end of the tube, 2 for the second
     * @param angle_deg between the tube's axis and the mate's
     * @param mate_mm outside of the mate, which the saw must not fall short of
     * @param wall_mm of the tube at that end
     */
    public record End(int place, String mate, BigDecimal angle_deg, BigDecimal mate_mm, BigDecimal wall_mm) {}

    /**
     * What is cut for a frame or a part of that kind.
     *
     * @param missing tubes of it that the drawing does not compute, such as “drive-side chainstay”
     * @param why sentences that say what stands in the way of those
     */
    public record Drawn(List<Piece> pieces, List<String> missing, List<String> why) {}

    /** The pieces that the drawing computes, and the tubes that it does not. */
    @Transactional(readOnly = true)
    public Drawn drawn(long revisionId, String kind) {
        Answer<CutList> cuts = page.computed(designs.revision(revisionId)).cuts();
        List<CutPiece> computed = cuts instanceof Answer.Determined<CutList> list
                ? list.value().pieces().stream()
                        .filter(piece -> isOf(piece.tube(), kind))
                        .toList()
                : List.of();
        List<String> missing = Arrays.stream(FrameTube.values())
                .filter(tube -> isOf(tube, kind) && computed.stream().noneMatch(piece -> piece.tube() == tube))
                .flatMap(tube -> called(tube).stream())
                .toList();
        List<String> why = missing.isEmpty()
                ? List.of()
                : (cuts instanceof Answer.NotDeterminable<CutList> none
                                ? none.gaps()
                                : ((Answer.Determined<CutList>) cuts).value().notCut())
                        .stream().map(Answer.Gap::words).distinct().toList();
        return new Drawn(
                computed.stream().flatMap(piece -> pieces(piece).stream()).toList(), missing, why);
    }

    private static List<String> called(FrameTube tube) {
        return tube.count() == 1
                ? List.of(tube.word())
                : List.of("drive-side " + tube.word(), "non-drive-side " + tube.word());
    }

    /** What is cut for a frame or a part of that kind; empty where the drawing computes no cut list. */
    @Transactional(readOnly = true)
    public List<Piece> of(long revisionId, String kind) {
        return drawn(revisionId, kind).pieces();
    }

    private static boolean isOf(FrameTube tube, String kind) {
        boolean rear = tube == FrameTube.CHAINSTAY || tube == FrameTube.SEATSTAY;
        return switch (kind) {
            case Kinds.SWING_ARM -> rear;
            case Kinds.FRONT_TRIANGLE -> !rear;
            default -> true;
        };
    }

    private static List<Piece> pieces(CutPiece piece) {
        String tube = piece.tube().word();
        List<End> ends = new ArrayList<>();
        end(1, piece.endOne(), piece.stock().profile().wallAtOne_mm(), ends);
        end(2, piece.endTwo(), piece.stock().profile().wallAtTwo_mm(), ends);
        BigDecimal blank = rounded(piece.blank_mm(), 1);
        return piece.tube().count() == 1
                ? List.of(new Piece(piece.tube().name(), tube, tube, blank, ends))
                : List.of(
                        new Piece(piece.tube().name() + "-D", "drive-side " + tube, tube, blank, ends),
                        new Piece(piece.tube().name() + "-N", "non-drive-side " + tube, tube, blank, ends));
    }

    private static void end(int place, EndCut cut, double wall_mm, List<End> ends) {
        if (cut instanceof EndCut.Mitred mitred) {
            ends.add(new End(
                    place,
                    mitred.mate(),
                    rounded(Math.toDegrees(mitred.mitre().fixture().includedAngle_rad()), 2),
                    rounded(mitred.mitre().curve().joint().mateOutside_mm(), 2),
                    rounded(wall_mm, 2)));
        }
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
