package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.metrology.Alignment;
import org.trammel.calc.metrology.AlignmentReadings;
import org.trammel.calc.metrology.DatumFit;
import org.trammel.calc.metrology.MeasuredDeviation;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.inspection.ReducedReadings;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/**
 * Reduces the raw figures of a sheet to deviations and gives those to be judged, all in one act: before it there is no
 * verdict to look at while keying.
 */
@Service
public class Reductions {

    static final String NOT_REDUCED = "Nothing was reduced or judged.";

    private final TurnOfSheet turns;
    private final TableForm form;
    private final ReductionRepository rows;
    private final DeviationRepository deviations;
    private final ReducedReadings inspection;
    private final Readings readings;
    private final SecondOfTwo second;
    private final FiguresSince since;
    private final Travellers travellers;
    private final Settings settings;
    private final Formats formats;
    private final ActLog log;

    Reductions(
            TurnOfSheet turns,
            TableForm form,
            ReductionRepository rows,
            DeviationRepository deviations,
            ReducedReadings inspection,
            Readings readings,
            SecondOfTwo second,
            FiguresSince since,
            Travellers travellers,
            Settings settings,
            Formats formats,
            ActLog log) {
        this.turns = turns;
        this.form = form;
        this.rows = rows;
        this.deviations = deviations;
        this.inspection = inspection;
        this.readings = readings;
        this.second = second;
        this.since = since;
        this.travellers = travellers;
        this.settings = settings;
        this.formats = formats;
        this.log = log;
    }

    /**
     * Reduces what stands on the sheet and gives it to be judged: every deviation that a characteristic asks for and that
     * is another than it was given before.
     *
     * @throws Refusal if the figures give none, the faces of the shell are not clean, or inspection does not take one of
     *     them; then none is given
     */
    @Transactional
    public List<ReadingLine> reduce(Act act, long operationId) {
        Evidence.Wanted wanted = turns.opens(act, "reduce", operationId);
        if (wanted == null) {
            return rows.findByActId(act.id())
                    .map(row -> given(operationId).stream()
                            .filter(line -> Objects.equals(line.reductionId(), row.id()))
                            .toList())
                    .orElse(List.of());
        }
        SheetRow sheet = turns.inForce(operationId).orElseThrow(Reductions::nothingRead);
        List<RawLine> all = turns.figures(sheet);
        List<RawLine> standing = all.stream().filter(RawLine::stands).toList();
        if (standing.isEmpty()) {
            throw nothingRead();
        }
        SetUpRow setUp = turns.keptSetUp(act, sheet);
        FrameSheet.Head head = travellers.head(wanted.travellerId());
        AlignmentReadings figures = form.readings(head, setUp.setUp(), standing);
        Alignment alignment = computed(figures);
        requireClean(alignment.datum());
        List<RawLine> used = form.used(setUp.setUp(), standing);
        ReductionRow row = rows.save(new ReductionRow(
                act,
                sheet.id(),
                setUp.id(),
                alignment.datum(),
                settings.number("table.residual"),
                form.postBySetting(setUp.setUp(), standing),
                used.stream().map(RawLine::readingId).collect(Collectors.toSet())));
        alignment.deviations().forEach(measured -> deviations.save(new DeviationRow(row.id(), measured)));
        List<String> unfit = new ArrayList<>();
        List<String> moved = new ArrayList<>();
        List<ReducedReadings.Value> values =
                values(act, operationId, alignment, all, used, setUp.setUp(), unfit, moved);
        if (values.isEmpty() && !unfit.isEmpty()) {
            throw Refusal.state(
                    NOT_REDUCED,
                    "Gauge unfit: the guard band leaves nothing of the tolerance of " + String.join(" and ", unfit)
                            + ".",
                    "Read with a gauge of less uncertainty, on a longer base, or from another datum.");
        }
        if (values.isEmpty() && !moved.isEmpty()) {
            throw Refusal.state(
                    NOT_REDUCED,
                    "The stations of " + String.join(" and ", moved)
                            + " were said to lie elsewhere after the figures there were read.",
                    "Read the figures at the stations as they lie now, or say again how the frame lay.");
        }
        if (values.isEmpty()) {
            throw Refusal.state(
                    NOT_REDUCED, unchanged(alignment), "Read another spot, or correct a figure that was mistyped.");
        }
        log.event(
                wanted.chain(),
                "reduced",
                Map.of("operation", operationId, "reduction", row.id(), "given", values.size()));
        return inspection.take(act, row.id(), values);
    }

    private static Refusal nothingRead() {
        return Refusal.state(
                NOT_REDUCED, "No figure stands on the sheet.", "Read the frame at its stations, in whatever order.");
    }

    private String unchanged(Alignment alignment) {
        String told =
                alignment.deviations().stream().map(one -> one.what().words()).collect(Collectors.joining(", "));
        return "The figures tell " + (told.isEmpty() ? "no deviation" : told)
                + "; of this nothing is asked for that was not judged before.";
    }

    private Alignment computed(AlignmentReadings figures) {
        Answer<Alignment> answer =
                Alignment.of(figures, settings.number("table.residual").doubleValue());
        if (answer instanceof Answer.Determined<Alignment> there) {
            return there.value();
        }
        List<Answer.Gap> gaps = ((Answer.NotDeterminable<Alignment>) answer).gaps();
        throw Refusal.input(
                gaps.get(0).input(),
                NOT_REDUCED,
                gaps.stream()
                        .map(Answer.Gap::words)
                        .map(formats::sentence)
                        .distinct()
                        .collect(Collectors.joining(" ")),
                "Correct the figure, or strike it out and read it again.");
    }

