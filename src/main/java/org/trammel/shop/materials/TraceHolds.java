package org.trammel.shop.materials;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Travellers;

/** Holds every frame in the shop that a blocked lot went into, its parts with it. */
@Component
class TraceHolds {

    private final Travellers travellers;
    private final Holds holds;

    TraceHolds(Travellers travellers, Holds holds) {
        this.travellers = travellers;
        this.holds = holds;
    }

    void place(Act act, String lot, List<WentInto> places, String reason) {
        Set<String> serials =
                places.stream().map(WentInto::serial).collect(Collectors.toCollection(LinkedHashSet::new));
        for (String serial : serials) {
            frameOf(travellers.heads(serial))
                    .forEach(head -> holds.placeWithin(
                            act,
                            new Holds.Request(
                                    head.travellerId(),
                                    HoldScope.FRAME,
                                    null,
                                    HoldReason.LOT_TRACE,
                                    "Lot " + lot + " was blocked: " + reason,
                                    lot,
                                    Set.of())));
        }
    }

    /** The whole frame where it is open, else whatever part of it is. A frame that left the shop is for a recall. */
    private static List<FrameSheet.Head> frameOf(List<FrameSheet.Head> heads) {
        List<FrameSheet.Head> open =
                heads.stream().filter(head -> head.state().open()).toList();
        List<FrameSheet.Head> whole =
                open.stream().filter(head -> head.part().isEmpty()).toList();
        return whole.isEmpty() ? open : whole;
    }
}
