package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What is at hand at the stations, and the small things a tablet asks about one frame. Changes nothing. */
@Service
@Transactional(readOnly = true)
public class AtHand {

    private static final Limit AT_A_STATION = Limit.of(200);

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final FrameClockRepository clocks;
    private final HoldRepository holds;
    private final PhotoRepository photos;
    private final ConsignmentRepository consignments;

    AtHand(
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            FrameClockRepository clocks,
            HoldRepository holds,
            PhotoRepository photos,
            ConsignmentRepository consignments) {
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.clocks = clocks;
        this.holds = holds;
        this.photos = photos;
        this.consignments = consignments;
    }

    /**
     * One frame or part in the list of a station.
     *
     * @param next the first step that is not ticked; null if all are
     * @param clocks those that run or ran out
     * @param holds reasons of the open holds that stop the operation at hand
     * @param ahead reasons of the open holds of operations further on, which stop nothing yet
     * @param partsToCome a part that is to be joined is not finished, so that there is nothing to work on yet
     */
    public record Line(
            FrameSheet.Head head,
            FrameSheet.OperationLine operation,
            boolean together,
            boolean irreversible,
            FrameSheet.@Nullable StepLine next,
            List<ClockView> clocks,
            List<HoldReason> holds,
            List<HoldReason> ahead,
            boolean partsToCome) {}

    /** Frames, parts and checks whose operation at hand is at one of the stations, longest released first. */
    public List<Line> at(Collection<String> stations) {
        List<Traveller> standing = stations.isEmpty() ? List.of() : travellers.standingAt(stations, AT_A_STATION);
        if (standing.isEmpty()) {
            return List.of();
        }
        List<Long> operationIds = standing.stream()
                .map(Traveller::currentOperationId)
                .filter(Objects::nonNull)
                .toList();
        Map<Long, Operation> atHand = operations.findAllById(operationIds).stream()
                .collect(Collectors.toMap(Operation::id, Function.identity()));
        Map<Long, Step> next = steps.findByOperationIdInOrderByOperationIdAscPositionAsc(operationIds).stream()
                .filter(step -> !step.ticked())
                .collect(Collectors.toMap(Step::operationId, Function.identity(), (first, later) -> first));
        Map<Long, List<FrameClock>> running =
                clocks.findByTravellerIdIn(standing.stream().map(Traveller::id).toList()).stream()
                        .filter(clock -> clock.running() || clock.state() == ClockState.RUN_OUT)
                        .collect(Collectors.groupingBy(FrameClock::travellerId));
        List<Hold> open = holds.openOnAny(
                standing.stream().map(Traveller::serial).distinct().toList());
        List<Long> joined = standing.stream()
                .filter(traveller -> traveller.currentOperationId() != null
                        && atHand.containsKey(traveller.currentOperationId())
                        && atHand.get(traveller.currentOperationId()).sinceJoin())
                .map(Traveller::id)
                .toList();
        Set<Long> apart = joined.isEmpty() ? Set.of() : travellers.withPartsInWork(joined);
        return standing.stream()
                .filter(traveller -> atHand.containsKey(traveller.currentOperationId()))
                .map(traveller -> {
                    Operation operation = atHand.get(traveller.currentOperationId());
                    Step step = next.get(operation.id());
                    return new Line(
                            FrameSheet.Head.of(traveller),
                            FrameSheet.OperationLine.of(operation),
                            operation.together(),
                            operation.irreversible(),
                            step == null ? null : Travellers.step(step, Map.of()),
                            running.getOrDefault(traveller.id(), List.of()).stream()
                                    .map(ClockView::of)
                                    .toList(),
                            open.stream()
                                    .filter(hold -> hold.serial().equals(traveller.serial()))
                                    .filter(hold -> hold.covers(traveller, operation))
                                    .map(Hold::reason)
                                    .distinct()
                                    .toList(),
                            open.stream()
                                    .filter(hold -> hold.scope() == HoldScope.OPERATION
                                            && Objects.equals(hold.travellerId(), traveller.id())
                                            && !hold.covers(traveller, operation))
                                    .map(Hold::reason)
                                    .distinct()
                                    .toList(),
                            apart.contains(traveller.id()));
                })
                .toList();
    }

    /** Open frames and parts whose number within the year is this, three digits; several shops' years may share it. */
    public List<FrameSheet.Head> numbered(String threeDigits) {
        return travellers.openEndingIn("%" + threeDigits + "_").stream()
                .map(FrameSheet.Head::of)
                .toList();
    }

    /**
     * The tick that was made last on a traveller.
     *
     * @param operationId where the step belongs; not always the operation at hand
     */
    public record LastTick(
            long stepId,
            int number,
            String text,
            long operationId,
            @Nullable Long by,
            @Nullable Instant at) {}

    public Optional<LastTick> lastTick(long travellerId) {
        return steps.lastTicked(travellerId, Limit.of(1)).stream()
                .findFirst()
                .map(s -> new LastTick(s.id(), s.position(), s.text(), s.operationId(), s.tickedBy(), s.tickedAt()));
    }

    /** Ids of the steps of an operation that have a photograph. */
    public Set<Long> photographed(long operationId) {
        return photos.stepsAt(operationId);
    }

    /**
     * A photograph taken at an operation.
     *
     * @param stepId the step it was taken at; null for none
     */
    public record Picture(@Nullable Long stepId, String sha256, Instant at) {}

    /** The photographs of an operation, oldest first. */
    public List<Picture> pictures(long operationId) {
        return photos.findByOperationIdOrderById(operationId).stream()
                .map(p -> new Picture(p.stepId(), p.sha256(), p.at()))
                .toList();
    }

    /** Somebody outside who has the frame. */
    public record AwayAt(String recipient, Instant since) {}

    /** Where a frame is that was sent out for an operation and is not back. */
    public Optional<AwayAt> away(long operationId) {
        return consignments
                .findByOperationIdAndBackAtIsNull(operationId)
                .map(c -> new AwayAt(c.recipient(), c.sentAt()));
    }
}
