package org.trammel.shop.orders;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.designs.Component;
import org.trammel.shop.designs.RevisionSummary;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;

/** Orders for programs: the same verbs and checks as the sheets. */
@RestController
@RequestMapping("/api/v1/orders")
@Tag(
        name = "Orders",
        description =
                "What was ordered, promised and spent. Body lengths in cm, mass in kg, money in the shop's currency,"
                        + " hours in h, days as 2026-03-18.")
class OrderApi {

    private static final int PAGE = 100;

    private final OrderReading reading;
    private final Orders orders;
    private final OrderEntry entry;
    private final OrderBook book;
    private final ChangeRequests changes;
    private final OwnParts parts;
    private final OrderedColours colours;
    private final Serials serials;

    OrderApi(
            OrderReading reading,
            Orders orders,
            OrderEntry entry,
            OrderBook book,
            ChangeRequests changes,
            OwnParts parts,
            OrderedColours colours,
            Serials serials) {
        this.reading = reading;
        this.orders = orders;
        this.entry = entry;
        this.book = book;
        this.changes = changes;
        this.parts = parts;
        this.colours = colours;
        this.serials = serials;
    }

    record RiderRequest(
            @Nullable BigDecimal heightCm,
            @Nullable BigDecimal inseamCm,
            @Nullable BigDecimal armCm,
            @Nullable BigDecimal footCm,
            @Nullable BigDecimal massKg,
            @Nullable String flexibility) {

        RiderDetails details() {
            return new RiderDetails(heightCm, inseamCm, armCm, footCm, massKg, flexibility);
        }
    }

    record DetailsRequest(
            @Nullable Long version,
            String description,
            String metal,
            String kind,
            @Nullable Category category,
            String country,
            @Nullable String countryRules,
            @Nullable BrakeLever frontBrakeLever,
            @Nullable RiderRequest rider,
            @Nullable List<Component> components,
            @Nullable Boolean confirm) {

        OrderDetails details() {
            return new OrderDetails(
                    description,
                    metal,
                    kind,
                    Objects.requireNonNullElse(category, Category.OTHER),
                    country,
                    Objects.requireNonNullElse(countryRules, ""),
                    Objects.requireNonNullElse(frontBrakeLever, BrakeLever.NONE),
                    rider == null ? RiderDetails.UNKNOWN : rider.details(),
                    Objects.requireNonNullElse(components, List.of()));
        }
    }

    record EntryRequest(
            @Nullable String number,
            @Nullable Long customerId,
            @Nullable CustomerDetails customer,
            DetailsRequest details,
            @Nullable List<OwnPartDetails> ownParts,
            @Nullable BigDecimal price,
            @Nullable LocalDate promised,
            @Nullable BigDecimal percentile,
            @Nullable String returnedSerial,
            @Nullable Boolean confirm) {}

    record PromiseRequest(
            LocalDate promised,
            @Nullable BigDecimal percentile,
            String reason,
            @Nullable Boolean confirm) {}

    record PriceRequest(
            BigDecimal price, String reason, @Nullable Boolean confirm) {}

    record CostRequest(
            @Nullable CostKind kind,
            @Nullable BigDecimal hours,
            @Nullable BigDecimal amount,
            String reason,
            @Nullable Boolean confirm) {}

    record ReasonRequest(String reason, @Nullable Boolean confirm) {}

    record AskRequest(String asked) {}

    record AnswerRequest(boolean agreed, String answer) {}

    record ArrivalRequest(String measured) {}

    record EndRequest(String ended) {}

    record AgreementRequest(String agreed) {}

    record RaiseRequest(int number) {}

    record ColoursRequest(List<String> colours, @Nullable String reason) {}

    @GetMapping
    @Operation(summary = "Every order whose frame the shop owes, by promised date.")
    List<OrderSheet> open() {
        return orders.open();
    }

    @GetMapping("/past")
    @Operation(summary = "A page of closed orders, the last closed first; go on with closedAt and id of the last.")
    List<OrderReading.PastLine> past(
            @RequestParam @Nullable Instant before, @RequestParam(defaultValue = "0") long id) {
        return reading.past(before, id, PAGE);
    }

    @GetMapping("/{id}")
    @Operation(summary = "One order with its promises, prices, costs, parts and wishes, as far as the reader may see.")
    OrderStory one(@PathVariable long id, SignedOn who) {
        OrderStory story = reading.story(id, who.person());
        return OrderReading.seesMoney(who.person()) ? story : story.withoutMoney();
    }

    @PostMapping
    @Operation(summary = "Enters an order.")
    OrderSheet enter(Act act, @RequestBody EntryRequest r) {
        return entry.enter(
                act,
                new NewOrder(
                        r.number(),
                        r.customerId(),
                        r.customer(),
                        r.details().details(),
                        Objects.requireNonNullElse(r.ownParts(), List.of()),
                        r.price(),
                        r.promised(),
                        r.percentile(),
                        r.returnedSerial(),
                        Boolean.TRUE.equals(r.confirm())));
    }

    @PostMapping("/{id}/details")
    @Operation(summary = "Changes what was ordered, before the frame is released.")
    OrderSheet change(Act act, @PathVariable long id, @RequestBody DetailsRequest r) {
        return book.change(act, id, r.version(), r.details(), Boolean.TRUE.equals(r.confirm()));
    }

