package org.trammel.shop.cuts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Keyed;

/** The sheet of cuts at a tablet: one tube at a time, with what its own drawing asks beside each figure. */
@Controller
@RequestMapping("/cuts/{operationId}")
class CutPages {

    private static final String DEED = "The cut was not recorded.";

    private final Cuts cuts;
    private final CutTurn turn;
    private final CutRecords records;
    private final CutGives gives;
    private final HoleSaws saws;
    private final CutGauges gauges;
    private final Settings settings;
    private final Crew crew;

    CutPages(
            Cuts cuts,
            CutTurn turn,
            CutRecords records,
            CutGives gives,
            HoleSaws saws,
            CutGauges gauges,
            Settings settings,
            Crew crew) {
        this.cuts = cuts;
        this.turn = turn;
        this.records = records;
        this.gives = gives;
        this.saws = saws;
        this.gauges = gauges;
        this.settings = settings;
        this.crew = crew;
    }

    @GetMapping
    String sheet(@PathVariable long operationId, @RequestParam @Nullable String piece, SignedOn who, Model model) {
        CutTurn.At at = turn.of(operationId);
        Cuts.Sheet sheet = cuts.of(operationId);
        boolean works = who.person().mayWork() && CutTurn.stands(at);
        model.addAttribute("at", at);
        model.addAttribute("sheet", sheet);
        CutTubes.Drawn drawn = turn.drawn(at.head(), operationId, at.line().code());
        model.addAttribute("drawn", drawn);
        model.addAttribute("keyed", drawn.missing().isEmpty() ? List.of() : gives.keyed(operationId, drawn));
        model.addAttribute("names", crew.names());
        model.addAttribute("judged", gives.judged(operationId));
        model.addAttribute("works", works);
        model.addAttribute("chosen", chosen(sheet, piece, works));
        model.addAttribute("places", Cuts.PLACES);
        model.addAttribute("usable", gauges.usable());
        model.addAttribute("last", last());
        model.addAttribute("saws", saws.all());
        model.addAttribute("today", settings.today());
        model.addAttribute("oversize", settings.number("saw.oversize"));
        return "cuts/sheet";
    }

    private static CutTubes.@Nullable Piece chosen(Cuts.Sheet sheet, @Nullable String piece, boolean works) {
        return !works
                ? null
                : sheet.pieces().stream()
                        .filter(one -> one.code().equals(piece))
                        .findFirst()
                        .orElse(sheet.next());
    }

    /** The gauges used last lie on the bench. */
    private Map<String, String> last() {
        Map<String, String> last = new HashMap<>();
        records.lastWith().ifPresent(with -> {
            last.put("lengthGauge", with.length());
            last.put("angleGauge", with.angle());
            last.put("phaseGauge", with.phase());
            last.put("gapGauge", with.gap());
            last.put("wallGauge", with.wall());
        });
        return last;
    }

    @PostMapping
    String record(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        Map<Integer, Cuts.EndEntry> ends = new LinkedHashMap<>();
        for (int place = 1; place <= 2; place++) {
            if (fields.containsKey("saw" + place)) {
                ends.put(place, end(fields, place));
            }
        }
        cuts.record(
                act,
                operationId,
                new Cuts.Entry(fields.get("piece"), figure(fields, "blank"), figure(fields, "phase"), ends, fields));
        return "redirect:/cuts/" + operationId;
    }

    private static Cuts.EndEntry end(Map<String, String> fields, int place) {
        List<@Nullable BigDecimal> gaps = new ArrayList<>();
        for (int i = 1; i <= Cuts.PLACES; i++) {
            gaps.add(figure(fields, "gap" + place + "-" + i));
        }
        return new Cuts.EndEntry(
                fields.get("saw" + place), figure(fields, "angle" + place), figure(fields, "wall" + place), gaps);
    }

    private static @Nullable BigDecimal figure(Map<String, String> fields, String name) {
        return Keyed.figureOrNone(name, DEED, fields.get(name));
    }
}
