package org.trammel.shop.orders;

import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Changes the customer asks for, and what the owner answers. */
@Service
@Transactional
public class ChangeRequests {

    private final OrderChangeRepository changes;
    private final OrderAct opening;

    ChangeRequests(OrderChangeRepository changes, OrderAct opening) {
        this.changes = changes;
        this.opening = opening;
    }

    /** Writes a wish down. Nothing of order or drawing changes by it. */
    public void ask(Act act, long orderId, String typed) {
        opening.open(act, OrderVerb.ASK_CHANGE, orderId).ifPresent(order -> {
            String asked = TypedText.words("asked", "The wish", OrderVerb.ASK_CHANGE.undone(order.number()), typed);
            changes.save(new OrderChange(orderId, opening.keep(order, "change-asked", asked), act));
        });
    }

    /** Agrees or declines. What was agreed is then done: a revision of the drawing, another date, another price. */
    public void answer(Act act, long orderId, long changeId, boolean agreed, String typed) {
        opening.open(act, OrderVerb.ANSWER_CHANGE, orderId).ifPresent(order -> {
            String deed = OrderVerb.ANSWER_CHANGE.undone(order.number());
            Optional<OrderChange> found = changes.findById(changeId).filter(one -> one.orderId() == orderId);
            OrderChange change = found.orElseThrow(() -> Refusal.missing(
                    deed, "It has no request with the number " + changeId + ".", "Choose one from the order."));
            String answer = TypedText.words("answer", "The answer", deed, typed);
            change.answer(agreed, opening.keep(order, "change-reasoned", answer), act);
            opening.event(
                    order,
                    "change-answered",
                    Map.of("change", changeId, "state", change.state().name()));
        });
    }
}
