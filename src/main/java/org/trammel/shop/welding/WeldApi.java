package org.trammel.shop.welding;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.welding.Imperfection;
import org.trammel.shop.records.Act;

/** Welds for programs. */
@RestController
@RequestMapping("/api/v1/welds")
@Tag(name = "Welds", description = "What is recorded of a frame's nodes at an operation that a procedure guards")
class WeldApi {

    private final Welds welds;
    private final NodesPutRight putRight;
    private final Purges purges;
    private final WeldLooks looks;

    WeldApi(Welds welds, NodesPutRight putRight, Purges purges, WeldLooks looks) {
        this.welds = welds;
        this.putRight = putRight;
        this.purges = purges;
        this.looks = looks;
    }

    @GetMapping("/{operationId}")
    @Operation(summary = "Its nodes in the order of the route, and the newest reading of the purge")
    WeldSheet one(@PathVariable long operationId) {
        return welds.of(operationId);
    }

    record Oxygen(
            @Nullable BigDecimal oxygenPpm,
            @Nullable String gauge,

            @Schema(description = "volume inside; may be left out") @Nullable
            BigDecimal roomL,

            @Nullable BigDecimal flowLPerMin) {}

    @PostMapping("/{operationId}/purge")
    @Operation(summary = "Oxygen inside; one above the limit is kept too, and no arc is struck on it")
    PurgeRecord purge(Act act, @PathVariable long operationId, @RequestBody Oxygen body) {
        return purges.read(
                act,
                operationId,
                new Purges.Reading(body.oxygenPpm(), text(body.gauge()), body.roomL(), body.flowLPerMin()));
    }

    record Begin(
            @Schema(description = "beside the last bead, where the procedure asks for it") @Nullable
            BigDecimal interpassDegC,

            @Nullable String gauge,

            @Schema(description = "why it is begun before an earlier step") @Nullable
            String reason) {}

    @PostMapping("/{operationId}/nodes/{stepId}/open")
    @Operation(summary = "Opens a node before the arc")
    WeldSheet open(Act act, @PathVariable long operationId, @PathVariable long stepId, @RequestBody Begin body) {
        return welds.open(act, operationId, stepId, new Welds.Begin(body.interpassDegC(), body.gauge(), body.reason()));
    }

    record End(
            @Schema(description = "where it lay outside the procedure's range") @Nullable
            BigDecimal ampsLeast,

            @Nullable BigDecimal ampsMost,

            @Schema(description = "of a sampled length, with amps, lengthMm and seconds") @Nullable
            BigDecimal volts,

            @Nullable BigDecimal amps,
            @Nullable BigDecimal lengthMm,
            @Nullable BigDecimal seconds,
            @Nullable BeadColour colour,
            @Nullable BigDecimal filletMm,
            @Nullable String gauge) {}

    @PostMapping("/{operationId}/nodes/{stepId}/close")
    @Operation(summary = "Closes the open node and ticks its step; what does not conform opens a nonconformance")
    WeldSheet close(Act act, @PathVariable long operationId, @PathVariable long stepId, @RequestBody End body) {
        return welds.close(act, operationId, stepId, end(body));
    }

    private static Welds.End end(End body) {
        return new Welds.End(
                body.ampsLeast(),
                body.ampsMost(),
                body.volts(),
                body.amps(),
                body.lengthMm(),
                body.seconds(),
                body.colour(),
                body.filletMm(),
                body.gauge());
    }

    record Correction(@Nullable End entered, @Nullable String reason) {}

    @PostMapping("/{operationId}/nodes/{stepId}/corrections")
    @Operation(summary = "Enters again what was entered of a held node; its nonconformance is decided all the same")
    WeldSheet correct(
            Act act, @PathVariable long operationId, @PathVariable long stepId, @RequestBody Correction body) {
        return putRight.correct(
                act,
                operationId,
                stepId,
                body.entered() == null ? Welds.End.plain() : end(body.entered()),
                body.reason());
    }

    @PostMapping("/{operationId}/nodes/{stepId}/kept")
    @Operation(summary = "Says that a node stays as an earlier loop of the operation left it, and ticks it")
    WeldSheet keep(Act act, @PathVariable long operationId, @PathVariable long stepId) {
        return putRight.keep(act, operationId, stepId);
    }

    record Cause(@Nullable String reason) {}

    @PostMapping("/{operationId}/nodes/{stepId}/repairs")
    @Operation(summary = "Says that a node is cut open and welded again; one too many is for the QA lead to decide")
    WeldSheet repair(Act act, @PathVariable long operationId, @PathVariable long stepId, @RequestBody Cause body) {
        return welds.repair(act, operationId, stepId, body.reason());
    }

    @GetMapping("/{operationId}/looks")
    @Operation(summary = "What was seen of each node, where the operation looks")
    List<SeenNode> looks(@PathVariable long operationId) {
        return looks.of(operationId);
    }

    record Seen(
            String node,

            @Schema(description = "null where nothing was found") @Nullable
            Imperfection imperfection,

            @Schema(description = "in the unit of the imperfection") @Nullable
            BigDecimal size,

            @Schema(description = "as the standard of the table says what is short")
            boolean isShort,

            @Nullable BigDecimal wallMm,
            @Nullable BigDecimal widthMm,
            @Nullable BigDecimal throatMm) {}

    @PostMapping("/{operationId}/looks")
    @Operation(summary = "One sighting of a node, judged by the table that the procedure names")
    List<SeenNode> look(Act act, @PathVariable long operationId, @RequestBody Seen body) {
        return looks.see(
                act,
                operationId,
                text(body.node()),
                new WeldLooks.Sighting(
                        body.imperfection(),
                        body.size(),
                        body.isShort(),
                        body.wallMm(),
                        body.widthMm(),
                        body.throatMm()));
    }

    private static String text(@Nullable String sent) {
        return sent == null ? "" : sent;
    }
}
