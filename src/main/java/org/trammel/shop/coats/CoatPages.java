package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.dew.DewGauges;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.web.Keyed;

/** The sheet of a coat at a tablet. */
@Controller
@RequestMapping("/coats/{operationId}")
class CoatPages {

    private final Surfaces surfaces;
    private final SurfaceRecords records;
    private final Films films;
    private final CoatStrips strips;
    private final MaskLines lines;
    private final CoatTurn turn;
    private final CoatGauges gauges;
    private final DewGauges dew;
    private final CoatColours colours;
    private final Crew crew;

    CoatPages(
            Surfaces surfaces,
            SurfaceRecords records,
            Films films,
            CoatStrips strips,
            MaskLines lines,
            CoatTurn turn,
            CoatGauges gauges,
            DewGauges dew,
            CoatColours colours,
            Crew crew) {
        this.films = films;
        this.strips = strips;
        this.lines = lines;
        this.surfaces = surfaces;
        this.records = records;
        this.turn = turn;
        this.gauges = gauges;
        this.dew = dew;
        this.colours = colours;
        this.crew = crew;
    }

    @GetMapping
    String sheet(@PathVariable long operationId, SignedOn who, Model model) {
        CoatTurn.At at = turn.of(operationId);
        String code = at.line().code();
        model.addAttribute("at", at);
        SurfaceRecord record = surfaces.of(operationId);
        model.addAttribute("record", record);
        model.addAttribute(
                "colour",
                colours.asked(at.head().travellerId(), code, at.finish()).orElse(null));
        model.addAttribute(
                "powder",
                record.spray() == null
                        ? null
                        : colours.sheet(record.spray().lot()).orElse(null));
        model.addAttribute("airs", records.airs(operationId));
        model.addAttribute("blasts", at.finish().blasts(code));
        lines(lines.of(operationId), at.finish().draws(code), model);
        model.addAttribute("lays", lines.laidAt(at));
        model.addAttribute("draws", at.finish().draws(code));
        model.addAttribute("lineGauges", gauges.usable(CoatGauges.TAPE, "mm"));
        model.addAttribute("edgeGauges", gauges.usable(CoatGauges.FEELER, "mm"));
        model.addAttribute("sprays", at.finish().coats(code));
        model.addAttribute(
                "coatedBefore",
                at.finish().blasts(code) && strips.finds(at.head().travellerId(), at.finish()));
        model.addAttribute("strip", strips.of(operationId).orElse(null));
        model.addAttribute("methods", methods());
        model.addAttribute("readsFilm", at.finish().readsFilm(code));
        List<Film> maps = films.of(operationId);
        model.addAttribute("maps", maps);
        model.addAttribute("film", maps.isEmpty() ? null : maps.get(maps.size() - 1));
        List<Look> looks = films.looksOf(operationId);
        model.addAttribute("look", looks.isEmpty() ? null : looks.get(looks.size() - 1));
        model.addAttribute("filmGauges", gauges.usableOnFilm(at.head().metal()));
        model.addAttribute("lookGauges", gauges.usableOnLook());
        model.addAttribute("names", crew.names());
        model.addAttribute(
                "works",
                who.person().mayWork()
                        && at.head().state().open()
                        && at.head().currentOperationId() != null
                        && at.head().currentOperationId() == operationId);
        model.addAttribute("airGauges", dew.usableOnAir());
        model.addAttribute("metalGauges", dew.usableOnMetal());
        model.addAttribute("pressureGauges", gauges.usable(CoatGauges.PRESSURE, "bar"));
        model.addAttribute("earthGauges", gauges.usable(CoatGauges.EARTH, "MΩ"));
        return "coats/sheet";
    }

    /** The next line to do stands chosen. */
    private static void lines(FilmLines film, boolean draws, Model model) {
        Map<String, String> names = new LinkedHashMap<>();
        film.lines().forEach(line -> names.put(line.name(), line.name()));
        model.addAttribute("masking", film);
        model.addAttribute("lineNames", names);
        model.addAttribute(
                "lineNext",
                (draws ? film.on() : film.off()).stream().findFirst().orElse(null));
    }

