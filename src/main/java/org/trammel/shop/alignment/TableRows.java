package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.ConformityProbability;
import org.trammel.calc.metrology.Deviation;
import org.trammel.calc.metrology.Limits;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Verdict;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.ScaleView;

/** Says each characteristic of the table: value, side, uncertainty, verdict. Judges nothing itself. */
@Component
class TableRows {

    private final Formats formats;
    private final ColdSets coldSets;
    private final MandrelChance mandrel;

    TableRows(Formats formats, ColdSets coldSets, MandrelChance mandrel) {
        this.formats = formats;
        this.coldSets = coldSets;
        this.mandrel = mandrel;
    }

    List<TableSheet.Row> of(
            FrameSheet.Head head,
            SheetLine sheet,
            List<TableCharacteristics.Measured> measured,
            List<ReadingLine> readings,
            Instant now) {
        List<TableSheet.Row> rows = new ArrayList<>();
        for (int i = 0; i < measured.size(); i++) {
            rows.add(row(head, sheet, measured.get(i), readings, String.valueOf((char) ('a' + i % 26)), now));
        }
        return rows;
    }

    private TableSheet.Row row(
            FrameSheet.Head head,
            SheetLine sheet,
            TableCharacteristics.Measured one,
            List<ReadingLine> readings,
            String letter,
            Instant now) {
        FrameSheet.CharacteristicLine c = one.line();
        ReadingLine last = last(readings, c);
        Deviation what = one.deviations().get(0);
        boolean setRight = c.state() == CharacteristicState.NOT_CONFORMING && c.coldSetClock() != null;
        return new TableSheet.Row(
                c.characteristicId(),
                letter,
                c.name(),
                sign(what),
                zone(what, c),
                datum(what),
                limits(c),
                c.unit(),
                last == null ? "" : value(last, c),
                last == null ? "" : side(last.value(), c),
                last == null || last.u() == null ? "" : formats.number(last.u(), 3),
                last == null ? null : scale(last, c),
                word(c, last),
                kind(c, last),
                last == null ? "" : probability(last),
                better(head, sheet, c, what, last),
                budget(sheet, last, one.deviations()),
                setRight ? coldSets.room(c.characteristicId(), now) : null);
    }

    private String better(
            FrameSheet.Head head,
            SheetLine sheet,
            FrameSheet.CharacteristicLine c,
            Deviation what,
            @Nullable ReadingLine last) {
        if (last == null) {
            ReductionLine newest = sheet.newest();
            return newest == null
                    ? ""
                    : newest.deviations().stream()
                            .filter(one -> one.what() == what)
                            .findFirst()
                            .map(one -> "Gauge unfit: it was read, and its u of "
                                    + formats.with(one.u(), 3, c.unit())
                                    + " leaves nothing of the tolerance. Read it with less uncertainty, on a longer base"
                                    + " or from another datum.")
                            .orElse("");
        }
        return c.state() == CharacteristicState.UNDECIDED && what == Deviation.TWIST
                ? mandrel.words(head, sheet, last)
                : "";
    }

    static @Nullable ReadingLine last(List<ReadingLine> readings, FrameSheet.CharacteristicLine c) {
        Long newest = c.readingId();
        return newest == null
                ? null
                : readings.stream()
                        .filter(reading -> reading.readingId() == newest)
                        .findFirst()
                        .orElse(null);
    }

    private static @Nullable String sign(Deviation what) {
        return switch (what) {
            case TWIST, DROPOUTS_FORE_AFT, DROPOUTS_UP_DOWN -> "parallel";
            case HEAD_TUBE_OFFSET, REAR_AXLE_OFFSET -> "symmetry";
            default -> null;
        };
    }

    private static @Nullable String datum(Deviation what) {
        return what == Deviation.TWIST ? "B" : "A";
    }

    /** Symmetry allows half its value to either side, so the frame has twice the limit. */
    private String zone(Deviation what, FrameSheet.CharacteristicLine c) {
        BigDecimal upper = c.upperLimit();
        if (upper == null) {
            return "";
        }
        boolean both = what == Deviation.HEAD_TUBE_OFFSET || what == Deviation.REAR_AXLE_OFFSET;
        String figure = formats.number(both ? upper.multiply(BigDecimal.valueOf(2)) : upper, 2);
        return c.unit().equals("°") ? figure + "°" : figure;
    }

    private String limits(FrameSheet.CharacteristicLine c) {
        BigDecimal lower = c.lowerLimit();
        BigDecimal upper = c.upperLimit();
        int places = Stream.of(lower, upper)
                .filter(Objects::nonNull)
                .mapToInt(limit -> Math.max(0, limit.stripTrailingZeros().scale()))
                .max()
                .orElse(0);
        if (lower == null || upper == null) {
            return lower == null && upper == null
                    ? "noted"
                    : lower == null
                            ? formats.with(upper, places, c.unit()) + " or less"
                            : formats.with(lower, places, c.unit()) + " or more";
        }
        return lower.add(upper).signum() == 0
                ? "±" + formats.with(upper, places, c.unit())
                : formats.number(lower, places) + " to " + formats.with(upper, places, c.unit());
    }

    private String value(ReadingLine reading, FrameSheet.CharacteristicLine c) {
        return formats.number(c.sided() ? reading.value().abs() : reading.value(), c.decimals());
    }

    private static String side(BigDecimal value, FrameSheet.CharacteristicLine c) {
        return !c.sided() || value.signum() == 0 ? "" : value.signum() > 0 ? "drive" : "non-drive";
    }

    private static @Nullable ScaleView scale(ReadingLine reading, FrameSheet.CharacteristicLine c) {
        if (reading.lowerLimit() == null && reading.upperLimit() == null) {
            return null;
        }
        int places = Math.max(1, c.decimals() - 1);
        ScaleView view = ScaleView.limits(
                        reading.lowerLimit(), reading.upperLimit(), reading.nominal(), reading.unit(), places)
                .guarded(reading.guardBand())
                .reading(reading.value(), reading.verdict() == Verdict.NOTED ? null : mark(reading.verdict()));
        return c.sided() ? view.bySides() : view;
    }

    static String mark(Verdict verdict) {
        return switch (verdict) {
            case CONFORMING -> "conforming";
            case NOT_CONFORMING -> "not-conforming";
            case UNDECIDED -> "undecided";
            case NOTED -> "done";
        };
    }

    private static String word(FrameSheet.CharacteristicLine c, @Nullable ReadingLine last) {
        return c.state() == CharacteristicState.CONCESSION || last == null
                ? c.state().word()
                : last.verdict().word();
    }

    private static String kind(FrameSheet.CharacteristicLine c, @Nullable ReadingLine last) {
        return c.state() == CharacteristicState.CONCESSION
                ? "concession"
                : last == null ? "waiting" : mark(last.verdict());
    }

    private static String probability(ReadingLine reading) {
        return (reading.lowerLimit() != null || reading.upperLimit() != null)
                        && ConformityProbability.of(
                                        reading.value(),
                                        new Limits(reading.lowerLimit(), reading.upperLimit()),
                                        reading.u())
                                instanceof ConformityProbability.Determined there
                ? there.words()
                : "";
    }

    private static @Nullable DeviationLine budget(
            SheetLine sheet, @Nullable ReadingLine last, List<Deviation> deviations) {
        return last == null || last.reductionId() == null
                ? null
                : sheet.reductions().stream()
                        .filter(one -> one.reductionId() == last.reductionId())
                        .flatMap(one -> one.deviations().stream())
                        .filter(one -> deviations.contains(one.what()))
                        .findFirst()
                        .orElse(null);
    }
}
