package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.designs.DrawnFrames;
import org.trammel.shop.drift.JigFrames;
import org.trammel.shop.drift.JigUses;
import org.trammel.shop.inspection.Pushes;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.ScaleView;
import org.trammel.shop.web.TableView;
import org.trammel.shop.web.TrendView;

/** Draws what the sheet of the table shows: the frame with its deviations, and the history of an axis. */
@Component
class TableViews {

    private static final int HISTORY = 25;
    private static final int LOOKED_AT = 400;

    private final TableForm form;
    private final Readings readings;
    private final Pushes pushes;
    private final JigUses jigs;
    private final JigFrames inJigs;
    private final Formats formats;

    TableViews(TableForm form, Readings readings, Pushes pushes, JigUses jigs, JigFrames inJigs, Formats formats) {
        this.form = form;
        this.readings = readings;
        this.pushes = pushes;
        this.jigs = jigs;
        this.inJigs = inJigs;
        this.formats = formats;
    }

    /**
     * What frames read on the same axis before anybody pushed them: those of the frame's own jig, where one is noted; else
     * all of them.
     */
    TableSheet.@Nullable History history(
            TableSheet.Row row, List<TableCharacteristics.Measured> measured, FrameSheet.Head head) {
        FrameSheet.CharacteristicLine line = measured.stream()
                .map(TableCharacteristics.Measured::line)
                .filter(one -> one.characteristicId() == row.characteristicId())
                .findFirst()
                .orElseThrow();
        String jig = jigs.of(head.travellerId()).orElse(null);
        Set<Long> inJig = jig == null ? Set.of() : inJigs.travellers(jig);
        List<ReadingLine> all = pushes.before(readings.newestOf(line.code(), LOOKED_AT)).stream()
                .filter(one -> jig == null || inJig.contains(one.travellerId()))
                .toList();
        List<ReadingLine> last = all.subList(Math.max(0, all.size() - HISTORY), all.size());
        if (last.size() < 2) {
            return null;
        }
        boolean ours = last.get(last.size() - 1).travellerId() == head.travellerId();
        String of = (jig == null ? "" : "Jig " + jig + ", ") + row.name() + ", last " + last.size();
        return new TableSheet.History(
                of,
                new TrendView(
                        last.stream().map(one -> one.value().doubleValue()).toList(),
                        last.stream()
                                .map(one -> one.travellerId() == head.travellerId() ? formats.mark(head.serial()) : "")
                                .toList(),
                        line.unit(),
                        ours,
                        of + " values before anything was set straight, from "
                                + formats.with(last.get(0).value(), 2, line.unit()) + " to "
                                + formats.with(last.get(last.size() - 1).value(), 2, line.unit()) + "."));
    }

    TableView drawing(
            FrameSheet.Head head,
            SheetLine sheet,
            List<TableCharacteristics.Measured> measured,
            List<TableSheet.Row> all) {
        DrawnFrames.Drawn drawn = form.drawing(head);
        SideView side = drawn == null ? PlainFrame.SIDE : drawn.side();
        Places places = drawn == null ? Places.of(null, false) : Places.of(drawn, false);
        TableSetUp setUp = sheet.setUp();
        List<TableView.Station> stations = new ArrayList<>();
        if (drawn != null && asked(measured, Deviation.TWIST, Deviation.SEAT_TUBE_LEAN)) {
            for (BigDecimal along : List.of(setUp.seatLow_mm(), setUp.seatHigh_mm())) {
                stations.add(new TableView.Station(
                        places.onSeatTube(along.doubleValue()), formats.number(along.stripTrailingZeros(), 0)));
            }
        }
        boolean mandrel =
                setUp.base() == TableSetUp.Base.MANDREL && asked(measured, Deviation.TWIST, Deviation.HEAD_TUBE_LEAN);
        TableSheet.Row worst = all.isEmpty() ? null : all.get(0);
        return new TableView(
                side,
                drawn == null,
                drawn == null ? null : drawn.shellWidth_mm(),
                stations,
                mandrel ? setUp.mandrelBase_mm().doubleValue() : null,
                offset(Deviation.HEAD_TUBE_OFFSET, measured, all),
                offset(Deviation.REAR_AXLE_OFFSET, measured, all),
                lean(sheet, measured, all),
                flags(side, measured, all),
                built(measured, all),
                formats.mark(head.serial()) + " in three views; "
                        + (worst == null || !worst.read()
                                ? "nothing is judged yet"
                                : worst.name() + " " + worst.value() + " " + worst.side() + ", " + worst.word())
                        + ".");
    }

