package org.trammel.shop.travellers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.DesignSheet;
import org.trammel.shop.designs.DesignState;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.OrderState;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** A newer design revision takes the place of the one in the shop: every finished operation gets a signed verdict. */
@Service
public class Revising {

    private static final int LONGEST_REASON = 900;

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final CharacteristicRepository characteristics;
    private final CarriedClocks clocks;
    private final HoldRepository holds;
    private final CarryOvers carries;
    private final KeptByConcession keptByConcession;
    private final Release release;
    private final Progress progress;
    private final Orders orders;
    private final Replaceable replaceable;
    private final ActLog log;
    private final ApplicationEventPublisher events;

    Revising(
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            CharacteristicRepository characteristics,
            CarriedClocks clocks,
            HoldRepository holds,
            CarryOvers carries,
            KeptByConcession keptByConcession,
            Release release,
            Progress progress,
            Orders orders,
            Replaceable replaceable,
            ActLog log,
            ApplicationEventPublisher events) {
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.characteristics = characteristics;
        this.clocks = clocks;
        this.holds = holds;
        this.carries = carries;
        this.keptByConcession = keptByConcession;
        this.release = release;
        this.progress = progress;
        this.orders = orders;
        this.replaceable = replaceable;
        this.log = log;
        this.events = events;
    }

    /** What is said of one finished operation. */
    public record Said(Carry verdict, String reason) {}

    /**
     * Who agreed that something is kept although the newer revision asks for something else.
     *
     * @param ownerId the owner, who has just given their own PIN
     * @param customer who of the customer agreed, when and how
     * @param limits what it is limited to
     * @param expiresOn last day on which a gate may be passed with it
     */
    public record Agreed(
            long ownerId,
            String customer,
            String limits,
            @Nullable LocalDate expiresOn) {}

    /** A finished operation that wants a verdict. */
    public record Finished(long operationId, String part, String code, String name) {}

    /**
     * What the newer revision asks about, for somebody who may release it; refused where nothing could be released.
     *
     * @throws Refusal if the person, the order or the revision is not such that {@link #supersede} could follow
     */
    @Transactional(readOnly = true)
    public List<Finished> asked(long personId, long orderId, DesignSheet design) {
        OrderSheet order = orders.byId(orderId);
        replaceable.require(personId, order);
        Release.requireOwnDrawing(order, design);
        if (design.state() != DesignState.CHECKED) {
            throw Refusal.state(
                    "No newer revision was released.",
                    "Revision " + design.letter() + " is " + design.state().word() + ".",
                    "Only a revision whose gate is signed takes the place of the one in the shop.");
        }
        return finished(orderId);
    }

    /** The finished operations of the order's travellers in the shop, in order. */
    @Transactional(readOnly = true)
    public List<Finished> finished(long orderId) {
        List<Finished> all = new ArrayList<>();
        for (Traveller traveller : replaceable.inShop(orderId)) {
            operations.findByTravellerIdOrderByPosition(traveller.id()).stream()
                    .filter(o -> o.state() == OperationState.DONE)
                    .forEach(o -> all.add(new Finished(o.id(), traveller.part(), o.code(), o.name())));
        }
        return all;
    }

    /**
     * Withdraws the travellers of an order and releases new ones for a newer design revision. By the QA lead, who signs
     * a verdict for every finished operation; owner and customer agree to what is kept by concession.
     *
     * @param said verdict by id of the finished operation
     * @param agreed who agreed to concessions; null where there are none
     */
    @Transactional
    public String supersede(
            Act act,
            long orderId,
            long designRevisionId,
            long routeRevisionId,
            Map<Long, Said> said,
            @Nullable Agreed agreed) {
        OrderSheet order = orders.byId(orderId);
        String serial = Objects.requireNonNullElse(order.serial(), "");
        if (!log.opens(
                act,
                "release newer revision",
                "order:" + orderId,
                Chains.order(order.number()),
                Chains.frame(serial))) {
            return serial;
        }
        List<Traveller> old = replaceable.require(act.by(), order);
        requireAllSaid(old, said);
        requireAgreed(act, said, agreed);
        replaceable.requireNothingAway(old);
        List<Hold> onOperations = holds.openOn(serial);
        Replaceable.requireDecided(onOperations);
        replaceable.requireNothingUnsettled(old);
        if (order.state() == OrderState.READY_TO_SHIP) {
            orders.reopened(act, orderId);
        }
        String withdrawn = "a newer revision takes its place";
        old.forEach(t -> t.withdraw(withdrawn));
        travellers.flush();
        Traveller whole = release.make(act, orderId, designRevisionId, routeRevisionId);
        List<Traveller> fresh = new ArrayList<>(List.of(whole));
        fresh.addAll(travellers.findByParentIdOrderById(whole.id()));
        for (Traveller from : old) {
            Optional<Traveller> to =
                    fresh.stream().filter(t -> t.part().equals(from.part())).findFirst();
            to.ifPresent(part -> carry(act, from, part, said, agreed));
            leave(act, from, to, said, agreed);
            carryHolds(act, from, to.orElse(whole), onOperations);
            goes(act, from, said);
        }
        operations.flush();
        fresh.forEach(t -> progress.advance(act, t));
        return serial;
    }

