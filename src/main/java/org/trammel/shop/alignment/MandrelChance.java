package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.BetterBase;
import org.trammel.calc.metrology.DecisionRule;
import org.trammel.calc.metrology.Deviation;
import org.trammel.calc.metrology.Judging;
import org.trammel.calc.metrology.Limits;
import org.trammel.calc.metrology.PlateReadings;
import org.trammel.calc.units.Answer;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.Formats;

/**
 * Whether reading the head tube on the mandrel would settle a twist that is undecided on the tube: {@link BetterBase} of the
 * figures that stand and of those the mandrel would give if the tube had told the truth.
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
        if (!(form.readings(head, setUp, sheet.standing()) instanceof PlateReadings onTube)
                || !(form.readings(head, setUp.on(TableSetUp.Base.MANDREL), withMandrel(sheet.standing(), setUp))
                        instanceof PlateReadings onMandrel)) {
            return "";
        }
        Judging judging = new Judging(
                Limits.between(lower, upper), DecisionRule.GUARDED, settings.number("guard.factor"), KEPT, null);
        BetterBase.Base mandrel = new BetterBase.Base(
                "the mandrel",
                BetterBase.Tube.HEAD_TUBE,
                setUp.mandrelBase_mm().doubleValue(),
                twist.gauge(),
                List.of());
        if (!(BetterBase.of(onTube, onMandrel, Deviation.TWIST, judging, mandrel)
                instanceof Answer.Determined<BetterBase.Prospect> there)) {
            return "";
        }
        long decides = Math.round(100 * there.value().chance());
        return decides < 50
                ? "The mandrel would rather not settle it: in " + decides + " of 100 cases."
                : "Measure with the mandrel to decide: u "
                        + formats.number(there.value().u(), 3)
                        + "°, settles it in " + decides + " of 100 cases.";
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
