package org.trammel.shop.travellers;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Signer;

/** The last gate: a frame leaves the shop only if everything it was released with is proven. */
@Service
public class Shipping {

    private final Locator locator;
    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final CharacteristicRepository characteristics;
    private final SignatureRepository signatures;
    private final HoldRepository holds;
    private final Orders orders;
    private final Crewed crewed;
    private final ActLog log;

    Shipping(
            Locator locator,
            TravellerRepository travellers,
            OperationRepository operations,
            CharacteristicRepository characteristics,
            SignatureRepository signatures,
            HoldRepository holds,
            Orders orders,
            Crewed crewed,
            ActLog log) {
        this.locator = locator;
        this.travellers = travellers;
        this.operations = operations;
        this.characteristics = characteristics;
        this.signatures = signatures;
        this.holds = holds;
        this.orders = orders;
        this.crewed = crewed;
        this.log = log;
    }

    /**
     * Ships a frame. What must not be open is looked for once more over the whole frame and its parts: holds, points
     * that somebody has not signed, characteristics without a verdict.
     *
     * @param scanned serial read from the frame itself, beside the address
     */
    @Transactional
    public void ship(Act act, long travellerId, String scanned) {
        List<Locator.Place> places = locator.ofTraveller(travellerId);
        if (places.isEmpty()) {
            throw Bench.noSuch("traveller");
        }
        if (!log.opens(act, "ship", "traveller:" + travellerId, Bench.chains(places))) {
            return;
        }
        Traveller traveller = travellers.findById(travellerId).orElseThrow(() -> Bench.noSuch("traveller"));
        crewed.signing(act.by(), "Shipping a frame");
        if (!traveller.frame() || traveller.orderId() == null) {
            throw Refusal.state(
                    traveller.mark() + " is not shipped.",
                    "It is " + (traveller.orderId() == null ? "a station check." : "a part of a frame."),
                    "Ship the whole frame.");
        }
        if (!scanned.replace("-", "").strip().equalsIgnoreCase(traveller.serial())) {
            throw Refusal.input(
                    "scanned",
                    "Frame " + traveller.mark() + " is not shipped.",
                    "The serial read from the frame in the box is another one.",
                    "Check box, frame and address; read the serial from the frame.");
        }
        List<Traveller> all = parts(traveller);
        all.forEach(part -> Gate.refuseFirst(unproven(part)));
        all.forEach(part -> part.ship(act.at()));
        orders.shipped(act, traveller.orderId());
        log.event(traveller.chain(), "shipped", Map.of("order", traveller.orderNumber()));
    }

    private List<Traveller> parts(Traveller whole) {
        return Stream.concat(Stream.of(whole), travellers.partsInForce(whole.id()).stream())
                .toList();
    }

    private List<Refusal> unproven(Traveller part) {
        String what = "Frame " + part.mark() + " is not shipped.";
        if (part.state() != TravellerState.FINISHED) {
            return List.of(Refusal.state(what, "It is " + part.state().word() + ".", "Finish every operation first."));
        }
        List<Hold> open = holds.openOn(part.serial());
        if (!open.isEmpty()) {
            return List.of(Refusal.state(
                    what,
                    "It is on hold, " + open.get(0).reason().word() + ": "
                            + open.get(0).words(),
                    "Leave it where it is until the hold is lifted."));
        }
        for (Operation operation : operations.findByTravellerIdOrderByPosition(part.id())) {
            if (operation.state() == OperationState.REPEATED) {
                continue;
            }
            if (operation.point() == Point.HOLD && !operation.carried() && !signed(operation)) {
                return List.of(Refusal.state(
                        what, "Hold point " + operation.called() + " is not signed.", "Call those who sign it."));
            }
            List<Characteristic> unsettled = characteristics.findByOperationIdOrderByPosition(operation.id()).stream()
                    .filter(c -> !c.state().settled())
                    .toList();
            if (!unsettled.isEmpty()) {
                return List.of(Refusal.state(
                        what,
                        "Characteristic " + unsettled.get(0).code() + ", "
                                + unsettled.get(0).name() + ", is "
                                + unsettled.get(0).state().word() + ".",
                        "Read it, or have the QA lead decide."));
            }
        }
        return List.of();
    }

    /** True if everybody who signs the point has, since it was opened last. */
    private boolean signed(Operation operation) {
        Set<Signer> by = signatures.findByOperationIdOrderById(operation.id()).stream()
                .filter(operation::counts)
                .map(Signature::signer)
                .collect(Collectors.toSet());
        return !by.isEmpty() && by.containsAll(operation.signers());
    }
}