    /** A piece that is scrapped takes with it what it consumed, but for what is said to be valid in the next one too. */
    private void goes(Act act, Traveller from, Map<Long, Said> said) {
        Map<String, Carry> verdicts = new HashMap<>();
        for (Operation old : operations.findByTravellerIdOrderByPosition(from.id())) {
            if (old.state() == OperationState.DONE) {
                verdicts.put(old.code(), said.get(old.id()).verdict());
            }
        }
        if (verdicts.containsValue(Carry.SCRAP_PART)) {
            verdicts.values().removeIf(verdict -> !verdict.keeps());
            events.publishEvent(new PieceGone(act, from.id(), from.serial(), from.part(), verdicts.keySet()));
        }
    }

    private void requireAllSaid(List<Traveller> old, Map<Long, Said> said) {
        for (Traveller traveller : old) {
            for (Operation operation : operations.findByTravellerIdOrderByPosition(traveller.id())) {
                Said one = said.get(operation.id());
                if (operation.state() == OperationState.DONE && one != null) {
                    TypedText.wordsOrNone(
                            "said-" + operation.id(),
                            "The reason at operation " + operation.called(),
                            "The newer revision was not released.",
                            one.reason(),
                            LONGEST_REASON);
                }
                if (operation.state() == OperationState.DONE
                        && (one == null || one.reason().isBlank())) {
                    throw Refusal.input(
                            "said-" + operation.id(),
                            "The newer revision was not released.",
                            "Finished operation " + operation.called() + " of " + traveller.mark()
                                    + " has no verdict with a reason.",
                            "Say for each finished operation: still valid, repeat, scrap part, or keep by concession, and why.");
                }
            }
        }
    }

    private void requireAgreed(Act act, Map<Long, Said> said, @Nullable Agreed agreed) {
        List<Long> kept = said.entrySet().stream()
                .filter(one -> one.getValue().verdict() == Carry.CONCESSION)
                .map(Map.Entry::getKey)
                .toList();
        if (kept.isEmpty()) {
            return;
        }
        keptByConcession.require(act, agreed, kept);
    }

    private void carry(Act act, Traveller from, Traveller to, Map<Long, Said> said, @Nullable Agreed agreed) {
        Map<String, Operation> byCode = new HashMap<>();
        operations.findByTravellerIdOrderByPosition(to.id()).forEach(o -> byCode.put(o.code(), o));
        for (Operation old : operations.findByTravellerIdOrderByPosition(from.id())) {
            Operation fresh = byCode.get(old.code());
            if (old.state() != OperationState.DONE || fresh == null) {
                continue;
            }
            Said one = said.get(old.id());
            carries.keep(act, old, fresh, one, agreed);
            log.event(
                    to.chain(),
                    "carried over",
                    Map.of(
                            "old",
                            old.id(),
                            "new",
                            fresh.id(),
                            "verdict",
                            one.verdict().name()));
            if (one.verdict() == Carry.STILL_VALID && !from.metal().equals(to.metal())) {
                throw Refusal.state(
                        "The newer revision was not released.",
                        "Operation " + old.called() + " cannot be still valid: it was done on " + from.metal()
                                + ", and the newer revision is of " + to.metal() + ".",
                        "Say repeat, or scrap part.");
            }
            if (one.verdict().keeps()) {
                carryEvidence(old, fresh, one, from.letter(), agreed);
                fresh.carriedOver(old, "carried over from revision " + from.letter() + ": " + one.reason());
                to.begin();
            }
        }
        clocks.goOn(from, to);
    }

