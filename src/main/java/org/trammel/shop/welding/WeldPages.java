package org.trammel.shop.welding;

import java.io.IOException;
import java.math.BigDecimal;
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
import org.springframework.web.multipart.MultipartFile;
import org.trammel.calc.welding.Imperfection;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.AtHand;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.web.Keyed;

/** The sheet of a weld at a tablet. */
@Controller
@RequestMapping("/welds/{operationId}")
class WeldPages {

    private static final String NOT_OPENED = "The node was not opened.";
    private static final String NOT_CLOSED = "The node was not closed.";

    private final Welds welds;
    private final Purges purges;
    private final NodesPutRight putRight;
    private final WeldLooks looks;
    private final Welders welders;
    private final NodeRecords records;
    private final WeldTurn turn;
    private final WeldLots lots;
    private final WeldGauges gauges;
    private final ProcedureWords words;
    private final AtHand atHand;
    private final Remarks remarks;
    private final Crew crew;

    WeldPages(
            Welds welds,
            Purges purges,
            NodesPutRight putRight,
            WeldLooks looks,
            Welders welders,
            NodeRecords records,
            WeldTurn turn,
            WeldLots lots,
            WeldGauges gauges,
            ProcedureWords words,
            AtHand atHand,
            Remarks remarks,
            Crew crew) {
        this.welds = welds;
        this.purges = purges;
        this.putRight = putRight;
        this.looks = looks;
        this.welders = welders;
        this.records = records;
        this.turn = turn;
        this.lots = lots;
        this.gauges = gauges;
        this.words = words;
        this.atHand = atHand;
        this.remarks = remarks;
        this.crew = crew;
    }

    @GetMapping
    String sheet(@PathVariable long operationId, SignedOn who, Model model) {
        WeldTurn.At at = turn.of(operationId);
        WeldSheet sheet = welds.of(operationId);
        String code = at.line().code();
        NewProcedure content = at.procedure().content();
        boolean begun = sheet.nodes().stream().anyMatch(node -> node.opened() != null);
        model.addAttribute("at", at);
        model.addAttribute("w", sheet);
        model.addAttribute("lines", words.of(at.procedure()));
        model.addAttribute("purges", records.purges(operationId));
        model.addAttribute("fillers", lots.inUse(at.head(), at.line(), LotKind.FILLER));
        model.addAttribute("gases", lots.inUse(at.head(), at.line(), LotKind.GAS));
        model.addAttribute("photographed", atHand.photographed(operationId));
        model.addAttribute(
                "asksHeat", at.procedure().welds(code) && content.heat().mostInterpass_degC() != null && begun);
        model.addAttribute(
                "asksFillet", at.procedure().welds(code) && content.nodes().measuresFillets());
        model.addAttribute("samples", at.procedure().samples(code, sheet.nodes().size()));
        model.addAttribute(
                "sampled", sheet.nodes().stream().filter(NodeRecord::sampled).count());
        model.addAttribute("seen", looks.of(operationId));
        model.addAttribute("imperfections", imperfections());
        model.addAttribute("wall", welders.walls(at.head()).stream().findFirst().orElse(null));
        model.addAttribute("decides", who.person().is(Role.QA_LEAD));
        model.addAttribute("colours", BeadColour.values());
        model.addAttribute("lastGauge", lastGauge(sheet.nodes()));
        model.addAttribute("heatGauges", gauges.usable(WeldGauges.HEAT, "°C"));
        model.addAttribute("oxygenGauges", gauges.usable(WeldGauges.OXYGEN, "ppm"));
        model.addAttribute("radiusGauges", gauges.usable(WeldGauges.RADIUS, "mm"));
        model.addAttribute("names", crew.names());
        model.addAttribute(
                "works",
                who.person().mayWork()
                        && at.head().state().open()
                        && at.head().currentOperationId() != null
                        && at.head().currentOperationId() == operationId);
        return "welding/sheet";
    }

    private static Map<String, String> imperfections() {
        Map<String, String> imperfections = new LinkedHashMap<>();
        imperfections.put("", "choose what you see");
        for (Imperfection one : Imperfection.values()) {
            imperfections.put(one.name(), one.word() + (one.never() ? "" : ", " + one.unit()));
        }
        return imperfections;
    }

    private static @Nullable String lastGauge(List<NodeRecord> nodes) {
        return nodes.stream()
                .map(NodeRecord::opened)
                .filter(opened -> opened != null && opened.gauge() != null)
                .max(java.util.Comparator.comparing(NodeRecord.Opened::id))
                .map(NodeRecord.Opened::gauge)
                .orElse(null);
    }

