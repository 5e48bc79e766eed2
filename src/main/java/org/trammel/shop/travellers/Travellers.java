package org.trammel.shop.travellers;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.SeenAs;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** Reads travellers: one frame in full, and the lists of what stands where. Changes nothing. */
@Service
@Transactional(readOnly = true)
public class Travellers {

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final CharacteristicRepository characteristics;
    private final SignatureRepository signatures;
    private final HoldRepository holds;
    private final FrameClockRepository clocks;
    private final NoteRepository notes;
    private final ShopCallRepository calls;
    private final Gate gate;
    private final Crew crew;
    private final Settings settings;
    private final Clock clock;

    Travellers(
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            CharacteristicRepository characteristics,
            SignatureRepository signatures,
            HoldRepository holds,
            FrameClockRepository clocks,
            NoteRepository notes,
            ShopCallRepository calls,
            Gate gate,
            Crew crew,
            Settings settings,
            Clock clock) {
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.characteristics = characteristics;
        this.signatures = signatures;
        this.holds = holds;
        this.clocks = clocks;
        this.notes = notes;
        this.calls = calls;
        this.gate = gate;
        this.crew = crew;
        this.settings = settings;
        this.clock = clock;
    }

    /** Every traveller a serial ever had, parts and withdrawn ones included, oldest first. */
    public List<FrameSheet.Head> heads(String serial) {
        return travellers.findBySerialOrderById(serial).stream()
                .map(FrameSheet.Head::of)
                .toList();
    }

    /** Travellers of an order, parts and withdrawn ones included. */
    public List<FrameSheet.Head> ofOrder(long orderId) {
        return travellers.findByOrderIdOrderById(orderId).stream()
                .map(FrameSheet.Head::of)
                .toList();
    }

    /** The newest copy of every part of a frame: one that was scrapped and made anew counts no more. */
    public List<FrameSheet.Head> partsInForce(long wholeId) {
        return travellers.partsInForce(wholeId).stream()
                .map(FrameSheet.Head::of)
                .toList();
    }

    /**
     * The traveller in force of a frame or part: the newest that is not withdrawn. Where all of them are, since the order
     * was called off, the last of them tells so.
     *
     * @param part empty for the whole frame
     */
    public FrameSheet.Head inForce(String serial, String part) {
        return newest(serial, part)
                .map(FrameSheet.Head::of)
                .orElseThrow(() -> Refusal.missing(
                        "No frame was opened.",
                        "There is no traveller of " + Marks.of(serial, part) + ".",
                        "Read the tag again; the check character guards against a slip."));
    }

    private Optional<Traveller> newest(String serial, String part) {
        List<Traveller> all = travellers.findBySerialOrderById(serial).stream()
                .filter(t -> t.part().equals(part))
                .toList();
        return all.stream()
                .filter(t -> t.state() != TravellerState.WITHDRAWN)
                .reduce((a, b) -> b)
                .or(() -> all.stream().reduce((a, b) -> b));
    }

    public FrameSheet.Head head(long travellerId) {
        return FrameSheet.Head.of(travellers.findById(travellerId).orElseThrow(() -> Bench.noSuch("traveller")));
    }

    /** Which of the operations measure a characteristic of one of these names, written small. */
    public Set<Long> measuring(Collection<Long> operationIds, Collection<String> names) {
        return operationIds.isEmpty() || names.isEmpty() ? Set.of() : characteristics.measuring(operationIds, names);
    }

    /** The traveller that an operation stands on. */
    public FrameSheet.Head headOf(long operationId) {
        return head(operations
                .findById(operationId)
                .orElseThrow(() -> Bench.noSuch("operation"))
                .travellerId());
    }

    /** The first operation after this one that cannot be undone and was begun, in words; empty while there is none. */
    public Optional<String> irreversibleAfter(long operationId) {
        Operation o = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        return operations.findByTravellerIdOrderByPosition(o.travellerId()).stream()
                .filter(later -> later.position() > o.position() && later.irreversible())
                .filter(later -> later.startedAt() != null && later.state() != OperationState.WAITING)
                .map(later -> "Operation " + later.called() + ", " + later.name() + ",")
                .findFirst();
    }

    /** One traveller in full, with the operation at hand. */
    public FrameSheet sheet(long travellerId) {
        return sheet(travellers.findById(travellerId).orElseThrow(() -> Bench.noSuch("traveller")));
    }

    /** The traveller in force of a frame or part in full; empty if there is none. See {@link #inForce}. */
    public Optional<FrameSheet> opened(String serial, String part) {
        return newest(serial, part).map(this::sheet);
    }