    private void requireClean(@Nullable DatumFit fit) {
        if (fit != null && !fit.clean()) {
            throw Refusal.state(
                    NOT_REDUCED,
                    fit.words(DecimalSign.of(settings.locale())),
                    "Read the faces again after that, or put the shell on its post.");
        }
    }

    /** What is new among what the characteristics of the operation ask for. */
    private List<ReducedReadings.Value> values(
            Act act,
            long operationId,
            Alignment alignment,
            List<RawLine> all,
            List<RawLine> used,
            TableSetUp setUp,
            List<String> unfit,
            List<String> moved) {
        FrameSheet.OperationSheetOfFrame operation = travellers.operation(operationId);
        List<ReadingLine> before = given(operationId);
        List<ReducedReadings.Value> values = new ArrayList<>();
        for (TableCharacteristics.Measured one : turns.measured(operation)) {
            List<MeasuredDeviation> parts = one.deviations().stream()
                    .flatMap(what -> alignment.deviations().stream().filter(measured -> measured.what() == what))
                    .toList();
            if (parts.size() < one.deviations().size()
                    || !parts.get(0).what().unit().equals(one.line().unit())) {
                continue;
            }
            List<RawLine> from = form.of(parts.get(0).what(), setUp, used);
            if (from.isEmpty()) {
                continue;
            }
            ReadingLine last = last(before, one.line());
            List<BigDecimal> raw =
                    parts.stream().map(MeasuredDeviation::judgedValue).toList();
            BigDecimal u = parts.stream()
                    .map(MeasuredDeviation::judgedUncertainty)
                    .max(BigDecimal::compareTo)
                    .orElseThrow();
            if (!inspection.decides(one.line(), u)) {
                // the others are judged all the same
                unfit.add(one.line().name());
            } else if (asked(act, one.line(), last, raw, u, all, used)) {
                if (since.moved(last, from)) {
                    moved.add(one.line().name());
                    continue;
                }
                if (!since.any(last, from)) {
                    continue;
                }
                values.add(value(one.line(), raw, u, from, used, corrected(last, all, used), last));
            }
        }
        return values;
    }

    /**
     * Whether a value is given: one that was not given before, and any that a second person read for themselves, though it
     * be the very same.
     */
    private boolean asked(
            Act act,
            FrameSheet.CharacteristicLine line,
            @Nullable ReadingLine last,
            List<BigDecimal> raw,
            BigDecimal u,
            List<RawLine> all,
            List<RawLine> used) {
        boolean another = last == null || !same(last, raw, u);
        if (last == null || !SecondOfTwo.wanted(line) || corrected(last, all, used) != null) {
            return another;
        }
        if (another) {
            second.require(act, line, last, used);
        }
        return another || second.independent(act, last, used);
    }

    private static ReducedReadings.Value value(
            FrameSheet.CharacteristicLine line,
            List<BigDecimal> raw,
            BigDecimal u,
            List<RawLine> from,
            List<RawLine> used,
            @Nullable String mistyped,
            @Nullable ReadingLine last) {
        return new ReducedReadings.Value(
                line.characteristicId(),
                raw,
                u,
                readWith(from.get(0), used),
                mistyped == null || last == null ? null : last.readingId(),
                mistyped);
    }

    /** What all the figures of a reduction were read with, the one that stands for a deviation first. */
    private static List<ReducedReadings.ReadWith> readWith(RawLine first, List<RawLine> used) {
        return used.stream()
                .sorted(Comparator.comparing(one ->
                        !(one.gauge().equals(first.gauge()) && one.gaugeKind().equals(first.gaugeKind()))))
                .collect(Collectors.groupingBy(
                        one -> List.of(one.gauge(), one.gaugeKind()), LinkedHashMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(one -> new ReducedReadings.ReadWith(
                        one.getKey().get(0),
                        one.getKey().get(1),
                        one.getValue().stream()
                                .map(line -> new ReducedReadings.Figure(line.point() ? null : line.mm(), line.at()))
                                .toList(),
                        "mm"))
                .toList();
    }

    private List<ReadingLine> given(long operationId) {
        return readings.of(turns.measured(travellers.operation(operationId)).stream()
                .map(one -> one.line().characteristicId())
                .toList());
    }

    /** The reading that judges now; after a push none does. */
    private static @Nullable ReadingLine last(List<ReadingLine> before, FrameSheet.CharacteristicLine line) {
        Long newest = line.readingId();
        return newest == null
                ? null
                : before.stream()
                        .filter(reading -> reading.readingId() == newest)
                        .findFirst()
                        .orElse(null);
    }

    private static boolean same(ReadingLine last, List<BigDecimal> raw, BigDecimal u) {
        BigDecimal lastU = last.u();
        return lastU != null
                && lastU.compareTo(u) == 0
                && last.raw().size() == raw.size()
                && java.util.stream.IntStream.range(0, raw.size())
                        .allMatch(i -> last.raw().get(i).compareTo(raw.get(i)) == 0);
    }

    /**
     * Why a reading is a correction of the last one: that came from a figure of this turn which was corrected since. Else
     * it is another reading.
     */
    private @Nullable String corrected(@Nullable ReadingLine last, List<RawLine> all, List<RawLine> used) {
        Long reduction = last == null ? null : last.reductionId();
        if (reduction == null || used.isEmpty()) {
            return null;
        }
        Set<Long> theirs = turns.reductions(used.get(0).sheetId()).stream()
                .filter(one -> one.reductionId() == reduction)
                .flatMap(one -> one.used().stream())
                .collect(Collectors.toSet());
        return all.stream()
                .filter(line -> line.replacesId() != null && theirs.contains(line.replacesId()))
                .map(RawLine::reason)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }
}
