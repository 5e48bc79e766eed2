package org.trammel.shop.assembly;

import java.util.List;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.ProofAsked;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.settings.SetUpPart;

@Component
class BuildRulesSetUp implements SetUpPart {

    private final BuildRulesBook book;
    private final RouteBook routes;

    BuildRulesSetUp(BuildRulesBook book, RouteBook routes) {
        this.book = book;
        this.routes = routes;
    }

    @Override
    public int place() {
        return 76;
    }

    @Override
    public State state() {
        BuildRules rules = book.inForce().orElse(null);
        List<ProofAsked> asked = routes.rests(Proof.Sheet.BUILD);
        String open = asked.stream()
                .filter(one -> rules == null || !rules.records(one.proof(), one.operation()))
                .map(ProofAsked::operation)
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
        return new State(
                "Rules of join, final check and packing",
                rules == null ? 0 : 1,
                open.isEmpty(),
                open.isEmpty()
                        ? "Each operation whose route rests on them is named."
                        : "Let the QA lead put rules in force that name operation " + open
                                + ": released routes rest on what is recorded there.",
                "/shop/build-rules");
    }
}
