package org.trammel.shop.records;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

@RestController
@RequestMapping("/api/v1/log")
@Tag(name = "Log", description = "The hash-chained log of acts; for the QA lead, the owner and an auditor")
class LogApi {

    private final LogBook book;
    private final LogVerifier verifier;
    private final Checkpoints checkpoints;
    private final LogReaders readers;

    LogApi(LogBook book, LogVerifier verifier, Checkpoints checkpoints, LogReaders readers) {
        this.book = book;
        this.verifier = verifier;
        this.checkpoints = checkpoints;
        this.readers = readers;
    }

    /**
     * @param intact whether every record fits
     * @param found the answer in words and what does not fit
     */
    record Answer(boolean intact, String words, Verification found) {}

    @GetMapping("/chains")
    @Operation(summary = "Chains by name, a page at a time")
    List<ChainSummary> chains(
            HttpServletRequest request,
            @RequestParam(defaultValue = "") String beginning,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "100") int limit) {
        readers.require(request);
        return book.chains(beginning, after, limit);
    }

    @GetMapping("/chains/{name}")
    @Operation(summary = "Records of a chain, the newest first, a page at a time")
    List<LogRecord> records(
            HttpServletRequest request,
            @PathVariable String name,
            @RequestParam @Nullable Long before,
            @RequestParam(defaultValue = "100") int limit) {
        readers.require(request);
        return book.records(name, before, limit);
    }

    @GetMapping("/acts/{id}")
    @Operation(summary = "Records of one act; none if it was not carried out")
    List<LogRecord> act(HttpServletRequest request, @PathVariable UUID id) {
        readers.require(request);
        return book.act(id);
    }

    @GetMapping("/verification")
    @Operation(summary = "Walks all chains, checkpoints and words, and the files if asked")
    Answer verification(HttpServletRequest request, @RequestParam(defaultValue = "false") boolean files) {
        readers.require(request);
        Verification found = verifier.verify(files);
        return new Answer(found.isIntact(), found.words(), found);
    }

    @GetMapping("/checkpoints/newest")
    @Operation(summary = "The newest root that ties the chains together, to be written down elsewhere")
    CheckpointSheet newest(HttpServletRequest request) {
        readers.require(request);
        return checkpoints.newest().orElseThrow(LogApi::none);
    }

    @PostMapping("/checkpoints")
    @Operation(summary = "Makes a checkpoint if any chain moved since the last; answers the newest")
    CheckpointSheet make(HttpServletRequest request) {
        readers.requireKeeper(request);
        checkpoints.make();
        return checkpoints.newest().orElseThrow(LogApi::none);
    }

    private static Refusal none() {
        return Refusal.missing(
                "There is no checkpoint.",
                "No act was recorded before one was due.",
                "Carry out an act, then make one.");
    }
}
