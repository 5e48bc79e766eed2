package org.trammel.shop.travellers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads a frame's whole story, a fixed number of statements however long it is. Changes nothing. */
@Service
@Transactional(readOnly = true)
public class FrameStories {

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final CharacteristicRepository characteristics;
    private final SignatureRepository signatures;
    private final HoldRepository holds;
    private final HoldAgreementRepository agreements;
    private final FrameClockRepository clocks;
    private final NoteRepository notes;
    private final PhotoRepository photos;
    private final ConsignmentRepository consignments;
    private final CarryOvers carryOvers;
    private final ConfirmationOverrideRepository overrides;
    private final StoryQueries queries;

    FrameStories(
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            CharacteristicRepository characteristics,
            SignatureRepository signatures,
            HoldRepository holds,
            HoldAgreementRepository agreements,
            FrameClockRepository clocks,
            NoteRepository notes,
            PhotoRepository photos,
            ConsignmentRepository consignments,
            CarryOvers carryOvers,
            ConfirmationOverrideRepository overrides,
            StoryQueries queries) {
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.characteristics = characteristics;
        this.signatures = signatures;
        this.holds = holds;
        this.agreements = agreements;
        this.clocks = clocks;
        this.notes = notes;
        this.photos = photos;
        this.consignments = consignments;
        this.carryOvers = carryOvers;
        this.overrides = overrides;
        this.queries = queries;
    }

    /**
     * The story of a serial; empty if it never had a traveller.
     *
     * @param serial stored form of the frame, without a part
     */
    public Optional<FrameStory> of(String serial) {
        List<Traveller> all = travellers.findBySerialOrderById(serial);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        List<Long> ids = all.stream().map(Traveller::id).toList();
        List<Operation> done = operations.findByTravellerIdInOrderByTravellerIdAscPositionAsc(ids);
        Map<Long, Operation> byId = done.stream().collect(Collectors.toMap(Operation::id, Function.identity()));
        Collection<Long> at = byId.keySet();
        List<Hold> held = holds.findBySerialOrderById(serial);
        return Optional.of(new FrameStory(
                serial,
                travellers(all, done, at),
                held.stream().map(h -> Travellers.line(h, Map.of())).toList(),
                agreed(held),
                held.isEmpty() ? List.of() : freed(held, byId),
                notes.findByTravellerIdInOrderById(ids).stream()
                        .map(n ->
                                new FrameStory.Noted(n.travellerId(), n.operationId(), n.words(), n.personId(), n.at()))
                        .toList(),
                photos.findByTravellerIdInOrderById(ids).stream()
                        .map(p -> new FrameStory.Pictured(
                                p.travellerId(), p.operationId(), p.sha256(), p.personId(), p.at()))
                        .toList(),
                consignments.findByOperationIdIn(at).stream()
                        .map(c -> new FrameStory.Sent(
                                c.operationId(),
                                c.recipient(),
                                c.sentBy(),
                                c.sentAt(),
                                c.backBy(),
                                c.backAt(),
                                c.certificate()))
                        .toList(),
                carryOvers.of(at),
                overrides.findByOperationIdInOrderById(at).stream()
                        .map(c -> unconfirmed(c, byId.get(c.operationId())))
                        .toList()));
    }

