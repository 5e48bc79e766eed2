package org.trammel.shop.coats;

import java.util.List;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.materials.PowderTold;
import org.trammel.shop.nonconformance.Opening;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * A powder that is found wrong after it was sprayed holds every frame in the shop that bears it and opens a nonconformance, in
 * the act in which it is found. The operation that sprayed it is at fault, so that nobody who worked there decides. A frame
 * that has left the shop is for its owner: the sheet of the lot lists it.
 */
@Component
class PowderFaults {

    private final WrongPowders powders;
    private final CoatFaults faults;
    private final Opening opening;
    private final Evidence evidence;
    private final Travellers travellers;

    PowderFaults(WrongPowders powders, CoatFaults faults, Opening opening, Evidence evidence, Travellers travellers) {
        this.powders = powders;
        this.faults = faults;
        this.opening = opening;
        this.evidence = evidence;
        this.travellers = travellers;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    void told(PowderTold event) {
        powders.bearing(event.lot())
                .forEach(head -> powders.on(head.serial(), head.part()).stream()
                        .filter(wrong -> wrong.lot().equals(event.lot()))
                        .filter(wrong -> faults.about(head.serial(), wrong.words()).stream()
                                .noneMatch(faults::stands))
                        .forEach(wrong -> open(event.act(), head, wrong)));
    }

    private void open(Act act, FrameSheet.Head head, WrongPowders.Wrong wrong) {
        List<Long> atFault = evidence.operationsOf(head.travellerId(), wrong.operation());
        Long current = head.currentOperationId();
        Long at = current != null || atFault.isEmpty() ? current : atFault.get(atFault.size() - 1);
        long operation = at != null
                ? at
                : travellers.strips(List.of(head.travellerId())).get(head.travellerId()).stream()
                        .reduce((before, after) -> after)
                        .orElseThrow()
                        .operationId();
        opening.ofRecord(
                act, head.travellerId(), operation, atFault.isEmpty() ? null : wrong.operation(), wrong.words());
    }
}