    /** What was done and is no longer part of the route stays on record, with what was said of it. */
    private void leave(Act act, Traveller from, Optional<Traveller> to, Map<Long, Said> said, @Nullable Agreed agreed) {
        Set<String> asked = to.map(t -> operations.findByTravellerIdOrderByPosition(t.id())).stream()
                .flatMap(List::stream)
                .map(Operation::code)
                .collect(Collectors.toSet());
        for (Operation old : operations.findByTravellerIdOrderByPosition(from.id())) {
            if (old.state() != OperationState.DONE || asked.contains(old.code())) {
                continue;
            }
            Said one = said.get(old.id());
            if (one.verdict() == Carry.REPEAT) {
                throw Refusal.input(
                        "said-" + old.id(),
                        "The newer revision was not released.",
                        "Operation " + old.called() + " of " + from.mark()
                                + " cannot be repeated: the newer route does not have it.",
                        "Say whether what was done there is still valid, scrapped, or kept by concession.");
            }
            carries.keep(act, old, null, one, agreed);
            log.event(
                    from.chain(),
                    "no longer part of the route",
                    Map.of("old", old.id(), "verdict", one.verdict().name()));
        }
    }

    private void carryEvidence(Operation old, Operation fresh, Said said, String letter, @Nullable Agreed agreed) {
        Map<String, Characteristic> before = new HashMap<>();
        characteristics.findByOperationIdOrderByPosition(old.id()).forEach(c -> before.put(c.code(), c));
        for (Characteristic c : characteristics.findByOperationIdOrderByPosition(fresh.id())) {
            Characteristic was = before.get(c.code());
            boolean same = was != null && StillValid.same(was, c);
            if (!same && said.verdict() == Carry.STILL_VALID) {
                throw Refusal.state(
                        "The newer revision was not released.",
                        "Operation " + old.called() + " cannot be still valid: what is asked of " + c.code() + ", "
                                + c.name() + ", differs from revision " + letter + ".",
                        "Say repeat, or keep by concession.");
            }
            if (same) {
                c.carriedOver(was);
            } else {
                c.keepByConcession(
                        "revision " + letter,
                        Objects.requireNonNull(Objects.requireNonNull(agreed).expiresOn()));
            }
        }
        List<Step> was = steps.findByOperationIdOrderByPosition(old.id());
        if (said.verdict() == Carry.STILL_VALID) {
            requireNothingNew(old, fresh, was, letter);
        }
        for (Step step : steps.findByOperationIdOrderByPosition(fresh.id())) {
            was.stream()
                    .filter(s -> s.ticked() && s.text().equals(step.text()))
                    .findFirst()
                    .ifPresent(s -> step.tick(s.tickedBy(), s.tickedAt()));
        }
    }

    /** Still valid keeps what was done; it does not stand for what nobody did. */
    private void requireNothingNew(Operation old, Operation fresh, List<Step> was, String letter) {
        Optional<String> undone =
                StillValid.undone(old, fresh, was, steps.findByOperationIdOrderByPosition(fresh.id()));
        if (undone.isPresent()) {
            throw Refusal.state(
                    "The newer revision was not released.",
                    "Operation " + old.called() + " cannot be still valid: " + undone.get() + " under revision "
                            + letter + ".",
                    "Say repeat, or keep by concession.");
        }
    }

    /** A hold of an old operation or part goes on as a hold of the part that takes its place. */
    private void carryHolds(Act act, Traveller from, Traveller to, List<Hold> open) {
        for (Hold hold : open) {
            if (hold.scope() != HoldScope.FRAME && Objects.equals(hold.travellerId(), from.id())) {
                Hold moved = holds.save(new Hold(
                        to,
                        HoldScope.PART,
                        null,
                        hold.reason(),
                        new Hold.Origin(hold.words(), hold.source(), hold.placedBy(), act.at(), hold.causedBy())));
                hold.lift(act.by(), act.at(), "goes on as a hold of revision " + to.letter());
                log.event(to.chain(), "hold moved", Map.of("from", hold.id(), "to", moved.id()));
            }
        }
    }
}