    private List<FrameStory.Of> travellers(List<Traveller> all, List<Operation> done, Collection<Long> at) {
        Map<Long, List<Operation>> of = done.stream().collect(Collectors.groupingBy(Operation::travellerId));
        Map<Long, List<Step>> stepsOf = steps.findByOperationIdInOrderByOperationIdAscPositionAsc(at).stream()
                .collect(Collectors.groupingBy(Step::operationId));
        Map<Long, List<Characteristic>> readAt =
                characteristics.findByOperationIdInOrderByOperationIdAscPositionAsc(at).stream()
                        .collect(Collectors.groupingBy(Characteristic::operationId));
        Map<Long, List<Signature>> signedAt = signatures.findByOperationIdInOrderById(at).stream()
                .collect(Collectors.groupingBy(Signature::operationId));
        Map<Long, List<Tick>> tickedAt = queries.ticks(at).stream().collect(Collectors.groupingBy(Tick::operationId));
        Map<Long, List<FrameClock>> running =
                clocks.findByTravellerIdIn(all.stream().map(Traveller::id).toList()).stream()
                        .collect(Collectors.groupingBy(FrameClock::travellerId));
        return all.stream()
                .map(t -> new FrameStory.Of(
                        FrameSheet.Head.of(t),
                        running.getOrDefault(t.id(), List.of()).stream()
                                .map(ClockView::of)
                                .toList(),
                        of.getOrDefault(t.id(), List.of()).stream()
                                .map(o -> at(
                                        o,
                                        stepsOf.getOrDefault(o.id(), List.of()),
                                        readAt.getOrDefault(o.id(), List.of()),
                                        tickedAt.getOrDefault(o.id(), List.of()),
                                        signedAt.getOrDefault(o.id(), List.of())))
                                .toList()))
                .toList();
    }

    private static FrameStory.At at(
            Operation o, List<Step> steps, List<Characteristic> read, List<Tick> ticks, List<Signature> signed) {
        Map<Long, String> texts = steps.stream().collect(Collectors.toMap(Step::id, Step::text));
        return new FrameStory.At(
                FrameSheet.OperationLine.of(o),
                o.signers(),
                o.caution(),
                steps.stream().map(s -> Travellers.step(s, Map.of())).toList(),
                read.stream().map(FrameSheet.CharacteristicLine::of).toList(),
                ticked(ticks, texts),
                signed.stream()
                        .map(s -> new FrameStory.Signed(s.personId(), s.signer(), s.meaning(), s.at(), o.counts(s)))
                        .toList());
    }

    private static List<FrameStory.Ticked> ticked(List<Tick> ticks, Map<Long, String> texts) {
        Map<Long, Tick> standing = new HashMap<>();
        Set<Long> undone = new HashSet<>();
        for (Tick tick : ticks) {
            if (tick.untick()) {
                Tick before = standing.remove(tick.stepId());
                if (before != null) {
                    undone.add(before.id());
                }
            } else {
                standing.put(tick.stepId(), tick);
            }
        }
        List<FrameStory.Ticked> lines = new ArrayList<>();
        for (Tick t : ticks) {
            lines.add(new FrameStory.Ticked(
                    t.stepId(),
                    texts.getOrDefault(t.stepId(), ""),
                    t.untick(),
                    undone.contains(t.id()),
                    t.personId(),
                    t.at(),
                    t.lot(),
                    t.reason()));
        }
        return lines;
    }

    static FrameStory.Unconfirmed unconfirmed(ConfirmationOverride c, Operation at) {
        return new FrameStory.Unconfirmed(
                c.operationId(),
                at.called(),
                c.personId(),
                c.qualification(),
                c.lapsedOn(),
                c.givenBy(),
                c.at(),
                c.reason());
    }

    private List<FrameStory.Agreed> agreed(List<Hold> held) {
        List<Long> together =
                held.stream().filter(h -> !h.agreed().isEmpty()).map(Hold::id).toList();
        if (together.isEmpty()) {
            return List.of();
        }
        return agreements.findByHoldIdInOrderById(together).stream()
                .map(a -> new FrameStory.Agreed(a.holdId(), a.personId(), a.at(), a.words()))
                .toList();
    }

    private List<FrameStory.Freed> freed(List<Hold> held, Map<Long, Operation> byId) {
        return queries.freed(held.stream().map(Hold::id).toList()).stream()
                .filter(f -> byId.containsKey(f.operationId()))
                .map(f -> new FrameStory.Freed(
                        f.holdId(),
                        f.operationId(),
                        byId.get(f.operationId()).called(),
                        f.freedBy(),
                        f.at(),
                        f.reason()))
                .toList();
    }
}
