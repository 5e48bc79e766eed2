package org.trammel.shop.handwork;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.thermal.DewPoint;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.settings.Setting;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.DoneAgain;

/** Records tools, air and metal at the operation a frame stands at. */
@Service
public class Handwork {

    private static final BigDecimal COLDEST = BigDecimal.valueOf(-45);
    private static final int DECIMALS = 3;
    private static final BigDecimal HOTTEST = BigDecimal.valueOf(120);

    private final ToolUseRepository uses;
    private final MetalAirRepository airs;
    private final WaterBreakRepository waters;
    private final DoneAgain doneAgain;
    private final HandRecords records;
    private final HandTurn turn;
    private final Tools tools;
    private final HandGauges gauges;
    private final Settings settings;
    private final ActLog log;

    Handwork(
            ToolUseRepository uses,
            MetalAirRepository airs,
            WaterBreakRepository waters,
            DoneAgain doneAgain,
            HandRecords records,
            HandTurn turn,
            Tools tools,
            HandGauges gauges,
            Settings settings,
            ActLog log) {
        this.uses = uses;
        this.airs = airs;
        this.waters = waters;
        this.doneAgain = doneAgain;
        this.records = records;
        this.turn = turn;
        this.tools = tools;
        this.gauges = gauges;
        this.settings = settings;
        this.log = log;
    }

    /** What stands at an operation whose steps rest on handwork. */
    @Transactional(readOnly = true)
    public HandRecord of(long operationId) {
        return records.of(operationId, turn.of(operationId).asked());
    }

    /** Takes a brush, file, cloth or cleaner to the metal, if it is kept for it. */
    @Transactional
    public HandRecord touched(Act act, long operationId, @Nullable String code) {
        String deed = "The tool was not taken.";
        if (!turn.opens(act, "take-tool", operationId)) {
            return of(operationId);
        }
        HandTurn.At at = turn.atHand(act, operationId, List.of(Proof.CLEANED, Proof.BRUSHED), deed);
        Tool tool = tools.fit(code, at.head().metal(), deed);
        uses.saveAndFlush(new ToolUseRow(operationId, at.line().station(), tool, act));
        log.event(
                Chains.bearing(at.head().serial()),
                "tool-taken",
                Map.of(
                        "operation",
                        operationId,
                        "tool",
                        tool.code(),
                        "family",
                        tool.family().name()));
        return records.of(operationId, at.asked());
    }

    /**
     * How water ran off the parts.
     *
     * @param held whether it ran off all of them in one film; null where nothing is said
     * @param parts those that were looked at, or those on which it broke
     */
    public record WaterSeen(@Nullable Boolean held, List<String> parts) {}

    /** Keeps how water ran off. Where the film broke, cleaning and brushing are done again. */
    @Transactional
    public HandRecord water(Act act, long operationId, WaterSeen seen) {
        String deed = "The water film was not recorded.";
        if (!turn.opens(act, "record-water-film", operationId)) {
            return of(operationId);
        }
        HandTurn.At at = turn.atHand(act, operationId, List.of(Proof.WATER_BREAK), deed);
        if (seen.held() == null) {
            throw Refusal.input(
                    "water",
                    deed,
                    "It is not said whether the film holds.",
                    "Let the water run off and look at every part for half a minute.");
        }
        String parts = parts(deed, seen);
        waters.saveAndFlush(new WaterBreakRow(operationId, seen.held(), parts, act));
        log.event(
                Chains.bearing(at.head().serial()),
                "water-film-seen",
                Map.of("operation", operationId, "held", seen.held()));
        if (!seen.held()) {
            doneAgain.stepsOn(act, operationId, Set.of(Proof.CLEANED, Proof.BRUSHED), "the water film broke: " + parts);
        }
        turn.goesOn(act, operationId);
        return records.of(operationId, at.asked());
    }

