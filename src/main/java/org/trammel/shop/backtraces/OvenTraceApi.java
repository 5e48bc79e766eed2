package org.trammel.shop.backtraces;

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
    private final TraceClosing closing;

    OvenTraceApi(OvenTraces traces, TraceResults results, TraceClosing closing) {
        this.traces = traces;
        this.results = results;
        this.closing = closing;
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

    /**
     * @param changesWhatWasOrdered left out, nothing of what was ordered changes
     * @param customer who of the customer agreed to that, when and how
     */
    record ResultOfFrame(
            @Nullable TraceResult result,
            @Nullable String words,
            @Nullable Boolean changesWhatWasOrdered,
            @Nullable String customer) {

        TraceSettling settling() {
            return new TraceSettling(result, words, Boolean.TRUE.equals(changesWhatWasOrdered), customer);
        }
    }

    @PostMapping("/{id}/frames/{frame}/result")
    @Operation(
            summary = "What came of a frame; the hold is lifted with the last result of its serial. One that is decided"
                    + " otherwise waits until QA lead and owner have agreed.")
    OvenTrace settle(Act act, @PathVariable long id, @PathVariable long frame, @RequestBody ResultOfFrame body) {
        results.settle(act, id, frame, body.settling());
        return traces.one(id);
    }

    /** @param number of the decision that was read */
    record AgreementToFrame(int number) {}

    @PostMapping("/{id}/frames/{frame}/agreement")
    @Operation(summary = "Agrees to the decision put forward for a frame")
    OvenTrace agree(Act act, @PathVariable long id, @PathVariable long frame, @RequestBody AgreementToFrame body) {
        results.agree(act, id, frame, body.number());
        return traces.one(id);
    }

    record Doubt(@Nullable String reason) {}

    @PostMapping("/{id}/widen")
    @Operation(summary = "Doubts the last good test too; the one before it counts")
    OvenTrace widen(Act act, @PathVariable long id, @RequestBody Doubt body) {
        return closing.widen(act, id, body.reason());
    }

    record Learnt(@Nullable String words) {}

    @PostMapping("/{id}/close")
    OvenTrace close(Act act, @PathVariable long id, @RequestBody Learnt body) {
        return closing.close(act, id, body.words());
    }
}
