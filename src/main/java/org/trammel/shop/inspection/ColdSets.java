package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.ClockRanOut;
import org.trammel.shop.travellers.ClockState;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/**
 * Setting a frame straight cold, while its window is open: by an authorised aligner who did not weld it, within the
 * attempts and the amount the route allows, and never under a hold that was not freed for it.
 */
@Service
public class ColdSets {

    private final ColdSetRepository coldSets;
    private final Evidence evidence;
    private final Travellers travellers;
    private final Remarks remarks;
    private final Crew crew;
    private final Formats formats;
    private final Pushes pushes;
    private final TabletClocks clocks;

    ColdSets(
            ColdSetRepository coldSets,
            Evidence evidence,
            Travellers travellers,
            Remarks remarks,
            Crew crew,
            Formats formats,
            Pushes pushes,
            TabletClocks clocks) {
        this.coldSets = coldSets;
        this.evidence = evidence;
        this.travellers = travellers;
        this.remarks = remarks;
        this.crew = crew;
        this.formats = formats;
        this.pushes = pushes;
        this.clocks = clocks;
    }

    /**
     * What a cold-set may still do for a characteristic.
     *
     * @param open true if one may be made now, as far as window, attempts and amount go
     * @param why what stands in the way, in words; empty if nothing does
     * @param attemptsUsed of {@code attempts}
     * @param amountUsed of {@code amount}, in the characteristic's unit: of each push what it was to set, or what it did
     *     where that was more; amount is null where the route sets none
     */
    public record Room(
            boolean open,
            String why,
            int attemptsUsed,
            int attempts,
            BigDecimal amountUsed,
            @Nullable BigDecimal amount,
            @Nullable Instant windowEnds) {}

    /** How often a frame was pushed at an operation. */
    @Transactional(readOnly = true)
    public int pushesAt(long operationId) {
        return coldSets.findByOperationIdInOrderById(List.of(operationId)).size();
    }

    /** The room left for a characteristic at an instant. */
    @Transactional(readOnly = true)
    public Room room(long characteristicId, Instant at) {
        return room(evidence.wanted(characteristicId), at);
    }

    private Room room(Evidence.Wanted wanted, Instant at) {
        List<ColdSet> before = before(wanted);
        BigDecimal used = pushes.used(before);
        ClockView clock = evidence.clocks(wanted.travellerId()).stream()
                .filter(c -> c.code().equals(wanted.coldSetClock()))
                .findFirst()
                .orElse(null);
        String why = shut(wanted, clock, before.size(), used, at);
        return new Room(
                why.isEmpty(),
                why,
                before.size(),
                wanted.coldSetAttempts(),
                used,
                wanted.coldSetAmount(),
                clock == null ? null : clock.endsAt());
    }

    /** Metal that was aged or relieved since, or a shape that was faced, is another than the one the route lets be set. */
    private String shut(Evidence.Wanted wanted, @Nullable ClockView clock, int attempts, BigDecimal used, Instant at) {
        if (wanted.coldSetClock() == null || wanted.coldSetAttempts() == 0) {
            return "The route allows no cold-set of it.";
        }
        if (clock == null || clock.startedAt() == null || clock.state() == ClockState.PLANNED) {
            return "The window has not opened.";
        }
        if (clock.stands()) {
            return "The frame lies in the cold store, and its clock " + clock.name() + " stands still.";
        }
        if (!clock.openAt(at)) {
            return "The window " + clock.name() + " closed at " + formats.moment(clock.endsAt()) + ".";
        }
        if (attempts >= wanted.coldSetAttempts()) {
            return "All " + wanted.coldSetAttempts() + " attempts are used.";
        }
        if (wanted.coldSetAmount() != null && used.compareTo(wanted.coldSetAmount()) >= 0) {
            return "The greatest amount of permanent set is used.";
        }
        return travellers
                .irreversibleAfter(wanted.operationId())
                .map(later -> later + " was begun, and a cold-set comes before it.")
                .orElse("");
    }

