package org.trammel.shop.travellers;

import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;

/** A frame sent to somebody outside, a stress relief or a coat, and booked back with the certificate. */
@Service
public class Outside {

    private final Bench bench;
    private final ConsignmentRepository consignments;
    private final Gate gate;
    private final Progress progress;
    private final Crewed crewed;
    private final WindowWork windowWork;
    private final StepRepository steps;
    private final ActLog log;

    Outside(
            Bench bench,
            ConsignmentRepository consignments,
            Gate gate,
            Progress progress,
            Crewed crewed,
            WindowWork windowWork,
            StepRepository steps,
            ActLog log) {
        this.bench = bench;
        this.consignments = consignments;
        this.gate = gate;
        this.progress = progress;
        this.crewed = crewed;
        this.windowWork = windowWork;
        this.steps = steps;
        this.log = log;
    }

    @Transactional
    public void send(Act act, long operationId, String recipient) {
        bench.onOperation(act, "send out", operationId, (traveller, operation) -> {
            crewed.signing(act.by(), "Sending a frame out");
            String to = Bench.required(recipient, "recipient", "The frame was not sent out.");
            if (to.length() > 200) {
                throw Refusal.input(
                        "recipient",
                        "The frame was not sent out.",
                        "The name is longer than 200 characters.",
                        "Shorten it.");
            }
            progress.begin(act, traveller, operation);
            Gate.refuseFirst(gate.earlier(traveller, operation));
            Gate.refuseFirst(gate.held(traveller, operation, "be sent out"));
            List<FrameClock> windows = windowWork.toMeet(
                    traveller, operation, steps.findByOperationIdOrderByPosition(operationId), act.at());
            windows.forEach(FrameClock::meet);
            operation.sendOut();
            Consignment sent = consignments.save(new Consignment(operationId, to, act.by(), act.at()));
            log.event(traveller.chain(), "sent out", Map.of("operation", operationId, "consignment", sent.id()));
        });
    }

    /**
     * Books the frame back.
     *
     * @param certificate number of the certificate that came with it
     */
    @Transactional
    public void bookBack(Act act, long operationId, String certificate) {
        bench.onOperation(act, "book back", operationId, (traveller, operation) -> {
            crewed.signing(act.by(), "Booking a frame back");
            String number = Bench.required(certificate, "certificate", "The frame was not booked back.");
            if (number.length() > 200) {
                throw Refusal.input(
                        "certificate",
                        "The frame was not booked back.",
                        "The certificate's number is longer than 200 characters.",
                        "Shorten it.");
            }
            operation.comeBack(act.at());
            consignments
                    .findByOperationIdAndBackAtIsNull(operationId)
                    .ifPresent(c -> c.comeBack(act.by(), act.at(), number));
            log.event(traveller.chain(), "booked back", Map.of("operation", operationId));
            progress.settle(act, traveller, operation);
        });
    }
}
