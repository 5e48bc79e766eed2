package org.trammel.shop.demo;

import java.util.Comparator;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.routes.FirstRoutes;
import org.trammel.shop.routes.RevisionState;
import org.trammel.shop.routes.RevisionSummary;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteDrafts;
import org.trammel.shop.routes.RouteSummary;

/** Releases the shipped routes, as the QA lead of the invented workshop. */
@Component
@Profile("demo")
class DemoRoutes {

    private final FirstRoutes first;
    private final RouteDrafts drafts;
    private final RouteBook book;
    private final DemoActs acts;

    DemoRoutes(FirstRoutes first, RouteDrafts drafts, RouteBook book, DemoActs acts) {
        this.first = first;
        this.drafts = drafts;
        this.book = book;
        this.acts = acts;
    }

    /** Routes of parts come before the routes that join them. */
    void release() {
        first.layOut();
        book.routes().stream()
                .sorted(Comparator.comparing((RouteSummary r) -> r.kind().equals("FULL_SUSPENSION"))
                        .thenComparing(RouteSummary::code))
                .forEach(r -> {
                    RevisionSummary draft = book.history(r.code()).stream()
                            .filter(h -> h.state() == RevisionState.DRAFT)
                            .findFirst()
                            .orElseThrow();
                    drafts.release(acts.by("TR"), r.code(), draft.version(), "first release, invented workshop");
                });
    }
}
