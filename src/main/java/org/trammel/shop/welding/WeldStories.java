package org.trammel.shop.welding;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tells what was recorded of the welds of a frame, each thing in a sentence; a fixed number of statements. */
@Service
public class WeldStories {

    private final NodeOpenedRepository opened;
    private final NodeDoneRepository done;
    private final NodeKeptRepository kept;
    private final RepairRepository repairs;
    private final PurgeRepository purges;
    private final WeldLookRepository looks;
    private final ProcedureWords words;

    WeldStories(
            NodeOpenedRepository opened,
            NodeDoneRepository done,
            NodeKeptRepository kept,
            RepairRepository repairs,
            PurgeRepository purges,
            WeldLookRepository looks,
            ProcedureWords words) {
        this.opened = opened;
        this.done = done;
        this.kept = kept;
        this.repairs = repairs;
        this.purges = purges;
        this.looks = looks;
        this.words = words;
    }

    /**
     * One thing recorded.
     *
     * @param kind of the mark beside it
     * @param reason what was said for it; null where nothing was
     */
    public record Line(
            long operationId,
            Instant at,
            long by,
            String kind,
            String what,
            @Nullable String reason) {}

    /**
     * The nodes of an operation in short.
     *
     * @param closed how many were closed
     * @param again how many times one was welded again
     * @param by who closed them, the first first
     */
    public record Nodes(
            int closed, int again, List<Long> by, @Nullable Instant last) {}

    /** The nodes of an operation in short; none closed where it welds none. */
    @Transactional(readOnly = true)
    public Nodes nodes(long operationId) {
        List<NodeDoneRow> rows = done.findByOperationIdInOrderById(List.of(operationId));
        return new Nodes(
                (int) rows.stream().map(NodeDoneRow::stepId).distinct().count(),
                repairs.findByOperationIdInOrderById(List.of(operationId)).size(),
                rows.stream().map(row -> row.done().by()).distinct().toList(),
                rows.isEmpty() ? null : rows.get(rows.size() - 1).done().at());
    }

    /** What was recorded at these operations. */
    @Transactional(readOnly = true)
    public List<Line> of(Collection<Long> operationIds) {
        List<Line> lines = new ArrayList<>();
        if (operationIds.isEmpty()) {
            return lines;
        }
        purges.findByOperationIdInOrderById(operationIds)
                .forEach(row -> lines.add(purge(row.operationId(), row.purge())));
        opened.findByOperationIdInOrderById(operationIds)
                .forEach(row -> lines.add(opened(row.operationId(), row.node(), row.opened())));
        done.findByOperationIdInOrderById(operationIds)
                .forEach(row -> lines.add(done(row.operationId(), row.node(), row.done())));
        kept.findByOperationIdInOrderById(operationIds)
                .forEach(row -> lines.add(kept(row.operationId(), row.node(), row.kept())));
        repairs.findByOperationIdInOrderById(operationIds)
                .forEach(row -> lines.add(repair(row.operationId(), row.node(), row.repair())));
        looks.findByOperationIdInOrderById(operationIds)
                .forEach(row -> lines.add(look(row.operationId(), row.node(), row.look())));
        return lines;
    }

    private Line purge(long operation, PurgeRecord one) {
        return new Line(
                operation,
                one.at(),
                one.by(),
                one.enough() ? "conforming" : "not-conforming",
                "oxygen inside " + words.bare(one.oxygen_ppm()) + " ppm with " + one.gauge() + ", at most "
                        + words.bare(one.most_ppm()) + " ppm" + (one.enough() ? "" : ": no arc"),
                null);
    }

    private Line opened(long operation, String node, NodeRecord.Opened one) {
        return new Line(
                operation,
                one.at(),
                one.by(),
                "",
                "arc on " + node + (one.fillers().isEmpty() ? "" : ", filler " + one.fillers())
                        + (one.gases().isEmpty() ? "" : ", gas " + one.gases())
                        + (one.interpass_degC() == null
                                ? ""
                                : ", " + words.bare(one.interpass_degC()) + " °C before it")
                        + (one.reason() == null ? "" : ", out of its order"),
                one.reason());
    }

    private static Line done(long operation, String node, NodeRecord.Done one) {
        return new Line(
                operation,
                one.at(),
                one.by(),
                one.nonconformance() == null ? "done" : "not-conforming",
                (one.correction() == null ? "welded: " : "entered again: ")
                        + node
                        + (one.words().isEmpty() ? "" : ". " + String.join(" ", one.words()))
                        + (one.nonconformance() == null ? "" : " " + one.nonconformance()),
                one.correction());
    }

    private static Line kept(long operation, String node, NodeRecord.Kept one) {
        return new Line(operation, one.at(), one.by(), "done", "stays as it was welded: " + node, null);
    }

    private static Line repair(long operation, String node, NodeRecord.Repair one) {
        return new Line(
                operation,
                one.at(),
                one.by(),
                "repair",
                "to be welded again: " + node + ", repair " + one.number()
                        + (one.nonconformance() == null ? "" : ", " + one.nonconformance()),
                one.reason());
    }

    private static Line look(long operation, String node, SeenNode.Look one) {
        return new Line(
                operation,
                one.at(),
                one.by(),
                one.verdict().mark(),
                "looked at " + node + ", level " + one.level() + ": " + one.words()
                        + (one.nonconformance() == null ? "" : " " + one.nonconformance()),
                null);
    }
}
