package org.trammel.shop.handwork;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.ProvenSteps;

/**
 * Reading a serial back from the metal: by somebody who did not strike it, keyed whole with its check character. No refusal
 * tells what the serial is.
 */
@Service
public class SerialReads {

    private final SerialReadRepository reads;
    private final HandRecords records;
    private final HandTurn turn;
    private final ProvenSteps steps;
    private final ActLog log;

    SerialReads(SerialReadRepository reads, HandRecords records, HandTurn turn, ProvenSteps steps, ActLog log) {
        this.reads = reads;
        this.records = records;
        this.turn = turn;
        this.steps = steps;
        this.log = log;
    }

    /** Takes what was read from the metal. */
    @Transactional
    public HandRecord readBack(Act act, long operationId, @Nullable String keyed) {
        String deed = "The serial was not read back.";
        if (!turn.opens(act, "read-serial-back", operationId)) {
            return records.of(operationId);
        }
        HandTurn.At at = turn.atHand(act, operationId, List.of(Proof.SERIAL_READ), deed);
        List<ProvenSteps.Done> struck = steps.ticked(at.head().travellerId(), Proof.SERIAL_STRUCK);
        if (struck.isEmpty()) {
            throw Refusal.state(
                    deed,
                    "It is not struck yet: the step that strikes it is not ticked.",
                    "Strike it, photograph it and tick that step; then somebody else reads it.");
        }
        if (struck.stream()
                        .max(Comparator.comparing(ProvenSteps.Done::at))
                        .orElseThrow()
                        .by()
                == act.by()) {
            throw Refusal.person(
                    deed,
                    "You struck it, and whoever knows what it should be does not see what it is.",
                    "Call somebody else to sign on and key what the metal says.");
        }
        requireOfTheFrame(at.head().serial(), keyed, deed);
        reads.saveAndFlush(new SerialReadRow(operationId, act));
        log.event(Chains.bearing(at.head().serial()), "serial-read-back", Map.of("operation", operationId));
        return records.of(operationId, at.asked());
    }

    private static void requireOfTheFrame(String serial, @Nullable String keyed, String deed) {
        SerialNumber.Result read = SerialNumber.read(keyed);
        if (read instanceof SerialNumber.Result.Unreadable not) {
            throw Refusal.input("serial", deed, not.reason(), "Key every character that is struck.");
        }
        if (read instanceof SerialNumber.Result.Tag) {
            throw Refusal.input(
                    "serial",
                    deed,
                    "These are the last characters only.",
                    "Key the whole of it: letters, year, number and check character.");
        }
        if (read instanceof SerialNumber.Result.Whole whole) {
            boolean own = SerialNumber.read(serial) instanceof SerialNumber.Result.Whole right
                    && right.serial().frame().equals(whole.serial().frame());
            if (!own) {
                throw Refusal.input(
                        "serial",
                        deed,
                        whole.serial().shown() + " is the serial of another frame.",
                        "Read the metal again. If it says just this, stop the work and call the QA lead.");
            }
            return;
        }
        throw Refusal.input(
                "serial",
                deed,
                "Its check character does not belong to the rest (ISO/IEC 7064): one character was misread, misstruck or"
                        + " two were swapped.",
                "Read the metal again. If it says just this, stop the work and call the QA lead.");
    }
}
