package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;

/**
 * Whether the gate of a revision is answered. Figures are computed anew each time it is asked, so that an answer counts
 * only for the inputs it was given on, and a figure that is not met lets nothing pass but a decision in writing.
 */
@Component
class GateStand {

    private static final int NAMED = 3;

    private final GateEntryRepository entries;
    private final SawDrawer saws;
    private final GateLimits limits;
    private final DrawnNominals drawn;
    private final TestFamilies families;
    private final RouteBook routes;
    private final ObjectProvider<OrderTells> orders;

    GateStand(
            GateEntryRepository entries,
            SawDrawer saws,
            GateLimits limits,
            DrawnNominals drawn,
            TestFamilies families,
            RouteBook routes,
            ObjectProvider<OrderTells> orders) {
        this.entries = entries;
        this.saws = saws;
        this.limits = limits;
        this.drawn = drawn;
        this.families = families;
        this.routes = routes;
        this.orders = orders;
    }

    Map<GateCheck, CheckFigures> figures(DesignSheet sheet) {
        Long route = sheet.routeRevisionId();
        return route == null ? figures(sheet, List.of(), Map.of()) : figures(sheet, routes.revision(route));
    }

    private Map<GateCheck, CheckFigures> figures(DesignSheet sheet, RouteSheet route) {
        List<CharacteristicLine> lines =
                CharacteristicList.of(route, sheet.nominals()).lines();
        return figures(sheet, lines, drawn.of(lines, sheet));
    }

    /**
     * The same for whoever has the characteristic list at hand.
     *
     * @param fromDrawing nominals as the drawing gives them
     */
    Map<GateCheck, CheckFigures> figures(
            DesignSheet sheet, List<CharacteristicLine> lines, Map<String, DrawnNominals.FromDrawing> fromDrawing) {
        OrderTells order = orders.getIfAvailable();
        return GateFigures.of(
                sheet,
                ComputedFrame.of(sheet, saws.rules()),
                limits,
                order == null ? null : order.told(sheet.drawnFor()).orElse(null),
                NominalFigures.of(sheet, lines, fromDrawing),
                Optional.ofNullable(sheet.testFamily()).flatMap(families::named));
    }

    CheckFigures figures(DesignSheet sheet, GateCheck check) {
        return Objects.requireNonNull(figures(sheet).get(check));
    }

    /**
     * Whether an answer holds.
     *
     * @param entry null while there is none
     */
    static boolean counts(@Nullable GateEntry entry, CheckFigures now) {
        return entry != null
                && entry.givenOn().equals(now.givenOn())
                && entry.check().takes(now).contains(entry.answer());
    }

    /** Refuses unless every check has an answer that holds for the inputs as they are now. */
    void refuseUnlessAnswered(String deed, DesignRevision revision) {
        refuseUnlessAnswered(deed, revision, figures(revision.sheet()));
    }

    /** The same for a release on a route, which may be another than the draft named. */
    void refuseUnlessAnswered(String deed, DesignRevision revision, RouteSheet route) {
        refuseUnlessAnswered(deed, revision, figures(revision.sheet(), route));
    }

    private void refuseUnlessAnswered(String deed, DesignRevision revision, Map<GateCheck, CheckFigures> figures) {
        Map<GateCheck, GateEntry> answered = entries.findByRevisionId(revision.id()).stream()
                .collect(Collectors.toMap(GateEntry::check, Function.identity()));
        List<String> open = new ArrayList<>();
        List<String> lapsed = new ArrayList<>();
        List<String> uncomputed = new ArrayList<>();
        Map<GateCheck, CheckFigures> red = new EnumMap<>(GateCheck.class);
        figures.forEach((check, now) -> {
            GateEntry entry = answered.get(check);
            if (entry == null) {
                open.add(check.label());
            } else if (now.red() && entry.answer() != GateAnswer.DECIDED) {
                red.put(check, now);
            } else if (check.isUncomputed(now) && entry.answer() != GateAnswer.DECIDED) {
                uncomputed.add(check.label() + " (" + now.lacking().get(0).replaceFirst("\\.$", "") + ")");
            } else if (!counts(entry, now)) {
                lapsed.add(check.label());
            }
        });
        if (!open.isEmpty()) {
            throw Refusal.state(
                    deed, "Not answered yet: " + String.join(", ", open) + ".", "Answer every check first.");
        }
        if (!red.isEmpty()) {
            throw Refusal.state(
                    deed,
                    "Not met and not decided: "
                            + red.entrySet().stream()
                                    .limit(NAMED)
                                    .map(one -> one.getKey().label() + " ("
                                            + one.getValue().whyRed() + ")")
                                    .collect(Collectors.joining(", "))
                            + (red.size() > NAMED ? " and " + (red.size() - NAMED) + " more" : "") + ".",
                    "Change the inputs in a draft, or let owner or QA lead decide it in writing for this frame.");
        }
        if (!uncomputed.isEmpty()) {
            throw Refusal.state(
                    deed,
                    "Not computed and not decided: "
                            + uncomputed.stream().limit(NAMED).collect(Collectors.joining(", "))
                            + (uncomputed.size() > NAMED ? " and " + (uncomputed.size() - NAMED) + " more" : "") + ".",
                    "Enter what is missing in a draft, or let owner or QA lead decide it in writing for this frame.");
        }
        if (!lapsed.isEmpty()) {
            throw Refusal.state(
                    deed,
                    "Answered on other inputs than those of now: " + String.join(", ", lapsed) + ".",
                    "Look at the figures as they are now and answer these again.");
        }
    }
}
