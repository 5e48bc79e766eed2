package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.AlignmentReadings;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.designs.DrawnFrames;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;

/** From the figures of a sheet to what is computed from, and which figures a deviation comes from. */
@Component
class TableForm {

    private final Doubts doubts;
    private final DrawnFrames drawings;
    private final Settings settings;

    TableForm(Doubts doubts, DrawnFrames drawings, Settings settings) {
        this.doubts = doubts;
        this.drawings = drawings;
        this.settings = settings;
    }

    AlignmentReadings readings(FrameSheet.Head head, TableSetUp setUp, List<RawLine> standing) {
        return readings(head, setUp, standing, postBySetting(setUp, standing));
    }

    /**
     * The same with the post as it stood then.
     *
     * @param post its height; null where it was read, or not asked for
     */
    AlignmentReadings readings(
            FrameSheet.Head head, TableSetUp setUp, List<RawLine> standing, @Nullable BigDecimal post) {
        Places places = places(head);
        if (setUp.datum() == TableSetUp.Datum.POINTS) {
            return new PointForm(doubts, places, standing).readings();
        }
        if (!places.drawn() && (setUp.datum() == TableSetUp.Datum.FACES || doubts.tilt_rad() > 0)) {
            throw Refusal.state(
                    Reductions.NOT_REDUCED,
                    "The drawing of this frame gives no geometry, and a plane from the shell's faces is carried to"
                            + " stations whose places it would tell.",
                    "Put the shell on its post, or enter the geometry of the drawing.");
        }
        if (setUp.sideView() && !places.drawn() && standing.stream().anyMatch(TableForm::ofSideView)) {
            throw Refusal.state(
                    Reductions.NOT_REDUCED,
                    "The drawing of this frame gives no geometry, and the side view is laid by where it has the rear axle.",
                    "Enter the geometry of the drawing, or read the side view with protractor and rule.");
        }
        return new PlateForm(
                        doubts,
                        setUp,
                        places,
                        head.metal(),
                        used(setUp, standing),
                        post,
                        settings.number("table.gap.span").doubleValue())
                .readings();
    }

    Places places(FrameSheet.Head head) {
        return Places.of(drawing(head), swingArm(head));
    }

    DrawnFrames.@Nullable Drawn drawing(FrameSheet.Head head) {
        Long revision = head.designRevisionId();
        return revision == null ? null : drawings.of(revision).orElse(null);
    }

    /** The rear end of a full suspension is measured against its own pivot. */
    static boolean swingArm(FrameSheet.Head head) {
        return head.part().startsWith("SA");
    }

    /** The figures a set-up computes from: those of the other base, of the other datum or form wait. */
    List<RawLine> used(TableSetUp setUp, List<RawLine> standing) {
        if (setUp.datum() == TableSetUp.Datum.POINTS) {
            return standing.stream().filter(RawLine::point).toList();
        }
        return standing.stream()
                .filter(line -> !line.point())
                .filter(line -> Spot.named(line.spot())
                        .filter(spot -> counts(setUp, spot) && (setUp.bothSides() || !spot.under()))
                        .isPresent())
                .toList();
    }

    private static boolean counts(TableSetUp setUp, Spot spot) {
        return switch (spot.group()) {
            case HEAD_TUBE -> setUp.base() == TableSetUp.Base.TUBE;
            case MANDREL -> setUp.base() == TableSetUp.Base.MANDREL;
            case SHELL -> (spot == Spot.POST) == (setUp.datum() == TableSetUp.Datum.POST);
            case SIDE_FIRST, SIDE_TURNED -> setUp.sideView();
            case SEAT_TUBE, REAR_END -> true;
        };
    }

    private static boolean ofSideView(RawLine line) {
        return Spot.named(line.spot()).filter(Spot::side).isPresent();
    }

    /** The figures whose gauge stands for a deviation. */
    List<RawLine> of(Deviation what, TableSetUp setUp, List<RawLine> used) {
        if (setUp.datum() == TableSetUp.Datum.POINTS) {
            return used;
        }
        return switch (what) {
            case HEAD_TUBE_LEAN, HEAD_TUBE_OFFSET, TWIST -> in(used, Set.of("HEAD_", "MANDREL_", "SEAT_"));
            case SEAT_TUBE_LEAN -> in(used, Set.of("SEAT_"));
            case REAR_AXLE_OFFSET -> in(used, Set.of("AXLE_DRIVE", "AXLE_OTHER"));
            case AXLE_WIDTH -> {
                List<RawLine> widths = in(used, Set.of("AXLE_WIDTH"));
                yield widths.isEmpty() ? in(used, Set.of("AXLE_")) : widths;
            }
            case DROPOUTS_FORE_AFT, DROPOUTS_UP_DOWN -> in(used, Set.of("GAP_"));
            case CHAINSTAY_DIFFERENCE, REAR_YAW -> in(used, Set.of("STAY_"));
            case HEAD_ANGLE, SEAT_ANGLE, STACK, REACH -> in(used, Set.of("SIDE_"));
        };
    }

    private static List<RawLine> in(List<RawLine> used, Set<String> starts) {
        return used.stream()
                .filter(line -> starts.stream().anyMatch(line.spot()::startsWith))
                .toList();
    }

    /** Height of the post where the settings gave it; null where it was read, or not asked for. */
    @Nullable
    BigDecimal postBySetting(TableSetUp setUp, List<RawLine> standing) {
        boolean read = standing.stream().anyMatch(line -> line.spot().equals(Spot.POST.name()));
        return setUp.datum() == TableSetUp.Datum.POST && !read ? settings.number("table.post") : null;
    }
}
