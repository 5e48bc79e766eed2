package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.designs.DrawnFrames;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.travellers.ClockState;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.TableView;
import org.trammel.shop.web.TrendView;

/** Puts the sheet of the table together. */
@Component
class TableSheets {

    private static final int TREND = 25;
    private static final Set<OperationState> AT_HAND =
            Set.of(OperationState.WAITING, OperationState.IN_WORK, OperationState.AT_POINT, OperationState.STOPPED);

    private final TurnOfSheet turns;
    private final TableRows rows;
    private final TableForm form;
    private final Readings readings;
    private final Travellers travellers;
    private final Formats formats;
    private final Clock clock;

    TableSheets(
            TurnOfSheet turns,
            TableRows rows,
            TableForm form,
            Readings readings,
            Travellers travellers,
            Formats formats,
            Clock clock) {
        this.turns = turns;
        this.rows = rows;
        this.form = form;
        this.readings = readings;
        this.travellers = travellers;
        this.formats = formats;
        this.clock = clock;
    }

    /** The sheet of an operation; the chart is about the characteristic chosen, else about the worst. */
    @Transactional(readOnly = true)
    public TableSheet of(long operationId, @Nullable Long chosen) {
        Instant now = clock.instant();
        FrameSheet.Head head = travellers.headOf(operationId);
        FrameSheet frame = travellers.sheet(head.travellerId());
        FrameSheet.OperationSheetOfFrame at = frame.at();
        boolean current = at != null && at.line().operationId() == operationId;
        FrameSheet.OperationSheetOfFrame operation =
                current ? Objects.requireNonNull(at) : travellers.operation(operationId);
        List<TableCharacteristics.Measured> measured = turns.measured(operation);
        SheetLine sheet = turns.sheet(operationId, head.travellerId());
        List<ReadingLine> given = readings.of(
                measured.stream().map(one -> one.line().characteristicId()).toList());
        List<TableSheet.Row> all = rows.of(head, sheet, measured, given, now);
        TableSheet.Row worst = all.stream()
                .filter(TableSheet.Row::read)
                .min(Comparator.comparing(row -> rank(row.kind())))
                .orElse(all.isEmpty() ? null : all.get(0));
        TableSheet.Row row = all.stream()
                .filter(one -> chosen != null && one.characteristicId() == chosen)
                .findFirst()
                .orElse(worst);
        boolean atHand = AT_HAND.contains(operation.line().state());
        long outside =
                all.stream().filter(one -> one.kind().equals("not-conforming")).count();
        boolean judged = worst != null && worst.read();
        return new TableSheet(
                head,
                operation,
                atHand,
                sheet,
                lies(operation, sheet),
                clock(frame.clocks(), measured),
                judged ? worst.word() : "not judged",
                judged ? worst.kind() : "waiting",
                outside + " of " + all.size() + " outside",
                all,
                row,
                drawing(head, sheet, measured, all),
                row == null ? null : trend(row, measured, head),
                plate(head, operation, sheet, all, atHand, frame),
                fit(sheet));
    }

    private static int rank(String kind) {
        return List.of("not-conforming", "undecided", "done", "conforming").indexOf(kind) < 0
                ? 9
                : List.of("not-conforming", "undecided", "done", "conforming").indexOf(kind);
    }

    private String lies(FrameSheet.OperationSheetOfFrame operation, SheetLine sheet) {
        TableSetUp setUp = sheet.setUp();
        String gauges = sheet.standing().stream().map(RawLine::gauge).distinct().collect(Collectors.joining(", "));
        return operation.line().name() + ", " + setUp.datum().words()
                + (setUp.datum() == TableSetUp.Datum.POINTS
                        ? ""
                        : ", " + setUp.base().words() + " "
                                + formats.number(setUp.base_mm().stripTrailingZeros(), 0))
                + (gauges.isEmpty() ? "" : ", " + gauges);
    }

    private static TableSheet.@Nullable Clock clock(
            List<ClockView> clocks, List<TableCharacteristics.Measured> measured) {
        Set<String> wanted = measured.stream()
                .map(one -> one.line().coldSetClock())
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        return clocks.stream()
                .filter(c -> wanted.contains(c.code()) && c.endsAt() != null && c.state() != ClockState.PLANNED)
                .findFirst()
                .map(c -> new TableSheet.Clock(
                        c.name() + " closes in", Objects.requireNonNull(c.endsAt()), c.name() + " closed"))
                .orElse(null);
    }

