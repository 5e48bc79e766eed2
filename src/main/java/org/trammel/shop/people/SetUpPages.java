package org.trammel.shop.people;

import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ResponseBody;
import org.trammel.shop.settings.SetUpPart;

/** What a new shop still has to enter before the first frame can be released. */
@Controller
class SetUpPages {

    private final List<SetUpPart> parts;

    SetUpPages(List<SetUpPart> parts) {
        this.parts = parts;
    }

    @GetMapping("/set-up")
    String show(Model model) {
        List<SetUpPart.State> states = states();
        model.addAttribute("parts", states);
        model.addAttribute(
                "left", states.stream().filter(state -> !state.enough()).count());
        return "people/set-up";
    }

    @GetMapping("/api/v1/set-up")
    @ResponseBody
    List<SetUpPart.State> states() {
        return parts.stream()
                .sorted(Comparator.comparingInt(SetUpPart::place))
                .map(SetUpPart::state)
                .toList();
    }
}
