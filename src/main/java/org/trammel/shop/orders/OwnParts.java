package org.trammel.shop.orders;

import java.util.Map;
import java.util.function.BiConsumer;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Parts of the customer's own: awaited, measured on arrival, given back. */
@Service
@Transactional
public class OwnParts {

    private static final Role[] WORKERS = {
        Role.OWNER, Role.QA_LEAD, Role.ALIGNER, Role.WELDER, Role.HEAT_TREATER, Role.STATION_WORKER
    };

    private final OwnPartRepository parts;
    private final OrderAct opening;
    private final ApplicationEventPublisher events;

    OwnParts(OwnPartRepository parts, OrderAct opening, ApplicationEventPublisher events) {
        this.parts = parts;
        this.opening = opening;
        this.events = events;
    }

    /** A part the customer will send. */
    public void expect(Act act, long orderId, OwnPartDetails typed) {
        opening.open(act, "expect-own-part", orderId).ifPresent(order -> {
            String deed = "No part was added to " + order.number() + ".";
            opening.require(act, deed, Role.OWNER, Role.QA_LEAD);
            if (!order.state().open()) {
                throw Refusal.state(
                        deed, "It is " + order.state().word() + ".", "Enter the part on an order that is open.");
            }
            OwnPart part = parts.save(new OwnPart(orderId, OrderCheck.ownPart(deed, typed)));
            opening.event(order, "own-part-expected", Map.of("part", part.id()));
        });
    }

    /**
     * Books a part in.
     *
     * @param measured what was found on measuring it; never taken from memory or a maker's page
     */
    public void arrive(Act act, long orderId, long partId, String measured) {
        move(
                act,
                "book-own-part",
                orderId,
                partId,
                "own-part-arrived",
                (order, part) -> part.arrive(
                        keep(
                                order,
                                TypedText.words(
                                        "measured", "What was measured", "The part was not booked in.", measured)),
                        act));
    }

    public void giveBack(Act act, long orderId, long partId, String reason) {
        move(act, OrderAct.GIVE_BACK, orderId, partId, "own-part-given-back", (order, part) -> {
            part.giveBack(
                    keep(order, TypedText.words("ended", "The reason", "The part was not given back.", reason)), act);
            events.publishEvent(new OwnPartOver(act, orderId));
        });
    }

    public void lose(Act act, long orderId, long partId, String reason) {
        move(
                act,
                "lose-own-part",
                orderId,
                partId,
                "own-part-lost",
                (order, part) -> part.lose(
                        keep(
                                order,
                                TypedText.words("ended", "What happened", "The part was not entered as lost.", reason)),
                        act));
    }

    /**
     * Ends the wait for a part that was lost or never came: the shop's own is built on.
     *
     * @param agreed what the customer agreed to, when and how
     */
    public void replace(Act act, long orderId, long partId, String agreed) {
        String deed = "The customer's part was not replaced.";
        opening.open(act, OrderAct.REPLACE, orderId).ifPresent(order -> {
            opening.require(act, deed, Role.OWNER);
            OwnPart part = one(order, orderId, partId, deed);
            part.replace(keep(order, TypedText.words("agreed", "What the customer agreed to", deed, agreed)), act);
            opening.event(order, "own-part-replaced", Map.of("part", partId));
            events.publishEvent(new OwnPartOver(act, orderId));
        });
    }

    private OwnPart one(ShopOrder order, long orderId, long partId, String deed) {
        return parts.findById(partId)
                .filter(part -> part.orderId() == orderId)
                .orElseThrow(() -> Refusal.missing(
                        deed,
                        order.number() + " has no part with the number " + partId + ".",
                        "Choose one from the order."));
    }

    private long keep(ShopOrder order, String text) {
        return opening.keep(order, "own-part-described", text);
    }

    private void move(
            Act act, String kind, long orderId, long partId, String event, BiConsumer<ShopOrder, OwnPart> move) {
        opening.open(act, kind, orderId).ifPresent(order -> {
            String deed = "The customer's part of " + order.number() + " stays as it was.";
            opening.require(act, deed, WORKERS);
            OwnPart part = one(order, orderId, partId, deed);
            move.accept(order, part);
            opening.event(order, event, Map.of("part", partId));
        });
    }
}
