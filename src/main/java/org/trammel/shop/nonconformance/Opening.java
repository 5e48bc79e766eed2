package org.trammel.shop.nonconformance;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.ClockRanOut;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.EvidenceRefused;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/** Opens nonconformances: by itself when evidence is refused, or by anybody who sees something. */
@Service
public class Opening {

    private final NonconformanceRepository all;
    private final Wordings wordings;
    private final Evidence evidence;
    private final ColdSets coldSets;
    private final Holds holds;
    private final Travellers travellers;
    private final Crew crew;
    private final ActLog log;

    Opening(
            NonconformanceRepository all,
            Wordings wordings,
            Evidence evidence,
            ColdSets coldSets,
            Holds holds,
            Travellers travellers,
            Crew crew,
            ActLog log) {
        this.all = all;
        this.wordings = wordings;
        this.evidence = evidence;
        this.coldSets = coldSets;
        this.holds = holds;
        this.travellers = travellers;
        this.crew = crew;
        this.log = log;
    }

    /**
     * A reading was refused. While a cold-set may still put it right nothing is opened: the step is held by its own
     * verdict.
     */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    void refused(EvidenceRefused event) {
        if (event.deciding()
                && coldSets.room(event.characteristicId(), event.act().at()).open()) {
            return;
        }
        if (!all.undecidedOn(event.characteristicId()).isEmpty()) {
            return;
        }
        open(
                event.act(),
                new Nonconformance.Found(
                        event.serial(),
                        event.part(),
                        event.travellerId(),
                        event.operationId(),
                        event.operationCode(),
                        event.characteristicId(),
                        event.characteristicCode(),
                        event.readingId()),
                event.operationCode(),
                event.deciding()
                        ? "Reading of " + event.characteristicCode() + " not conforming."
                        : "Reading of " + event.characteristicCode() + " past its triage limit.");
    }

    /** A window closed: what waited for a cold-set inside it is a nonconformance now. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    void ranOut(ClockRanOut event) {
        for (Evidence.Wanted wanted : evidence.waitingForColdSet(event.travellerId(), event.code())) {
            if (all.undecidedOn(wanted.characteristicId()).isEmpty()) {
                open(
                        event.act(),
                        new Nonconformance.Found(
                                wanted.serial(),
                                wanted.part(),
                                wanted.travellerId(),
                                wanted.operationId(),
                                wanted.operationCode(),
                                wanted.characteristicId(),
                                wanted.code(),
                                wanted.readingId()),
                        wanted.operationCode(),
                        "The window " + event.name() + " closed before " + wanted.code() + " was put right.");
            }
        }
    }

    /**
     * Opens one by hand.
     *
     * @param characteristicId what it is about, such as one that stays undecided; null for something seen
     * @param faultCode code of the operation at fault, as far as it is known
     * @return its number
     */
    @Transactional
    public String byHand(
            Act act,
            long travellerId,
            long operationId,
            @Nullable Long characteristicId,
            @Nullable String faultCode,
            String words) {
        return opened(act, travellerId, operationId, characteristicId, faultCode, words, false);
    }

    /**
     * Opens one about what is recorded of an operation, which a concession may let stay as it is.
     *
     * @return its number
     */
    @Transactional
    public String ofRecord(Act act, long travellerId, long operationId, String words) {
        return ofRecord(act, travellerId, operationId, null, words);
    }

    /** The same where another operation is at fault than the one at which it was found; null where it is this one. */
    @Transactional
    public String ofRecord(Act act, long travellerId, long operationId, @Nullable String faultCode, String words) {
        return opened(act, travellerId, operationId, null, faultCode, words, true);
    }

    private String opened(
            Act act,
            long travellerId,
            long operationId,
            @Nullable Long characteristicId,
            @Nullable String faultCode,
            String words,
            boolean ofRecord) {
        FrameSheet.Head head = travellers.head(travellerId);
        if (!log.opens(act, "open nonconformance", "operation:" + operationId, Chains.bearing(head.serial()))) {
            return all.findBySerialOrderById(head.serial()).stream()
                    .reduce((a, b) -> b)
                    .map(Nonconformance::number)
                    .orElse("");
        }
        Person person = crew.byId(act.by());
        if (!person.mayWork()) {
            throw Refusal.person(
                    "No nonconformance was opened.", person.name() + " reads and changes nothing.", "Call a worker.");
        }
        String seen = TypedText.words("words", "What was seen", "No nonconformance was opened.", words, 1000);
        requireOpen(head);
        FrameSheet.OperationLine operation = travellers.operation(operationId).line();
        String fault = faultCode == null || faultCode.isBlank() ? operation.code() : faultCode.strip();
        if (evidence.operationsOf(travellerId, fault).isEmpty()) {
            throw Refusal.input(
                    "faultCode",
                    "No nonconformance was opened.",
                    "The traveller has no operation " + fault + ".",
                    "Choose one of its operations, or leave it open.");
        }
        Evidence.Wanted wanted = characteristicId == null ? null : evidence.wanted(characteristicId);
        if (wanted != null && wanted.operationId() != operationId) {
            throw Refusal.input(
                    "characteristic",
                    "No nonconformance was opened.",
                    "Characteristic " + wanted.code() + " belongs to another operation.",
                    "Choose one of the operation.");
        }
        Nonconformance opened = open(
                act,
                new Nonconformance.Found(
                        head.serial(),
                        head.part(),
                        travellerId,
                        operationId,
                        operation.code(),
                        characteristicId,
                        wanted == null ? null : wanted.code(),
                        wanted == null ? null : wanted.readingId()),
                fault,
                seen,
                "found at operation " + operation.code() + "; what was found stands on its sheet.");
        if (ofRecord) {
            opened.isOfRecord();
        }
        return opened.number();
    }

    private static void requireOpen(FrameSheet.Head head) {
        if (!head.state().open()) {
            throw Refusal.state(
                    "No nonconformance was opened.",
                    head.mark() + " is " + head.state().word() + ".",
                    head.state() == TravellerState.WITHDRAWN
                            ? "Open the frame again: the traveller of the newer revision takes over."
                            : "A frame that comes back to the shop comes back on an order of its own.");
        }
    }

    private void open(Act act, Nonconformance.Found found, String faultCode, String words) {
        open(act, found, faultCode, words, words);
    }

    /** What people typed is kept once, where it can be erased: the hold says something else then. */
    private Nonconformance open(Act act, Nonconformance.Found found, String faultCode, String words, String heldFor) {
        Nonconformance n = all.save(new Nonconformance(found, faultCode, act.by(), act.at()));
        wordings.keep(n, Wording.About.FOUND, words);
        holds.placeWithin(
                act,
                new Holds.Request(
                        found.travellerId(),
                        HoldScope.OPERATION,
                        found.operationId(),
                        HoldReason.NONCONFORMANCE,
                        n.number() + ": " + heldFor,
                        n.number(),
                        causers(n)));
        log.event(
                Chains.bearing(found.serial()),
                "nonconformance opened",
                Map.of("nonconformance", n.id(), "operation", found.operationId(), "fault", faultCode));
        return n;
    }

    /** Everybody who ticked, signed or measured at the operation at fault, whatever its loop. */
    Set<Long> causers(Nonconformance n) {
        Set<Long> people = new HashSet<>();
        evidence.operationsOf(n.travellerId(), n.faultCode()).forEach(id -> people.addAll(evidence.tookPart(id)));
        return people;
    }
}