    private List<ColdSet> before(Evidence.Wanted wanted) {
        return coldSets
                .findByOperationIdInOrderById(evidence.operationsOf(wanted.travellerId(), wanted.operationCode()))
                .stream()
                .filter(s -> evidence.wanted(s.characteristicId()).code().equals(wanted.code()))
                .toList();
    }

    /**
     * Records a push. Every characteristic of the operation is to be read again after it, and steps that ask for a
     * qualification of their own, such as a penetrant test, are to be done again.
     *
     * @param amount permanent set aimed at, towards the nominal, in the characteristic's unit, greater than zero
     * @param pushMm how far it was pushed, mm, greater than zero; null if it was not measured
     */
    @Transactional
    public void push(Act act, long characteristicId, BigDecimal amount, @Nullable BigDecimal pushMm) {
        if (!evidence.opens(act, "cold-set", characteristicId)) {
            return;
        }
        Evidence.Wanted wanted = evidence.readable(act, characteristicId);
        String deed = "The cold-set of " + wanted.code() + ", " + wanted.name() + ", is not recorded.";
        Person person = crew.require(act.by(), deed, Role.ALIGNER, Role.QA_LEAD);
        evidence.requireQualified(act, wanted.operationId(), deed);
        if (wanted.state() != CharacteristicState.NOT_CONFORMING && wanted.state() != CharacteristicState.UNDECIDED) {
            throw Refusal.state(
                    deed,
                    "It is " + wanted.state().word() + ".",
                    "A frame is set only after a reading that is not conforming or undecided.");
        }
        if (evidence.tookPartWhere(wanted.travellerId(), "WELD").contains(person.id())
                || evidence.tookPartWhere(wanted.travellerId(), "BRAZE").contains(person.id())) {
            throw Refusal.person(
                    deed, person.name() + " welded this frame.", "Call an aligner who took no part in the welding.");
        }
        evidence.requireNotHeld(wanted.operationId(), "be cold-set");
        Room now = room(wanted, act.at());
        boolean late = false;
        Instant pushed = clocks.latest(act, wanted.travellerId());
        if (!now.open() && pushed.isAfter(act.at().minus(ClockRanOut.MAY_ARRIVE_LATE))) {
            now = room(wanted, pushed);
            late = now.open();
        }
        if (!now.open()) {
            throw Refusal.state(deed, now.why(), "Call the QA lead, who decides on a nonconformance.");
        }
        requireAmount(wanted, now, amount, deed);
        if (pushMm != null && pushMm.signum() <= 0) {
            throw Refusal.input(
                    "push",
                    deed,
                    "A push of " + pushMm.toPlainString() + " mm is none; it is a distance, whichever way it went.",
                    "Enter how far it was pushed, or leave it empty.");
        }
        coldSets.save(new ColdSet(
                act,
                wanted,
                travellers.head(wanted.travellerId()).metal(),
                now.attemptsUsed() + 1,
                Objects.requireNonNull(wanted.readingId()),
                amount,
                pushMm,
                late));
        evidence.readAllAgain(act, wanted.operationId());
        if (late) {
            remarks.callWithin(
                    act,
                    wanted.travellerId(),
                    wanted.operationId(),
                    "A cold-set was made inside its window, by the tablet's clock as it was last known, and saved after it"
                            + " had closed.");
        }
    }

    private static void requireAmount(Evidence.Wanted wanted, Room room, BigDecimal amount, String deed) {
        if (amount.signum() <= 0) {
            throw Refusal.input(
                    "amount", deed, "The set aimed at is " + amount.toPlainString() + ".", "Enter a value above zero.");
        }
        BigDecimal most = wanted.coldSetAmount();
        if (most != null && room.amountUsed().add(amount).compareTo(most) > 0) {
            throw Refusal.input(
                    "amount",
                    deed,
                    "The route allows " + most.toPlainString() + " " + wanted.unit() + " in all and "
                            + room.amountUsed().toPlainString() + " are used.",
                    "Set less, or call the QA lead, who decides on a nonconformance.");
        }
    }
}