    private static boolean asked(List<TableCharacteristics.Measured> measured, Deviation... any) {
        return measured.stream()
                .anyMatch(one -> List.of(any).contains(one.deviations().get(0)));
    }

    private TableView.@Nullable Offset offset(
            Deviation what, List<TableCharacteristics.Measured> measured, List<TableSheet.Row> all) {
        int at = index(what, measured);
        if (at < 0) {
            return null;
        }
        TableSheet.Row row = all.get(at);
        BigDecimal limit = measured.get(at).line().upperLimit();
        BigDecimal value = row.scale() == null ? null : row.scale().value();
        return new TableView.Offset(
                row.letter(),
                value == null ? null : value.doubleValue(),
                limit == null ? null : limit.doubleValue(),
                row.read() ? row.kind() : null);
    }

    private TableView.@Nullable Lean lean(
            SheetLine sheet, List<TableCharacteristics.Measured> measured, List<TableSheet.Row> all) {
        int at = index(Deviation.TWIST, measured);
        if (at < 0) {
            return null;
        }
        TableSheet.Row row = all.get(at);
        BigDecimal limit = measured.get(at).line().upperLimit();
        BigDecimal guard = row.scale() == null ? null : row.scale().guard();
        return new TableView.Lean(
                told(sheet, Deviation.SEAT_TUBE_LEAN),
                told(sheet, Deviation.HEAD_TUBE_LEAN),
                limit == null ? null : limit.doubleValue(),
                guard == null ? 0 : guard.doubleValue(),
                row.read() ? row.kind() : null);
    }

    /** How far the side view is off its drawing, whichever way it was measured. */
    private static TableView.@Nullable Built built(
            List<TableCharacteristics.Measured> measured, List<TableSheet.Row> all) {
        TableView.Built built = new TableView.Built(
                off(Deviation.HEAD_ANGLE, measured, all),
                off(Deviation.SEAT_ANGLE, measured, all),
                off(Deviation.STACK, measured, all),
                off(Deviation.REACH, measured, all));
        return built.any() ? built : null;
    }

    private static @Nullable Double off(
            Deviation what, List<TableCharacteristics.Measured> measured, List<TableSheet.Row> all) {
        int at = index(what, measured);
        BigDecimal nominal = at < 0 ? null : measured.get(at).line().nominal();
        ScaleView scale = at < 0 ? null : all.get(at).scale();
        BigDecimal value = scale == null ? null : scale.value();
        return nominal == null || value == null ? null : value.subtract(nominal).doubleValue();
    }

    private static @Nullable Double told(SheetLine sheet, Deviation what) {
        ReductionLine newest = sheet.newest();
        return newest == null
                ? null
                : newest.deviations().stream()
                        .filter(one -> one.what() == what)
                        .map(one -> one.value().doubleValue())
                        .findFirst()
                        .orElse(null);
    }

    private static int index(Deviation what, List<TableCharacteristics.Measured> measured) {
        for (int i = 0; i < measured.size(); i++) {
            if (measured.get(i).deviations().get(0) == what) {
                return i;
            }
        }
        return -1;
    }

    private static List<TableView.Flag> flags(
            SideView side, List<TableCharacteristics.Measured> measured, List<TableSheet.Row> all) {
        FrameGeometry g = side.geometry();
        List<TableView.Flag> flags = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Point at = switch (measured.get(i).deviations().get(0)) {
                case TWIST -> g.headTubeTop();
                case AXLE_WIDTH -> g.rearAxle();
                case DROPOUTS_FORE_AFT, DROPOUTS_UP_DOWN -> g.rearAxle().times(0.97);
                case CHAINSTAY_DIFFERENCE, REAR_YAW -> g.rearAxle().times(0.6);
                case HEAD_ANGLE -> g.headTubeBottom();
                case SEAT_ANGLE -> g.seatTubeTop();
                default -> null;
            };
            if (at != null) {
                flags.add(new TableView.Flag(
                        all.get(i).letter(), at, all.get(i).read() ? all.get(i).kind() : null));
            }
        }
        return flags;
    }
}