    @PostMapping("/purge")
    String purge(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        String deed = "The purge was not recorded.";
        purges.read(
                act,
                operationId,
                new Purges.Reading(
                        figure(fields, "oxygen", deed),
                        text(fields, "gauge"),
                        figure(fields, "room", deed),
                        figure(fields, "flow", deed)));
        return sheet(operationId);
    }

    @PostMapping("/nodes/{stepId}/open")
    String open(
            Act act,
            @PathVariable long operationId,
            @PathVariable long stepId,
            @RequestParam Map<String, String> fields) {
        welds.open(
                act,
                operationId,
                stepId,
                new Welds.Begin(figure(fields, "interpass", NOT_OPENED), fields.get("gauge"), fields.get("reason")));
        return sheet(operationId);
    }

    @PostMapping("/nodes/{stepId}/close")
    String close(
            Act act,
            @PathVariable long operationId,
            @PathVariable long stepId,
            @RequestParam Map<String, String> fields) {
        welds.close(act, operationId, stepId, end(fields, NOT_CLOSED));
        return sheet(operationId);
    }

    @PostMapping("/nodes/{stepId}/corrections")
    String correct(
            Act act,
            @PathVariable long operationId,
            @PathVariable long stepId,
            @RequestParam Map<String, String> fields) {
        putRight.correct(act, operationId, stepId, end(fields, "The node was not corrected."), fields.get("reason"));
        return sheet(operationId);
    }

    @PostMapping("/nodes/{stepId}/kept")
    String keep(Act act, @PathVariable long operationId, @PathVariable long stepId) {
        putRight.keep(act, operationId, stepId);
        return sheet(operationId);
    }

    private static Welds.End end(Map<String, String> fields, String deed) {
        return new Welds.End(
                figure(fields, "ampsLeast", deed),
                figure(fields, "ampsMost", deed),
                figure(fields, "volts", deed),
                figure(fields, "amps", deed),
                figure(fields, "length", deed),
                figure(fields, "seconds", deed),
                text(fields, "colour").isEmpty()
                        ? null
                        : Keyed.one(BeadColour.class, "colour", deed, text(fields, "colour")),
                figure(fields, "fillet", deed),
                fields.get("gauge"));
    }

    @PostMapping("/nodes/{stepId}/repairs")
    String repair(
            Act act,
            @PathVariable long operationId,
            @PathVariable long stepId,
            @RequestParam(defaultValue = "") String reason) {
        welds.repair(act, operationId, stepId, reason);
        return sheet(operationId);
    }

    @PostMapping("/nodes/{stepId}/photo")
    String photo(Act act, @PathVariable long operationId, @PathVariable long stepId, @RequestParam MultipartFile file)
            throws IOException {
        if (file.isEmpty()) {
            throw Refusal.input(
                    "file", "No photograph was kept.", "None was taken or chosen.", "Take one, then send it.");
        }
        String type = file.getContentType();
        String name = file.getOriginalFilename();
        remarks.photo(
                act,
                stepId,
                new Remarks.Sent(
                        file.getBytes(), type == null ? "" : type, name == null || name.isBlank() ? "node" : name));
        return sheet(operationId);
    }

    @PostMapping("/looks")
    String look(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        String deed = "The look was not recorded.";
        boolean nothing = "true".equals(fields.get("nothing"));
        looks.see(
                act,
                operationId,
                text(fields, "node"),
                nothing
                        ? WeldLooks.Sighting.nothing()
                        : new WeldLooks.Sighting(
                                Keyed.one(Imperfection.class, "imperfection", deed, text(fields, "imperfection")),
                                figure(fields, "size", deed),
                                "true".equals(fields.get("short")),
                                figure(fields, "wall", deed),
                                figure(fields, "width", deed),
                                figure(fields, "throat", deed)));
        return sheet(operationId);
    }

    @PostMapping("/looks/refer")
    String refer(Act act, @PathVariable long operationId, @RequestParam(defaultValue = "") String node) {
        looks.refer(act, operationId, node);
        return sheet(operationId);
    }

    private static @Nullable BigDecimal figure(Map<String, String> fields, String field, String deed) {
        return Keyed.figureOrNone(field, deed, fields.get(field));
    }

    private static String text(Map<String, String> fields, String field) {
        return fields.getOrDefault(field, "").strip();
    }

    private static String sheet(long operationId) {
        return "redirect:/welds/" + operationId;
    }
}
