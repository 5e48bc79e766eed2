package org.trammel.shop.travellers;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;

/** What must be so before travellers of a newer revision take the place of those in the shop. */
@Component
class Replaceable {

    private static final Set<OperationState> BEGUN =
            EnumSet.of(OperationState.IN_WORK, OperationState.STOPPED, OperationState.AT_POINT);

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final CharacteristicRepository characteristics;
    private final Crewed crewed;

    Replaceable(
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            CharacteristicRepository characteristics,
            Crewed crewed) {
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.characteristics = characteristics;
        this.crewed = crewed;
    }

    /**
     * The travellers to be replaced.
     *
     * @throws Refusal if the person may not do it, or nothing of the order is in the shop
     */
    List<Traveller> require(long personId, OrderSheet order) {
        crewed.holding(personId, Role.QA_LEAD, "Releasing a newer revision of order " + order.number());
        List<Traveller> old = inShop(order.id());
        if (old.isEmpty()) {
            throw Refusal.state(
                    "No newer revision was released.",
                    "Order " + order.number() + " has no traveller in the shop.",
                    "Release the revision the ordinary way.");
        }
        return old;
    }

    List<Traveller> inShop(long orderId) {
        return travellers.findByOrderIdOrderById(orderId).stream()
                .filter(t -> t.state().open())
                .toList();
    }

    /** A nonconformance is decided on the operation it was found at; that one is withdrawn with its traveller. */
    static void requireDecided(List<Hold> open) {
        open.stream().filter(h -> h.source().startsWith("NC-")).findFirst().ifPresent(h -> {
            throw Refusal.state(
                    "The newer revision was not released.",
                    h.source() + " is not decided.",
                    "Decide it first; then release the newer revision.");
        });
    }

    /** A newer revision is no second try at a reading that is undecided or not conforming. */
    void requireNothingUnsettled(List<Traveller> old) {
        for (Traveller traveller : old) {
            operations.findByTravellerIdOrderByPosition(traveller.id()).stream()
                    .filter(o -> !o.state().past())
                    .flatMap(o -> characteristics.findByOperationIdOrderByPosition(o.id()).stream())
                    .filter(c -> c.state() == CharacteristicState.UNDECIDED
                            || c.state() == CharacteristicState.NOT_CONFORMING)
                    .findFirst()
                    .ifPresent(c -> {
                        throw Refusal.state(
                                "The newer revision was not released.",
                                "Characteristic " + c.code() + ", " + c.name() + ", of " + traveller.mark() + " is "
                                        + c.state().word() + ".",
                                "Read it with less uncertainty, have it set, or decide on a nonconformance; then release"
                                        + " the newer revision.");
                    });
        }
    }

    /** What is away, in an oven, or out of it and not signed, cannot be begun anew by another traveller meanwhile. */
    void requireNothingAway(List<Traveller> old) {
        for (Traveller traveller : old) {
            for (Operation o : operations.findByTravellerIdOrderByPosition(traveller.id())) {
                boolean away = o.state() == OperationState.AWAY;
                if (away || BEGUN.contains(o.state()) && cannotBeUndone(o)) {
                    throw Refusal.state(
                            "The newer revision was not released.",
                            traveller.mark() + " is "
                                    + (o.state() == OperationState.AT_POINT
                                            ? "not signed"
                                            : o.state().word())
                                    + " at operation " + o.called()
                                    + (away ? "." : ", which cannot be undone once begun."),
                            away
                                    ? "Book it back first."
                                    : o.state() == OperationState.AT_POINT
                                            ? "Have it signed first."
                                            : "Finish that operation first.");
                }
            }
        }
    }

    private boolean cannotBeUndone(Operation operation) {
        return operation.irreversible()
                || steps.findByOperationIdOrderByPosition(operation.id()).stream()
                        .anyMatch(step -> step.irreversible() && step.ticked());
    }
}
