package org.trammel.shop.handwork;

import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
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

/** The sheet of handwork at a tablet. It never shows the serial, so that it is read from the metal. */
@Controller
@RequestMapping("/handwork/{operationId}")
class HandPages {

    private final Handwork handwork;
    private final SerialReads serials;
    private final HandTurn turn;
    private final DewGauges gauges;
    private final ProofSheets proofs;
    private final Crew crew;

    HandPages(Handwork handwork, SerialReads serials, HandTurn turn, DewGauges gauges, ProofSheets proofs, Crew crew) {
        this.proofs = proofs;
        this.handwork = handwork;
        this.serials = serials;
        this.turn = turn;
        this.gauges = gauges;
        this.crew = crew;
    }

    @GetMapping
    String sheet(@PathVariable long operationId, SignedOn who, Model model) {
        HandTurn.At at = turn.of(operationId);
        model.addAttribute("at", at);
        model.addAttribute("record", handwork.of(operationId));
        model.addAttribute("names", crew.names());
        model.addAttribute("parts", proofs.parts(at.head().designRevisionId()));
        model.addAttribute("airGauges", gauges.usableOnAir());
        model.addAttribute("metalGauges", gauges.usableOnMetal());
        model.addAttribute(
                "works",
                who.person().mayWork()
                        && at.head().state().open()
                        && at.head().currentOperationId() != null
                        && at.head().currentOperationId() == operationId);
        return "handwork/sheet";
    }

    @PostMapping("/tools")
    String tool(Act act, @PathVariable long operationId, @RequestParam(defaultValue = "") String tool) {
        handwork.touched(act, operationId, tool);
        return sheet(operationId);
    }

    @PostMapping("/air")
    String air(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        handwork.measured(act, operationId, MetalAir.of(fields, "Air and metal were not recorded."));
        return sheet(operationId);
    }

    @PostMapping("/water")
    String water(Act act, @PathVariable long operationId, @RequestParam MultiValueMap<String, String> fields) {
        Handwork.WaterSeen seen = WaterForm.seen(fields);
        handwork.water(act, operationId, seen == null ? new Handwork.WaterSeen(null, List.of()) : seen);
        return sheet(operationId);
    }

    @PostMapping("/serial")
    String serial(Act act, @PathVariable long operationId, @RequestParam(defaultValue = "") String serial) {
        serials.readBack(act, operationId, serial);
        return sheet(operationId);
    }

    private static String sheet(long operationId) {
        return "redirect:/handwork/" + operationId;
    }
}
