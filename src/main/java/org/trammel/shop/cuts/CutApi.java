package org.trammel.shop.cuts;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** Cuts and hole saws for programs. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Cuts", description = "Tubes as they were measured after saw and mitre, and the hole saws that cut them")
class CutApi {

    private final Cuts cuts;
    private final HoleSaws saws;

    CutApi(Cuts cuts, HoleSaws saws) {
        this.cuts = cuts;
        this.saws = saws;
    }

    @GetMapping("/cuts/{operationId}")
    @Operation(summary = "The pieces of the frame's own cut list, and what was recorded of each")
    Cuts.Sheet one(@PathVariable long operationId) {
        return cuts.of(operationId);
    }

    record EndCut(
            @Schema(description = "1 for the first end of the tube, 2 for the second")
            int place,

            @Nullable String saw,
            @Nullable BigDecimal angleDeg,

            @Schema(description = "thinnest at the lip") @Nullable
            BigDecimal wallMm,

            @Schema(description = "at eight places round the end, its mate held") @Nullable
            List<@Nullable BigDecimal> gapsMm) {}

    record TubeCut(
            @Schema(description = "code of the piece, as the sheet names it") @Nullable
            String piece,

            @Nullable BigDecimal blankMm,

            @Schema(description = "how far the second cut stands off its phase") @Nullable
            BigDecimal phaseDeg,

            @Nullable List<@Nullable EndCut> ends,
            @Nullable String lengthGauge,
            @Nullable String angleGauge,
            @Nullable String phaseGauge,
            @Nullable String gapGauge,
            @Nullable String wallGauge) {}

    @PostMapping("/cuts/{operationId}")
    @Operation(summary = "One tube as it was measured; the worst of all is judged by the limits of the route")
    Cuts.Sheet record(Act act, @PathVariable long operationId, @RequestBody TubeCut body) {
        Map<Integer, Cuts.EndEntry> ends = new LinkedHashMap<>();
        if (body.ends() != null) {
            body.ends().forEach(end -> put(ends, end));
        }
        return cuts.record(
                act, operationId, new Cuts.Entry(body.piece(), body.blankMm(), body.phaseDeg(), ends, gauges(body)));
    }

    private static void put(Map<Integer, Cuts.EndEntry> ends, @Nullable EndCut end) {
        if (end == null) {
            throw Refusal.input(
                    "ends",
                    "The cut was not recorded.",
                    "One of its ends is empty.",
                    "Say of each end what it measures, or leave it out.");
        }
        if (ends.containsKey(end.place())) {
            throw Refusal.input(
                    "ends",
                    "The cut was not recorded.",
                    "Two of its ends are at place " + end.place() + ".",
                    "Say each end once: 1 for the first of the tube, 2 for the second.");
        }
        ends.put(
                end.place(),
                new Cuts.EndEntry(
                        end.saw(), end.angleDeg(), end.wallMm(), end.gapsMm() == null ? List.of() : end.gapsMm()));
    }

    private static Map<String, String> gauges(TubeCut body) {
        Map<String, String> gauges = new HashMap<>();
        put(gauges, "lengthGauge", body.lengthGauge());
        put(gauges, "angleGauge", body.angleGauge());
        put(gauges, "phaseGauge", body.phaseGauge());
        put(gauges, "gapGauge", body.gapGauge());
        put(gauges, "wallGauge", body.wallGauge());
        return gauges;
    }

    private static void put(Map<String, String> gauges, String field, @Nullable String code) {
        if (code != null) {
            gauges.put(field, code);
        }
    }

    @GetMapping("/hole-saws")
    List<HoleSaw> saws() {
        return saws.all();
    }

    record NewSaw(
            @Nullable String code,
            @Nullable String what,

            @Schema(description = "by its mark") @Nullable BigDecimal diameterMm) {}

    @PostMapping("/hole-saws")
    HoleSaw register(Act act, @RequestBody NewSaw body) {
        return saws.register(act, body.code(), body.what(), body.diameterMm());
    }

    record SawMeasured(
            @Schema(description = "over its teeth") @Nullable
            BigDecimal measuredMm,

            @Nullable String gauge) {}

    @PostMapping("/hole-saws/{code}/checks")
    HoleSaw check(Act act, @PathVariable String code, @RequestBody SawMeasured body) {
        return saws.check(act, code, body.measuredMm(), body.gauge() == null ? "" : body.gauge());
    }

    record SawRetired(
            @Schema(description = "why it cuts no more") @Nullable
            String reason) {}

    @PostMapping("/hole-saws/{code}/retire")
    HoleSaw retire(Act act, @PathVariable String code, @RequestBody SawRetired body) {
        return saws.retire(act, code, body.reason());
    }
}