    @PostMapping("/{id}/promise")
    @Operation(summary = "Promises another date with its reason; the percentile is the shop's setting if left out.")
    OrderSheet promise(Act act, @PathVariable long id, @RequestBody PromiseRequest r) {
        return book.promise(act, id, r.promised(), r.percentile(), r.reason(), Boolean.TRUE.equals(r.confirm()));
    }

    @PostMapping("/{id}/price")
    @Operation(summary = "Agrees another price with its reason.")
    OrderSheet price(Act act, @PathVariable long id, @RequestBody PriceRequest r) {
        return book.price(act, id, r.price(), r.reason(), Boolean.TRUE.equals(r.confirm()));
    }

    @PostMapping("/{id}/costs")
    @Operation(summary = "Adds hours (h) or an amount to what the order cost so far.")
    OrderSheet cost(Act act, @PathVariable long id, @RequestBody CostRequest r) {
        book.enterCost(
                act,
                id,
                Objects.requireNonNullElse(r.kind(), CostKind.WORK),
                r.hours(),
                r.amount(),
                r.reason(),
                Boolean.TRUE.equals(r.confirm()));
        return orders.byId(id);
    }

    @PostMapping("/{id}/design")
    @Operation(summary = "Begins the drawing: revision A as a draft.")
    RevisionSummary design(Act act, @PathVariable long id) {
        return book.beginDesign(act, id);
    }

    @PostMapping("/{id}/serial")
    @Operation(summary = "Gives the frame its serial ahead of the release.")
    OrderSheet serial(Act act, @PathVariable long id) {
        orders.reserveSerial(act, id);
        return orders.byId(id);
    }

    @PostMapping("/{id}/cancellation")
    @Operation(summary = "Calls the order off; 428 tells what is under way until it is confirmed.")
    OrderSheet cancel(Act act, @PathVariable long id, @RequestBody ReasonRequest r) {
        return book.cancel(act, id, r.reason(), Boolean.TRUE.equals(r.confirm()));
    }

    @PostMapping("/{id}/return")
    @Operation(summary = "The frame of a shipped order came back.")
    OrderSheet takeBack(Act act, @PathVariable long id) {
        return book.takeBack(act, id);
    }

    @PostMapping("/{id}/changes")
    @Operation(summary = "Writes down a change the customer asks for.")
    OrderSheet ask(Act act, @PathVariable long id, @RequestBody AskRequest r) {
        changes.ask(act, id, r.asked());
        return orders.byId(id);
    }

    @PostMapping("/{id}/changes/{change}")
    @Operation(summary = "Agrees to a change or declines it.")
    OrderSheet answer(Act act, @PathVariable long id, @PathVariable long change, @RequestBody AnswerRequest r) {
        changes.answer(act, id, change, r.agreed(), r.answer());
        return orders.byId(id);
    }

    @GetMapping("/{id}/colours")
    @Operation(summary = "The colours it was ordered in, oldest first; the last stand.")
    List<OrderedColours.Ordered> colours(@PathVariable long id) {
        return colours.history(id);
    }

    @PostMapping("/{id}/colours")
    @Operation(summary = "Names the colours, one for each coat as they are sprayed; in work, other ones with a reason.")
    List<String> name(Act act, @PathVariable long id, @RequestBody ColoursRequest r) {
        return colours.name(act, id, r.colours(), r.reason());
    }

    @PostMapping("/{id}/parts")
    @Operation(summary = "Adds a part the customer will send.")
    OrderSheet expect(Act act, @PathVariable long id, @RequestBody OwnPartDetails r) {
        parts.expect(act, id, r);
        return orders.byId(id);
    }

    @PostMapping("/{id}/parts/{part}/arrival")
    @Operation(summary = "Books a customer's part in, with what was measured.")
    OrderSheet arrive(Act act, @PathVariable long id, @PathVariable long part, @RequestBody ArrivalRequest r) {
        parts.arrive(act, id, part, r.measured());
        return orders.byId(id);
    }

    @PostMapping("/{id}/parts/{part}/giving-back")
    @Operation(summary = "Gives a customer's part back.")
    OrderSheet giveBack(Act act, @PathVariable long id, @PathVariable long part, @RequestBody EndRequest r) {
        parts.giveBack(act, id, part, r.ended());
        return orders.byId(id);
    }

    @PostMapping("/{id}/parts/{part}/loss")
    @Operation(summary = "Enters a customer's part as lost.")
    OrderSheet lose(Act act, @PathVariable long id, @PathVariable long part, @RequestBody EndRequest r) {
        parts.lose(act, id, part, r.ended());
        return orders.byId(id);
    }

    @PostMapping("/{id}/parts/{part}/replacement")
    @Operation(summary = "Ends the wait for a customer's part: the shop's own is built on, as the customer agreed.")
    OrderSheet replace(Act act, @PathVariable long id, @PathVariable long part, @RequestBody AgreementRequest r) {
        parts.replace(act, id, part, r.agreed());
        return orders.byId(id);
    }

    @PostMapping("/serials")
    @Operation(summary = "Says up to which number serials of this year were given elsewhere; never lowers it.")
    void raise(Act act, @RequestBody RaiseRequest r) {
        serials.raise(act, r.number());
    }
}