    private static String parts(String deed, WaterSeen seen) {
        if (seen.parts().isEmpty()) {
            throw Refusal.input(
                    "part",
                    deed,
                    Boolean.TRUE.equals(seen.held())
                            ? "It is not said on which parts it was looked at."
                            : "It is not said on which parts it broke.",
                    "Mark the parts.");
        }
        return TypedText.line("part", "The parts", deed, String.join(", ", seen.parts()), 400);
    }

    /** Air and metal as they were read. */
    public record Measured(
            @Nullable BigDecimal air_degC,
            @Nullable BigDecimal humidity_percent,
            @Nullable BigDecimal metal_degC,
            String airGauge,
            String metalGauge) {}

    /** Computes the dew point at the metal and keeps it with the margin, enough or not. */
    @Transactional
    public HandRecord measured(Act act, long operationId, Measured entry) {
        String deed = "Air and metal were not recorded.";
        if (!turn.opens(act, "record-metal-and-air", operationId)) {
            return of(operationId);
        }
        HandTurn.At at = turn.atHand(act, operationId, List.of(Proof.WARM_DRY), deed);
        BigDecimal air = figure("air", "The air temperature", deed, entry.air_degC(), "°C");
        BigDecimal humidity = figure("humidity", "The humidity", deed, entry.humidity_percent(), "%");
        BigDecimal metal = figure("metal", "The temperature of the metal", deed, entry.metal_degC(), "°C");
        if (metal.compareTo(COLDEST) < 0 || metal.compareTo(HOTTEST) > 0) {
            throw Refusal.input(
                    "metal",
                    deed,
                    "A metal of " + metal.toPlainString() + " °C does not lie within −45 and 120 °C.",
                    "Read it again, in °C.");
        }
        DewPoint point = point(deed, air, humidity);
        String airGauge = gauges.air(entry.airGauge(), air, humidity);
        String metalGauge = gauges.metal(entry.metalGauge(), metal);
        Setting wanted = settings.inForce("prep.margin");
        Setting least = settings.inForce("prep.metal");
        BigDecimal wanted_K = new BigDecimal(wanted.value());
        BigDecimal least_degC = new BigDecimal(least.value());
        HandRecord.Air kept = new HandRecord.Air(
                air,
                humidity,
                metal,
                BigDecimal.valueOf(point.settles_degC()).setScale(2, RoundingMode.HALF_UP),
                point.over() == DewPoint.Over.ICE,
                point.margin_K(metal),
                wanted_K,
                least_degC,
                point.leastSurface_degC(wanted_K).max(least_degC),
                wanted.source(),
                airGauge,
                metalGauge,
                act.by(),
                act.at());
        airs.saveAndFlush(new MetalAirRow(operationId, kept, act));
        log.event(
                Chains.bearing(at.head().serial()),
                "metal-and-air-measured",
                Map.of(
                        "operation", operationId,
                        "margin", kept.margin_K().toPlainString(),
                        "enough", kept.enough(),
                        "settings", List.of(wanted.id(), least.id())));
        turn.goesOn(act, operationId);
        return records.of(operationId, at.asked());
    }

    private static DewPoint point(String deed, BigDecimal air, BigDecimal humidity) {
        Answer<DewPoint> computed = DewPoint.of(air, humidity);
        if (computed instanceof Answer.NotDeterminable<DewPoint> gap) {
            throw Refusal.input(
                    gap.gaps().get(0).input(),
                    deed,
                    gap.gaps().stream().map(Answer.Gap::words).collect(Collectors.joining(" ")),
                    "Read the meter again, in °C and per cent.");
        }
        return ((Answer.Determined<DewPoint>) computed).value();
    }

    private static BigDecimal figure(String field, String what, String deed, @Nullable BigDecimal value, String unit) {
        if (value == null) {
            throw Refusal.input(field, deed, what + " is missing.", "Read it and enter it in " + unit + ".");
        }
        if (value.stripTrailingZeros().scale() > DECIMALS) {
            throw Refusal.input(
                    field,
                    deed,
                    what + " has more than " + DECIMALS + " decimals, and what is not kept is not judged.",
                    "Enter it as the gauge shows it.");
        }
        return value;
    }
}
