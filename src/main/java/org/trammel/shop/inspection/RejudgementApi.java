package org.trammel.shop.inspection;

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
@RequestMapping("/api/v1/rejudgements")
@Tag(
        name = "Re-judgements",
        description =
                "What was read with a gauge that was found wrong, judged again over the span of its possible error")
class RejudgementApi {

    private static final int MOST = 1000;

    private final Rejudgements rejudgements;
    private final FrameResults results;

    RejudgementApi(Rejudgements rejudgements, FrameResults results) {
        this.rejudgements = rejudgements;
        this.results = results;
    }

    @GetMapping
    @Operation(summary = "All of them, newest first, a page at a time")
    List<RejudgementLine> page(
            @RequestParam(defaultValue = "" + Long.MAX_VALUE) long before,
            @RequestParam(defaultValue = "100") int limit) {
        return rejudgements.page(before, limit);
    }

    @GetMapping("/{id}")
    RejudgementLine one(@PathVariable long id) {
        return rejudgements.one(id);
    }

    @GetMapping("/{id}/frames")
    @Operation(summary = "Its frames, those that wait for a result first")
    List<RejudgedFrameLine> frames(
            @PathVariable long id,
            @RequestParam(defaultValue = "0") int from,
            @RequestParam(defaultValue = "100") int limit) {
        return rejudgements.frames(id, Math.max(from, 0), within(limit));
    }

    @GetMapping("/{id}/readings")
    @Operation(summary = "Its readings with their figures, those in doubt first")
    List<RejudgedLine> readings(
            @PathVariable long id,
            @RequestParam(defaultValue = "0") int from,
            @RequestParam(defaultValue = "100") int limit) {
        return rejudgements.readings(id, Math.max(from, 0), within(limit));
    }

    private static int within(int limit) {
        return Math.min(Math.max(limit, 1), MOST);
    }

    /**
     * @param changesWhatWasOrdered left out, nothing of what was ordered changes
     * @param customer who of the customer agreed to that, when and how
     */
    record Result(
            FrameResult result,
            String words,
            @Nullable Boolean changesWhatWasOrdered,
            @Nullable String customer) {

        FrameSettling settling() {
            return new FrameSettling(result, words, Boolean.TRUE.equals(changesWhatWasOrdered), customer);
        }
    }

    @PostMapping("/{id}/frames/{serial}/result")
    @Operation(
            summary =
                    "What came of a frame that was not cleared; its hold is lifted with it. One that is decided without"
                            + " measuring waits until QA lead and owner have agreed.")
    RejudgementLine settle(Act act, @PathVariable long id, @PathVariable String serial, @RequestBody Result body) {
        results.settle(act, id, serial, body.settling());
        return rejudgements.one(id);
    }

    /** @param number of the decision that was read */
    record Agreement(int number) {}

    @PostMapping("/{id}/frames/{serial}/agreement")
    @Operation(summary = "Agrees to the decision put forward for a frame")
    RejudgementLine agree(Act act, @PathVariable long id, @PathVariable String serial, @RequestBody Agreement body) {
        results.agree(act, id, serial, body.number());
        return rejudgements.one(id);
    }

    record Closing(@Nullable String words) {}

    @PostMapping("/{id}/close")
    RejudgementLine close(Act act, @PathVariable long id, @RequestBody Closing body) {
        return rejudgements.close(act, id, body.words());
    }
}
