package org.trammel.shop.records;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The log of the shop: its chains, the records of a chain, and whether they still fit. */
@Controller
@RequestMapping("/shop/log")
class LogPages {

    private static final int LINES = 50;

    private final LogBook book;
    private final LogVerifier verifier;
    private final Checkpoints checkpoints;
    private final LogReaders readers;
    private final PersonInitials people;

    LogPages(LogBook book, LogVerifier verifier, Checkpoints checkpoints, LogReaders readers, PersonInitials people) {
        this.book = book;
        this.verifier = verifier;
        this.checkpoints = checkpoints;
        this.readers = readers;
        this.people = people;
    }

    @GetMapping
    String chains(
            HttpServletRequest request,
            @RequestParam(defaultValue = "") String beginning,
            @RequestParam(defaultValue = "") String after,
            Model model) {
        readers.require(request);
        String wanted = beginning.strip();
        List<ChainSummary> chains = book.chains(wanted, after, LINES);
        model.addAttribute("chains", chains);
        model.addAttribute("beginning", wanted);
        model.addAttribute(
                "next", chains.size() < LINES ? null : chains.get(LINES - 1).name());
        model.addAttribute("checkpoint", checkpoints.newest().orElse(null));
        model.addAttribute("keeps", readers.keeps(request));
        return "log/chains";
    }

    @GetMapping("/chain")
    String chain(
            HttpServletRequest request, @RequestParam String name, @RequestParam @Nullable Long before, Model model) {
        readers.require(request);
        List<LogRecord> records = book.records(name, before, LINES);
        model.addAttribute("chain", name);
        model.addAttribute("records", records);
        model.addAttribute("people", people.all());
        model.addAttribute("before", before);
        model.addAttribute("next", next(records));
        return "log/chain";
    }

    @GetMapping("/verification")
    String verification(HttpServletRequest request, @RequestParam(defaultValue = "false") boolean files, Model model) {
        readers.require(request);
        model.addAttribute("found", verifier.verify(files));
        model.addAttribute("files", files);
        model.addAttribute("checkpoint", checkpoints.newest().orElse(null));
        return "log/verification";
    }

    @PostMapping("/checkpoint")
    String checkpoint(HttpServletRequest request) {
        readers.requireKeeper(request);
        checkpoints.make();
        return "redirect:/shop/log";
    }

    private static @Nullable Long next(List<LogRecord> records) {
        long last = records.isEmpty() ? 1 : records.get(records.size() - 1).position();
        return last > 1 ? last : null;
    }
}