    private TableSheet.@Nullable Fit fit(SheetLine sheet) {
        ReductionLine newest = sheet.newest();
        BigDecimal residual = newest == null ? null : newest.residual_mm();
        if (newest == null || residual == null) {
            return null;
        }
        boolean clean = residual.compareTo(newest.residualMost_mm()) <= 0;
        return new TableSheet.Fit(
                "Faces of the shell within " + formats.with(residual, 3, "mm") + " of their planes, "
                        + formats.with(newest.residualMost_mm().stripTrailingZeros(), 3, "mm") + " at most; farthest "
                        + newest.farthest() + ".",
                clean);
    }

    private TableSheet.Plate plate(
            FrameSheet.Head head,
            FrameSheet.OperationSheetOfFrame operation,
            SheetLine sheet,
            List<TableSheet.Row> all,
            boolean atHand,
            FrameSheet frame) {
        String here = "/alignment/" + operation.line().operationId();
        TableSheet.Row wrong = all.stream()
                .filter(row -> row.kind().equals("not-conforming"))
                .findFirst()
                .orElse(null);
        if (wrong != null && wrong.room() != null && wrong.room().open()) {
            boolean held = !frame.inTheWay().isEmpty();
            return new TableSheet.Plate(
                    held
                            ? "Free the cold-set before "
                                    + formats.moment(wrong.room().windowEnds()) + "?"
                            : "Set " + wrong.name().toLowerCase(java.util.Locale.ROOT) + " straight before "
                                    + formats.moment(wrong.room().windowEnds()),
                    held
                            ? ended(frame.inTheWay().get(0).why()) + " The window will not wait; release stays shut."
                            : "Aim at zero. Cold only; measure everything again after it.",
                    held ? "Holds of this frame" : "Record a cold-set",
                    "/station/" + head.tag()
                            + (held ? "/holds" : "/cold-set?characteristic=" + wrong.characteristicId()));
        }
        TableSheet.Row undecided = all.stream()
                .filter(row -> row.kind().equals("undecided"))
                .findFirst()
                .orElse(null);
        if (atHand && undecided != null) {
            return new TableSheet.Plate(
                    undecided.name() + " is undecided",
                    undecided.better().isEmpty()
                            ? "Only a reading with less uncertainty decides it."
                            : undecided.better(),
                    "Read more",
                    here + "/read");
        }
        boolean unread = all.stream().anyMatch(row -> !row.read());
        if (atHand && (unread || sheet.standing().isEmpty())) {
            return new TableSheet.Plate(
                    sheet.standing().isEmpty()
                            ? "Nothing is read yet"
                            : sheet.standing().size() + " figures are read",
                    "Read the frame at its stations, in whatever order; then reduce and judge.",
                    "Read at the table",
                    here + "/read");
        }
        return new TableSheet.Plate(
                wrong == null ? "Everything here is judged" : wrong.name() + " does not conform",
                wrong == null ? "The sheet of the frame goes on." : "The decision is the QA lead's.",
                "Sheet of the frame",
                "/station/" + head.tag());
    }

    private static String ended(String sentence) {
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }

    // ------------------------------------------------------------------------------------------ drawings

    private @Nullable TrendView trend(
            TableSheet.Row row, List<TableCharacteristics.Measured> measured, FrameSheet.Head head) {
        FrameSheet.CharacteristicLine line = measured.stream()
                .map(TableCharacteristics.Measured::line)
                .filter(one -> one.characteristicId() == row.characteristicId())
                .findFirst()
                .orElseThrow();
        List<ReadingLine> last = readings.newestOf(line.code(), TREND);
        if (last.size() < 2) {
            return null;
        }
        boolean ours = last.get(last.size() - 1).travellerId() == head.travellerId();
        return new TrendView(
                last.stream().map(one -> one.value().doubleValue()).toList(),
                last.stream()
                        .map(one -> one.travellerId() == head.travellerId() ? formats.mark(head.serial()) : "")
                        .toList(),
                line.unit(),
                ours,
                "The last " + last.size() + " values of " + row.name() + " at this operation, from "
                        + formats.with(last.get(0).value(), 2, line.unit()) + " to "
                        + formats.with(last.get(last.size() - 1).value(), 2, line.unit()) + ".");
    }

    private TableView drawing(
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