    private FrameSheet sheet(Traveller traveller) {
        List<Operation> all = operations.findByTravellerIdOrderByPosition(traveller.id());
        Operation at = all.stream()
                .filter(o -> traveller.currentOperationId() != null && o.id() == traveller.currentOperationId())
                .findFirst()
                .orElse(null);
        Map<Long, String> names = names();
        List<Characteristic> read = at == null ? List.of() : characteristics.findByOperationIdOrderByPosition(at.id());
        FrameSheet.OperationSheetOfFrame atHand = at == null ? null : operation(at, names, read);
        List<Hold> open = holds.openOn(traveller.serial());
        List<FrameClock> running = clocks.findByTravellerIdOrderById(traveller.id());
        return new FrameSheet(
                FrameSheet.Head.of(traveller),
                all.stream().map(FrameSheet.OperationLine::of).toList(),
                atHand,
                open.stream()
                        .filter(h -> h.scope() != HoldScope.PART || h.covers(traveller, null))
                        .map(h -> line(h, names))
                        .toList(),
                running.stream().map(ClockView::of).toList(),
                notes.findByTravellerIdInOrderById(family(traveller)).stream()
                        .map(n -> new FrameSheet.NoteLine(n.words(), name(names, n.personId()), n.at()))
                        .toList(),
                at == null ? List.of() : inTheWay(traveller, at, open, running, read, atHand.steps()));
    }

    /** A concession that ended stops only what would pass by it: while a step is left to tick, the work goes on. */
    private List<Refusal> inTheWay(
            Traveller traveller,
            Operation at,
            List<Hold> open,
            List<FrameClock> running,
            List<Characteristic> read,
            List<FrameSheet.StepLine> ticks) {
        if (at.state() == OperationState.WAITING) {
            return gate.beginning(traveller, at, clock.instant(), open, running);
        }
        List<Refusal> found = new ArrayList<>(gate.earlier(traveller, at));
        found.addAll(gate.held(traveller, at, "pass", open));
        if (at.state() == OperationState.IN_WORK && !WindowWork.begunOn(ticks)) {
            found.addAll(gate.closed(traveller, at, clock.instant(), running));
        }
        if (ticks.stream().allMatch(FrameSheet.StepLine::ticked)) {
            LocalDate day = settings.dayOf(clock.instant());
            read.stream()
                    .filter(c -> c.concessionOver(day))
                    .map(c ->
                            c.concessionEnded("Operation " + at.called() + " of " + traveller.mark() + " cannot pass."))
                    .forEach(found::add);
            if (found.isEmpty() && read.stream().allMatch(c -> c.state().settled())) {
                found.addAll(gate.awaited(traveller, at));
            }
        }
        return found;
    }

    private static List<Long> family(Traveller traveller) {
        return traveller.parentId() == null ? List.of(traveller.id()) : List.of(traveller.id(), traveller.parentId());
    }

    /** One operation in full: its steps, characteristics and, once the work is done, signatures. */
    public FrameSheet.OperationSheetOfFrame operation(long operationId) {
        Operation o = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        return operation(o, names(), characteristics.findByOperationIdOrderByPosition(o.id()));
    }

    private FrameSheet.OperationSheetOfFrame operation(
            Operation o, Map<Long, String> names, List<Characteristic> read) {
        boolean mayBeSigned = o.state() == OperationState.AT_POINT || o.state().past();
        return operation(
                o,
                names,
                steps.findByOperationIdOrderByPosition(o.id()),
                read,
                mayBeSigned ? signatures.findByOperationIdOrderById(o.id()) : List.of());
    }

    private static FrameSheet.OperationSheetOfFrame operation(
            Operation o, Map<Long, String> names, List<Step> steps, List<Characteristic> read, List<Signature> signed) {
        // A signature shows the name of its day, but to whoever is told names at all.
        boolean hidden = SeenAs.hidden();
        return new FrameSheet.OperationSheetOfFrame(
                FrameSheet.OperationLine.of(o),
                o.caution(),
                o.signers(),
                o.qualification(),
                o.together(),
                o.outside(),
                o.irreversible(),
                o.atPointSince(),
                steps.stream().map(s -> step(s, names)).toList(),
                read.stream().map(FrameSheet.CharacteristicLine::of).toList(),
                signed.stream()
                        .map(s -> new FrameSheet.SignatureLine(
                                s.personId(),
                                hidden ? name(names, s.personId()) : s.personName(),
                                s.signer(),
                                s.meaning(),
                                s.at(),
                                o.counts(s)))
                        .toList());
    }

