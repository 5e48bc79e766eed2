package org.trammel.shop.materials;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Travellers;

/**
 * Holds every frame in the shop that a lot went into which is bad or another than it was, its parts with it. Who welded or brazed the frame does not
 * lift it.
 */
@Component
class TraceHolds {

    private final Travellers travellers;
    private final Evidence evidence;
    private final Holds holds;

    TraceHolds(Travellers travellers, Evidence evidence, Holds holds) {
        this.travellers = travellers;
        this.evidence = evidence;
        this.holds = holds;
    }

    void place(Act act, String lot, List<WentInto> places, String words) {
        Set<String> serials =
                places.stream().map(WentInto::serial).collect(Collectors.toCollection(LinkedHashSet::new));
        for (String serial : serials) {
            List<FrameSheet.Head> heads = travellers.heads(serial);
            Set<Long> tookPart = joiners(heads);
            places.stream()
                    .filter(place -> place.serial().equals(serial))
                    .map(WentInto::by)
                    .forEach(tookPart::add);
            frameOf(heads)
                    .forEach(head -> holds.placeWithin(
                            act,
                            new Holds.Request(
                                    head.travellerId(),
                                    HoldScope.FRAME,
                                    null,
                                    HoldReason.LOT_TRACE,
                                    words,
                                    lot,
                                    tookPart)));
        }
    }

    /** Who joined the frame; neither they nor whoever put the lot in lift the hold. */
    private Set<Long> joiners(List<FrameSheet.Head> heads) {
        Set<Long> people = new HashSet<>();
        for (FrameSheet.Head head : heads) {
            people.addAll(evidence.tookPartWhere(head.travellerId(), "WELD"));
            people.addAll(evidence.tookPartWhere(head.travellerId(), "BRAZE"));
        }
        return people;
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
