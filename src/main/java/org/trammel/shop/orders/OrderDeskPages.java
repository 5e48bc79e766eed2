package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.TypedFields;

/** The forms on the sheet of one order. */
@Controller
@RequestMapping("/orders/{id:\\d+}")
class OrderDeskPages {

    private final OrderBook book;
    private final Orders orders;
    private final ChangeRequests changes;
    private final OwnParts parts;
    private final OrderedColours colours;

    OrderDeskPages(OrderBook book, Orders orders, ChangeRequests changes, OwnParts parts, OrderedColours colours) {
        this.book = book;
        this.orders = orders;
        this.changes = changes;
        this.parts = parts;
        this.colours = colours;
    }

    @PostMapping("/promise")
    String promise(Act act, @PathVariable long id, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "No date was promised.");
        LocalDate on = fields.dayOrNone("promised");
        if (on == null) {
            fields.wrong("promised", "The day is missing.", "Enter the day that is promised.");
        }
        BigDecimal percentile = fields.figureOrNone("percentile");
        fields.refuseIfWrong();
        at(
                "promiseReason",
                reason -> book.promise(
                        act, id, Objects.requireNonNull(on), percentile, fields.text(reason), fields.confirmed()));
        return back(id);
    }

    @PostMapping("/price")
    String price(Act act, @PathVariable long id, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "The price was not changed.");
        BigDecimal amount = OrderForm.needed(fields, "price", "The price");
        fields.refuseIfWrong();
        at(
                "priceReason",
                reason -> book.price(act, id, Objects.requireNonNull(amount), fields.text(reason), fields.confirmed()));
        return back(id);
    }

    @PostMapping("/cost")
    String cost(Act act, @PathVariable long id, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "No cost was added.");
        CostKind kind = fields.one(CostKind.class, "kind", CostKind.WORK);
        BigDecimal hours = fields.figureOrNone("hours");
        BigDecimal amount = fields.figureOrNone("amount");
        fields.refuseIfWrong();
        at(
                "costReason",
                reason -> book.enterCost(act, id, kind, hours, amount, fields.text(reason), fields.confirmed()));
        return back(id);
    }

    @PostMapping("/design")
    String design(Act act, @PathVariable long id) {
        return "redirect:/designs/" + book.beginDesign(act, id).revisionId();
    }

    @PostMapping("/serial")
    String serial(Act act, @PathVariable long id) {
        orders.reserveSerial(act, id);
        return back(id);
    }

    @PostMapping("/cancellation")
    String cancel(Act act, @PathVariable long id, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "The order was not cancelled.");
        at("cancelReason", reason -> book.cancel(act, id, fields.text(reason), fields.confirmed()));
        return back(id);
    }

    @PostMapping("/return")
    String takeBack(Act act, @PathVariable long id) {
        book.takeBack(act, id);
        return back(id);
    }

    @PostMapping("/changes")
    String ask(Act act, @PathVariable long id, @RequestParam String asked) {
        changes.ask(act, id, asked);
        return back(id);
    }

    @PostMapping("/changes/{change:\\d+}")
    String answer(
            Act act,
            @PathVariable long id,
            @PathVariable long change,
            @RequestParam(defaultValue = "false") boolean agreed,
            @RequestParam String answer) {
        changes.answer(act, id, change, agreed, answer);
        return back(id);
    }

    @PostMapping("/colours")
    String colours(
            Act act,
            @PathVariable long id,
            @RequestParam(defaultValue = "") String colours,
            @RequestParam(defaultValue = "") String coloursReason) {
        this.colours.name(act, id, OrderedColours.typed(colours), coloursReason);
        return back(id);
    }

    @PostMapping("/parts")
    String expect(Act act, @PathVariable long id, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "No part was added.");
        OwnPartDetails part = OrderForm.ownPart(fields);
        fields.refuseIfWrong();
        parts.expect(act, id, part);
        return back(id);
    }

    @PostMapping("/parts/{part:\\d+}/arrival")
    String arrive(Act act, @PathVariable long id, @PathVariable long part, @RequestParam String measured) {
        parts.arrive(act, id, part, measured);
        return back(id);
    }

    @PostMapping("/parts/{part:\\d+}/giving-back")
    String giveBack(Act act, @PathVariable long id, @PathVariable long part, @RequestParam String ended) {
        parts.giveBack(act, id, part, ended);
        return back(id);
    }

    @PostMapping("/parts/{part:\\d+}/loss")
    String lose(Act act, @PathVariable long id, @PathVariable long part, @RequestParam String ended) {
        parts.lose(act, id, part, ended);
        return back(id);
    }

    @PostMapping("/parts/{part:\\d+}/replacement")
    String replace(Act act, @PathVariable long id, @PathVariable long part, @RequestParam String agreed) {
        parts.replace(act, id, part, agreed);
        return back(id);
    }

    /** The services call it the reason; on this sheet each form has one, so a refusal names the form's own field. */
    private static void at(String field, Consumer<String> deed) {
        try {
            deed.accept(field);
        } catch (Refusal refused) {
            throw "reason".equals(refused.field()) ? refused.at(field) : refused;
        }
    }

    private static String back(long id) {
        return "redirect:/orders/" + id;
    }
}
