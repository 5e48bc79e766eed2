package org.trammel.shop.handwork;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.web.Keyed;

/** The register of tools that touch metal. */
@Controller
@RequestMapping("/shop/tools")
class ToolPages {

    private static final String DEED = "The tool was not registered.";

    private final Tools tools;

    ToolPages(Tools tools) {
        this.tools = tools;
    }

    @GetMapping
    String list(SignedOn who, Model model) {
        model.addAttribute("tools", tools.all());
        model.addAttribute(
                "keeps", who.person().is(Role.QA_LEAD) || who.person().is(Role.OWNER));
        Map<String, String> kinds = new LinkedHashMap<>();
        for (ToolKind kind : ToolKind.values()) {
            kinds.put(kind.name(), kind.word());
        }
        model.addAttribute("kinds", kinds);
        Map<String, String> families = new LinkedHashMap<>();
        for (MetalFamily family : MetalFamily.values()) {
            families.put(family.name(), family.word());
        }
        model.addAttribute("families", families);
        return "handwork/tools";
    }

    @PostMapping
    String register(Act act, @RequestParam Map<String, String> fields) {
        tools.register(
                act,
                fields.get("code"),
                Keyed.one(ToolKind.class, "kind", DEED, fields.get("kind")),
                fields.get("what"),
                Keyed.one(MetalFamily.class, "family", DEED, fields.get("family")),
                "true".equals(fields.get("chlorinated")));
        return "redirect:/shop/tools";
    }

    @PostMapping("/{code}/retire")
    String retire(Act act, @PathVariable String code) {
        tools.retire(act, code);
        return "redirect:/shop/tools";
    }
}
