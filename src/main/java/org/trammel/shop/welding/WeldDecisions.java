package org.trammel.shop.welding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.welding.Imperfection;
import org.trammel.shop.nonconformance.RecordedFaults;

/** What may not be decided of a weld: a crack and a bead that is cut out stay by nobody's word. */
@Component
@Transactional(readOnly = true)
class WeldDecisions implements RecordedFaults {

    private final NodeDoneRepository done;
    private final RepairRepository repairs;
    private final WeldLookRepository looks;

    WeldDecisions(NodeDoneRepository done, RepairRepository repairs, WeldLookRepository looks) {
        this.done = done;
        this.repairs = repairs;
        this.looks = looks;
    }

    @Override
    public Optional<String> neverStays(String serial, String number) {
        Optional<String> cutOut = done.findByNonconformance(number)
                .filter(row ->
                        row.done().colour() != null && row.done().colour().meaning() == BeadColour.Meaning.CUT_OUT)
                .map(row -> row.node() + " came out " + row.done().colour().word() + ", which is cut out.");
        return cutOut.isPresent()
                ? cutOut
                : looks.findByNonconformance(number)
                        .filter(row -> never(row.look().imperfection()))
                        .map(row -> row.node() + " has a "
                                + row.look().imperfection().word() + ", which conforms to no level.");
    }

    private static boolean never(@org.jspecify.annotations.Nullable Imperfection seen) {
        return seen != null && seen.never();
    }

    @Override
    public Optional<String> notCleared(String serial, String number) {
        Optional<NodeDoneRow> closed = done.findByNonconformance(number);
        if (closed.isPresent()) {
            NodeDoneRow row = closed.get();
            List<NodeDoneRow> since =
                    done.findByOpenedIdOrderByNumber(row.done().openedId());
            return since.get(since.size() - 1).done().nonconformance() == null
                    ? Optional.empty()
                    : Optional.of(row.node() + " does not conform by what was entered of it last.");
        }
        Optional<RepairRow> repair = repairs.findByNonconformance(number);
        if (repair.isPresent()) {
            return Optional.of(repair.get().node() + " is to be welded again: "
                    + repair.get().repair().reason() + ".");
        }
        return looks.findByNonconformance(number).flatMap(this::notSeenSince);
    }

    private Optional<String> notSeenSince(LookRow row) {
        List<LookRow> all = looks.findByOperationIdInOrderById(List.of(row.operationId())).stream()
                .filter(one -> one.node().equals(row.node()))
                .toList();
        List<SeenNode.Look> seen =
                new ArrayList<>(all.stream().map(LookRow::look).toList());
        int at = IntStream.range(0, all.size())
                .filter(i -> row.look().nonconformance().equals(seen.get(i).nonconformance()))
                .findFirst()
                .orElseThrow();
        return SeenNodes.conformingSince(seen, at)
                ? Optional.empty()
                : Optional.of("No newer look at " + row.node() + " says that it conforms.");
    }
}