    /** Every operation of a traveller in full, in order. */
    public List<FrameSheet.OperationSheetOfFrame> whole(long travellerId) {
        List<Operation> all = operations.findByTravellerIdOrderByPosition(travellerId);
        List<Long> ids = all.stream().map(Operation::id).toList();
        Map<Long, String> names = names();
        Map<Long, List<Step>> stepsOf = steps.findByOperationIdInOrderByOperationIdAscPositionAsc(ids).stream()
                .collect(Collectors.groupingBy(Step::operationId));
        Map<Long, List<Characteristic>> readAt =
                characteristics.findByOperationIdInOrderByOperationIdAscPositionAsc(ids).stream()
                        .collect(Collectors.groupingBy(Characteristic::operationId));
        Map<Long, List<Signature>> signedAt = signatures.findByOperationIdInOrderById(ids).stream()
                .collect(Collectors.groupingBy(Signature::operationId));
        return all.stream()
                .map(o -> operation(
                        o,
                        names,
                        stepsOf.getOrDefault(o.id(), List.of()),
                        readAt.getOrDefault(o.id(), List.of()),
                        signedAt.getOrDefault(o.id(), List.of())))
                .toList();
    }

    static FrameSheet.StepLine step(Step s, Map<Long, String> names) {
        return new FrameSheet.StepLine(
                s.id(),
                s.position(),
                s.text(),
                s.instruction(),
                s.photo(),
                s.irreversible(),
                s.lotKind(),
                s.startsClock(),
                s.proof(),
                s.secondPerson(),
                s.qualification(),
                s.ticked(),
                s.tickedBy(),
                s.tickedBy() == null ? null : name(names, s.tickedBy()),
                s.tickedAt());
    }

    static FrameSheet.HoldLine line(Hold h, Map<Long, String> names) {
        return new FrameSheet.HoldLine(
                h.id(),
                h.serial(),
                h.travellerId(),
                h.operationId(),
                h.scope(),
                h.reason(),
                h.words(),
                h.source(),
                h.placedBy(),
                name(names, h.placedBy()),
                h.placedAt(),
                h.liftedBy(),
                h.liftedBy() == null ? null : name(names, h.liftedBy()),
                h.liftedAt(),
                h.liftWords());
    }

    /** Every frame and part in the shop, station checks left out. */
    public List<FrameSheet.Head> inShop() {
        return travellers.inShop().stream().map(FrameSheet.Head::of).toList();
    }

    /** The strips of several travellers at once, by id of the traveller. */
    public Map<Long, List<FrameSheet.OperationLine>> strips(Collection<Long> travellerIds) {
        Map<Long, List<FrameSheet.OperationLine>> strips = new HashMap<>();
        operations
                .findByTravellerIdInOrderByTravellerIdAscPositionAsc(travellerIds)
                .forEach(o -> strips.computeIfAbsent(o.travellerId(), id -> new ArrayList<>())
                        .add(FrameSheet.OperationLine.of(o)));
        return strips;
    }

    /** Running clocks of several travellers, by id of the traveller. */
    public Map<Long, List<ClockView>> clocks(Collection<Long> travellerIds) {
        Map<Long, List<ClockView>> found = new HashMap<>();
        clocks.findByTravellerIdIn(travellerIds)
                .forEach(c -> found.computeIfAbsent(c.travellerId(), id -> new ArrayList<>())
                        .add(ClockView.of(c)));
        return found;
    }

    /** Every open hold of the shop, longest first. */
    public List<FrameSheet.HoldLine> openHolds() {
        Map<Long, String> names = names();
        return holds.open().stream().map(h -> line(h, names)).toList();
    }

    /** Every hold a serial ever had. */
    public List<FrameSheet.HoldLine> holdsOf(String serial) {
        Map<Long, String> names = names();
        return holds.findBySerialOrderById(serial).stream()
                .map(h -> line(h, names))
                .toList();
    }

    /** A call nobody has answered. */
    public record CallLine(
            long callId,
            @Nullable Long travellerId,
            @Nullable String mark,
            String words,
            String name,
            Instant at) {}

    public List<CallLine> openCalls() {
        List<ShopCall> open = calls.open();
        Map<Long, String> names = names();
        Map<Long, String> marks = new HashMap<>();
        travellers
                .findAllById(open.stream()
                        .map(ShopCall::travellerId)
                        .filter(java.util.Objects::nonNull)
                        .toList())
                .forEach(t -> marks.put(t.id(), t.mark()));
        return open.stream()
                .map(c -> new CallLine(
                        c.id(),
                        c.travellerId(),
                        c.travellerId() == null ? null : marks.get(c.travellerId()),
                        c.words(),
                        name(names, c.personId()),
                        c.at()))
                .toList();
    }

    private Map<Long, String> names() {
        return crew.names();
    }

    private static String name(Map<Long, String> names, long id) {
        return names.getOrDefault(id, "Trammel");
    }
}
