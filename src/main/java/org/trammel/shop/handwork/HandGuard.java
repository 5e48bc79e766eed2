package org.trammel.shop.handwork;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.dew.DewMargin;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.ProvenSteps;
import org.trammel.shop.web.Formats;

/** Keeps a step shut until what its tick rests on is recorded, and as it should be. */
@Component
class HandGuard implements Awaited {

    private static final Set<Proof> CLEANING = Set.of(Proof.CLEANED, Proof.BRUSHED);
    private static final String SHEET = " on the sheet of handwork.";

    private final HandRecords records;
    private final Tools tools;
    private final ProvenSteps steps;
    private final Settings settings;
    private final Formats formats;
    private final Clock clock;

    HandGuard(HandRecords records, Tools tools, ProvenSteps steps, Settings settings, Formats formats, Clock clock) {
        this.records = records;
        this.tools = tools;
        this.steps = steps;
        this.settings = settings;
        this.formats = formats;
        this.clock = clock;
    }

    /** What was measured or read anew since the tick may fall short of it; what touched the metal did. */
    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        return steps.tickedAt(operation.operationId()).stream()
                .flatMap(proof -> Optional.ofNullable(
                        switch (proof) {
                            case WARM_DRY -> metal(operation, operation.cannot(), false);
                            case WATER_BREAK -> water(operation, operation.cannot());
                            case SERIAL_READ -> read(operation, operation.cannot());
                            default -> null;
                        })
                        .stream())
                .findFirst();
    }

    @Override
    public Optional<Refusal> proof(AtItsGate operation, ProvenStep step) {
        String cannot = operation.notTicked(step.text());
        return Optional.ofNullable(
                switch (step.proof()) {
                    case CLEANED, BRUSHED -> firstMissing(operation, cannot, ToolKind.askedBy(step.proof()));
                    case WARM_DRY -> metal(operation, cannot, true);
                    case WATER_BREAK -> water(operation, cannot);
                    case SERIAL_STRUCK -> struck(operation, cannot);
                    case SERIAL_READ -> read(operation, cannot);
                    default -> null;
                });
    }

    /** The same for a sheet or an act of this module. */
    Optional<Refusal> lacking(HandTurn.At at, String text, Proof proof) {
        FrameSheet.Head head = at.head();
        FrameSheet.OperationLine line = at.line();
        return proof(
                new AtItsGate(
                        line.operationId(),
                        head.travellerId(),
                        head.serial(),
                        head.mark(),
                        head.metal(),
                        line.code(),
                        line.code(),
                        line.startedAt(),
                        false),
                new ProvenStep(text, proof));
    }

    private HandRecord record(AtItsGate operation, Proof proof) {
        return records.of(operation.operationId(), Set.of(proof));
    }

    /** Asked for as soon as the shop ever kept one of the kind for the metal. */
    private @Nullable Refusal firstMissing(AtItsGate operation, String cannot, List<List<ToolKind>> wanted) {
        MetalFamily family = MetalFamily.of(operation.metal());
        HandRecord record = record(operation, Proof.CLEANED);
        return wanted.stream()
                .filter(kinds -> tools.everKept(family, kinds) && !record.touchedBy(kinds))
                .findFirst()
                .map(kinds -> Refusal.state(
                        cannot,
                        "No " + kinds.stream().map(ToolKind::word).collect(Collectors.joining(" or ")) + " kept for "
                                + family.word() + " was scanned at this operation.",
                        tools.inUse(family, kinds)
                                ? "Scan the one in your hand" + SHEET
                                : "None is in use any more. Let the QA lead register a new one, and scan that" + SHEET))
                .orElse(null);
    }

    /** @param fresh whether it must have been measured just now, as for the tick */
    private @Nullable Refusal metal(AtItsGate operation, String cannot, boolean fresh) {
        DewMargin air = record(operation, Proof.WARM_DRY).air();
        if (air == null) {
            return Refusal.state(
                    cannot,
                    "Air and metal were not measured at this operation.",
                    "Measure air, humidity and the thickest tube" + SHEET);
        }
        if (!air.enough()) {
            return Refusal.state(
                    cannot,
                    air.warm()
                            ? "The metal lies " + formats.number(air.margin_K(), 2) + " K above the "
                                    + air.pointWords() + " of " + formats.number(air.point_degC(), 1) + " °C, and "
                                    + bare(air.wanted_K()) + " K are asked for (" + air.source()
                                    + "). Damp metal welds with pores."
                            : "The metal is at " + bare(air.metal_degC()) + " °C, and " + bare(air.least_degC())
                                    + " °C are asked for.",
                    "Wait until the metal is at " + formats.number(air.leastMetal_degC(), 1)
                            + " °C, and measure again.");
        }
        int minutes = settings.whole("prep.minutes");
        return fresh && air.olderThan(minutes, clock.instant())
                ? Refusal.state(
                        cannot,
                        "Air and metal were measured at " + formats.time(air.at()) + ", more than " + minutes
                                + " min ago.",
                        "Measure them once more.")
                : null;
    }

    private @Nullable Refusal water(AtItsGate operation, String cannot) {
        HandRecord record = record(operation, Proof.WATER_BREAK);
        HandRecord.Water water = record.water();
        if (water == null) {
            return Refusal.state(
                    cannot,
                    "Nobody recorded how water runs off the parts.",
                    "Let it run off, look at every part, and say whether the film holds.");
        }
        if (!water.held()) {
            return Refusal.state(
                    cannot,
                    "The film broke into drops: " + water.parts() + ". What is left on the metal welds with pores.",
                    "Clean and brush again from the start, then let the water run off once more.");
        }
        // The film holds because of what was done to the metal; where no step here cleans, that was done before.
        Instant cleaned = steps.allTicked(operation.operationId(), CLEANING).orElse(null);
        boolean again = record.brokeAt() != null;
        if (cleaned == null) {
            return Refusal.state(
                    cannot,
                    again
                            ? "The film broke before, and the parts were not cleaned again since."
                            : "The parts were not cleaned at this operation.",
                    "Tick the steps that clean and brush, each with what was used.");
        }
        return water.at().isBefore(cleaned)
                ? Refusal.state(
                        cannot,
                        "That the film holds was seen before the parts were cleaned" + (again ? " again." : "."),
                        "Let the water run off once more.")
                : null;
    }

    private @Nullable Refusal struck(AtItsGate operation, String cannot) {
        boolean before = steps.ticked(operation.travellerId(), Proof.SERIAL_STRUCK).stream()
                .anyMatch(done -> done.operationId() != operation.operationId());
        return before || !steps.coated(operation.travellerId())
                ? null
                : Refusal.state(
                        cannot,
                        "It is coated: a blow through the film cracks it, and the film hides what was struck.",
                        "Stop the work and call the QA lead, who decides whether it is stripped.");
    }

    private @Nullable Refusal read(AtItsGate operation, String cannot) {
        ProvenSteps.Struck struck = steps.struck(operation.travellerId());
        if (!struck.stands()) {
            return Refusal.state(
                    cannot,
                    "It is not struck: no step that strikes it is ticked.",
                    "Strike it, photograph it and tick that step; then somebody else reads it.");
        }
        return records.readSince(operation.operationId(), struck.tick())
                ? null
                : Refusal.state(
                        cannot,
                        record(operation, Proof.SERIAL_READ).read() == null
                                ? "Nobody has keyed what is struck into the metal."
                                : "It was struck after it was read back.",
                        "Somebody who did not strike it signs on and keys it" + SHEET);
    }

    private String bare(java.math.BigDecimal figure) {
        return formats.number(figure.stripTrailingZeros());
    }
}
