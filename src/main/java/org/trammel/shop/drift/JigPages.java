package org.trammel.shop.drift;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.stations.Jig;
import org.trammel.shop.stations.Stations;

/** The sheet on which the welder notes the jig of a frame. */
@Controller
class JigPages {

    private final JigUses uses;
    private final Stations stations;

    JigPages(JigUses uses, Stations stations) {
        this.uses = uses;
        this.stations = stations;
    }

    @GetMapping("/frames/{serial}/jig")
    String sheet(@PathVariable String serial, SignedOn who, Model model) {
        List<JigUses.Piece> pieces = uses.pieces(serial);
        model.addAttribute("serial", serial);
        model.addAttribute("pieces", pieces);
        Map<String, String> parts = new LinkedHashMap<>();
        pieces.forEach(piece -> parts.put(piece.part(), piece.part().isEmpty() ? "the frame" : piece.part()));
        model.addAttribute("parts", parts);
        Map<String, String> jigs = new LinkedHashMap<>();
        stations.jigs().stream().filter(jig -> !jig.stopped()).map(Jig::code).forEach(code -> jigs.put(code, code));
        model.addAttribute("jigs", jigs);
        model.addAttribute("works", who.person().mayWork());
        model.addAttribute("keeps", who.person().is(Role.QA_LEAD));
        return "drift/jig";
    }

    @PostMapping("/frames/{serial}/jig")
    String setUp(
            Act act,
            @PathVariable String serial,
            @RequestParam(defaultValue = "") String part,
            @RequestParam(defaultValue = "") String jig,
            @RequestParam @Nullable String reason) {
        uses.setUp(act, serial, part, jig, reason);
        return "redirect:/frames/" + serial + "/jig";
    }
}
