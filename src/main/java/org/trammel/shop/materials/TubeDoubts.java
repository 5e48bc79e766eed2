package org.trammel.shop.materials;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** What becomes of tubes whose lot turns out to be another than the one they were issued from. */
@Component
class TubeDoubts {

    /** Words of a hold; a lot may hold many sections. */
    private static final int LONGEST = 900;

    private final TubeIssueRepository issues;
    private final TubeRecords records;
    private final LotUseRepository uses;
    private final Travellers travellers;
    private final TraceHolds traceHolds;

    TubeDoubts(
            TubeIssueRepository issues,
            TubeRecords records,
            LotUseRepository uses,
            Travellers travellers,
            TraceHolds traceHolds) {
        this.issues = issues;
        this.records = records;
        this.uses = uses;
        this.travellers = travellers;
        this.traceHolds = traceHolds;
    }

    /** Chains of the frames that tubes of a lot stand in. */
    String[] chains(long lotId) {
        return issues.ofLot(lotId).stream()
                .map(tube -> Lots.chain(tube.serial()))
                .distinct()
                .toArray(String[]::new);
    }

    /** Which tubes of a lot are not what their place asks for, and why, by the id of the use. */
    Map<Long, String> of(long lotId) {
        Map<Long, String> doubts = new LinkedHashMap<>();
        List<TubeIssueRepository.Standing> standing = issues.ofLot(lotId);
        Set<Long> own =
                standing.stream().map(TubeIssueRepository.Standing::useId).collect(Collectors.toSet());
        standing.stream()
                .map(tube -> travellers.inForce(tube.serial(), tube.part()))
                .distinct()
                .filter(head -> head.state().open())
                .forEach(head -> doubts.putAll(records.doubts(head)));
        doubts.keySet().retainAll(own);
        return doubts;
    }

    /** Holds each frame in which a tube of the lot is doubted that was not before; inside the act that corrects the lot. */
    void hold(Act act, LotRow lot, Map<Long, String> before) {
        Map<Long, String> doubts = of(lot.id());
        doubts.keySet().removeAll(before.keySet());
        if (doubts.isEmpty()) {
            return;
        }
        uses.wentInto(lot.id()).stream()
                .filter(place -> doubts.containsKey(place.useId()))
                .collect(Collectors.groupingBy(WentInto::serial, LinkedHashMap::new, Collectors.toList()))
                .forEach((serial, places) -> traceHolds.place(
                        act,
                        lot.code(),
                        places,
                        cut("Lot " + lot.code() + " was corrected after it was issued. "
                                + places.stream()
                                        .map(place -> doubts.get(place.useId()))
                                        .collect(Collectors.joining(" ")))));
    }

    private static String cut(String words) {
        return words.length() <= LONGEST ? words : words.substring(0, LONGEST - 1) + "…";
    }

    /** Operations at hand of frames to whose places pieces of a lot were issued there. */
    List<Long> waitingFor(String code) {
        Set<Long> at = issues.operationsOf(code);
        return at.isEmpty()
                ? List.of()
                : travellers.inShop().stream()
                        .filter(head -> head.state().open())
                        .map(FrameSheet.Head::currentOperationId)
                        .filter(Objects::nonNull)
                        .filter(at::contains)
                        .toList();
    }
}
