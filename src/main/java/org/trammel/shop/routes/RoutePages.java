package org.trammel.shop.routes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.web.Formats;

/** The sheets of routes: all of them, and one with its revisions and the operation looked at. */
@Controller
class RoutePages {

    private final RouteBook book;
    private final RouteDrafts drafts;
    private final Keepers keepers;
    private final Stations stations;
    private final Crew crew;
    private final Formats formats;

    RoutePages(RouteBook book, RouteDrafts drafts, Keepers keepers, Stations stations, Crew crew, Formats formats) {
        this.book = book;
        this.drafts = drafts;
        this.keepers = keepers;
        this.stations = stations;
        this.crew = crew;
        this.formats = formats;
    }

    @GetMapping("/routes")
    String list(SignedOn who, Model model) {
        List<RouteSummary> routes = book.routes();
        model.addAttribute("routes", routes);
        model.addAttribute("keeper", keepers.allows(who.person().id()));
        model.addAttribute(
                "released",
                routes.stream().filter(r -> r.releasedRevisionId() != null).count());
        Map<String, String> copies = new LinkedHashMap<>();
        copies.put("", "none, begin empty");
        routes.forEach(route -> copies.put(route.code(), route.code() + ", " + route.name()));
        model.addAttribute("copies", copies);
        return "routes/list";
    }

    @PostMapping("/routes")
    String layOut(Act act, NewRoute route) {
        drafts.layOut(act, route);
        return "redirect:/routes/" + route.checkedCode();
    }

    /**
     * One route.
     *
     * @param revision letter of the revision shown; without it the draft, else the one in force
     * @param op code of the operation looked at
     * @param edit which form is open, such as step or new-clock
     * @param item number of the step, code of the characteristic or clock that form is about
     */
    @GetMapping("/routes/{code}")
    String one(
            @PathVariable String code,
            @RequestParam @Nullable String revision,
            @RequestParam @Nullable String op,
            @RequestParam @Nullable String edit,
            @RequestParam @Nullable String item,
            SignedOn who,
            Model model) {
        RouteSummary route = book.route(code);
        List<RevisionSummary> history = book.history(code);
        RevisionSummary shown = shown(route.code(), history, revision);
        RouteSheet sheet = book.revision(shown.id());
        boolean keeper = keepers.allows(who.person().id());
        boolean draft = shown.state() == RevisionState.DRAFT;
        boolean editing = keeper && draft;
        OperationSheet operation = sheet.operations().stream()
                .filter(o -> o.code().equals(op))
                .findFirst()
                .orElse(sheet.operations().isEmpty() ? null : sheet.operations().get(0));
        model.addAttribute("route", route);
        model.addAttribute("history", history);
        model.addAttribute("shown", shown);
        model.addAttribute("sheet", sheet);
        model.addAttribute("keeper", keeper);
        model.addAttribute("editing", editing);
        model.addAttribute("op", operation);
        model.addAttribute("edit", editing && edit != null ? edit : "");
        model.addAttribute("item", item == null ? "" : item);
        model.addAttribute("stationNames", stationNames());
        model.addAttribute("people", names());
        model.addAttribute("unchanged", draft || book.unchanged(shown.id()));
        model.addAttribute("findings", draft ? drafts.findings(code) : List.of());
        model.addAttribute("changes", draft ? drafts.changes(code, formats::number) : List.of());
        if (editing) {
            forForms(model, sheet, operation, item);
        }
        return "routes/sheet";
    }

    @PostMapping("/routes/{code}/draft")
    String drawUp(Act act, @PathVariable String code) {
        drafts.drawUp(act, code);
        return "redirect:/routes/" + code;
    }

    @PostMapping("/routes/{code}/draft/release")
    String release(Act act, @PathVariable String code, @RequestParam long version, @RequestParam String reason) {
        drafts.release(act, code, version, reason);
        return "redirect:/routes/" + code;
    }

    @PostMapping("/routes/{code}/draft/withdrawal")
    String withdraw(Act act, @PathVariable String code, @RequestParam String reason) {
        drafts.withdraw(act, code, reason);
        return "redirect:/routes/" + code;
    }

    private static RevisionSummary shown(String code, List<RevisionSummary> history, @Nullable String letter) {
        if (letter != null && !letter.isEmpty()) {
            return history.stream()
                    .filter(revision -> revision.letter().equals(letter))
                    .findFirst()
                    .orElseThrow(() -> Refusal.missing(
                            "The revision was not found.",
                            "Route " + code + " has no revision " + letter + ".",
                            "Open the route and choose one of its revisions."));
        }
        return history.stream()
                .filter(revision -> revision.state() == RevisionState.DRAFT)
                .findFirst()
                .or(() -> history.stream()
                        .filter(revision -> revision.state() == RevisionState.RELEASED)
                        .findFirst())
                .orElse(history.get(0));
    }

    private void forForms(Model model, RouteSheet sheet, @Nullable OperationSheet operation, @Nullable String item) {
        Map<String, String> at = new LinkedHashMap<>();
        at.put("", "none");
        stationNames().forEach((code, name) -> at.put(code, code + " " + name));
        Map<String, String> clocks = new LinkedHashMap<>();
        clocks.put("", "none");
        sheet.clocks().forEach(clock -> clocks.put(clock.code(), clock.code() + ", " + clock.name()));
        Map<String, String> operations = new LinkedHashMap<>();
        sheet.operations().forEach(o -> operations.put(o.code(), o.code() + " " + o.name()));
        Map<String, String> after = new LinkedHashMap<>();
        after.put("", "at the front");
        operations.forEach((code, name) -> after.put(code, "after " + name));
        Map<String, String> routes = new TreeMap<>();
        book.routes().forEach(r -> routes.put(r.code(), r.code() + ", " + r.name()));
        model.addAttribute("stationChoices", at);
        model.addAttribute("clockChoices", clocks);
        model.addAttribute("operationChoices", operations);
        model.addAttribute("afterChoices", after);
        model.addAttribute("routeChoices", routes);
        model.addAttribute("step", step(operation, item));
        model.addAttribute("characteristic", characteristic(operation, item));
        model.addAttribute(
                "clock",
                sheet.clocks().stream()
                        .filter(c -> c.code().equals(item))
                        .findFirst()
                        .orElse(null));
    }

    private static @Nullable StepSheet step(@Nullable OperationSheet operation, @Nullable String item) {
        if (operation == null || item == null || !item.matches("[1-9][0-9]{0,2}")) {
            return null;
        }
        int number = Integer.parseInt(item);
        return number <= operation.steps().size() ? operation.steps().get(number - 1) : null;
    }

    private static @Nullable CharacteristicSheet characteristic(
            @Nullable OperationSheet operation, @Nullable String item) {
        return operation == null
                ? null
                : operation.characteristics().stream()
                        .filter(c -> c.code().equals(item))
                        .findFirst()
                        .orElse(null);
    }

    private Map<String, String> stationNames() {
        return stations.all().stream()
                .collect(Collectors.toMap(Station::code, Station::name, (a, b) -> a, LinkedHashMap::new));
    }

    private Map<Long, String> names() {
        return crew.names();
    }
}
