package org.trammel.shop.alignment;

import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.records.Act;
import org.trammel.shop.web.Keyed;

/** What is keyed at the alignment table. */
@Controller
@RequestMapping("/alignment")
class TableForms {

    private static final Duration KEPT = Duration.ofDays(90);
    private static final String NOT_KEPT = "The figure is not kept.";

    private final RawFigures figures;
    private final Reductions reductions;
    private final TurnOfSheet turns;
    private final TableCharacteristics characteristics;
    private final PushesNoted pushes;

    TableForms(
            RawFigures figures,
            Reductions reductions,
            TurnOfSheet turns,
            TableCharacteristics characteristics,
            PushesNoted pushes) {
        this.figures = figures;
        this.reductions = reductions;
        this.turns = turns;
        this.characteristics = characteristics;
        this.pushes = pushes;
    }

    @PostMapping("/{operationId}/read")
    String read(
            Act act,
            @PathVariable long operationId,
            @RequestParam @Nullable String spot,
            @RequestParam @Nullable String value,
            @RequestParam(defaultValue = "") String gauge,
            @RequestParam @Nullable Long seen,
            @RequestParam @Nullable String reason,
            @RequestParam(defaultValue = "false") boolean confirm,
            HttpServletResponse response) {
        Spot at = Keyed.one(Spot.class, "spot", NOT_KEPT, spot);
        figures.read(
                act,
                operationId,
                new RawFigures.Typed(at, Keyed.figure("value", NOT_KEPT, value), gauge.strip(), seen, reason, confirm));
        response.addHeader(
                HttpHeaders.SET_COOKIE,
                ResponseCookie.from(
                                TablePages.LAST_GAUGE + (at.height() ? "height" : "length"),
                                gauge.strip().replaceAll("[^A-Za-z0-9.-]", ""))
                        .path("/alignment")
                        .maxAge(KEPT)
                        .httpOnly(true)
                        .sameSite("Strict")
                        .build()
                        .toString());
        return "redirect:/alignment/" + operationId + "/read";
    }

    @PostMapping("/{operationId}/strike-out")
    String strikeOut(
            Act act,
            @PathVariable long operationId,
            @RequestParam long figure,
            @RequestParam(defaultValue = "") String reason) {
        figures.strikeOut(act, operationId, figure, reason);
        return "redirect:/alignment/" + operationId + "/read";
    }

    @PostMapping("/{operationId}/points")
    String points(
            Act act,
            @PathVariable long operationId,
            @RequestParam(defaultValue = "") String points,
            @RequestParam(defaultValue = "") String gauge) {
        figures.points(act, operationId, PointLines.read(points), gauge);
        return "redirect:/alignment/" + operationId + "/read";
    }

    @PostMapping("/{operationId}/anew")
    String anew(Act act, @PathVariable long operationId) {
        figures.anew(act, operationId);
        return "redirect:/alignment/" + operationId + "/read";
    }

    @PostMapping("/{operationId}/reduce")
    String reduce(Act act, @PathVariable long operationId) {
        reductions.reduce(act, operationId);
        return "redirect:/alignment/" + operationId;
    }

    @PostMapping("/{operationId}/set-up")
    String setUp(
            Act act,
            @PathVariable long operationId,
            @RequestParam @Nullable Long seen,
            @RequestParam Map<String, String> form) {
        String what = "How the frame lies was not changed.";
        TableSetUp now = turns.setUp(operationId);
        figures.setUp(
                act,
                operationId,
                new TableSetUp(
                        Keyed.one(TableSetUp.Datum.class, "datum", what, form.get("datum")),
                        Keyed.one(TableSetUp.Base.class, "base", what, form.get("base")),
                        !"NON_DRIVE".equals(form.get("up")),
                        figure(form, "seatLow", what, now.seatLow_mm()),
                        figure(form, "seatHigh", what, now.seatHigh_mm()),
                        figure(form, "tubeBase", what, now.tubeBase_mm()),
                        figure(form, "mandrelBase", what, now.mandrelBase_mm()),
                        Keyed.figureOrNone("seatDiameter", what, form.get("seatDiameter")),
                        Keyed.figureOrNone("headDiameter", what, form.get("headDiameter")),
                        Keyed.figureOrNone("mandrelDiameter", what, form.get("mandrelDiameter")),
                        "BOTH".equals(form.get("sides")),
                        form.containsKey("sideView")),
                seen);
        return "redirect:/alignment/" + operationId + "/read";
    }

    private static BigDecimal figure(Map<String, String> form, String field, String what, BigDecimal now) {
        BigDecimal typed = Keyed.figureOrNone(field, what, form.get(field));
        return typed == null ? now : typed;
    }

    @PostMapping("/pushes")
    String noted(Act act, @RequestParam Map<String, String> form) {
        String what = "The push is not noted.";
        pushes.note(
                act,
                new PushNoted(
                        Keyed.one(Deviation.class, "deviation", what, form.get("deviation")),
                        form.getOrDefault("metal", ""),
                        Keyed.figure("outside", what, form.get("outside")),
                        Keyed.figure("wall", what, form.get("wall")),
                        Keyed.figure("push", what, form.get("push")),
                        Keyed.figure("set", what, form.get("set")),
                        form.getOrDefault("source", "")));
        return "redirect:/alignment/pushes";
    }

    @PostMapping("/characteristics")
    String put(
            Act act,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String deviations,
            @RequestParam(defaultValue = "") String source) {
        List<Deviation> all = Arrays.stream(deviations.split(";"))
                .filter(code -> !code.isBlank())
                .map(code -> Keyed.one(Deviation.class, "deviations", "What the table measures was not changed.", code))
                .toList();
        characteristics.put(act, name, all, source);
        return "redirect:/alignment/characteristics";
    }
}
