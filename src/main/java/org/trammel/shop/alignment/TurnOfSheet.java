package org.trammel.shop.alignment;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Finds the turn of an operation's sheet that is in force: what was read before a frame was bent is of an earlier one. */
@Component
class TurnOfSheet {

    private final SheetRepository sheets;
    private final SetUpRepository setUps;
    private final RawRepository figures;
    private final ReductionRepository reductions;
    private final DeviationRepository deviations;
    private final ColdSets coldSets;
    private final TableCharacteristics measured;
    private final Travellers travellers;
    private final Evidence evidence;
    private final Settings settings;

    TurnOfSheet(
            SheetRepository sheets,
            SetUpRepository setUps,
            RawRepository figures,
            ReductionRepository reductions,
            DeviationRepository deviations,
            ColdSets coldSets,
            TableCharacteristics measured,
            Travellers travellers,
            Evidence evidence,
            Settings settings) {
        this.sheets = sheets;
        this.setUps = setUps;
        this.figures = figures;
        this.reductions = reductions;
        this.deviations = deviations;
        this.coldSets = coldSets;
        this.measured = measured;
        this.travellers = travellers;
        this.evidence = evidence;
        this.settings = settings;
    }

    /** What of an operation the table measures. */
    List<TableCharacteristics.Measured> measured(FrameSheet.OperationSheetOfFrame operation) {
        return measured.of(operation.characteristics());
    }

    /**
     * Opens an act at the table, or says that it was carried out before. Whoever may read one of the characteristics may
     * read the figures they come from.
     *
     * @return null if the act was carried out before
     */
    Evidence.@Nullable Wanted opens(Act act, String kind, long operationId) {
        long characteristicId = measured(travellers.operation(operationId)).stream()
                .map(TableCharacteristics.Measured::line)
                .filter(line -> line.nonconformance() == null || !line.state().settled())
                .mapToLong(FrameSheet.CharacteristicLine::characteristicId)
                .findFirst()
                .orElseThrow(() -> Refusal.state(
                        "Nothing is read at the alignment table.",
                        "No characteristic of this operation is measured on it.",
                        "Read them on the frame's own sheet, or have the QA lead say which the table measures."));
        return evidence.opens(act, kind, characteristicId) ? evidence.readable(act, characteristicId) : null;
    }

    /** The turn in force; empty if the next has not begun. */
    Optional<SheetRow> inForce(long operationId) {
        int pushes = coldSets.pushesAt(operationId);
        return sheets.findFirstByOperationIdOrderByTurnDesc(operationId).filter(sheet -> sheet.pushes() == pushes);
    }

    /** The turn in force, begun now if need be, with its set-up. */
    SheetRow begun(Act act, Evidence.Wanted wanted) {
        return inForce(wanted.operationId()).orElseGet(() -> begin(act, wanted));
    }

    SheetRow begin(Act act, Evidence.Wanted wanted) {
        Optional<SheetRow> before = sheets.findFirstByOperationIdOrderByTurnDesc(wanted.operationId());
        return sheets.save(new SheetRow(
                wanted.operationId(),
                wanted.travellerId(),
                before.map(SheetRow::turn).orElse(0) + 1,
                coldSets.pushesAt(wanted.operationId()),
                act.at()));
    }

    /** How the frame lies in a turn: as somebody said, else as it lay in the turn before, else as the settings have it. */
    TableSetUp setUp(long operationId) {
        return said(operationId).map(SetUpRow::setUp).orElseGet(this::bySettings);
    }

    /** The row in which somebody said how the frame lies, in this turn or the newest before it that has one. */
    Optional<SetUpRow> said(long operationId) {
        List<SheetRow> all = sheets.findByOperationIdOrderByTurn(operationId);
        for (int i = all.size() - 1; i >= 0; i--) {
            Optional<SetUpRow> said =
                    setUps.findFirstBySheetIdOrderByIdDesc(all.get(i).id());
            if (said.isPresent()) {
                return said;
            }
        }
        return Optional.empty();
    }

    private TableSetUp bySettings() {
        return new TableSetUp(
                TableSetUp.Datum.POST,
                TableSetUp.Base.TUBE,
                true,
                settings.number("table.seat.low"),
                settings.number("table.seat.high"),
                settings.number("table.tube.base"),
                settings.number("table.mandrel.base"),
                null,
                null,
                null);
    }

    /** The same as a row of the turn, for a reduction to name. */
    SetUpRow keptSetUp(Act act, SheetRow sheet) {
        return setUps.findFirstBySheetIdOrderByIdDesc(sheet.id())
                .orElseGet(() -> setUps.save(new SetUpRow(act, sheet.id(), setUp(sheet.operationId()))));
    }

    List<RawLine> figures(SheetRow sheet) {
        List<RawRow> all = figures.findBySheetIdOrderById(sheet.id());
        Set<Long> replaced = new HashSet<>();
        all.stream().map(RawRow::replacesId).filter(Objects::nonNull).forEach(replaced::add);
        return all.stream().map(row -> row.line(replaced.contains(row.id()))).toList();
    }

    /** The sheet of an operation as it stands. */
    @Transactional(readOnly = true)
    SheetLine sheet(long operationId, long travellerId) {
        Optional<SheetRow> turn = inForce(operationId);
        int next = sheets.findFirstByOperationIdOrderByTurnDesc(operationId)
                        .map(SheetRow::turn)
                        .orElse(0)
                + 1;
        Optional<SetUpRow> said = said(operationId);
        return new SheetLine(
                operationId,
                travellerId,
                turn.map(SheetRow::turn).orElse(next),
                said.map(SetUpRow::setUp).orElseGet(this::bySettings),
                said.map(SetUpRow::id).orElse(null),
                turn.map(this::figures).orElse(List.of()),
                turn.map(sheet -> reductions(sheet.id())).orElse(List.of()));
    }

    List<ReductionLine> reductions(long sheetId) {
        List<ReductionRow> all = reductions.ofSheet(sheetId);
        Map<Long, List<DeviationLine>> theirs = all.isEmpty()
                ? Map.of()
                : deviations.ofReductions(all.stream().map(ReductionRow::id).toList()).stream()
                        .map(DeviationRow::line)
                        .collect(Collectors.groupingBy(DeviationLine::reductionId));
        return all.stream()
                .map(row -> new ReductionLine(
                        row.id(),
                        row.residual(),
                        row.residualMost(),
                        row.farthest(),
                        row.personId(),
                        row.at(),
                        row.used(),
                        theirs.getOrDefault(row.id(), List.of())))
                .toList();
    }
}
