package org.trammel.shop.handwork;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.ProvenSteps;

/**
 * Reading a serial back from the metal: by somebody who did not strike it, keyed whole with its check character. No refusal
 * tells what the serial is.
 */
@Service
public class SerialReads {

    private static final String NOT_READ = "The serial was not read back.";
    private static final int LONGEST = 20;

    private final SerialReadRepository reads;
    private final MisreadRepository misreads;
    private final HandRecords records;
    private final HandTurn turn;
    private final ProvenSteps steps;
    private final ActLog log;
    private final TransactionTemplate transaction;

    SerialReads(
            SerialReadRepository reads,
            MisreadRepository misreads,
            HandRecords records,
            HandTurn turn,
            ProvenSteps steps,
            ActLog log,
            TransactionTemplate transaction) {
        this.reads = reads;
        this.misreads = misreads;
        this.transaction = transaction;
        this.records = records;
        this.turn = turn;
        this.steps = steps;
        this.log = log;
    }

    /** Takes what was read from the metal. What is not the serial of the frame is kept too, and refused. */
    public HandRecord readBack(Act act, long operationId, @Nullable String keyed) {
        // A refusal thrown inside would take the wrong reading back.
        Optional<Refusal> wrong = transaction.execute(begun -> taken(act, operationId, keyed));
        wrong.ifPresent(refusal -> {
            throw refusal;
        });
        return records.of(operationId);
    }

    /** The same within a transaction; what is wrong with what was read, if something is. */
    Optional<Refusal> taken(Act act, long operationId, @Nullable String keyed) {
        if (!turn.opens(act, "read-serial-back", operationId)) {
            return misreads.findByActId(act.id()).flatMap(row -> {
                FrameSheet.Head head = turn.of(operationId).head();
                return wrong(
                        head.serial(),
                        steps.struck(head.travellerId()).parts(),
                        row.misread().readAs());
            });
        }
        HandTurn.At at = turn.atHand(act, operationId, List.of(Proof.SERIAL_READ), NOT_READ);
        ProvenSteps.Struck struck = steps.struck(at.head().travellerId());
        requireStruck(act, struck);
        if (keyed == null || keyed.isBlank()) {
            throw Refusal.input("serial", NOT_READ, "Nothing was keyed.", "Key every character that is struck.");
        }
        Optional<Refusal> wrong = wrong(at.head().serial(), struck.parts(), keyed);
        if (wrong.isEmpty()) {
            reads.saveAndFlush(new SerialReadRow(operationId, struck.tick(), act));
            log.event(Chains.bearing(at.head().serial()), "serial-read-back", Map.of("operation", operationId));
            turn.goesOn(act, operationId);
            return wrong;
        }
        String readAs = asStruck(keyed);
        misreads.saveAndFlush(new MisreadRow(operationId, readAs, act));
        log.event(
                Chains.bearing(at.head().serial()), "serial-misread", Map.of("operation", operationId, "read", readAs));
        return wrong;
    }

    private static void requireStruck(Act act, ProvenSteps.Struck struck) {
        if (!struck.stands()) {
            throw Refusal.state(
                    NOT_READ,
                    "It is not struck yet: the step that strikes it is not ticked.",
                    "Strike it, photograph it and tick that step; then somebody else reads it.");
        }
        if (struck.by().contains(act.by())) {
            throw Refusal.person(
                    NOT_READ,
                    "You struck it, now or before, and whoever knows what it should be does not see what it is.",
                    "Call somebody else to sign on and key what the metal says.");
        }
    }

    /** Only what can be struck is kept: no words, which could not be erased from the log. */
    private static String asStruck(String keyed) {
        String struck = keyed.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9-]", "");
        return struck.isEmpty() ? "?" : struck.length() <= LONGEST ? struck : struck.substring(0, LONGEST);
    }

    private static Optional<Refusal> wrong(String serial, Collection<String> parts, String keyed) {
        SerialNumber.Result read = SerialNumber.read(keyed);
        if (read instanceof SerialNumber.Result.Unreadable not) {
            return refused(not.reason(), "Key every character that is struck.");
        }
        if (read instanceof SerialNumber.Result.Tag) {
            return refused(
                    "These are the last characters only.",
                    "Key the whole of it: letters, year, number and check character.");
        }
        if (read instanceof SerialNumber.Result.Whole whole) {
            return parts.stream().anyMatch(part -> whole.serial().equals(borne(serial, part)))
                    ? Optional.empty()
                    : refused(
                            whole.serial().shown()
                                    + " is the serial of another frame, or of another part of this one. It is kept as it"
                                    + " was read.",
                            "Read the metal again, the letters of the part too where it bears some. If it says just this,"
                                    + " stop the work and call the QA lead.");
        }
        return refused(
                "Its check character does not belong to the rest (ISO/IEC 7064): one character was misread, misstruck or"
                        + " two were swapped. It is kept as it was read.",
                "Read the metal again. If it says just this, stop the work and call the QA lead.");
    }

    private static Optional<Refusal> refused(String why, String instead) {
        return Optional.of(Refusal.input("serial", NOT_READ, why, instead));
    }

    /** A front triangle and a swing arm bear letters of their own, so that one is never taken for the other. */
    private static @Nullable SerialNumber borne(String serial, String part) {
        if (SerialNumber.read(serial + part) instanceof SerialNumber.Result.Whole own) {
            return own.serial();
        }
        return SerialNumber.read(serial) instanceof SerialNumber.Result.Whole frame ? frame.serial() : null;
    }
}
