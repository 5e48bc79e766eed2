package org.trammel.shop.orders;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.designs.ComponentLines;
import org.trammel.shop.designs.FrameWords;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.TypedFields;

/** Orders: those the shop owes, those that are closed, one order, and the form that enters or changes one. */
@Controller
class OrderPages {

    private static final int PAGE = 50;

    private final Crew crew;
    private final OrderReading reading;
    private final OrderExport export;
    private final Orders orders;
    private final OrderEntry entry;
    private final OrderBook book;
    private final Settings settings;
    private final ObjectProvider<FrameFate> fates;
    private final BeforeRelease before;
    private final OrderedColours colours;

    OrderPages(
            Crew crew,
            OrderReading reading,
            OrderExport export,
            Orders orders,
            OrderEntry entry,
            OrderBook book,
            Settings settings,
            ObjectProvider<FrameFate> fates,
            BeforeRelease before,
            OrderedColours colours) {
        this.crew = crew;
        this.reading = reading;
        this.export = export;
        this.orders = orders;
        this.entry = entry;
        this.book = book;
        this.settings = settings;
        this.fates = fates;
        this.before = before;
        this.colours = colours;
    }

    @GetMapping("/orders")
    String open(SignedOn who, Model model) {
        model.addAttribute("orders", orders.open());
        model.addAttribute("enters", who.person().is(Role.OWNER));
        return "orders/open";
    }

    /** Goes on after the order whose closing time and id are named, so that a page costs the same however many. */
    @GetMapping("/orders/past")
    String past(@RequestParam @Nullable Instant before, @RequestParam(defaultValue = "0") long id, Model model) {
        List<OrderReading.PastLine> page = reading.past(before, id, PAGE);
        model.addAttribute("lines", page);
        model.addAttribute("next", page.size() < PAGE ? null : page.get(PAGE - 1));
        return "orders/past";
    }

    @GetMapping("/orders/number/{number}")
    String byNumber(@PathVariable String number) {
        return orders.byNumber(number)
                .map(order -> "redirect:/orders/" + order.id())
                .orElseThrow(() -> Refusal.missing(
                        "The order was not found.",
                        "No order has the number " + number + ".",
                        "Open it from the list of orders."));
    }

    @GetMapping("/orders/{id:\\d+}")
    String one(@PathVariable long id, SignedOn who, Model model) {
        Person person = who.person();
        OrderStory story = reading.story(id, person);
        model.addAttribute("story", story);
        model.addAttribute("scrapped", fates.stream().anyMatch(fate -> fate.scrapped(story.sheet())));
        model.addAttribute("colours", colours.history(id));
        model.addAttribute("warnings", before.warnings(story.checked()));
        Map<String, Boolean> may = new HashMap<>(Arrays.stream(OrderVerb.values())
                .collect(Collectors.toMap(
                        OrderVerb::name,
                        verb -> person.isAny(verb.by())
                                && verb.allowedFrom(story.sheet().state()))));
        // Another revision in the place of the one in the shop is the QA lead's alone.
        may.put(
                "REPLACE",
                may.get("BEGIN") && (story.sheet().state() != OrderState.IN_WORK || person.is(Role.QA_LEAD)));
        model.addAttribute("may", may);
        model.addAttribute("money", OrderReading.seesMoney(person));
        model.addAttribute("books", person.mayWork() && !person.roles().equals(Set.of(Role.APPRENTICE)));
        model.addAttribute("desk", person.isAny(Role.OWNER, Role.QA_LEAD));
        model.addAttribute("percentile", settings.whole("promise.percentile"));
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put("WORK", "work");
        kinds.put("REWORK", "rework");
        kinds.put("MATERIAL", "material");
        kinds.put("OUTSIDE", "done outside");
        model.addAttribute("costKinds", kinds);
        return "orders/order";
    }

    @GetMapping("/orders/new")
    String fresh(SignedOn who, Model model) {
        crew.require(who.person().id(), "No order is entered.", Role.OWNER);
        choices(model);
        model.addAttribute("story", null);
        model.addAttribute("title", "New order");
        model.addAttribute("customers", who.person().is(Role.OWNER) ? reading.knownCustomers() : Map.of());
        model.addAttribute("percentile", settings.whole("promise.percentile"));
        model.addAttribute("currency", settings.currency().getCurrencyCode());
        return "orders/form";
    }

    @GetMapping("/orders/{id:\\d+}/edit")
    String edit(@PathVariable long id, SignedOn who, Model model) {
        OrderStory story = reading.story(id, who.person());
        crew.require(who.person().id(), "The order was not changed.", OrderVerb.CHANGE.by());
        choices(model);
        model.addAttribute("story", story);
        model.addAttribute("title", "Change " + story.sheet().number());
        model.addAttribute("components", ComponentLines.written(story.details().components()));
        return "orders/form";
    }

    private static void choices(Model model) {
        Map<String, String> categories = new LinkedHashMap<>();
        Arrays.stream(Category.values()).forEach(one -> categories.put(one.name(), one.word()));
        Map<String, String> levers = new LinkedHashMap<>();
        Arrays.stream(BrakeLever.values()).forEach(one -> levers.put(one.name(), one.word()));
        model.addAttribute("metals", FrameWords.metals());
        model.addAttribute("kinds", FrameWords.kinds());
        model.addAttribute("categories", categories);
        model.addAttribute("levers", levers);
    }

    @PostMapping("/orders")
    String enter(Act act, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "The order was not entered.");
        NewOrder order = OrderForm.fresh(fields);
        fields.refuseIfWrong();
        return "redirect:/orders/" + entry.enter(act, order).id();
    }

    @PostMapping("/orders/{id:\\d+}/edit")
    String change(Act act, @PathVariable long id, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "The order was not changed.");
        OrderDetails details = OrderForm.details(fields);
        Long version = fields.idOrNone("version");
        fields.refuseIfWrong();
        book.change(act, id, version, details, fields.confirmed());
        return "redirect:/orders/" + id;
    }

    @GetMapping("/orders.csv")
    ResponseEntity<byte[]> csv(SignedOn who) {
        return export.all(who.person()).answer("orders.csv");
    }
}
