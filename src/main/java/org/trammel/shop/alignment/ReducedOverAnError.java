package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.metrology.AlignmentReadings;
import org.trammel.calc.metrology.DeviationSpan;
import org.trammel.calc.metrology.ReadingError;
import org.trammel.calc.units.Answer;
import org.trammel.shop.inspection.GaugeError;
import org.trammel.shop.inspection.RawHeights;
import org.trammel.shop.inspection.TrueSpan;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * Does reductions of the table again while a gauge that read some of their figures may have been wrong. What comes out
 * without any error must be what was judged; where it is not, since the drawing that told the stations changed, nothing
 * is said.
 */
@Component
class ReducedOverAnError implements RawHeights {

    /** No gauge of a register carries it: only the figures in doubt stand under it. */
    private static final String IN_DOUBT = "in doubt: ";

    private final ReductionRepository reductions;
    private final SheetRepository sheets;
    private final SetUpRepository setUps;
    private final RawRepository figures;
    private final TableForm form;
    private final Travellers travellers;

    ReducedOverAnError(
            ReductionRepository reductions,
            SheetRepository sheets,
            SetUpRepository setUps,
            RawRepository figures,
            TableForm form,
            Travellers travellers) {
        this.reductions = reductions;
        this.sheets = sheets;
        this.setUps = setUps;
        this.figures = figures;
        this.form = form;
        this.travellers = travellers;
    }

    @Override
    @Transactional(readOnly = true)
    public Map<Long, Answer<List<TrueSpan>>> spans(Collection<Suspect> readings, GaugeError error) {
        List<Suspect> reduced =
                readings.stream().filter(one -> one.reductionId() != null).toList();
        if (reduced.isEmpty()) {
            return Map.of();
        }
        Map<Long, Answer<List<DeviationSpan>>> spans =
                again(reduced.stream().map(Suspect::reductionId).collect(Collectors.toSet()), error);
        Map<Long, Answer<List<TrueSpan>>> all = new HashMap<>();
        reduced.forEach(one -> all.put(
                one.readingId(),
                spans.getOrDefault(
                                Objects.requireNonNull(one.reductionId()),
                                Answer.none("heights", "Its figures are not there."))
                        .then(told -> given(one, told))));
        return all;
    }

    private Map<Long, Answer<List<DeviationSpan>>> again(Collection<Long> ids, GaugeError error) {
        List<ReductionRow> rows = reductions.withFigures(ids);
        Map<Long, SheetRow> ofSheets =
                sheets.findByIdIn(rows.stream().map(ReductionRow::sheetId).collect(Collectors.toSet())).stream()
                        .collect(Collectors.toMap(SheetRow::id, Function.identity()));
        Map<Long, TableSetUp> lying =
                setUps.findByIdIn(rows.stream().map(ReductionRow::setUpId).collect(Collectors.toSet())).stream()
                        .collect(Collectors.toMap(SetUpRow::id, SetUpRow::setUp));
        Map<Long, RawLine> read =
                figures
                        .findByIdIn(rows.stream()
                                .flatMap(row -> row.used().stream())
                                .collect(Collectors.toSet()))
                        .stream()
                        .collect(Collectors.toMap(RawRow::id, row -> row.line(false)));
        Map<Long, FrameSheet.Head> heads = new HashMap<>();
        Map<Long, Answer<List<DeviationSpan>>> all = new HashMap<>();
        for (ReductionRow row : rows) {
            FrameSheet.Head head =
                    heads.computeIfAbsent(ofSheets.get(row.sheetId()).travellerId(), travellers::head);
            List<RawLine> used = row.used().stream().sorted().map(read::get).toList();
            all.put(row.id(), again(head, row, lying.get(row.setUpId()), used, error));
        }
        return all;
    }

    private Answer<List<DeviationSpan>> again(
            FrameSheet.Head head, ReductionRow row, TableSetUp setUp, List<RawLine> used, GaugeError error) {
        if (!error.unit().equals("mm") && used.stream().anyMatch(line -> error.reaches(line.gaugeId(), line.at()))) {
            return Answer.none("unit", "The gauge's error is known in " + error.unit() + ", its figures are in mm.");
        }
        String doubtful = IN_DOUBT + error.gaugeCode();
        List<RawLine> marked = used.stream()
                .map(line -> error.reaches(line.gaugeId(), line.at()) ? line.readWith(doubtful) : line)
                .toList();
        try {
            AlignmentReadings readings = form.readings(head, setUp, marked, row.post());
            return error.least().compareTo(error.greatest()) == 0
                    ? DeviationSpan.asRead(readings)
                    : DeviationSpan.of(
                            readings,
                            new ReadingError(doubtful, error.least(), error.greatest(), error.equalWithin_mm()));
        } catch (Refusal notReduced) {
            return Answer.none("drawing", notReduced.why());
        }
    }

    /** The deviations that were given as the values of a reading: those that come to them again. */
    private static Answer<List<TrueSpan>> given(Suspect reading, List<DeviationSpan> told) {
        List<TrueSpan> all = new ArrayList<>();
        for (BigDecimal value : reading.raw()) {
            List<DeviationSpan> same = told.stream()
                    .filter(span -> span.judgedValue().compareTo(value) == 0)
                    .toList();
            if (same.isEmpty()) {
                return Answer.none("heights", "Its figures come to another value now than the one that was judged.");
            }
            if (same.stream().anyMatch(span -> span.coordinate() != null)) {
                return Answer.none("gauge", "What the gauge read for it is a coordinate.");
            }
            // Two deviations of one value cannot be told apart: the wider of them holds for both.
            all.add(new TrueSpan(
                    same.stream()
                            .map(DeviationSpan::judgedLeast)
                            .min(BigDecimal::compareTo)
                            .orElseThrow(),
                    same.stream()
                            .map(DeviationSpan::judgedGreatest)
                            .max(BigDecimal::compareTo)
                            .orElseThrow()));
        }
        return Answer.of(all);
    }
}
