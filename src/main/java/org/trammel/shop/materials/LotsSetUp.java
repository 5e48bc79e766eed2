package org.trammel.shop.materials;

import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.SetUpPart;

/** A frame is built from released lots only. */
@Component
class LotsSetUp implements SetUpPart {

    private final Lots lots;

    LotsSetUp(Lots lots) {
        this.lots = lots;
    }

    @Override
    public int place() {
        return 65;
    }

    @Override
    public State state() {
        List<Lot> newest = lots.page(null, null, null, 100);
        boolean released = newest.stream().anyMatch(lot -> lot.state() == LotState.RELEASED);
        return new State(
                "Lots",
                newest.size(),
                released,
                released
                        ? "Receive every delivery with its certificate."
                        : "Receive tubes and filler with their certificates and release them.",
                "/shop/lots");
    }
}
