package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.designs.ComponentLines;
import org.trammel.shop.web.TypedFields;

/** Reads the forms of an order. */
final class OrderForm {

    private OrderForm() {}

    static NewOrder fresh(TypedFields fields) {
        Long known = fields.idOrNone("customerId");
        String serial = fields.text("returnedSerial");
        String part = fields.text("ownPart.what");
        if (known != null && (fields.has("customer.name") || fields.has("customer.contact"))) {
            fields.wrong(
                    "customer.name",
                    "A customer is chosen and another one is typed beside.",
                    "Choose a customer, or enter a new one; not both.");
        }
        if (part.isEmpty() && (fields.has("ownPart.description") || fields.has("ownPart.dueOn"))) {
            fields.wrong(
                    "ownPart.what",
                    "Something is said of a part of the customer's own, and not which part it is.",
                    "Name the part, or leave its fields empty.");
        }
        return new NewOrder(
                fields.text("number"),
                known,
                known != null ? null : customer(fields),
                details(fields),
                part.isEmpty() ? List.of() : List.of(ownPart(fields)),
                fields.figureOrNone("price"),
                fields.dayOrNone("promised"),
                fields.figureOrNone("percentile"),
                serial.isEmpty() ? null : serial,
                fields.confirmed());
    }

    static CustomerDetails customer(TypedFields fields) {
        return new CustomerDetails(
                fields.text("customer.name"),
                fields.text("customer.contact"),
                fields.text("customer.country"),
                fields.dayOrNone("customer.consentOn"));
    }

    static OrderDetails details(TypedFields fields) {
        return new OrderDetails(
                fields.text("description"),
                fields.text("metal"),
                fields.text("kind"),
                fields.one(Category.class, "category", Category.OTHER),
                fields.text("country"),
                fields.text("countryRules"),
                fields.one(BrakeLever.class, "frontBrakeLever", BrakeLever.NONE),
                rider(fields),
                ComponentLines.read(fields, "components"));
    }

    private static RiderDetails rider(TypedFields fields) {
        return new RiderDetails(
                fields.figureOrNone("rider.height"),
                fields.figureOrNone("rider.inseam"),
                fields.figureOrNone("rider.arm"),
                fields.figureOrNone("rider.foot"),
                fields.figureOrNone("rider.mass"),
                fields.text("rider.flexibility"));
    }

    static OwnPartDetails ownPart(TypedFields fields) {
        return new OwnPartDetails(
                fields.text("ownPart.what"), fields.text("ownPart.description"), fields.dayOrNone("ownPart.dueOn"));
    }

    /** A figure that must be there: notes the field if it is empty. */
    static @Nullable BigDecimal needed(TypedFields fields, String field, String label) {
        if (!fields.has(field)) {
            fields.wrong(field, label + " is missing. An empty field is not zero.", "Type it.");
            return null;
        }
        return fields.figure(field);
    }
}
