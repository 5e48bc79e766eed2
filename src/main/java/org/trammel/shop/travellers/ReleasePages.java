package org.trammel.shop.travellers;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.units.TypedDay;
import org.trammel.shop.designs.DesignSheet;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.orders.BeforeRelease;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** Releasing an order's frame to the shop, and putting a newer revision in the place of the one that is there. */
@Controller
class ReleasePages {

    private final Release release;
    private final Revising revising;
    private final Travellers travellers;
    private final Orders orders;
    private final Designs designs;
    private final Crew crew;
    private final Signatures signatures;
    private final BeforeRelease before;

    ReleasePages(
            Release release,
            Revising revising,
            Travellers travellers,
            Orders orders,
            Designs designs,
            Crew crew,
            Signatures signatures,
            BeforeRelease before) {
        this.release = release;
        this.revising = revising;
        this.travellers = travellers;
        this.orders = orders;
        this.designs = designs;
        this.crew = crew;
        this.signatures = signatures;
        this.before = before;
    }

    /**
     * Releases; where a traveller of another revision is in the shop, the page that asks for the verdicts comes first. A
     * revision that was released a moment ago is shown where it went.
     */
    @PostMapping("/orders/{orderId}/release")
    String release(Act act, @PathVariable long orderId, @RequestParam long designRevisionId) {
        List<FrameSheet.Head> inShop = inShop(orderId);
        Optional<FrameSheet.Head> there = inShop.stream()
                .filter(head -> head.designRevisionId() == designRevisionId)
                .findFirst();
        if (there.isPresent()) {
            return "redirect:/frames/" + there.get().serial();
        }
        if (!inShop.isEmpty()) {
            return "redirect:/orders/" + orderId + "/newer-revision?designRevisionId=" + designRevisionId;
        }
        String serial = release.release(act, orderId, designRevisionId, routeOf(designRevisionId));
        return "redirect:/frames/" + serial;
    }

    @GetMapping("/orders/{orderId}/newer-revision")
    String ask(SignedOn who, @PathVariable long orderId, @RequestParam long designRevisionId, Model model) {
        OrderSheet order = orders.byId(orderId);
        DesignSheet design = designs.revision(designRevisionId);
        Map<String, String> verdicts = new LinkedHashMap<>();
        Arrays.stream(Carry.values()).forEach(c -> verdicts.put(c.name(), c.word()));
        model.addAttribute("order", order);
        model.addAttribute("design", design);
        model.addAttribute("finished", revising.asked(who.person().id(), orderId, design));
        model.addAttribute("verdicts", verdicts);
        model.addAttribute("warnings", before.warnings(designRevisionId));
        Map<String, String> owners = new LinkedHashMap<>();
        crew.active().stream()
                .filter(person -> person.is(Role.OWNER))
                .forEach(person -> owners.put(Long.toString(person.id()), person.name()));
        model.addAttribute("owners", owners);
        return "release/newer-revision";
    }

    @PostMapping("/orders/{orderId}/newer-revision")
    String supersede(
            Act act,
            SignedOn who,
            @PathVariable long orderId,
            @RequestParam long designRevisionId,
            @RequestParam(defaultValue = "") String secret,
            @RequestParam Map<String, String> typed) {
        signatures.confirm(who, secret);
        Map<Long, Revising.Said> said = new HashMap<>();
        for (Revising.Finished finished : revising.finished(orderId)) {
            String verdict = typed.get("said-" + finished.operationId());
            if (verdict != null && !verdict.isEmpty()) {
                said.put(
                        finished.operationId(),
                        new Revising.Said(carry(verdict), typed.getOrDefault("why-" + finished.operationId(), "")));
            }
        }
        String serial =
                revising.supersede(act, orderId, designRevisionId, routeOf(designRevisionId), said, agreed(who, typed));
        return "redirect:/frames/" + serial;
    }

    private Revising.@Nullable Agreed agreed(SignedOn who, Map<String, String> typed) {
        String pin = typed.getOrDefault("ownerPin", "");
        String owner = typed.getOrDefault("owner", "");
        if (pin.isEmpty() || !owner.matches("\\d{1,18}")) {
            return null;
        }
        return new Revising.Agreed(
                signatures.sign(Long.parseLong(owner), pin, who.deviceId()).id(),
                typed.getOrDefault("customer", ""),
                typed.getOrDefault("limits", ""),
                day(typed.getOrDefault("expiresOn", "")));
    }

    private static @Nullable LocalDate day(String typed) {
        if (typed.isBlank()) {
            return null;
        }
        TypedDay day = TypedDay.of(typed);
        if (day instanceof TypedDay.Read read) {
            return read.day();
        }
        throw Refusal.input(
                "expiresOn",
                "The newer revision was not released.",
                ((TypedDay.Unreadable) day).reason(),
                "Enter the last day such as 2027-03-31.");
    }

    private static Carry carry(String verdict) {
        return Arrays.stream(Carry.values())
                .filter(c -> c.name().equals(verdict))
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "said",
                        "The newer revision was not released.",
                        "One of the verdicts is none we know.",
                        "Choose one from the list."));
    }

    private List<FrameSheet.Head> inShop(long orderId) {
        return travellers.ofOrder(orderId).stream()
                .filter(head -> head.state().open())
                .toList();
    }

    private long routeOf(long designRevisionId) {
        DesignSheet design = designs.revision(designRevisionId);
        if (design.routeRevisionId() == null) {
            throw Refusal.state(
                    "The frame is not released.",
                    "Design revision " + design.letter() + " names no route.",
                    "Choose the route on the design's page.");
        }
        return design.routeRevisionId();
    }
}
