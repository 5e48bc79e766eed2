package org.trammel.shop.welding;

import java.util.List;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.ProofAsked;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.settings.SetUpPart;

@Component
class ProceduresSetUp implements SetUpPart {

    private final Procedures procedures;
    private final RouteBook routes;

    ProceduresSetUp(Procedures procedures, RouteBook routes) {
        this.procedures = procedures;
        this.routes = routes;
    }

    @Override
    public int place() {
        return 72;
    }

    @Override
    public State state() {
        List<ProofAsked> asked = routes.rests(Proof.Sheet.WELD);
        String open = asked.stream()
                .filter(one -> procedures
                        .guarding(one.metal(), one.operation(), null, procedures.joined(one.kind()))
                        .isEmpty())
                .map(one -> one.operation() + " of " + one.metal())
                .distinct()
                .collect(Collectors.joining(", "));
        return new State(
                "Welding procedures",
                procedures.current().stream().filter(Procedure::inForce).count(),
                open.isEmpty(),
                open.isEmpty()
                        ? "Each operation whose route rests on a procedure has one."
                        : "Write those that released routes rest on, as their tests say, and let the QA lead put them in"
                                + " force: " + open + ".",
                "/shop/weld-procedures");
    }
}
