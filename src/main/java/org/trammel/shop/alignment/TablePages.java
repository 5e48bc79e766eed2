package org.trammel.shop.alignment;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/** The sheets of the alignment table. What they change is sent to the forms. */
@Controller
@RequestMapping("/alignment")
class TablePages {

    static final String LAST_GAUGE = "trammel-table-";

    private final TableSheets sheets;
    private final TableEntries entries;
    private final TurnOfSheet turns;
    private final TableCharacteristics characteristics;
    private final PushesNoted pushes;
    private final Travellers travellers;
    private final Crew crew;
    private final Settings settings;
    private final Formats formats;

    TablePages(
            TableSheets sheets,
            TableEntries entries,
            TurnOfSheet turns,
            TableCharacteristics characteristics,
            PushesNoted pushes,
            Travellers travellers,
            Crew crew,
            Settings settings,
            Formats formats) {
        this.sheets = sheets;
        this.entries = entries;
        this.turns = turns;
        this.characteristics = characteristics;
        this.pushes = pushes;
        this.travellers = travellers;
        this.crew = crew;
        this.settings = settings;
        this.formats = formats;
    }

    @GetMapping
    String list(SignedOn who, Model model) {
        List<FrameSheet.Head> inShop = travellers.inShop().stream()
                .filter(head -> head.currentOperationId() != null)
                .toList();
        Set<Long> measuring = characteristics.measuring(
                inShop.stream().map(FrameSheet.Head::currentOperationId).toList());
        model.addAttribute(
                "frames",
                inShop.stream()
                        .filter(head -> measuring.contains(head.currentOperationId()))
                        .toList());
        model.addAttribute("keeps", who.person().is(Role.QA_LEAD));
        return "alignment/list";
    }

    @GetMapping("/{operationId}")
    String sheet(@PathVariable long operationId, @RequestParam @Nullable Long axis, SignedOn who, Model model) {
        show(operationId, axis, who, model);
        return "alignment/sheet";
    }

    private TableSheet show(long operationId, @Nullable Long axis, SignedOn who, Model model) {
        TableSheet sheet = sheets.of(operationId, axis);
        model.addAttribute("view", sheet);
        model.addAttribute("works", who.person().mayWork());
        model.addAttribute("factor", settings.number("guard.factor"));
        return sheet;
    }

    private Set<Deviation> asked(TableSheet sheet) {
        return turns.measured(sheet.operation()).stream()
                .flatMap(one -> one.deviations().stream())
                .collect(Collectors.toSet());
    }

    @GetMapping("/{operationId}/read")
    String read(
            @PathVariable long operationId,
            @RequestParam @Nullable String spot,
            SignedOn who,
            HttpServletRequest request,
            Model model) {
        TableSheet sheet = show(operationId, null, who, model);
        Spot chosen = spot == null ? null : Spot.named(spot).orElse(null);
        boolean height = chosen == null || chosen.height();
        model.addAttribute(
                "entry", entries.of(sheet, asked(sheet), chosen, last(request, height ? "height" : "length")));
        return sheet.sheet().setUp().datum() == TableSetUp.Datum.POINTS ? points(sheet, model) : "alignment/read";
    }

    private String points(TableSheet sheet, Model model) {
        model.addAttribute("arms", withNone(entries.usable("table.point.kind")));
        model.addAttribute(
                "points",
                sheet.sheet().standing().stream().filter(RawLine::point).toList());
        model.addAttribute("features", Feature.all());
        return "alignment/points";
    }

    private static Map<String, String> withNone(Map<String, String> usable) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("", "choose the one in your hand");
        all.putAll(usable);
        return all;
    }

    private static @Nullable String last(HttpServletRequest request, String kind) {
        return request.getCookies() == null
                ? null
                : Arrays.stream(request.getCookies())
                        .filter(cookie -> cookie.getName().equals(LAST_GAUGE + kind))
                        .map(Cookie::getValue)
                        .findFirst()
                        .orElse(null);
    }

    @GetMapping("/{operationId}/set-up")
    String setUp(@PathVariable long operationId, SignedOn who, Model model) {
        show(operationId, null, who, model);
        return "alignment/set-up";
    }

    @GetMapping("/{operationId}/figures")
    String figures(@PathVariable long operationId, SignedOn who, Model model) {
        show(operationId, null, who, model);
        model.addAttribute("names", crew.names());
        return "alignment/figures";
    }

    /** A sheet to fill in by hand while there is no network. */
    @GetMapping("/{operationId}/blank")
    String blank(@PathVariable long operationId, SignedOn who, Model model) {
        TableSheet sheet = show(operationId, null, who, model);
        model.addAttribute("entry", entries.of(sheet, asked(sheet), null, null));
        return "alignment/blank";
    }

    @GetMapping("/characteristics")
    String characteristics(SignedOn who, Model model) {
        model.addAttribute("all", characteristics.inForce());
        model.addAttribute("deviations", words());
        model.addAttribute("keeps", who.person().is(Role.QA_LEAD));
        return "alignment/characteristics";
    }

    /** What the shop noted of pushes before, from which the next is proposed. */
    @GetMapping("/pushes")
    String pushes(SignedOn who, Model model) {
        model.addAttribute("all", pushes.all());
        Map<String, String> deviations = new LinkedHashMap<>();
        for (Deviation what : Deviation.values()) {
            if (what.settable()) {
                deviations.put(what.name(), what.words());
            }
        }
        model.addAttribute("deviations", deviations);
        Map<String, String> metals = new LinkedHashMap<>();
        PushesNoted.METALS.forEach(metal -> metals.put(metal, formats.metal(metal)));
        model.addAttribute("metals", metals);
        model.addAttribute(
                "keeps", who.person().is(Role.QA_LEAD) || who.person().is(Role.ALIGNER));
        return "alignment/pushes";
    }

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("", "measured elsewhere");
        for (Deviation what : Deviation.values()) {
            words.put(what.name(), what.words() + ", " + what.unit());
        }
        words.put("DROPOUTS_FORE_AFT;DROPOUTS_UP_DOWN", "dropout parallelism in both directions, mm");
        return words;
    }
}
