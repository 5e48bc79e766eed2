package org.trammel.shop.materials;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.Keyed;

/** The sheet of tubes at a tablet: the next place stands ready for the scan of its tube. */
@Controller
class TubePages {

    private final TubeRecords records;
    private final TubeIssues issues;
    private final LotSections sections;
    private final Lots lots;
    private final Crew crew;
    private final Formats formats;

    TubePages(TubeRecords records, TubeIssues issues, LotSections sections, Lots lots, Crew crew, Formats formats) {
        this.records = records;
        this.issues = issues;
        this.sections = sections;
        this.lots = lots;
        this.crew = crew;
        this.formats = formats;
    }

    /** One place in words. */
    record Row(
            String code,
            String called,
            String asked,
            @Nullable String section,
            TubeSheet.Line line) {}

    @GetMapping("/tubes/{operationId}")
    String sheet(
            @PathVariable long operationId, @RequestParam(defaultValue = "") String place, SignedOn who, Model model) {
        TubeSheet sheet = records.of(operationId);
        List<Row> rows = sheet.lines().stream().map(this::row).toList();
        model.addAttribute("sheet", sheet);
        model.addAttribute("rows", rows);
        model.addAttribute(
                "next",
                rows.stream()
                        .filter(row -> row.line().issued() == null)
                        .filter(row -> place.isEmpty() || row.code().equals(place))
                        .findFirst()
                        .orElse(null));
        model.addAttribute("names", crew.names());
        model.addAttribute("decides", who.person().is(Role.QA_LEAD));
        model.addAttribute(
                "works",
                who.person().mayWork()
                        && sheet.head().state().open()
                        && sheet.head().currentOperationId() != null
                        && sheet.head().currentOperationId() == operationId);
        return "lots/tubes";
    }

    private Row row(TubeSheet.Line line) {
        Section taken = line.issued() == null ? null : line.issued().section();
        return new Row(
                line.place().code(),
                line.place().called(),
                line.place().outside_mm() == null ? "" : records.asked(line.place()),
                taken == null ? null : taken.words(formats),
                line);
    }

    @PostMapping("/tubes/{operationId}")
    String issue(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        issues.issue(
                act,
                operationId,
                new TubeIssues.Scan(
                        fields.getOrDefault("place", ""),
                        fields.getOrDefault("lot", ""),
                        Keyed.figureOrNone("quantity", "The tube was not issued.", fields.get("quantity")),
                        null,
                        fields.get("reason")));
        return back(operationId);
    }

    @PostMapping("/tubes/{operationId}/scrap")
    String scrap(
            Act act,
            @PathVariable long operationId,
            @RequestParam long use,
            @RequestParam(defaultValue = "") String reason) {
        lots.scrap(act, use, reason);
        return back(operationId);
    }

    @PostMapping("/shop/lots/{code}/sections")
    String sections(Act act, @PathVariable String code, @RequestParam(defaultValue = "") String sections) {
        String label = LotRegister.label(code);
        this.sections.state(act, label, Section.read(sections, "The sections of " + label + " were not recorded."));
        return "redirect:/shop/lots/" + label;
    }

    private static String back(long operationId) {
        return "redirect:/tubes/" + operationId;
    }
}
