package org.trammel.shop.handwork;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.dew.DewMargins;
import org.trammel.shop.dew.DewPurpose;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.DoneAgain;

/** Records tools, air and metal at the operation a frame stands at. */
@Service
public class Handwork {

    private final ToolUseRepository uses;
    private final DewMargins margins;
    private final WaterBreakRepository waters;
    private final DoneAgain doneAgain;
    private final HandRecords records;
    private final HandTurn turn;
    private final Tools tools;
    private final ActLog log;

    Handwork(
            ToolUseRepository uses,
            DewMargins margins,
            WaterBreakRepository waters,
            DoneAgain doneAgain,
            HandRecords records,
            HandTurn turn,
            Tools tools,
            ActLog log) {
        this.uses = uses;
        this.margins = margins;
        this.waters = waters;
        this.doneAgain = doneAgain;
        this.records = records;
        this.turn = turn;
        this.tools = tools;
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

    /** Computes how far the metal lies from water, before the arc, and keeps it, enough or not. */
    @Transactional
    public HandRecord measured(Act act, long operationId, MetalAir entry) {
        String deed = "Air and metal were not recorded.";
        if (!turn.opens(act, "record-metal-and-air", operationId)) {
            return of(operationId);
        }
        HandTurn.At at = turn.atHand(act, operationId, List.of(Proof.WARM_DRY), deed);
        DewMargins.Measured measured = margins.measure(act, operationId, DewPurpose.ARC, entry, deed);
        log.event(
                Chains.bearing(at.head().serial()),
                "metal-and-air-measured",
                Map.of(
                        "operation", operationId,
                        "margin", measured.margin().margin_K().toPlainString(),
                        "enough", measured.margin().enough(),
                        "settings", measured.settings()));
        turn.goesOn(act, operationId);
        return records.of(operationId, at.asked());
    }
}
