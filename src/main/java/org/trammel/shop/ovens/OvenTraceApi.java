package org.trammel.shop.ovens;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

@RestController
@RequestMapping("/api/v1/oven-traces")
@Tag(
        name = "Oven traces",
        description = "Runs told again after a thermocouple failed its accuracy test; hours are equivalent hours")
class OvenTraceApi {

    private final OvenTraces traces;
    private final TraceResults results;

    OvenTraceApi(OvenTraces traces, TraceResults results) {
        this.traces = traces;
        this.results = results;
    }

    @GetMapping
    @Operation(summary = "All of them, newest first, a page at a time")
    List<OvenTrace> page(
            @RequestParam(defaultValue = "" + Long.MAX_VALUE) long before,
            @RequestParam(defaultValue = "50") int limit) {
        return traces.page(before, limit);
    }

    @GetMapping("/{id}")
    OvenTrace one(@PathVariable long id) {
        return traces.one(id);
    }

    @GetMapping("/{id}/runs")
    @Operation(summary = "Its runs: as recorded, by a linear drift, in the worst case, and by the other thermocouples")
    List<OvenTrace.TracedRun> runs(@PathVariable long id) {
        return traces.runs(id);
    }

    @GetMapping("/{id}/frames")
    @Operation(summary = "Its frames, the worst first, shipped or not")
    List<OvenTrace.TracedFrame> frames(@PathVariable long id) {
        return traces.frames(id);
    }

    record ResultOfFrame(
            @Nullable TraceResult result, @Nullable String words) {}

    @PostMapping("/{id}/frames/{frame}/result")
    @Operation(summary = "What came of a frame; the hold is lifted with the last result of its serial")
    OvenTrace settle(Act act, @PathVariable long id, @PathVariable long frame, @RequestBody ResultOfFrame body) {
        return results.settle(act, id, frame, body.result(), body.words());
    }

    record Doubt(@Nullable String reason) {}

    @PostMapping("/{id}/widen")
    @Operation(summary = "Doubts the last good test too; the one before it counts")
    OvenTrace widen(Act act, @PathVariable long id, @RequestBody Doubt body) {
        return results.widen(act, id, body.reason());
    }

    record Learnt(@Nullable String words) {}

    @PostMapping("/{id}/close")
    OvenTrace close(Act act, @PathVariable long id, @RequestBody Learnt body) {
        return results.close(act, id, body.words());
    }
}
