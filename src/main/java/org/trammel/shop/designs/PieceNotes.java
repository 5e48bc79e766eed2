package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.BentStay;
import org.trammel.calc.geometry.ButtFit;
import org.trammel.calc.geometry.CutPiece;
import org.trammel.calc.geometry.DropoutSlot;
import org.trammel.calc.geometry.EndCut;
import org.trammel.calc.geometry.FormedEnd;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.calc.geometry.WallProfile;
import org.trammel.shop.web.Formats;

/** What is said of a tube in the cut list beside its numbers: how it is shortened, formed, bent and slotted. */
@Component
class PieceNotes {

    private final Formats formats;

    PieceNotes(Formats formats) {
        this.formats = formats;
    }

    /** Outside and wall; of a butted tube first butt, middle and second butt. */
    String section(CutPiece piece) {
        WallProfile profile = piece.stock().profile();
        String outside = formats.number(piece.stock().outside_mm(), 1) + " × ";
        return profile instanceof WallProfile.Butted butted
                ? outside + formats.number(butted.wallAtOne_mm(), 2) + " / "
                        + formats.number(butted.middleWall_mm(), 2) + " / "
                        + formats.number(butted.wallAtTwo_mm(), 2)
                : outside + formats.number(profile.wallAtOne_mm(), 2);
    }

    /** One sentence each, in the order of the work. */
    List<String> of(CutPiece piece, Map<FrameTube, BentStay> paths) {
        List<String> notes = new ArrayList<>();
        if (piece.stock().profile() instanceof WallProfile.Butted butted && piece.butts() != null) {
            notes.addAll(butts(piece, butted, piece.butts()));
        }
        if (piece.forming() != null) {
            formed(notes, end(piece, false), piece.forming().one());
            formed(notes, end(piece, true), piece.forming().two());
            notes.add("Saw round at " + mm(piece.blank_mm()) + ", form, then trim to "
                    + mm(piece.forming().trimmed_mm()) + " at what was formed.");
        }
        bends(notes, paths.get(piece.tube()));
        if (piece.endTwo() instanceof EndCut.Slotted slotted) {
            DropoutSlot slot = slotted.slot();
            notes.add("Slot " + formats.number(slot.width_mm(), 1) + " wide, " + mm(slot.depth_mm())
                    + " deep, upright and tilted by " + degrees(Math.abs(slot.tilt_rad())) + " to the tube's axis; "
                    + mm(Math.max(0, slot.left_mm())) + " of tube left beside its bottom.");
        }
        return notes;
    }

    private List<String> butts(CutPiece piece, WallProfile.Butted butted, ButtFit fit) {
        double one = butted.endOne().length_mm();
        double two = butted.endTwo().length_mm();
        String longer = one == two
                ? "Both butts are " + mm(one) + " long"
                : "The longer butt, " + mm(Math.max(one, two)) + ", goes to the " + end(piece, two > one)
                        + ", the shorter, " + mm(Math.min(one, two)) + ", to the " + end(piece, two <= one);
        return List.of(
                "Butted, " + mm(butted.makersLength_mm()) + " as bought. " + longer + ".",
                "Cut off first: " + mm(fit.cutOffOne_mm()) + " at the " + end(piece, false) + ", "
                        + mm(fit.cutOffTwo_mm()) + " at the " + end(piece, true)
                        + ". Butt left behind the cut: " + mm(Math.max(0, fit.leftOne_mm())) + " and "
                        + mm(Math.max(0, fit.leftTwo_mm())) + ".");
    }

    private void formed(List<String> notes, String where, @Nullable FormedEnd end) {
        if (end != null) {
            notes.add("At the " + where + " formed to " + mm(end.inFramePlane_mm()) + " upright and "
                    + formats.with(end.acrossFrame_mm(), 2, "mm") + " across over " + mm(end.zone_mm())
                    + "; its perimeter stays " + formats.with(end.perimeter_mm(), 2, "mm") + ".");
        }
    }

    private void bends(List<String> notes, @Nullable BentStay path) {
        if (path == null) {
            return;
        }
        for (BentStay.Mark mark : path.marks()) {
            notes.add("Bend from " + mm(mark.begins_mm()) + " to " + mm(mark.begins_mm() + mark.arc_mm())
                    + " of the straight tube, from its front end: " + degrees(Math.abs(mark.turn_rad())) + " "
                    + (mark.turn_rad() < 0 ? "inward" : "outward") + " on a radius of " + mm(mark.radius_mm()) + ".");
        }
    }

    private static String end(CutPiece piece, boolean second) {
        if ((second ? piece.endTwo() : piece.endOne()) instanceof EndCut.Mitred mitred) {
            return mitred.mate();
        }
        return switch (piece.tube()) {
            case DOWN_TUBE -> second ? "shell" : "head tube";
            case TOP_TUBE -> second ? "seat tube" : "head tube";
            case SEAT_TUBE -> second ? "top" : "shell";
            case CHAINSTAY -> second ? "dropout" : "shell";
            case SEATSTAY -> second ? "dropout" : "seat tube";
        };
    }

    private String mm(double length_mm) {
        return formats.with(length_mm, 1, "mm");
    }

    private String degrees(double angle_rad) {
        return formats.with(Math.toDegrees(angle_rad), 1, "°");
    }
}
