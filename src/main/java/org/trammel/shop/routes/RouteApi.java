package org.trammel.shop.routes;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

/** Routes for programs: the same verbs and checks as the sheets. */
@RestController
@RequestMapping("/api/v1/routes")
@Tag(name = "Routes", description = "Operations, steps, characteristics and clocks, as revisions the QA lead releases.")
class RouteApi {

    private final RouteBook book;
    private final RouteDrafts drafts;

    RouteApi(RouteBook book, RouteDrafts drafts) {
        this.book = book;
        this.drafts = drafts;
    }

    record Revisions(RouteSummary route, List<RevisionSummary> revisions) {}

    record Change(long version, Edit change) {}

    record Release(long version, String reason) {}

    record Reason(String reason) {}

    @GetMapping
    @Operation(summary = "All routes, by code.")
    List<RouteSummary> routes() {
        return book.routes();
    }

    @GetMapping("/{code}")
    @Operation(summary = "One route and its revisions, newest first.")
    Revisions route(@PathVariable String code) {
        return new Revisions(book.route(code), book.history(code));
    }

    @GetMapping("/{code}/released")
    @Operation(
            summary = "The revision in force, complete. Clocks in minutes; limits in the unit of each characteristic.")
    RouteSheet released(@PathVariable String code) {
        return book.released(code);
    }

    @GetMapping("/{code}/revisions/{letter}")
    @Operation(summary = "One revision, complete.")
    RouteSheet revision(@PathVariable String code, @PathVariable String letter) {
        return book.byLetter(code, letter);
    }

    @PostMapping
    @Operation(summary = "Lays out a new route with a draft, empty or a copy. By the QA lead.")
    RevisionSummary layOut(Act act, @RequestBody NewRoute route) {
        return drafts.layOut(act, route);
    }

    @PostMapping("/{code}/draft")
    @Operation(summary = "Draws up the next revision as a draft. By the QA lead.")
    RevisionSummary drawUp(Act act, @PathVariable String code) {
        return drafts.drawUp(act, code);
    }

    @GetMapping("/{code}/draft")
    @Operation(summary = "The draft; its version is named by the next change.")
    RevisionSummary draft(@PathVariable String code) {
        return drafts.draft(code);
    }

    @PostMapping("/{code}/draft/changes")
    @Operation(summary = "Changes the draft at the version it was seen in. By the QA lead.")
    RevisionSummary edit(Act act, @PathVariable String code, @RequestBody Change change) {
        return drafts.edit(act, code, change.version(), change.change());
    }

    @GetMapping("/{code}/draft/changes")
    @Operation(summary = "What the draft changes against the revision in force.")
    List<Changed> changes(@PathVariable String code) {
        return drafts.changes(code);
    }

    @GetMapping("/{code}/draft/findings")
    @Operation(summary = "What keeps the draft from being released; empty if nothing does.")
    List<Finding> findings(@PathVariable String code) {
        return drafts.findings(code);
    }

    @PostMapping("/{code}/draft/release")
    @Operation(summary = "Releases the draft at the version it was seen in, with a reason. By the QA lead.")
    RevisionSummary release(Act act, @PathVariable String code, @RequestBody Release release) {
        return drafts.release(act, code, release.version(), release.reason());
    }

    @PostMapping("/{code}/draft/withdrawal")
    @Operation(summary = "Gives the draft up, with a reason. By the QA lead.")
    RevisionSummary withdraw(Act act, @PathVariable String code, @RequestBody Reason reason) {
        return drafts.withdraw(act, code, reason.reason());
    }
}
