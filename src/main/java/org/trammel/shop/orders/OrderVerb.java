package org.trammel.shop.orders;

import static org.trammel.shop.orders.OrderState.APPROVED;
import static org.trammel.shop.orders.OrderState.DESIGNING;
import static org.trammel.shop.orders.OrderState.IN_WORK;
import static org.trammel.shop.orders.OrderState.ORDERED;
import static org.trammel.shop.orders.OrderState.READY_TO_SHIP;
import static org.trammel.shop.orders.OrderState.SHIPPED;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;

/**
 * What can be done to an order, from which states and by whom. Verbs without roles are called by the travellers, which
 * have asked who may.
 */
enum OrderVerb {
    CHANGE(
            "was not changed",
            "What was ordered is changed until the frame is released to the shop.",
            "Enter the customer's wish as a change request.",
            EnumSet.of(ORDERED, DESIGNING, APPROVED),
            Role.OWNER),
    DESIGN(
            "got no design",
            "A design is begun once, for a fresh order.",
            "Begin the next revision of its design.",
            EnumSet.of(ORDERED),
            Role.OWNER,
            Role.QA_LEAD),
    PROMISE(
            "got no new date",
            "A date is promised while the shop owes the frame.",
            "Enter a new order if there is a new frame to promise.",
            open(),
            Role.OWNER),
    PRICE(
            "got no new price",
            "A price is changed while the shop owes the frame.",
            "Settle the difference outside this order.",
            open(),
            Role.OWNER),
    ASK_CHANGE(
            "got no change request",
            "A change is asked for while the shop owes the frame.",
            "Enter a new order, or a repair order for a frame that comes back.",
            open(),
            Role.OWNER,
            Role.QA_LEAD),
    ANSWER_CHANGE(
            "kept its change request",
            "A request is answered while the shop owes the frame.",
            "Enter a new order, or a repair order for a frame that comes back.",
            open(),
            Role.OWNER),
    RESERVE_SERIAL(
            "got no serial",
            "A serial is given before the frame is finished.",
            "Look the serial up on the order.",
            EnumSet.of(ORDERED, DESIGNING, APPROVED, IN_WORK),
            Role.OWNER,
            Role.QA_LEAD),
    ASSIGN_SERIAL(
            "got no serial",
            "A serial is given when the frame is released to the shop.",
            "Have the drawing approved first.",
            EnumSet.of(APPROVED, IN_WORK),
            Role.OWNER,
            Role.QA_LEAD),
    BEGIN(
            "was not begun",
            "Work begins when the customer has approved a drawing.",
            "Have the drawing approved first.",
            EnumSet.of(APPROVED, IN_WORK),
            Role.OWNER,
            Role.QA_LEAD),
    FINISH(
            "was not finished",
            "Only a frame in work is finished.",
            "Release it to the shop first.",
            EnumSet.of(IN_WORK)),
    REOPEN(
            "was not opened again",
            "Only a frame that is ready to ship goes back into work.",
            "A frame that was shipped comes back on a repair order.",
            EnumSet.of(READY_TO_SHIP)),
    SHIP(
            "was not shipped",
            "Only a frame that is ready to ship leaves.",
            "Finish and sign the operations that are open.",
            EnumSet.of(READY_TO_SHIP)),
    TAKE_BACK(
            "was not taken back",
            "Only a frame that was shipped comes back.",
            "Look for its order under its serial.",
            EnumSet.of(SHIPPED),
            Role.OWNER,
            Role.QA_LEAD),
    CANCEL(
            "was not cancelled",
            "An order is cancelled before its frame leaves.",
            "Take the frame back instead.",
            open(),
            Role.OWNER);

    private final String undone;
    private final String rule;
    private final String instead;
    private final Set<OrderState> from;
    private final Role[] by;

    OrderVerb(String undone, String rule, String instead, Set<OrderState> from, Role... by) {
        this.undone = undone;
        this.rule = rule;
        this.instead = instead;
        this.from = from;
        this.by = by;
    }

    private static Set<OrderState> open() {
        return EnumSet.of(ORDERED, DESIGNING, APPROVED, IN_WORK, READY_TO_SHIP);
    }

    Role[] by() {
        return by.clone();
    }

    boolean allowedFrom(OrderState state) {
        return from.contains(state);
    }

    String act() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-') + "-order";
    }

    /** The first part of every refusal of this verb. */
    String undone(String number) {
        return number + " " + undone + ".";
    }

    void refuseUnless(String number, OrderState state) {
        if (!from.contains(state)) {
            throw Refusal.state(undone(number), "It is " + state.word() + ". " + rule, instead);
        }
    }
}
