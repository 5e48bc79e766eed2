package org.trammel.shop.welding;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * Guards the operations that a procedure in force names: no node is ticked that was not opened and closed on the sheet of the
 * weld, by somebody qualified for it, and no gate is passed before each node is welded and stays as it is.
 */
@Component
class WeldGuard implements Awaited {

    private final Procedures procedures;
    private final NodeRecords records;
    private final SeenNodes seen;
    private final Welders welders;
    private final Travellers travellers;

    WeldGuard(Procedures procedures, NodeRecords records, SeenNodes seen, Welders welders, Travellers travellers) {
        this.procedures = procedures;
        this.records = records;
        this.seen = seen;
        this.welders = welders;
        this.travellers = travellers;
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        return guarding(operation).flatMap(procedure -> gate(operation, procedure));
    }

    private Optional<Refusal> gate(AtItsGate operation, Procedure procedure) {
        if (!procedure.content().operations().joins(operation.code())) {
            return look(operation, procedure);
        }
        List<NodeRecord> nodes =
                records.of(travellers.head(operation.travellerId()), travellers.operation(operation.operationId()));
        if (nodes.isEmpty()) {
            return Optional.of(noNode(operation.cannot(), procedure, operation.code()));
        }
        Optional<Refusal> open = nodes.stream()
                .filter(node -> node.state() != NodeRecord.State.DONE)
                .findFirst()
                .map(node -> wanting(node, operation.cannot()));
        return open.isPresent() ? open : sampled(operation, procedure, nodes);
    }

    private Optional<Refusal> look(AtItsGate operation, Procedure procedure) {
        List<SeenNode> nodes = seen.of(travellers.head(operation.travellerId()), operation.operationId(), procedure);
        if (nodes.isEmpty()) {
            return Optional.of(noNode(
                    operation.cannot(),
                    procedure,
                    String.join(", ", procedure.content().operations().weld())));
        }
        String wanting = WeldLooks.wanting(nodes);
        return wanting.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Refusal.state(
                                operation.cannot(),
                                wanting + ".",
                                "Look at each node on the sheet of the weld; what does not conform is decided by the QA lead."));
    }

    /** A gate that looks at no node would be passed by whatever was welded. */
    private static Refusal noNode(String cannot, Procedure procedure, String codes) {
        return Refusal.state(
                cannot,
                "Procedure " + procedure.called() + " guards it by the nodes of " + codes
                        + ", and the route of this frame has no step there that cannot be undone.",
                "Call the QA lead: the nodes are marked on the route, or the operation is named by no procedure.");
    }

    private static Optional<Refusal> sampled(AtItsGate operation, Procedure procedure, List<NodeRecord> nodes) {
        int wanted = procedure.samples(operation.code(), nodes.size());
        long sampled = nodes.stream().filter(NodeRecord::sampled).count();
        return sampled >= wanted
                ? Optional.empty()
                : Optional.of(
                        Refusal.state(
                                operation.cannot(),
                                "Heat input was entered for " + sampled + " of its nodes; procedure "
                                        + procedure.called() + " asks for " + wanted + ".",
                                "Say which node is welded again, and why, and sample it; the QA lead may put a revision in force."));
    }

    private static Refusal wanting(NodeRecord node, String cannot) {
        return switch (node.state()) {
            case HELD ->
                Refusal.state(
                        cannot,
                        node.node() + " does not conform, and nobody decided that it stays.",
                        "Its nonconformance decides what becomes of it.");
            case OPEN -> Refusal.state(cannot, node.node() + " is open.", "Close it on the sheet of the weld.");
            case TO_REPAIR ->
                Refusal.state(
                        cannot,
                        node.node() + " is to be welded again: "
                                + node.repairs().get(node.repairs().size() - 1).reason(),
                        "Open it on the sheet of the weld, weld it, close it.");
            default ->
                Refusal.state(
                        cannot,
                        node.node() + " is not recorded.",
                        "Open it on the sheet of the weld before the arc, and close it there; that ticks it.");
        };
    }

    @Override
    public Optional<Refusal> before(AtItsGate operation, NoWayBack step) {
        Procedure procedure = guarding(operation)
                .filter(one -> one.content().operations().joins(operation.code()))
                .orElse(null);
        if (procedure == null) {
            return Optional.empty();
        }
        FrameSheet.Head head = travellers.head(operation.travellerId());
        FrameSheet.OperationSheetOfFrame sheet = travellers.operation(operation.operationId());
        String cannot = operation.notTicked(step.text());
        Optional<Refusal> open = records.of(head, sheet).stream()
                .filter(node -> node.stepId() == step.stepId() && node.state() != NodeRecord.State.DONE)
                .findFirst()
                .map(node -> wanting(node, cannot));
        if (open.isEmpty()) {
            welders.requireCovered(procedure, head, sheet, step.by(), cannot);
        }
        return open;
    }

    /** A step of the route that rests on a weld asks for a procedure, also of work begun before one was in force. */
    @Override
    public Optional<Refusal> proof(AtItsGate operation, ProvenStep step) {
        if (step.proof().sheet() != Proof.Sheet.WELD || operation.doneOutside()) {
            return Optional.empty();
        }
        boolean joins = step.proof() == Proof.WELDED;
        FrameSheet.Head head = travellers.head(operation.travellerId());
        String cannot = operation.notTicked(step.text());
        Procedure procedure = procedures
                .guarding(head, operation.code(), null)
                .filter(one -> joins ? one.content().operations().joins(operation.code()) : one.looks(operation.code()))
                .orElse(null);
        if (procedure == null) {
            return Optional.of(Refusal.state(
                    cannot,
                    "It rests on a procedure, and none in force names operation " + operation.code()
                            + " for such a frame.",
                    "The QA lead puts one in force, as the tests of it say; then it is recorded by it."));
        }
        return joins ? welded(operation, step, head, cannot) : looked(operation, procedure, head, cannot);
    }

    private Optional<Refusal> welded(AtItsGate operation, ProvenStep step, FrameSheet.Head head, String cannot) {
        return records.of(head, travellers.operation(operation.operationId())).stream()
                .filter(node -> node.node().equals(step.text()) && node.state() != NodeRecord.State.DONE)
                .findFirst()
                .map(node -> wanting(node, cannot));
    }

    private Optional<Refusal> looked(AtItsGate operation, Procedure procedure, FrameSheet.Head head, String cannot) {
        List<SeenNode> nodes = seen.of(head, operation.operationId(), procedure);
        String wanting = nodes.isEmpty()
                ? "Procedure " + procedure.called() + " names no operation of this frame in which it was welded"
                : WeldLooks.wanting(nodes);
        return wanting.isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.state(cannot, wanting + ".", "Look at each node on the sheet of the weld."));
    }

    private Optional<Procedure> guarding(AtItsGate operation) {
        return operation.doneOutside()
                ? Optional.empty()
                : procedures.guarding(
                        operation.metal(),
                        operation.code(),
                        operation.begunAt(),
                        one -> procedures
                                .joined(travellers.head(operation.travellerId()).kind())
                                .test(one));
    }
}
