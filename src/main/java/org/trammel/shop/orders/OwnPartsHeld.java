package org.trammel.shop.orders;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The customers' own parts of an order, for the modules that build them on. */
@Service
@Transactional(readOnly = true)
public class OwnPartsHeld {

    private final OwnPartRepository parts;

    OwnPartsHeld(OwnPartRepository parts) {
        this.parts = parts;
    }

    /**
     * @param state where it is, as a word
     * @param over whether it was given back or replaced: neither fitted nor awaited
     */
    public record Held(
            long id,
            String what,
            String description,
            @Nullable LocalDate dueOn,
            String state,
            boolean withUs,
            boolean over) {}

    public List<Held> ofOrder(long orderId) {
        return parts.findByOrderIdOrderById(orderId).stream()
                .map(part -> new Held(
                        part.id(),
                        part.what(),
                        part.description(),
                        part.dueOn(),
                        part.state().word(),
                        part.state() == OwnPart.State.WITH_US,
                        part.state() == OwnPart.State.GIVEN_BACK || part.state() == OwnPart.State.REPLACED))
                .toList();
    }
}
