package org.trammel.shop.ovens;

import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.SetUpPart;

/** Nothing is loaded before an oven is surveyed and its thermocouples are tested. */
@Component
class OvensSetUp implements SetUpPart {

    private final Ovens ovens;

    OvensSetUp(Ovens ovens) {
        this.ovens = ovens;
    }

    @Override
    public int place() {
        return 62;
    }

    @Override
    public State state() {
        List<Oven> here = ovens.all().stream()
                .filter(oven -> oven.state() != OvenState.RETIRED)
                .toList();
        boolean open = here.stream().anyMatch(Oven::open);
        return new State(
                "Ovens",
                here.size(),
                open,
                open
                        ? "Register every oven that heats or cures a frame."
                        : "Register the ovens, record their surveys and test their thermocouples; until then only heat"
                                + " treatment and cure outside the shop can be done.",
                "/shop/ovens");
    }
}
