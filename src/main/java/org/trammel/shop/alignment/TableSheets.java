package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.travellers.ClockState;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/** Puts the sheet of the table together. */
@Component
class TableSheets {

    private static final Set<OperationState> AT_HAND =
            Set.of(OperationState.WAITING, OperationState.IN_WORK, OperationState.AT_POINT, OperationState.STOPPED);

    private final TurnOfSheet turns;
    private final TableRows rows;
    private final TableViews views;
    private final PushAdvices pushes;
    private final SheetNotes notes;
    private final Readings readings;
    private final Travellers travellers;
    private final Formats formats;
    private final Clock clock;

    TableSheets(
            TurnOfSheet turns,
            TableRows rows,
            TableViews views,
            PushAdvices pushes,
            SheetNotes notes,
            Readings readings,
            Travellers travellers,
            Formats formats,
            Clock clock) {
        this.turns = turns;
        this.rows = rows;
        this.views = views;
        this.pushes = pushes;
        this.notes = notes;
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
        long unread = all.stream().filter(one -> !one.read()).count();
        boolean judged = worst != null && worst.read() && (unread == 0 || outside > 0);
        return new TableSheet(
                head,
                operation,
                atHand,
                sheet,
                lies(operation, sheet),
                clock(frame.clocks(), measured),
                judged ? worst.word() : unread > 0 ? "to be read" : "not judged",
                judged ? worst.kind() : "waiting",
                outside + " of " + all.size() + " outside" + (unread == 0 ? "" : ", " + unread + " to be read"),
                all,
                row,
                views.drawing(head, sheet, measured, all),
                row == null ? null : views.history(row, measured, head),
                plate(head, operation, sheet, all, atHand, frame),
                fit(sheet),
                notes.of(head, sheet),
                row == null ? null : push(head, row, measured),
                held(frame, operationId));
    }

    private static List<TableSheet.Held> held(FrameSheet frame, long operationId) {
        return frame.holds().stream()
                .filter(hold -> hold.scope() != HoldScope.OPERATION || Objects.equals(hold.operationId(), operationId))
                .map(hold -> new TableSheet.Held(hold.reason().word(), ended(hold.words())))
                .toList();
    }

    private @Nullable PushAdvice push(
            FrameSheet.Head head, TableSheet.Row row, List<TableCharacteristics.Measured> measured) {
        return row.room() == null || !row.room().open()
                ? null
                : measured.stream()
                        .map(TableCharacteristics.Measured::line)
                        .filter(line -> line.characteristicId() == row.characteristicId())
                        .findFirst()
                        .flatMap(line -> pushes.of(head, line))
                        .orElse(null);
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
}