    @PostMapping("/masks")
    String mask(
            Act act,
            @PathVariable long operationId,
            @RequestParam(defaultValue = "") String landmark,
            @RequestParam(defaultValue = "false") boolean fitted) {
        surfaces.mask(act, operationId, landmark, fitted);
        return sheet(operationId);
    }

    @PostMapping("/blast")
    String blast(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        surfaces.blasted(
                act,
                operationId,
                new Surfaces.Blasted(
                        text(fields, "lot"),
                        Keyed.figureOrNone("pressure", "The blast was not recorded.", fields.get("pressure")),
                        text(fields, "gauge"),
                        fields.get("cleanliness")));
        return sheet(operationId);
    }

    @PostMapping("/air")
    String air(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        surfaces.measured(act, operationId, MetalAir.of(fields, "Air and metal were not recorded."));
        return sheet(operationId);
    }

    @PostMapping("/spray")
    String spray(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        surfaces.spraying(
                act,
                operationId,
                new Surfaces.Spraying(
                        text(fields, "lot"),
                        Keyed.figureOrNone("earth", "Powder and earth were not recorded.", fields.get("earth")),
                        text(fields, "gauge")));
        return sheet(operationId);
    }

    @PostMapping("/films")
    String film(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        CoatAsked asked = turn.of(operationId).finish().coat();
        Map<String, String> byArea = new HashMap<>();
        for (int i = 0; asked != null && i < asked.areas().size(); i++) {
            byArea.put(asked.areas().get(i), text(fields, "area" + i));
        }
        films.take(act, operationId, byArea, text(fields, "gauge"));
        return sheet(operationId);
    }

    @PostMapping("/looks")
    String look(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        String deed = "The look was not taken.";
        BigDecimal crossCut = Keyed.figureOrNone("crossCut", deed, fields.get("crossCut"));
        films.look(
                act,
                operationId,
                new Films.Seen(
                        crossCut == null
                                        || crossCut.stripTrailingZeros().scale() > 0
                                        || crossCut.abs().intValue() > 9
                                ? null
                                : crossCut.intValueExact(),
                        Keyed.figureOrNone("gloss", deed, fields.get("gloss")),
                        Keyed.figureOrNone("colour", deed, fields.get("colour")),
                        fields.get("gauge")));
        return sheet(operationId);
    }

    @PostMapping("/film-on")
    String lay(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        String deed = "The film was not noted.";
        lines.lay(
                act,
                operationId,
                new MaskLines.Laid(
                        fields.get("line"),
                        Keyed.figureOrNone("drive", deed, fields.get("drive")),
                        Keyed.figureOrNone("nonDrive", deed, fields.get("nonDrive")),
                        fields.get("gauge")));
        return sheet(operationId);
    }

    @PostMapping("/film-off")
    String draw(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        lines.draw(
                act,
                operationId,
                new MaskLines.Drawn(
                        fields.get("line"),
                        Keyed.figureOrNone("bleed", "The film was not noted as off.", fields.get("bleed")),
                        fields.get("gauge")));
        return sheet(operationId);
    }

    @PostMapping("/strip")
    String strip(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        strips.strip(
                act,
                operationId,
                text(fields, "method").isEmpty()
                        ? null
                        : Keyed.one(StripMethod.class, "method", "The strip was not recorded.", text(fields, "method")),
                fields.get("words"));
        return sheet(operationId);
    }

    private static Map<String, String> methods() {
        Map<String, String> methods = new LinkedHashMap<>();
        methods.put("", "choose how");
        for (StripMethod method : StripMethod.values()) {
            methods.put(method.name(), method.word());
        }
        return methods;
    }

    private static String text(Map<String, String> fields, String field) {
        return fields.getOrDefault(field, "").strip();
    }

    private static String sheet(long operationId) {
        return "redirect:/coats/" + operationId;
    }
}
