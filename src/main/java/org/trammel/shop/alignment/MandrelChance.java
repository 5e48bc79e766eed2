package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.Alignment;
import org.trammel.calc.metrology.ConformityDecision;
import org.trammel.calc.metrology.ConformityProbability;
import org.trammel.calc.metrology.Deviation;
import org.trammel.calc.metrology.Limits;
import org.trammel.calc.metrology.MeasuredDeviation;
import org.trammel.calc.units.Answer;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.Formats;

/**
 * Whether reading the head tube on the mandrel would settle a twist that is undecided on the tube, from the budgets of
 * both.
 *
 * <pre>
 * Y' ~ N(y, u(head, tube)² + u(head, mandrel)²)   what the mandrel may read, given what the tube read
 * p = P(|Y'| ≤ T − g') + P(|Y'| ≥ T + g')         g' = factor × u'(twist)
 * </pre>
 *
 * The seat tube is read once and is the same in both. Source: predictive distribution of a second measurement of one
 * quantity with a flat prior, common practice of JCGM 106:2012, 6 and 7; g' as in ISO 14253-1.
 */
@Component
class MandrelChance {

    private static final BigDecimal KEPT = new BigDecimal("0.001");

    private final TableForm form;
    private final Settings settings;
    private final Formats formats;

    MandrelChance(TableForm form, Settings settings, Formats formats) {
        this.form = form;
        this.settings = settings;
        this.formats = formats;
    }

    /** In one sentence; empty where it is of no use to say. */
    String words(FrameSheet.Head head, SheetLine sheet, ReadingLine twist) {
        BigDecimal lower = twist.lowerLimit();
        BigDecimal upper = twist.upperLimit();
        TableSetUp setUp = sheet.setUp();
        if (setUp.base() != TableSetUp.Base.TUBE
                || setUp.datum() == TableSetUp.Datum.POINTS
                || lower == null
                || upper == null) {
            return "";
        }
        Alignment onTube = alignment(head, setUp, sheet.standing());
        Alignment onMandrel = alignment(head, setUp.on(TableSetUp.Base.MANDREL), withMandrel(sheet.standing(), setUp));
        if (onTube == null || onMandrel == null) {
            return "";
        }
        Double tubeHead = u(onTube, Deviation.HEAD_TUBE_LEAN);
        Double mandrelHead = u(onMandrel, Deviation.HEAD_TUBE_LEAN);
        Double mandrelTwist = u(onMandrel, Deviation.TWIST);
        if (tubeHead == null || mandrelHead == null || mandrelTwist == null) {
            return "";
        }
        BigDecimal g =
                ConformityDecision.guardBand(BigDecimal.valueOf(mandrelTwist), settings.number("guard.factor"), KEPT);
        BigDecimal spread = BigDecimal.valueOf(Math.hypot(tubeHead, mandrelHead));
        double inner = probability(twist.value(), lower.add(g), upper.subtract(g), spread);
        double outer = probability(twist.value(), lower.subtract(g), upper.add(g), spread);
        long decides = Math.round(100 * (inner + 1 - outer));
        return decides < 50
                ? "The mandrel would rather not settle it: in " + decides + " of 100 cases."
                : "Measure with the mandrel to decide: u " + formats.number(mandrelTwist, 3) + "°, settles it in "
                        + decides + " of 100 cases.";
    }

    private static double probability(BigDecimal value, BigDecimal lower, BigDecimal upper, BigDecimal u) {
        return lower.compareTo(upper) < 0
                        && ConformityProbability.of(value, Limits.between(lower, upper), u)
                                instanceof ConformityProbability.Determined there
                ? there.probability()
                : 0;
    }

    private @Nullable Alignment alignment(FrameSheet.Head head, TableSetUp setUp, List<RawLine> lines) {
        return Alignment.of(form.readings(head, setUp, lines)) instanceof Answer.Determined<Alignment> there
                ? there.value()
                : null;
    }

    private static @Nullable Double u(Alignment alignment, Deviation what) {
        return alignment.deviations().stream()
                .filter(one -> one.what() == what)
                .map(MeasuredDeviation::statedBudget)
                .map(budget -> budget.u())
                .findFirst()
                .orElse(null);
    }

    /** What the mandrel would read with the gauge of the tube if the tube had told the truth. */
    private static List<RawLine> withMandrel(List<RawLine> standing, TableSetUp setUp) {
        List<RawLine> lines = new ArrayList<>(standing.stream()
                .filter(line -> !line.spot().startsWith("MANDREL"))
                .toList());
        RawLine low = at(standing, Spot.HEAD_LOW);
        RawLine high = at(standing, Spot.HEAD_HIGH);
        if (low != null && high != null) {
            double middle = (mm(low) + mm(high)) / 2;
            double half = (mm(high) - mm(low))
                    / 2
                    * setUp.mandrelBase_mm().doubleValue()
                    / setUp.tubeBase_mm().doubleValue();
            lines.add(as(low, Spot.MANDREL_LOW, middle - half));
            lines.add(as(high, Spot.MANDREL_HIGH, middle + half));
        }
        return lines;
    }

    private static @Nullable RawLine at(List<RawLine> standing, Spot spot) {
        return standing.stream()
                .filter(line -> line.spot().equals(spot.name()))
                .findFirst()
                .orElse(null);
    }

    private static double mm(RawLine line) {
        return Objects.requireNonNull(line.mm()).doubleValue();
    }

    private static RawLine as(RawLine line, Spot spot, double mm) {
        return new RawLine(
                line.readingId(),
                line.sheetId(),
                spot.name(),
                spot.name(),
                BigDecimal.valueOf(mm),
                null,
                null,
                line.gaugeId(),
                line.gauge(),
                line.gaugeKind(),
                line.u_mm(),
                line.personId(),
                line.at(),
                null,
                null,
                false);
    }
}
