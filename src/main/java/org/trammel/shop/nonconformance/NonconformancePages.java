package org.trammel.shop.nonconformance;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;

/** The sheets of nonconformances: those to decide, one with its decision, all of them. */
@Controller
class NonconformancePages {

    private static final int PAGE = 50;

    /** A tag as it stands in the address of a station's sheet. */
    private static final Pattern TAG = Pattern.compile("[0-9A-Za-z-]{3,24}");

    private final Deciding deciding;
    private final NonconformanceReads reads;
    private final Opening opening;
    private final Sheets sheets;
    private final LooksAgain looks;

    NonconformancePages(
            Deciding deciding, NonconformanceReads reads, Opening opening, Sheets sheets, LooksAgain looks) {
        this.looks = looks;
        this.deciding = deciding;
        this.reads = reads;
        this.opening = opening;
        this.sheets = sheets;
    }

    @GetMapping("/nonconformances")
    String list(@RequestParam(defaultValue = "" + Long.MAX_VALUE) long before, Model model) {
        List<NonconformanceLine> page = reads.page(before, PAGE);
        model.addAttribute("undecided", before == Long.MAX_VALUE ? reads.undecided() : List.of());
        model.addAttribute("lines", page);
        model.addAttribute(
                "next", page.size() < PAGE ? null : page.get(page.size() - 1).id());
        return "nonconformance/list";
    }

    @GetMapping("/nonconformances/{id}")
    String one(@PathVariable long id, SignedOn who, Model model) {
        model.addAttribute("sheet", sheets.of(id, who.person()));
        Map<String, String> decisions = new LinkedHashMap<>();
        Arrays.stream(Decision.values()).forEach(d -> decisions.put(d.name(), d.word()));
        model.addAttribute("decisions", decisions);
        return "nonconformance/sheet";
    }

    @PostMapping("/nonconformances")
    String open(
            Act act,
            @RequestParam long travellerId,
            @RequestParam long operationId,
            @RequestParam @Nullable Long characteristicId,
            @RequestParam @Nullable String faultCode,
            @RequestParam String words,
            @RequestParam @Nullable String back,
            RedirectAttributes flash) {
        String number = opening.byHand(act, travellerId, operationId, characteristicId, faultCode, words);
        if (back != null && TAG.matcher(back).matches()) {
            flash.addFlashAttribute("done", number + " is opened; the QA lead decides what becomes of it.");
            return "redirect:/station/" + back;
        }
        return "redirect:/nonconformances/" + Long.parseLong(number.substring("NC-".length()));
    }

    @PostMapping("/nonconformances/{id}/fault")
    String blame(Act act, @PathVariable long id, @RequestParam String fault) {
        deciding.blame(act, id, fault);
        return "redirect:/nonconformances/" + id;
    }

    @PostMapping("/nonconformances/{id}/look")
    String look(Act act, @PathVariable long id, @RequestParam(defaultValue = "") String seen) {
        looks.look(act, id, seen);
        return "redirect:/nonconformances/" + id;
    }

    @PostMapping("/nonconformances/{id}/decision")
    String propose(Act act, @PathVariable long id, DecisionForm form) {
        deciding.propose(act, id, form.proposal(), Boolean.TRUE.equals(form.confirm()));
        return "redirect:/nonconformances/" + id;
    }

    @PostMapping("/nonconformances/{id}/agreement")
    String agree(Act act, @PathVariable long id, @RequestParam int decisionNumber) {
        deciding.agree(act, id, decisionNumber);
        return "redirect:/nonconformances/" + id;
    }

    @PostMapping("/nonconformances/{id}/closing")
    String close(Act act, @PathVariable long id, @RequestParam String words) {
        deciding.close(act, id, words);
        return "redirect:/nonconformances/" + id;
    }
}
