package org.trammel.shop.routes;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;

/** Gives a shop without routes the starter routes, as drafts for its QA lead to look at and release. */
@Service
@Transactional
public class FirstRoutes {

    private final RouteRepository routes;
    private final RevisionRepository revisions;
    private final ActLog log;
    private final Clock clock;

    FirstRoutes(RouteRepository routes, RevisionRepository revisions, ActLog log, Clock clock) {
        this.routes = routes;
        this.revisions = revisions;
        this.log = log;
        this.clock = clock;
    }

    /**
     * Lays them out if there is no route at all.
     *
     * @return how many were laid out
     */
    public int layOut() {
        if (routes.count() > 0) {
            return 0;
        }
        Act act = new Act(UUID.randomUUID(), Act.SERVICE, null, clock.instant().truncatedTo(ChronoUnit.MICROS), null);
        log.opens(act, "lay-out-starter-routes", "routes", Chains.SHOP);
        if (routes.count() > 0) {
            // Another instance was faster while this one waited for the chain.
            return 0;
        }
        List<RouteFile> files = StarterRoutes.all();
        Map<String, RouteRow> rows = new HashMap<>();
        for (RouteFile file : files) {
            RouteSheet sheet = file.sheet();
            RouteRow route = routes.save(new RouteRow(sheet.code(), sheet.name(), sheet.metal(), sheet.kind()));
            rows.put(sheet.code(), route);
            RouteRevision draft =
                    new RouteRevision(route, 1, "starter route, to be owned by the QA lead", Act.SERVICE, act.at());
            draft.redraw(
                    sheet,
                    file.children().stream()
                            .map(child -> new Part(child.part(), child.name(), rows.get(child.route())))
                            .toList());
            revisions.save(draft);
        }
        log.event(
                Chains.SHOP,
                "starter-routes-laid-out",
                Map.of("routes", files.stream().map(file -> file.sheet().code()).toList()));
        return files.size();
    }
}
